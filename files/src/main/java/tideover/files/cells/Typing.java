package tideover.files.cells;

import java.nio.charset.StandardCharsets;
import java.text.DecimalFormatSymbols;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Cable;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.ResidualDevice;
import tideover.engine.site.ThingId;
import tideover.files.Edit;
import tideover.files.Field;
import tideover.files.FieldKind;
import tideover.files.FieldTable;
import tideover.files.text.JsonSink;
import tideover.files.text.Sink.Layout;
import tideover.files.yaml.Node;
import tideover.files.yaml.Node.Entry;
import tideover.files.yaml.Node.Mapping;
import tideover.files.yaml.Node.Scalar;
import tideover.files.yaml.Node.Sequence;
import tideover.files.yaml.Node.Style;
import tideover.files.yaml.NodeText;
import tideover.files.yaml.Spot;
import tideover.files.yaml.YamlText;

/**
 * Reads what a person types into a cell, and tells what stands in it. Numbers take the decimal sign of the person's
 * language and a unit behind them, words are those printed, devices and cables the shorthand of the trade. What stands in
 * a cell has every digit and reads back as the same value. Safe to share between threads.
 */
public final class Typing {

    /** No number, word or list of a house is longer; only texts and whole groups are. */
    private static final int LONGEST = 1000;

    private static final Pattern WITH_COUNT = Pattern.compile("([0-9]+)\\s*[x×*]\\s*(.+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern DAY_FIRST = Pattern.compile("([0-9]{1,2})\\.\\s*([0-9]{1,2})\\.\\s*([0-9]{4})");
    private static final Pattern LINES =
            Pattern.compile("\\bL?([12])\\s*(?:-|–|\\.\\.|…)\\s*L?([23])\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern THREE_LINES =
            Pattern.compile("^\\s*3\\s*L?(?=\\s*(?:$|[\\s,;/+N]))", Pattern.CASE_INSENSITIVE);

    private final FieldTable table;
    private final char decimal;
    private final Function<Enum<?>, String> printed;
    private final Names names;
    private final Quantities quantities;
    private final Shorthand shorthand;

    private Typing(FieldTable table, char decimal, Function<Enum<?>, String> printed, Names names) {
        this.table = table;
        this.decimal = decimal;
        this.printed = printed;
        this.names = names;
        this.quantities = new Quantities(decimal);
        this.shorthand = new Shorthand(table, quantities, new Words(printed));
    }

    /**
     * For one language.
     *
     * @param printed how a word of a fixed list is printed; also asked for {@link YesNo}
     */
    public static Typing of(FieldTable table, Locale locale, Function<Enum<?>, String> printed) {
        char decimal = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
        return new Typing(table, decimal == ',' ? ',' : '.', printed, new Names(Map.of()));
    }

    /** For files: the words of the site file, numbers with this decimal sign. */
    static Typing ofFile(FieldTable table, char decimal) {
        return new Typing(table, decimal, Typing::asInFile, new Names(Map.of()));
    }

    private static String asInFile(Enum<?> word) {
        return word == YesNo.YES ? "true" : word == YesNo.NO ? "false" : word.name();
    }

    /** A copy that knows things by their printed names too; a name that several bear stands for none. */
    public Typing with(Map<ThingId, String> printedNames) {
        return new Typing(table, decimal, printed, new Names(printedNames));
    }

    /** The unit that a bare number has in a field; empty where there is none. The trade tells residual currents in mA. */
    public static String unit(Field field) {
        return Quantities.isResidual(field) ? "mA" : field.unit();
    }

    /** What typed text means in a field. */
    public Typed read(Field field, String typed) {
        return read(field, typed, List.of());
    }

    /**
     * What typed text means in a field.
     *
     * @param conductors of the thing, such as L1, N, PE, against which a cable is counted; none where they are not known
     */
    public Typed read(Field field, String typed, List<String> conductors) {
        String text = typed.replaceAll("[\\u00a0\\u202f\\u2009]", " ")
                .replace('\u2212', '-')
                .replace('\u2126', 'Ω')
                .strip();
        if (text.isEmpty()) return new Typed.Value(null);
        try {
            if (text.length() > LONGEST && isShort(field, text)) throw new Misread(CellProblem.TOO_LONG);
            if (field.kind() == FieldKind.GROUP) return group(field, text, conductors);
            return new Typed.Value(value(field, text, conductors));
        } catch (Misread e) {
            String[] arguments = new String[2 + e.arguments().length];
            arguments[0] = field.words();
            arguments[1] = shortened(typed.strip());
            System.arraycopy(e.arguments(), 0, arguments, 2, e.arguments().length);
            return new Typed.NotUnderstood(e.problem().at("", 0, 0, field.path(), arguments));
        }
    }

    private static boolean isShort(Field field, String text) {
        return field.kind() != FieldKind.TEXT
                && field.kind() != FieldKind.TEXTS
                && !text.startsWith("{")
                && !text.startsWith("[");
    }

    /** What was typed, short enough for a sentence. */
    static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, text.offsetByCodePoints(0, 57)) + "…";
    }

