package tideover.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Conductor;
import tideover.engine.site.ThingKind;
import tideover.files.text.JsonSink;
import tideover.files.text.Numbers;
import tideover.files.text.Sink.Layout;

/**
 * The form of a site file as JSON Schema, draft 2020-12, for editors that help while one writes. It says less than the
 * reader: what names what, circles and what may run in one cable are beyond a schema.
 */
public final class SiteSchema {
    private static final String ID_PATTERN = "^[a-z][a-z0-9-]{0,59}$";
    private static final String TERMINAL_PATTERN = "^[a-z][a-z0-9-]{0,59}/.*\\S";
    /** A thing, a dot and a field, as {@code set} and evidence name a fact. */
    private static final String FACT_PATTERN = "^[a-z][a-z0-9-]{0,59}\\.[A-Za-z0-9.]+$";
    /** Written where a value may be left empty: a fact not yet surveyed. */
    private static final String NOTHING = "null";

    private final FieldTable table;
    /** By name; a group that several sections have is written once. */
    private final Map<String, Object> definitions = new LinkedHashMap<>();

    private SiteSchema(FieldTable table) {
        this.table = table;
    }

    /** The schema as text, ending in a line end. */
    public static String of(FieldTable table) {
        JsonSink out = new JsonSink(Layout.BLOCK);
        write(new SiteSchema(table).root(), out);
        return out.finish() + "\n";
    }

    private Map<String, Object> root() {
        definitions.put("site", site());
        definitions.put("variant", variant());
        definitions.put(SiteKeys.HOUSE, parts("As found.", SiteKeys.HOUSE_PARTS));
        String plan = "What becomes of the house: a thing with the id of a found thing alters the fields it states.";
        definitions.put(SiteKeys.PLAN, parts(plan, SiteKeys.PLAN_PARTS));
        String built = "What was built otherwise than planned: a thing with a known id alters the fields it states.";
        definitions.put(SiteKeys.BUILT, parts(built, SiteKeys.BUILT_PARTS));
        for (String section : List.of("place", "gridOperator", "supply")) define(section, table.form(section));
        for (ThingKind kind : ThingKind.values()) define(kind.section(), table.form(kind));
        for (String section : List.of("accepted", SiteKeys.EVIDENCE)) define(section, table.form(section));
        return object(
                "$schema",
                "https://json-schema.org/draft/2020-12/schema",
                "title",
                "Tideover site file, format " + SiteKeys.FORMAT_VERSION,
                "description",
                "One house: what was found, what is planned, and who or what says so; or a variant of one.",
                "type",
                "object",
                "if",
                object("required", List.of(SiteKeys.VARIANT_OF)),
                "then",
                reference("variant"),
                "else",
                reference("site"),
                "$defs",
                definitions);
    }

    private static Map<String, Object> site() {
        return closed(
                object(
                        SiteKeys.FORMAT, object("const", SiteKeys.FORMAT_VERSION),
                        SiteKeys.HOUSE, reference(SiteKeys.HOUSE),
                        SiteKeys.PLAN, orNothing(SiteKeys.PLAN),
                        SiteKeys.BUILT, orNothing(SiteKeys.BUILT),
                        SiteKeys.EVIDENCE, listOf(SiteKeys.EVIDENCE)),
                List.of(SiteKeys.FORMAT, SiteKeys.HOUSE));
    }

    private static Map<String, Object> variant() {
        return closed(
                object(
                        SiteKeys.FORMAT,
                        object("const", SiteKeys.FORMAT_VERSION),
                        SiteKeys.VARIANT_OF,
                        object(
                                "type", "string",
                                "description",
                                        "File of the site this is a variant of, seen from the folder of this file."),
                        "story",
                        object("type", "string", "description", "Why, in a sentence."),
                        "set",
                        object(
                                "type", "object",
                                "description", "Facts with another value; without a value the fact is forgotten.",
                                "propertyNames", object("pattern", FACT_PATTERN)),
                        "add",
                        orNothing(SiteKeys.PLAN),
                        SiteKeys.BUILT,
                        orNothing(SiteKeys.BUILT),
                        "remove",
                        object(
                                "type", "array",
                                "description", "Ids of things taken out of the file altogether.",
                                "items", object("type", "string"))),
                List.of(SiteKeys.FORMAT, SiteKeys.VARIANT_OF));
    }

    private Map<String, Object> parts(String description, List<String> sections) {
        Map<String, Object> properties = new LinkedHashMap<>();
        for (String section : sections) {
            if (section.equals("removed") || section.equals("swapped"))
                properties.put(section, field(table.find(section).orElseThrow(), null));
            else if (SiteKeys.isSingle(section)) properties.put(section, orNothing(section));
            else properties.put(section, listOf(section));
        }
        Map<String, Object> parts = closed(properties, List.of());
        parts.put("description", description);
        return parts;
    }

