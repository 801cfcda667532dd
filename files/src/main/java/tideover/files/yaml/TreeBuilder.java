package tideover.files.yaml;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import tideover.files.yaml.Node.Entry;
import tideover.files.yaml.YamlProblem.Kind;

/** Builds the tree from the parser's events, on a stack of its own. */
final class TreeBuilder {
    private static final int DEEPEST = 24;
    private static final int MOST_VALUES = 100_000;

    private final String name;
    private final List<YamlProblem> problems = new ArrayList<>();
    private final Deque<Open> open = new ArrayDeque<>();
    private final Map<String, Node> anchored = new HashMap<>();
    private @Nullable Node root;
    private long values;

    TreeBuilder(String name) {
        this.name = name;
    }

    YamlResult build(String text) {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(name)
                .setCodePointLimit(YamlText.LARGEST_BYTES)
                .build();
        try {
            for (Event event : new Parse(settings).parseString(text)) take(event);
        } catch (Broken broken) {
            problems.add(broken.problem);
            return new YamlResult(null, problems);
        } catch (MarkedYamlEngineException syntax) {
            problems.add(SyntaxProblems.of(name, syntax));
            return new YamlResult(null, problems);
        } catch (YamlEngineException other) {
            problems.add(YamlProblem.of(Kind.OTHER, Spot.whole(name), String.valueOf(other.getMessage())));
            return new YamlResult(null, problems);
        }
        if (root == null) problems.add(YamlProblem.of(Kind.EMPTY, Spot.whole(name)));
        return new YamlResult(root, problems);
    }

    private void take(Event event) {
        Spot spot = spot(event);
        switch (event.getEventId()) {
            case Scalar -> {
                ScalarEvent scalar = (ScalarEvent) event;
                scalar.getTag().ifPresent(tag -> refuseTag(tag, spot));
                Node.Style style = scalar.getScalarStyle() == ScalarStyle.PLAIN ? Node.Style.PLAIN : Node.Style.QUOTED;
                add(new Node.Scalar(spot, scalar.getValue(), style), anchor(scalar), Counted.NEW);
            }
            case Alias -> add(target((AliasEvent) event, spot), null, Counted.AGAIN);
            case MappingStart, SequenceStart -> begin((CollectionStartEvent) event, spot);
            case MappingEnd, SequenceEnd -> {
                Open done = open.pop();
                add(done.toNode(), done.anchor, Counted.NOT);
            }
            case DocumentStart -> {
                if (root != null) throw new Broken(YamlProblem.of(Kind.SECOND_DOCUMENT, spot));
            }
            case StreamStart, StreamEnd, DocumentEnd, Comment -> {}
        }
    }

    private void begin(CollectionStartEvent event, Spot spot) {
        if (open.size() == DEEPEST) throw new Broken(YamlProblem.of(Kind.TOO_DEEP, spot, Integer.toString(DEEPEST)));
        event.getTag().ifPresent(tag -> refuseTag(tag, spot));
        count(1, spot);
        open.push(new Open(event instanceof MappingStartEvent, spot, anchor(event)));
    }

    private void add(Node node, @Nullable String anchor, Counted counted) {
        if (counted != Counted.NOT) count(node.size(), node.spot());
        if (anchor != null) anchored.put(anchor, node);
        Open parent = open.peek();
        if (parent == null) root = node;
        else parent.add(node);
    }

    private void count(long more, Spot spot) {
        values += more;
        if (values > MOST_VALUES)
            throw new Broken(YamlProblem.of(Kind.TOO_MANY_VALUES, spot, Integer.toString(MOST_VALUES)));
    }

    private Node target(AliasEvent event, Spot spot) {
        String alias = event.getAlias().getValue();
        for (Open around : open)
            if (alias.equals(around.anchor)) throw new Broken(YamlProblem.of(Kind.ALIAS_IN_ITSELF, spot, alias));
        Node node = anchored.get(alias);
        if (node == null) throw new Broken(YamlProblem.of(Kind.ALIAS_UNKNOWN, spot, alias));
        return node;
    }

    private void refuseTag(String tag, Spot spot) {
        problems.add(YamlProblem.of(Kind.TAG, spot, tag));
    }

    private static @Nullable String anchor(NodeEvent event) {
        return event.getAnchor().map(Anchor::getValue).orElse(null);
    }

    private Spot spot(Event event) {
        return event.getStartMark()
                .map(mark -> new Spot(name, mark.getLine() + 1, mark.getColumn() + 1))
                .orElse(Spot.whole(name));
    }

    /** How a value enters the count that bounds aliases. */
    private enum Counted {
        NEW,
        /** Met through an alias: all that is in it counts once more. */
        AGAIN,
        /** Its parts were counted one by one. */
        NOT
    }

    /** A mapping or list whose end is still to come. */
    private final class Open {
        private final boolean mapping;
        private final Spot spot;
        private final @Nullable String anchor;
        private final List<Node> items = new ArrayList<>();
        private final List<Entry> entries = new ArrayList<>();
        private final Map<String, Integer> lines = new HashMap<>();
        private boolean keyPending;
        private @Nullable String key;
        private Spot keySpot;

        private Open(boolean mapping, Spot spot, @Nullable String anchor) {
            this.mapping = mapping;
            this.spot = spot;
            this.anchor = anchor;
            this.keySpot = spot;
        }

        private void add(Node node) {
            if (!mapping) {
                items.add(node);
            } else if (!keyPending) {
                keyPending = true;
                keySpot = node.spot();
                key = node instanceof Node.Scalar scalar ? scalar.text() : null;
                if (key == null) problems.add(YamlProblem.of(Kind.KEY_IS_NO_TEXT, keySpot));
            } else {
                keyPending = false;
                if (key == null) return;
                Integer first = lines.putIfAbsent(key, keySpot.line());
                if (first == null) entries.add(new Entry(key, keySpot, node));
                else problems.add(YamlProblem.of(Kind.KEY_TWICE, keySpot, key, first.toString()));
            }
        }

        private Node toNode() {
            return mapping ? Node.Mapping.of(spot, entries) : Node.Sequence.of(spot, items);
        }
    }

    /** Ends the reading; never leaves this class. */
    private static final class Broken extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final transient YamlProblem problem;

        private Broken(YamlProblem problem) {
            super(problem.kind().name(), null, false, false);
            this.problem = problem;
        }
    }
}
