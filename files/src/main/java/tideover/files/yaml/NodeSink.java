package tideover.files.yaml;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.files.text.Sink;
import tideover.files.yaml.Node.Entry;
import tideover.files.yaml.Node.Mapping;
import tideover.files.yaml.Node.Scalar;
import tideover.files.yaml.Node.Sequence;
import tideover.files.yaml.Node.Style;

/** Builds the tree that reading the written text would give, without the text between. */
public final class NodeSink implements Sink {
    private final Spot spot;
    private final Deque<Open> open = new ArrayDeque<>();
    private @Nullable Node root;

    /** A mapping or list not yet ended. */
    private static final class Open {
        private final List<Entry> entries = new ArrayList<>();
        private final List<Node> items = new ArrayList<>();
        private @Nullable String key;
    }

    /** @param spot where everything in the tree is said to stand */
    public NodeSink(Spot spot) {
        this.spot = spot;
    }

    /** The mapping that was written. */
    public Mapping finish() {
        if (root instanceof Mapping mapping) return mapping;
        throw new IllegalStateException("what was written is no mapping");
    }

    @Override
    public void beginMapping(Layout layout) {
        open.push(new Open());
    }

    @Override
    public void endMapping() {
        add(Mapping.of(spot, open.pop().entries));
    }

    @Override
    public void beginList(Layout layout) {
        open.push(new Open());
    }

    @Override
    public void endList() {
        add(Sequence.of(spot, open.pop().items));
    }

    @Override
    public void key(String key) {
        open.element().key = key;
    }

    @Override
    public void text(String text) {
        add(new Scalar(spot, text, Style.QUOTED));
    }

    @Override
    public void number(String number) {
        add(new Scalar(spot, number, Style.PLAIN));
    }

    @Override
    public void yesNo(boolean value) {
        add(new Scalar(spot, Boolean.toString(value), Style.PLAIN));
    }

    private void add(Node node) {
        Open around = open.peek();
        if (around == null) {
            root = node;
        } else if (around.key == null) {
            around.items.add(node);
        } else {
            around.entries.add(new Entry(around.key, spot, node));
            around.key = null;
        }
    }
}
