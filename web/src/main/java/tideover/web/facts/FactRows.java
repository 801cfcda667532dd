package tideover.web.facts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Evidence;
import tideover.engine.site.FactId;
import tideover.engine.site.Origin;
import tideover.engine.site.Origins;
import tideover.engine.site.Status;
import tideover.engine.site.Thing;
import tideover.files.Field;
import tideover.files.FieldKind;
import tideover.files.FieldTable;
import tideover.files.SiteEdits;
import tideover.files.cells.Typing;
import tideover.files.survey.Mark;
import tideover.files.survey.Marks;
import tideover.files.survey.Things.Stated;
import tideover.files.survey.Waiting;
import tideover.papers.Wording;
import tideover.web.edit.CellText;
import tideover.web.edit.Outcome;
import tideover.web.edit.Typed;
import tideover.web.facts.FactRow.Choice;
import tideover.web.facts.FactRow.Input;
import tideover.web.work.Work;

/** Makes rows of facts for one site and one reader. */
final class FactRows {
    private static final String HOUSE = "house.";
    private static final String PLAN = "plan.";
    private static final String BUILT = "built.";

    private final Wording words;
    private final CellText text;
    private final SiteEdits.Facts facts;
    private final Origins origins;
    private final Choices choices;
    private final Map<String, String> typed = new HashMap<>();
    private final Outcome last;
    private final Marks marks;

    /**
     * @param words knows the printed names of the site's things
     * @param waiting what open findings wait for
     * @param again   what was typed and not taken; nothing where nothing was
     */
    FactRows(Work work, Wording words, FieldTable fields, Waiting waiting, List<Typed> again, Outcome last) {
        this.words = words;
        this.text = CellText.of(fields, words, work.installation());
        this.marks = new Marks(work.site(), fields, waiting);
        this.facts = marks.facts();
        this.origins = work.site().origins();
        this.choices = new Choices(work.site(), words, fields, text);
        this.last = last;
        for (Typed one : again) typed.put(one.path(), one.typed());
    }

    /** The fields that a kind of thing has, groups of them before what is in them; its id is none. */
    static List<Field> fieldsOf(String section, FieldTable fields) {
        List<Field> own = new ArrayList<>();
        String lists = "";
        for (Field field : fields.all()) {
            if (!field.path().startsWith(section + ".") || field.kind() == FieldKind.ID) continue;
            if (!lists.isEmpty() && field.path().startsWith(lists)) continue;
            lists = field.kind() == FieldKind.GROUPS ? field.path() + "." : "";
            own.add(field);
        }
        return own;
    }

    /** One fact of a thing. */
    FactRow row(Stated thing, Field field) {
        String name = field.path().substring(thing.section().length() + 1);
        String about = thing.id() + "." + name;
        Thing plan = thing.plan();
        FactRow.Field house = thing.house() == null ? null : found(about, field, thing.house());
        FactRow.Field planned =
                thing.isSingle() || thing.status() == Status.REMOVED || thing.house() == null && plan == null
                        ? null
                        : planned(about, field, thing);
        FactId fact = new FactId(thing.id(), name);
        boolean missing = facts.find(about).isEmpty();
        Optional<Evidence> evidence = origins.find(fact);
        return new FactRow(
                name,
                about,
                label(field),
                field.meaning(),
                house,
                planned,
                thing.built() == null || value(thing.built(), name) == null
                        ? ""
                        : text.of(field.path(), facts.find(BUILT + about).orElse(null)),
                missing ? "" : said(origins.of(fact), evidence.orElse(null)),
                facts.find("evidence." + about).orElse(""),
                marks.of(fact));
    }

    /** What it is called, with the unit that a bare number has. */
    String label(Field field) {
        String words = this.words.capitalised(field.words());
        return field.unit().isEmpty() ? words : this.words.text("fact.label", words, Typing.unit(field));
    }

    private FactRow.Field found(String about, Field field, Thing house) {
        return field(HOUSE + about, field, facts.find(HOUSE + about).orElse(""), about, "", house);
    }

    private FactRow.Field planned(String about, Field field, Stated thing) {
        String name = about.substring(about.indexOf('.') + 1);
        // What was found shows through in the plan; only what the plan itself says stands in its field.
        String effective = facts.find(PLAN + about).orElse("");
        boolean states = thing.plan() != null && value(thing.plan(), name) != null;
        String through = thing.house() == null || states ? "" : text.of(field.path(), emptyAsNothing(effective));
        return field(PLAN + about, field, effective, about, through, states ? thing.plan() : null);
    }

    private FactRow.Field field(
            String path, Field field, String was, String about, String through, @Nullable Thing states) {
        List<Choice> choices = this.choices.of(field, was);
        String stated = states == null ? "" : was;
        String shown = field.kind() == FieldKind.REFERENCE ? stated : text.of(field.path(), emptyAsNothing(stated));
        return new FactRow.Field(
                path,
                was,
                shown,
                typed.getOrDefault(path, shown),
                input(field, choices),
                choices,
                through,
                problem(path, about));
    }

    /** A field that nothing stands in yet, for a thing that is not there yet. */
    FactRow empty(String path, Field field, String name) {
        List<Choice> choices = this.choices.of(field, "");
        FactRow.Field blank = new FactRow.Field(
                path, "", "", typed.getOrDefault(path, ""), input(field, choices), choices, "", problem(path, path));
        return new FactRow(name, path, label(field), field.meaning(), blank, null, "", "", "", Mark.NOT_ASKED);
    }

    private String problem(String path, String about) {
        return last.problems().stream()
                .filter(problem -> problem.path().equals(path) || problem.path().equals(about))
                .map(Outcome.Problem::sentence)
                .findFirst()
                .orElse("");
    }

    private static Input input(Field field, List<Choice> choices) {
        if (!choices.isEmpty()) return Input.CHOICE;
        return switch (field.kind()) {
            case NUMBER, WHOLE -> Input.NUMBER;
            case TEXTS, GROUPS -> Input.LONG;
            default -> Input.TEXT;
        };
    }

    /** Who says so, on which day, where it is written. */
    private String said(Origin origin, @Nullable Evidence evidence) {
        List<String> parts = new ArrayList<>();
        parts.add(words.word(origin));
        if (evidence != null && evidence.origin() == origin) {
            if (evidence.by() != null) parts.add(evidence.by());
            if (evidence.on() != null) parts.add(Days.words(evidence.on(), words.locale()));
            if (evidence.document() != null) parts.add(evidence.document());
        }
        return String.join(" · ", parts);
    }

    /** The value itself; nothing where it is missing. */
    static @Nullable Object value(Thing thing, String name) {
        return thing.value(name);
    }

    private static @Nullable String emptyAsNothing(String text) {
        return text.isEmpty() ? null : text;
    }
}