    private String value(Field field, String text, List<String> conductors) throws Misread {
        Words words = new Words(printed);
        return switch (field.kind()) {
            case ID, TEXT, TERMINAL -> text;
            case NUMBER -> number(field, text, conductors);
            case WHOLE -> whole(field, text);
            case YES_NO -> words.yesNo(text);
            case WORD -> words.read(field, table.valueType(field), text);
            case DATE -> date(text);
            case REFERENCE -> names.read(text);
            case WORDS -> list(words(field, words, text));
            case TEXTS -> text.startsWith("[") ? text : list(parts(text, "[;\\n]"));
            case REFERENCES -> text.startsWith("[") ? text : list(names.readAll(text));
            case GROUPS, GROUP -> {
                if (text.startsWith("[") || text.startsWith("{")) yield text;
                throw new Misread(CellProblem.GROUP);
            }
        };
    }

    private String number(Field field, String text, List<String> conductors) throws Misread {
        Matcher counted = WITH_COUNT.matcher(text);
        if (!field.unit().equals("mm²") || !counted.matches()) return quantities.read(field, text);
        Shorthand.count(counted.group(1), conductors);
        return quantities.read(field, counted.group(2));
    }

    private String whole(Field field, String text) throws Misread {
        String number = quantities.read(field, text);
        if (number.indexOf('.') >= 0) throw new Misread(CellProblem.WHOLE);
        return number;
    }

    private static String date(String text) throws Misread {
        Matcher day = DAY_FIRST.matcher(text);
        try {
            if (!day.matches()) return LocalDate.parse(text).toString();
            return LocalDate.of(
                            Integer.parseInt(day.group(3)),
                            Integer.parseInt(day.group(2)),
                            Integer.parseInt(day.group(1)))
                    .toString();
        } catch (DateTimeException e) {
            throw new Misread(CellProblem.DATE);
        }
    }

    /** Such as "L1 N PE", "L1-L3, N, PE" or "3/N/PE" (IEC 61293). */
    private List<String> words(Field field, Words words, String text) throws Misread {
        String lines = THREE_LINES.matcher(text).replaceFirst("L1 L2 L3 ");
        Matcher range = LINES.matcher(lines);
        String all = range.replaceAll(found -> {
            StringBuilder each = new StringBuilder();
            for (char line = found.group(1).charAt(0); line <= found.group(2).charAt(0); line++)
                each.append(" L").append(line);
            return each.toString();
        });
        List<String> names = new ArrayList<>();
        for (String part : parts(all, "[\\s,;/+]+")) names.add(words.read(field, table.valueType(field), part));
        return names;
    }

    private static List<String> parts(String text, String separator) {
        List<String> parts = new ArrayList<>();
        for (String part : text.split(separator)) if (!part.isBlank()) parts.add(part.strip());
        return parts;
    }

