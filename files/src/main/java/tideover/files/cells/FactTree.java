package tideover.files.cells;

import java.util.LinkedHashMap;
import java.util.Map;
import tideover.files.Field;
import tideover.files.text.JsonSink;
import tideover.files.text.Sink.Layout;

/** Facts by their paths, as the JSON of one whole thing. */
final class FactTree {

    /** A value that stands at the end of a path. */
    private record Leaf(Field field, String text) {}

    private final Map<String, Object> facts = new LinkedHashMap<>();

    void put(String path, Field field, String text) {
        int dot = path.indexOf('.');
        if (dot < 0) {
            facts.put(path, new Leaf(field, text));
        } else if (facts.computeIfAbsent(path.substring(0, dot), name -> new FactTree()) instanceof FactTree group) {
            group.put(path.substring(dot + 1), field, text);
        }
    }

    String json() {
        JsonSink json = new JsonSink(Layout.LINE);
        write(json);
        return json.finish();
    }

    private void write(JsonSink json) {
        json.beginMapping(Layout.LINE);
        facts.forEach((name, fact) -> {
            json.key(name);
            if (fact instanceof FactTree group) group.write(json);
            else if (fact instanceof Leaf leaf) write(leaf, json);
        });
        json.endMapping();
    }

    private static void write(Leaf leaf, JsonSink json) {
        switch (leaf.field().kind()) {
            case NUMBER, WHOLE -> json.number(leaf.text());
            case YES_NO -> json.yesNo(leaf.text().equals("true"));
            case TEXTS, WORDS, REFERENCES -> {
                json.beginList(Layout.LINE);
                Typing.items(leaf.text()).forEach(json::text);
                json.endList();
            }
            default -> json.text(leaf.text());
        }
    }
}
