package tideover.web.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.Origin;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;
import tideover.files.Edit;
import tideover.files.FieldTable;
import tideover.papers.Wording;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Edits in words: what is changed, from what to what. */
public final class EditWords {
    private static final JsonMapper JSON = new JsonMapper();
    private static final String EVIDENCE = "evidence.";
    private static final String ACCEPTED = "accepted.";
    private static final String REMOVED = "removed";

    private final Wording words;
    private final TypedValues values;

    /** @param words knows the printed names of the site's things */
    public EditWords(FieldTable fields, Wording words, Installation site) {
        this.words = words;
        this.values = new TypedValues(fields, words, site);
    }

    /** What an edit changes. */
    public String label(String path) {
        if (path.startsWith(EVIDENCE)) return evidence(path.substring(EVIDENCE.length()));
        String[] parts = path.split("\\.", -1);
        if (path.startsWith(ACCEPTED) && parts.length > 3)
            return words.text("edit.of.accepted", values.thing(parts[1]), parts[2] + "." + parts[3]);
        String side = side(parts[0]);
        if (parts.length == 3 && parts[1].equals(REMOVED)) return values.thing(parts[2]);
        if (parts.length == 3 && ThingKind.findBySection(parts[1]).isPresent()) return values.thing(parts[2]) + side;
        return values.label(path) + side;
    }

    /** The same, calling a thing that is added or taken out as it is called on paper. */
    public String label(Edit edit) {
        String[] parts = edit.path().split("\\.", -1);
        boolean whole = parts.length == 3 && ThingKind.findBySection(parts[1]).isPresent();
        if (!whole || !values.thing(parts[2]).equals(parts[2])) return label(edit.path());
        for (String side : new String[] {edit.after(), edit.before()}) {
            String designation =
                    side == null ? "" : read(side).path("designation").asString("");
            if (!designation.isEmpty()) return designation + side(parts[0]);
        }
        return label(edit.path());
    }

    private String evidence(String about) {
        if (Map.of("house", "", "plan", "", "built", "").containsKey(about))
            return words.text("edit.of.evidence", words.text("edit.all." + about));
        String what = about.indexOf('.') < 0 ? values.thing(about) : values.label(about);
        return words.text("edit.of.evidence", what);
    }

    private String side(String part) {
        return switch (part) {
            case "plan" -> words.text("edit.side.plan");
            case "built" -> words.text("edit.side.built");
            default -> "";
        };
    }

    /** What stood there or stands there now. */
    public String value(String path, @Nullable String value) {
        String[] parts = path.split("\\.", -1);
        boolean removal = parts.length == 3 && parts[1].equals(REMOVED);
        if (value == null) return words.text(removal ? "edit.stays" : "edit.nothing");
        if (path.startsWith(EVIDENCE)) return said(value);
        if (path.startsWith(ACCEPTED)) return value;
        if (removal) return words.text("edit.takenOut");
        if (parts.length == 3 && ThingKind.findBySection(parts[1]).isPresent()) return whole(parts[1], parts[2], value);
        String text = values.text(path, value);
        return text + values.unit(path, text);
    }

    /** Who says so, on which day, where it is written. */
    private String said(String json) {
        JsonNode evidence = read(json);
        List<String> parts = new ArrayList<>();
        for (Origin origin : Origin.values())
            if (origin.name().equals(evidence.path("origin").asString(""))) parts.add(words.word(origin));
        for (String name : List.of("by", "on", "document")) {
            String text = evidence.path(name).asString("");
            if (!text.isEmpty()) parts.add(text);
        }
        return parts.isEmpty() ? json : String.join(" · ", parts);
    }

    /** A whole thing by its facts. */
    private String whole(String section, String id, String json) {
        List<String> parts = new ArrayList<>();
        read(json).properties().forEach(fact -> {
            String value = fact.getValue().isContainer()
                    ? fact.getValue().toString()
                    : fact.getValue().asString("");
            parts.add(words.text(
                    "edit.at", values.word(section, fact.getKey()), values.text(section, fact.getKey(), value)));
        });
        if (parts.isEmpty()) return words.name(new ThingId(id));
        int most = 6;
        String shown = String.join(", ", parts.subList(0, Math.min(most, parts.size())));
        return parts.size() > most
                ? words.text("edit.more", PhraseArg.verbatim(shown), PhraseArg.count(parts.size() - most))
                : shown;
    }

    private static JsonNode read(String json) {
        try {
            return JSON.readTree(json);
        } catch (JacksonException e) {
            return JSON.createObjectNode();
        }
    }
}
