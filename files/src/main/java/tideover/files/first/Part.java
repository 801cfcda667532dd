package tideover.files.first;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.files.text.Numbers;
import tideover.files.text.Sink;
import tideover.files.text.Sink.Layout;

/** A thing in the making: its facts by their paths, and which of them are only assumed. */
final class Part {
    private final String id;
    private final Map<String, Object> facts = new LinkedHashMap<>();
    private final List<String> assumed = new ArrayList<>();

    Part(String id) {
        this.id = id;
    }

    String id() {
        return id;
    }

    /** Paths of the assumed facts. */
    List<String> assumed() {
        return assumed;
    }

    /** A fact that was said or decided. */
    Part with(String path, @Nullable Object value) {
        if (value != null) facts.put(path, value);
        return this;
    }

    /** A fact that nobody has said. */
    Part assume(String path, Object value) {
        assumed.add(path);
        return with(path, value);
    }

    /** What is typical of it. */
    Part assume(Map<String, String> typical) {
        typical.forEach((path, value) -> assume(path, value(value)));
        return this;
    }

    /** What is typical of it, decided so. */
    Part decide(Map<String, String> typical) {
        typical.forEach((path, value) -> with(path, value(value)));
        return this;
    }

    private static Object value(String text) {
        Double number = Numbers.parse(text);
        if (number != null) return number;
        return text.equals("true") ? (Object) true : text;
    }

    /** Writes it as it stands in a site file; groups of facts where the paths lead into them. */
    void write(Sink out) {
        out.beginMapping(Layout.LINE);
        if (!id.isEmpty()) {
            out.key("id");
            out.text(id);
        }
        write(facts, "", out);
        out.endMapping();
    }

    private static void write(Map<String, Object> facts, String group, Sink out) {
        String open = "";
        for (Map.Entry<String, Object> fact : facts.entrySet()) {
            if (!fact.getKey().startsWith(group)) continue;
            String rest = fact.getKey().substring(group.length());
            int dot = rest.indexOf('.');
            if (dot < 0) {
                out.key(rest);
                write(fact.getValue(), out);
            } else if (!open.contains(" " + rest.substring(0, dot) + " ")) {
                open += " " + rest.substring(0, dot) + " ";
                out.key(rest.substring(0, dot));
                out.beginMapping(Layout.LINE);
                write(facts, group + rest.substring(0, dot + 1), out);
                out.endMapping();
            }
        }
    }

    private static void write(Object value, Sink out) {
        if (value instanceof Double number) out.number(Numbers.shortest(number));
        else if (value instanceof Integer number) out.number(number.toString());
        else if (value instanceof Boolean yes) out.yesNo(yes);
        else if (value instanceof List<?> several) {
            out.beginList(Layout.LINE);
            for (Object one : several) write(one, out);
            out.endList();
        } else if (value instanceof Enum<?> word) out.text(word.name());
        else out.text(value.toString());
    }
}