    private Typed group(Field field, String text, List<String> conductors) throws Misread {
        if (text.startsWith("{")) return new Typed.Value(text);
        Class<?> type = table.valueType(field);
        if (type == OvercurrentDevice.class) return new Typed.Facts(shorthand.overcurrentDevice(field, text));
        if (type == ResidualDevice.class) return new Typed.Facts(shorthand.residualDevice(field, text));
        if (type == Cable.class) return new Typed.Facts(shorthand.cable(field, text, conductors));
        throw new Misread(CellProblem.GROUP);
    }

    /** A list as {@link Edit} has it. */
    static String list(List<String> items) {
        JsonSink json = new JsonSink(Layout.LINE);
        json.beginList(Layout.LINE);
        items.forEach(json::text);
        json.endList();
        return json.finish();
    }

    /** The words that can be typed, as they are printed; none where anything can. */
    public List<String> choices(Field field) {
        Words words = new Words(printed);
        return switch (field.kind()) {
            case WORD, WORDS -> words.printed(table.valueType(field));
            case YES_NO -> List.of(printed.apply(YesNo.YES), printed.apply(YesNo.NO));
            default -> List.of();
        };
    }

    /** What stands in the cell of a field; empty where nothing is known. */
    public String text(Field field, @Nullable String value) {
        return text(field, value, List.of());
    }

    /**
     * What stands in the cell of a field; empty where nothing is known.
     *
     * @param value      as in {@link Edit#before()}
     * @param conductors of the thing; none where they are not known
     */
    public String text(Field field, @Nullable String value, List<String> conductors) {
        if (value == null) return "";
        boolean isWritten = field.kind() == FieldKind.GROUP || field.kind().isList();
        Node node = isWritten ? node(value) : null;
        return text(field, node == null ? new Scalar(Spot.whole(""), value, Style.PLAIN) : node, conductors);
    }

    /** As {@link #text(Field, String, List)}, of what stands in the tree of a site. */
    public String text(Field field, Node value, List<String> conductors) {
        return switch (field.kind()) {
            case ID, TEXT, TERMINAL, DATE, GROUPS -> NodeText.of(value);
            case NUMBER, WHOLE -> quantities.text(field, NodeText.of(value));
            case YES_NO -> new Words(printed).yesNoText(NodeText.of(value));
            case WORD -> new Words(printed).text(table.valueType(field), NodeText.of(value));
            case REFERENCE -> names.text(NodeText.of(value));
            case WORDS -> {
                Words words = new Words(printed);
                yield String.join(
                        " ",
                        items(value).stream()
                                .map(name -> words.text(table.valueType(field), name))
                                .toList());
            }
            case TEXTS -> texts(value);
            case REFERENCES ->
                String.join(", ", items(value).stream().map(names::text).toList());
            case GROUP -> groupText(field, value, conductors);
        };
    }

    /** Parted by semicolons, unless one of them would be torn apart. */
    private static String texts(Node value) {
        List<String> items = items(value);
        String joined = String.join("; ", items);
        return !joined.startsWith("[") && parts(joined, "[;\\n]").equals(items) ? joined : NodeText.of(value);
    }

    private String groupText(Field field, Node value, List<String> conductors) {
        Class<?> type = table.valueType(field);
        if (!(value instanceof Mapping group)) return NodeText.of(value);
        Map<String, String> facts = new LinkedHashMap<>();
        for (Entry entry : group.entries())
            if (entry.value() instanceof Scalar scalar) facts.put(entry.key(), scalar.text());
        String text = null;
        if (type == OvercurrentDevice.class) text = shorthand.overcurrentText(field, facts);
        if (type == ResidualDevice.class) text = shorthand.residualText(field, facts);
        if (type == Cable.class) text = shorthand.cableText(field, facts, conductors);
        return text == null ? NodeText.of(value) : text;
    }

    /** The items of a list in the form of an edit. */
    static List<String> items(String value) {
        Node node = node(value);
        return node == null ? List.of() : items(node);
    }

    private static List<String> items(Node value) {
        List<String> items = new ArrayList<>();
        if (value instanceof Sequence list)
            for (Node item : list.items()) if (item instanceof Scalar scalar) items.add(scalar.text());
        return items;
    }

    private static @Nullable Node node(String value) {
        return YamlText.read("", value.getBytes(StandardCharsets.UTF_8)).root();
    }
}
