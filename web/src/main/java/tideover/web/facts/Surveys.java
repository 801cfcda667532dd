package tideover.web.facts;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Component;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.FactId;
import tideover.engine.site.FactSource;
import tideover.engine.site.Origin;
import tideover.engine.site.Status;
import tideover.engine.site.ThingKind;
import tideover.files.Field;
import tideover.files.FieldKind;
import tideover.files.FieldTable;
import tideover.files.tables.SurveyOrder;
import tideover.papers.Wording;
import tideover.web.edit.Outcome;
import tideover.web.edit.Provenances;
import tideover.web.edit.Typed;
import tideover.web.facts.FactRow.Choice;
import tideover.web.facts.FactRow.Mark;
import tideover.web.facts.Survey.Item;
import tideover.web.facts.Survey.Kind;
import tideover.web.facts.Survey.ThingLink;
import tideover.web.facts.Things.Stated;
import tideover.web.page.NotHere;
import tideover.web.page.Stop;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** Makes the survey: what sets the price first, then everything thing by thing. */
@Component
final class Surveys {
    private static final int FIRST = 20;

    private final FieldTable fields;
    private final Works works;
    private final Frames frames;
    private final List<String> order = SurveyOrder.load();

    Surveys(FieldTable fields, Works works, Frames frames) {
        this.fields = fields;
        this.works = works;
        this.frames = frames;
    }

    Survey of(Work work, List<Typed> again, Outcome last, HttpServletRequest request) {
        Wording words = frames.words(request).with(work.installation());
        Things things = new Things(work.site());
        Waiting waiting = new Waiting(works.soFar(work).findings());
        FactRows rows = new FactRows(work, words, fields, waiting, again, last);
        List<Item> all = new ArrayList<>();
        for (FactId fact : facts(work, things, waiting))
            item(fact, "", things, rows, waiting, work, words).ifPresent(all::add);
        List<Item> open = all.stream()
                .filter(item -> item.row().mark() != Mark.KNOWN)
                .limit(FIRST)
                .toList();
        List<Item> known = all.stream()
                .filter(item -> item.row().mark() == Mark.KNOWN)
                .limit(FIRST)
                .toList();
        return new Survey(
                frames.of(request, words, work, Stop.SURVEY),
                work.address(),
                work.revision().number(),
                words.text("survey.lead", PhraseArg.count(open.size()), PhraseArg.count(known.size())),
                open,
                known,
                kinds(work, things, waiting, words),
                Arrays.stream(ThingKind.values())
                        .map(kind -> new Choice(kind.section(), words.heading(kind)))
                        .toList(),
                ThingSheets.origins(words),
                last);
    }

    /** One fact after it was saved, or was not. */
    SurveyAnswer answer(
            Work work, String about, List<Typed> again, Outcome last, String fresh, HttpServletRequest request) {
        Wording words = frames.words(request).with(work.installation());
        Things things = new Things(work.site());
        Waiting waiting = new Waiting(works.soFar(work).findings());
        FactRows rows = new FactRows(work, words, fields, waiting, again, last);
        Item item = item(fact(about), fresh, things, rows, waiting, work, words)
                .orElseThrow(() -> new NotHere("fact " + about));
        return new SurveyAnswer(
                frames.of(request, words, work, Stop.SURVEY),
                work.address(),
                work.revision().number(),
                item,
                ThingSheets.origins(words),
                last);
    }

    private static FactId fact(String about) {
        try {
            return FactId.of(about);
        } catch (IllegalArgumentException e) {
            throw new NotHere("fact " + about);
        }
    }

    /** Those that set the price, in their order, and among things of a kind the heaviest first; then what else is waited for. */
    private List<FactId> facts(Work work, Things things, Waiting waiting) {
        List<FactId> facts = new ArrayList<>();
        for (String path : order) {
            String section = path.substring(0, path.indexOf('.'));
            String name = path.substring(section.length() + 1);
            if (path.equals("supply.penSplitAt") && !mayPartPen(work)) continue;
            things.of(section).stream()
                    .filter(thing -> thing.status() != Status.REMOVED)
                    .filter(thing -> isAsked(thing, new FactId(thing.id(), name), waiting))
                    .map(thing -> new FactId(thing.id(), name))
                    .sorted(Comparator.comparingInt((FactId fact) -> waiting.weight(fact))
                            .reversed())
                    .forEach(facts::add);
        }
        Set<FactId> listed = new HashSet<>(facts);
        waiting.facts().stream()
                .filter(fact -> !listed.contains(fact))
                .sorted(Comparator.comparingInt((FactId fact) -> waiting.weight(fact))
                        .reversed()
                        .thenComparing(FactId::toString))
                .forEach(facts::add);
        return facts;
    }

    /** Of what is only planned nobody can be asked; it counts where something waits for it. */
    private static boolean isAsked(Stated thing, FactId fact, Waiting waiting) {
        return thing.house() != null || waiting.findings(fact) > 0;
    }

    private static boolean mayPartPen(Work work) {
        EarthingSystem earthing = work.site().house().supply().earthingSystem();
        return earthing == null || earthing == EarthingSystem.TN_C_S;
    }

    private Optional<Item> item(
            FactId fact, String fresh, Things things, FactRows rows, Waiting waiting, Work work, Wording words) {
        Stated thing = things.find(fact.thing()).orElse(null);
        if (thing == null) return Optional.empty();
        Field field = fields.find(thing.section() + "." + fact.field()).orElse(null);
        // A group is asked for fact by fact, on the sheet of its thing.
        if (field == null || field.kind() == FieldKind.GROUP || field.kind() == FieldKind.GROUPS)
            return Optional.empty();
        FactRow row = rows.row(thing, field);
        FactRow.Field where = row.house() != null ? row.house() : row.plan();
        if (where == null) return Optional.empty();
        int findings = waiting.findings(fact);
        FactSource source = field.source();
        return Optional.of(new Item(
                row,
                where,
                ThingSheets.name(thing, thing.id(), words),
                work.address() + "/things/" + thing.id() + "#" + fact.field(),
                findings == 0 ? "" : words.text("survey.waiting", PhraseArg.count(findings)),
                (row.house() == null && source != FactSource.DATA_SHEET ? Origin.PLANNED : Provenances.usual(source))
                        .name(),
                fresh));
    }

    private List<Kind> kinds(Work work, Things things, Waiting waiting, Wording words) {
        Map<String, List<ThingLink>> kinds = new LinkedHashMap<>();
        Map<String, Integer> open = new LinkedHashMap<>();
        for (FactId fact : waiting.facts()) open.merge(fact.thing().text(), 1, Integer::sum);
        for (Stated thing : things.all()) {
            String kind = thing.isSingle() ? words.text("survey.connection") : words.heading(ThingKind.of(thing.any()));
            int missing = open.getOrDefault(thing.id().text(), 0);
            kinds.computeIfAbsent(kind, k -> new ArrayList<>())
                    .add(new ThingLink(
                            ThingSheets.name(thing, thing.id(), words),
                            work.address() + "/things/" + thing.id(),
                            thing.status() == Status.EXISTING ? "" : words.word(thing.status()),
                            missing == 0 ? "" : words.text("survey.toGet", PhraseArg.count(missing))));
        }
        List<Kind> all = new ArrayList<>();
        kinds.forEach((name, links) -> all.add(new Kind(name, links)));
        return all;
    }
}
