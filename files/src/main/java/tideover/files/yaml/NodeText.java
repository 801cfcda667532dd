package tideover.files.yaml;

import tideover.files.text.JsonSink;
import tideover.files.text.Numbers;
import tideover.files.text.Sink.Layout;
import tideover.files.yaml.Node.Entry;
import tideover.files.yaml.Node.Mapping;
import tideover.files.yaml.Node.Scalar;
import tideover.files.yaml.Node.Sequence;

/** Nodes as one text each: a single value as it is written, anything larger as JSON on one line. */
public final class NodeText {
    private NodeText() {}

    /** The text of a node. */
    public static String of(Node node) {
        if (node instanceof Scalar scalar) return scalar.text();
        JsonSink json = new JsonSink(Layout.LINE);
        write(node, json);
        return json.finish();
    }

    private static void write(Node node, JsonSink json) {
        if (node instanceof Mapping mapping) {
            json.beginMapping(Layout.LINE);
            for (Entry entry : mapping.entries()) {
                json.key(entry.key());
                write(entry.value(), json);
            }
            json.endMapping();
        } else if (node instanceof Sequence list) {
            json.beginList(Layout.LINE);
            for (Node item : list.items()) write(item, json);
            json.endList();
        } else if (node instanceof Scalar scalar) {
            Double number = scalar.isPlain() ? Numbers.parse(scalar.text()) : null;
            boolean yes = scalar.text().equals("true");
            if (number != null) json.number(Numbers.shortest(number));
            else if (scalar.isPlain() && (yes || scalar.text().equals("false"))) json.yesNo(yes);
            else json.text(scalar.text());
        }
    }
}
