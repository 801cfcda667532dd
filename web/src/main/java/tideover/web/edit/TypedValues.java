package tideover.web.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.site.Site;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;
import tideover.files.Edit;
import tideover.files.Field;
import tideover.files.FieldKind;
import tideover.files.FieldTable;
import tideover.papers.Wording;
import tideover.web.edit.Outcome.Problem;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** From what a person wrote to edits, for one site and one reader. */
final class TypedValues {
    private static final Set<String> SIDES = Set.of("house", "plan", "built");
    private static final JsonMapper JSON = new JsonMapper();

    private final FieldTable fields;
    private final Wording words;
    private final CellText text;
    private final Map<String, String> sections = new HashMap<>();
    private final Map<String, String> designations = new HashMap<>();

    /** @param words knows the printed names of the site's things */
    TypedValues(FieldTable fields, Wording words, Installation site) {
        this.fields = fields;
        this.words = words;
        this.text = CellText.of(fields, words, site);
        Site whole = site.site();
        for (Thing thing : List.of(
                whole.house().place(),
                whole.house().gridOperator(),
                whole.house().supply())) sections.put(thing.id().text(), ThingKind.sectionOf(thing));
        for (List<Thing> side : List.of(
                whole.house().things(), whole.plan().things(), whole.built().things()))
            for (Thing thing : side) {
                sections.put(thing.id().text(), ThingKind.sectionOf(thing));
                String designation = thing.designation();
                if (designation != null) designations.put(thing.id().text(), designation);
            }
    }

    /** Adds the edits that a typed value stands for, or what is wrong with it. */
    void read(Typed value, List<Edit> edits, List<Problem> problems) {
        String before = orNothing(value.was());
        List<String> parts = parts(value.path());
        // A thing added further up may be filled in further down.
        if (parts.size() == 2 && ThingKind.findBySection(parts.get(0)).isPresent())
            sections.putIfAbsent(parts.get(1), parts.get(0));
        Field field = field(value.path()).orElse(null);
        if (field == null) {
            edits.add(new Edit(value.path(), before, orNothing(value.typed().strip())));
            return;
        }
        tideover.files.cells.Typed meant = text.read(field, value.typed());
        if (meant instanceof tideover.files.cells.Typed.NotUnderstood not) {
            String sentence = words.text(
                    "edit.at", thing(value.path()), words.of(not.problem().phrase()));
            problems.add(new Problem(value.path(), sentence, value.typed()));
        } else if (meant instanceof tideover.files.cells.Typed.Facts facts) {
            JsonNode shown = group(before);
            facts.facts().forEach((name, after) -> {
                String was = shown.path(name).asString(null);
                if (!java.util.Objects.equals(was, after)) edits.add(new Edit(value.path() + "." + name, was, after));
            });
        } else if (meant instanceof tideover.files.cells.Typed.Value single) {
            edits.add(new Edit(value.path(), before, single.text()));
        }
    }

    /** What a fact is called, and of which thing. */
    String label(String path) {
        return field(path)
                .map(field -> words.text("edit.at", thing(path), field.words()))
                .orElse(path);
    }

    /** The thing that a path is about. */
    String thing(String path) {
        List<String> parts = parts(path);
        String id = parts.isEmpty() ? path : parts.get(0);
        if (!ThingId.isWellFormed(id)) return id;
        String name = words.name(new ThingId(id));
        // What the plan takes out is no part of the installation, but has a name all the same.
        return name.equals(id) ? designations.getOrDefault(id, id) : name;
    }

    /** The unit of a number at a path; empty where there is none. */
    String unit(String path, String text) {
        return field(path)
                .filter(field -> field.kind() == FieldKind.NUMBER || field.kind() == FieldKind.WHOLE)
                .map(Field::unit)
                .filter(unit -> !unit.isEmpty() && !text.isEmpty() && Character.isDigit(text.charAt(text.length() - 1)))
                .map(unit -> " " + unit)
                .orElse("");
    }

    /** A value as it is read. */
    String text(String path, String value) {
        return field(path).map(field -> text.of(field.path(), value)).orElse(value);
    }

    /** What a field of things of one kind is called. */
    String word(String section, String field) {
        return fields.find(section + "." + field).map(Field::words).orElse(field);
    }

    /** A value of such a field as it is read. */
    String text(String section, String field, String value) {
        return text.of(section + "." + field, value);
    }

    /** The row of the field table that a path leads to; nothing for whole things, evidence and accepted advice. */
    Optional<Field> field(String path) {
        List<String> parts = parts(path);
        if (parts.size() < 2) return Optional.empty();
        String section = sections.get(parts.get(0));
        if (section == null) return Optional.empty();
        List<String> inside = new ArrayList<>(parts.subList(1, parts.size()));
        inside.removeIf(part -> part.isEmpty() || Character.isDigit(part.charAt(0)));
        return fields.find(section + "." + String.join(".", inside));
    }

    /** The fact that a path names, whichever side it is stated on. */
    static String fact(String path) {
        return String.join(".", parts(path));
    }

    /** The path without its side. */
    private static List<String> parts(String path) {
        List<String> parts = List.of(path.split("\\.", -1));
        return SIDES.contains(parts.get(0)) ? parts.subList(1, parts.size()) : parts;
    }

    private static JsonNode group(@Nullable String json) {
        try {
            return json == null ? JSON.createObjectNode() : JSON.readTree(json);
        } catch (JacksonException e) {
            return JSON.createObjectNode();
        }
    }

    private static @Nullable String orNothing(String text) {
        return text.isEmpty() ? null : text;
    }
}