    private void define(String name, RecordForm form) {
        Map<String, Object> properties = new LinkedHashMap<>();
        List<String> needed = new ArrayList<>();
        for (RecordForm.Part part : form.parts()) {
            properties.put(part.name(), field(part.field(), part));
            if (part.field().need() == Field.Need.NEEDED) needed.add(part.name());
        }
        definitions.putIfAbsent(name, closed(properties, needed));
    }

    private Map<String, Object> field(Field field, RecordForm.@Nullable Part part) {
        String unit = field.unit().isEmpty() ? "" : " [" + field.unit() + "]";
        Map<String, Object> schema = object("title", field.words(), "description", field.meaning() + unit);
        boolean list = field.kind().isList();
        Map<String, Object> one = list ? new LinkedHashMap<>() : schema;
        switch (field.kind()) {
            case ID, REFERENCE, REFERENCES -> one.putAll(object("type", "string", "pattern", ID_PATTERN));
            case TERMINAL -> one.putAll(object("type", "string", "pattern", TERMINAL_PATTERN));
            case TEXT -> one.putAll(object("type", "string", "minLength", 1, "maxLength", ValueReader.LONGEST_TEXT));
            case TEXTS -> one.put("type", "string");
            case DATE -> one.putAll(object("type", "string", "format", "date"));
            case NUMBER, WHOLE -> {
                one.put("type", field.kind() == FieldKind.NUMBER ? "number" : "integer");
                if (field.min() != null) one.put("minimum", field.min());
                if (field.max() != null) one.put("maximum", field.max());
            }
            case YES_NO -> one.put("type", "boolean");
            case WORD, WORDS -> one.put("enum", words(require(part)));
            case GROUP, GROUPS -> {
                define(field.name(), require(part).requireNested());
                one.put("$ref", "#/$defs/" + field.name());
            }
        }
        if (list) {
            schema.put("type", "array");
            schema.put("items", one);
            if (field.kind() != FieldKind.GROUPS) schema.put("uniqueItems", true);
            if (part != null && part.element() == Conductor.class)
                schema.put("contains", object("enum", List.of("L1", "L2", "L3")));
        }
        if (field.defaultValue() != null)
            schema.put("default", field.kind() == FieldKind.WORD ? field.defaultValue() : number(field.defaultValue()));
        if (field.need() == Field.Need.OPTIONAL) allowNothing(schema);
        return schema;
    }

    private static List<Object> words(RecordForm.Part part) {
        List<Object> words = new ArrayList<>();
        for (Object word : part.element().getEnumConstants()) words.add(((Enum<?>) word).name());
        return words;
    }

    private static RecordForm.Part require(RecordForm.@Nullable Part part) {
        if (part == null) throw new IllegalStateException("only a component of a record has words or parts");
        return part;
    }

    /** A field written without a value is a fact not yet surveyed. */
    private static void allowNothing(Map<String, Object> schema) {
        Object type = schema.get("type");
        if (type != null) schema.put("type", List.of(type, NOTHING));
        for (String key : List.of("$ref", "enum")) {
            Object only = schema.remove(key);
            if (only != null) schema.put("anyOf", List.of(object(key, only), object("type", NOTHING)));
        }
    }

    private static double number(String text) {
        return Double.parseDouble(text);
    }

    private static Map<String, Object> closed(Map<String, Object> properties, List<String> needed) {
        Map<String, Object> closed = object("type", "object", "properties", properties);
        if (!needed.isEmpty()) closed.put("required", needed);
        closed.put("additionalProperties", false);
        return closed;
    }

    private static Map<String, Object> listOf(String definition) {
        return object("type", List.of("array", NOTHING), "items", reference(definition));
    }

    private static Map<String, Object> orNothing(String definition) {
        return object("anyOf", List.of(reference(definition), object("type", NOTHING)));
    }

    private static Map<String, Object> reference(String definition) {
        return object("$ref", "#/$defs/" + definition);
    }

    /** Keys and values by turns. */
    private static Map<String, Object> object(Object... pairs) {
        Map<String, Object> object = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) object.put((String) pairs[i], pairs[i + 1]);
        return object;
    }

    private static void write(Object value, JsonSink out) {
        if (value instanceof Map<?, ?> object) {
            out.beginMapping(Layout.BLOCK);
            object.forEach((key, inner) -> {
                out.key((String) key);
                write(inner, out);
            });
            out.endMapping();
        } else if (value instanceof List<?> list) {
            out.beginList(Layout.LINE);
            for (Object item : list) write(item, out);
            out.endList();
        } else if (value instanceof Number number) {
            out.number(Numbers.shortest(number.doubleValue()));
        } else if (value instanceof Boolean yesNo) {
            out.yesNo(yesNo);
        } else {
            out.text((String) value);
        }
    }
}
