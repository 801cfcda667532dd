package tideover.web.facts;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.springframework.stereotype.Component;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Outcome;
import tideover.engine.site.Origin;
import tideover.engine.site.Status;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;
import tideover.files.Field;
import tideover.files.FieldKind;
import tideover.files.FieldTable;
import tideover.files.SiteEdits;
import tideover.files.survey.Things;
import tideover.files.survey.Things.Stated;
import tideover.files.survey.Waiting;
import tideover.papers.Wording;
import tideover.web.attachments.Photos;
import tideover.web.edit.Typed;
import tideover.web.facts.FactRow.Choice;
import tideover.web.facts.ThingSheet.Group;
import tideover.web.facts.ThingSheet.Sides;
import tideover.web.facts.ThingSheet.Way;
import tideover.web.note.Margins;
import tideover.web.note.Note;
import tideover.web.page.NotHere;
import tideover.web.page.Stop;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** Makes the sheet of a thing. */
@Component
final class ThingSheets {
    private final FieldTable fields;
    private final Works works;
    private final Frames frames;
    private final Photos photos;

    ThingSheets(FieldTable fields, Works works, Frames frames, Photos photos) {
        this.photos = photos;
        this.fields = fields;
        this.works = works;
        this.frames = frames;
    }

    /** @param again what was typed and not taken */
    ThingSheet of(Work work, String id, List<Typed> again, tideover.web.edit.Outcome last, HttpServletRequest request) {
        Wording words = frames.words(request).with(work.installation());
        if (!ThingId.isWellFormed(id)) throw new NotHere("thing " + id);
        ThingId thing = new ThingId(id);
        Stated stated = new Things(work.site()).find(thing).orElse(null);
        // The main earthing terminal has no facts of its own, but findings.
        if (stated == null && !thing.equals(ThingId.MAIN_EARTH)) throw new NotHere("thing " + id);
        FactRows rows =
                new FactRows(work, words, fields, new Waiting(works.soFar(work).findings()), again, last);
        return new ThingSheet(
                frames.of(request, words, work, Stop.SURVEY),
                work.address(),
                work.revision().number(),
                id,
                name(stated, thing, words),
                stated == null ? "" : kind(stated, words),
                stated == null || stated.isSingle() || stated.status() == Status.REMOVED
                        ? Sides.HOUSE
                        : stated.house() == null ? Sides.PLAN : Sides.BOTH,
                stated == null ? List.of() : groups(stated, rows),
                origins(words),
                notes(work, words, thing),
                photos.at(work, id, words),
                stated == null ? List.of() : ways(work, stated, words),
                last);
    }

    static String name(@org.jspecify.annotations.Nullable Stated stated, ThingId id, Wording words) {
        String name = words.name(id);
        if (stated == null || !name.equals(id.text())) return words.capitalised(name);
        String designation = stated.any().designation();
        return designation == null ? words.capitalised(name) : designation;
    }

    private static String kind(Stated stated, Wording words) {
        if (stated.isSingle()) return "";
        String kind = words.heading(ThingKind.of(stated.any()));
        return words.text("thing.kind", kind, words.word(stated.status()));
    }

    /** Who may say so; nothing chosen means: in the way in which one gets such a fact. */
    static List<Choice> origins(Wording words) {
        List<Choice> origins = new ArrayList<>();
        for (Origin origin : Origin.values()) origins.add(new Choice(origin.name(), words.heading(origin)));
        return origins;
    }

    private List<Group> groups(Stated stated, FactRows rows) {
        List<Group> groups = new ArrayList<>();
        List<FactRow> open = new ArrayList<>();
        String group = "";
        String heading = "";
        for (Field field : FactRows.fieldsOf(stated.section(), fields)) {
            String name = field.path().substring(stated.section().length() + 1);
            boolean begins = field.kind() == FieldKind.GROUP;
            boolean ends = !group.isEmpty() && !name.startsWith(group + ".");
            if (begins || ends) {
                if (!open.isEmpty()) groups.add(new Group(group, heading, open));
                open = new ArrayList<>();
                group = begins ? name : "";
                heading = begins ? field.words() : "";
            }
            if (!begins) open.add(rows.row(stated, field));
        }
        if (!open.isEmpty()) groups.add(new Group(group, heading, open));
        return groups;
    }

    private List<Note> notes(Work work, Wording words, ThingId thing) {
        Margins margins = new Margins(work, words);
        return works.soFar(work).findings().stream()
                .filter(finding -> finding.key().place().equals(thing))
                .filter(finding -> finding.outcome() != Outcome.NOT_APPLICABLE)
                .sorted(Comparator.comparing(Finding::outcome, Comparator.comparingInt(ThingSheets::rank)))
                .map(margins::note)
                .toList();
    }

    private static int rank(Outcome outcome) {
        return switch (outcome) {
            case NOT_MET -> 0;
            case NOT_CERTAIN -> 1;
            case OPEN -> 2;
            case MET -> 3;
            case NOT_APPLICABLE -> 4;
        };
    }

    private List<Way> ways(Work work, Stated stated, Wording words) {
        List<Way> ways = new ArrayList<>();
        if (stated.isSingle()) return ways;
        String survey = work.address() + "/survey";
        String sheet = work.address() + "/things/" + stated.id();
        SiteEdits.Facts facts = new SiteEdits(fields).facts(work.site());
        String removed = "plan.removed." + stated.id();
        String whole = stated.section() + "." + stated.id();
        Thing house = stated.house();
        if (stated.status() == Status.REMOVED && house != null)
            ways.add(new Way(words.text("thing.letStay"), removed, "true", "", sheet));
        else if (house != null) ways.add(new Way(words.text("thing.planTakesOut"), removed, "", "true", sheet));
        if (stated.plan() != null) {
            String planned = "plan." + whole;
            ways.add(new Way(
                    words.text(house == null ? "thing.leaveOutOfPlan" : "thing.leaveAsFound"),
                    planned,
                    facts.find(planned).orElse(""),
                    "",
                    house == null ? survey : sheet));
        }
        if (house != null)
            ways.add(new Way(
                    words.text("thing.isNotThere"),
                    "house." + whole,
                    facts.find("house." + whole).orElse(""),
                    "",
                    survey));
        return ways;
    }
}
