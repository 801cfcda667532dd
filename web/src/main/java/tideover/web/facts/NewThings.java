package tideover.web.facts;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.stereotype.Component;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;
import tideover.files.Field;
import tideover.files.FieldKind;
import tideover.files.FieldTable;
import tideover.files.survey.Things;
import tideover.files.survey.Waiting;
import tideover.papers.Wording;
import tideover.web.edit.Outcome;
import tideover.web.edit.Outcome.Problem;
import tideover.web.edit.Typed;
import tideover.web.facts.ThingSheet.Group;
import tideover.web.page.Download;
import tideover.web.page.NotHere;
import tideover.web.page.Stop;
import tideover.web.work.Frames;
import tideover.web.work.Work;

/** Makes the page on which a thing is added, and of what it sends the edits. */
@Component
final class NewThings {
    /** Stands for the id that the thing is going to have. */
    private static final String NEW = "~";

    private static final String HOUSE = "house";
    private static final String PLAN = "plan";
    private static final int LONGEST = 40;

    private final FieldTable fields;
    private final Frames frames;

    NewThings(FieldTable fields, Frames frames) {
        this.fields = fields;
        this.frames = frames;
    }

    NewThing of(Work work, String section, String side, List<Typed> again, Outcome last, HttpServletRequest request) {
        Wording words = frames.words(request).with(work.installation());
        ThingKind kind = ThingKind.findBySection(section).orElseThrow(() -> new NotHere("section " + section));
        FactRows rows = new FactRows(work, words, fields, new Waiting(List.of()), again, last);
        List<Group> groups = new ArrayList<>();
        List<FactRow> plain = new ArrayList<>();
        List<FactRow> grouped = new ArrayList<>();
        Field group = null;
        for (Field field : FactRows.fieldsOf(section, fields)) {
            String name = field.path().substring(section.length() + 1);
            if (field.kind() == FieldKind.GROUP) {
                if (group != null) groups.add(group(group, grouped, section));
                group = field;
                grouped = new ArrayList<>();
                continue;
            }
            boolean inside = group != null && field.path().startsWith(group.path() + ".");
            (inside ? grouped : plain).add(rows.empty(NEW + "." + name, field, name));
        }
        if (group != null) groups.add(group(group, grouped, section));
        groups.add(0, new Group("", "", plain));
        return new NewThing(
                frames.of(request, words, work, Stop.SURVEY),
                work.address(),
                work.revision().number(),
                section,
                words.word(kind),
                sideOf(side),
                groups,
                last);
    }

    private static Group group(Field group, List<FactRow> rows, String section) {
        return new Group(group.path().substring(section.length() + 1), group.words(), rows);
    }

    private static String sideOf(String side) {
        return side.equals(HOUSE) ? HOUSE : PLAN;
    }

    /** An id that no thing bears, after the printed name if there is one. */
    String id(Work work, String section, List<Typed> typed) {
        String printed = typed.stream()
                .filter(one -> one.path().equals(NEW + ".designation"))
                .map(Typed::typed)
                .findFirst()
                .orElse("");
        String kind = ThingKind.findBySection(section)
                .map(one -> one.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .orElse("thing");
        String plain = Download.name(printed, kind);
        String stem = (Character.isLetter(plain.charAt(0)) ? plain : kind + "-" + plain);
        stem = stem.substring(0, Math.min(stem.length(), LONGEST));
        String id = stem;
        for (int number = 2; isTaken(work, id); number++) id = stem + "-" + number;
        return id;
    }

    private static boolean isTaken(Work work, String id) {
        ThingId thing = new ThingId(id);
        return new Things(work.site()).find(thing).isPresent()
                || thing.equals(ThingId.MAIN_EARTH)
                || List.of(HOUSE, PLAN, "built", "evidence", "accepted").contains(id);
    }

    /** The thing itself, then its facts. */
    List<Typed> placed(List<Typed> typed, String section, String side, String id) {
        List<Typed> placed = new ArrayList<>();
        placed.add(new Typed(sideOf(side) + "." + section + "." + id, "", "{}"));
        for (Typed one : typed)
            if (one.path().startsWith(NEW + ".") && !one.typed().isBlank())
                placed.add(new Typed(sideOf(side) + "." + id + one.path().substring(NEW.length()), "", one.typed()));
        return placed;
    }

    /** What came of it, told of the fields as the page has them. */
    Outcome unplaced(Outcome outcome, String id) {
        List<Problem> problems = new ArrayList<>();
        for (Problem problem : outcome.problems()) {
            String path = problem.path();
            int at = path.indexOf(id + ".");
            problems.add(new Problem(
                    at < 0 ? path : NEW + path.substring(at + id.length()), problem.sentence(), problem.typed()));
        }
        return new Outcome(outcome.said(), problems, outcome.conflicts());
    }
}
