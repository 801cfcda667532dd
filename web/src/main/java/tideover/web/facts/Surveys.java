package tideover.web.facts;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.springframework.stereotype.Component;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.FactId;
import tideover.engine.site.FactSource;
import tideover.engine.site.Origin;
import tideover.engine.site.Status;
import tideover.engine.site.ThingKind;
import tideover.files.FieldTable;
import tideover.files.survey.Mark;
import tideover.files.survey.SurveyFacts;
import tideover.files.survey.SurveyFacts.Asked;
import tideover.files.survey.Things;
import tideover.files.survey.Things.Stated;
import tideover.files.survey.Waiting;
import tideover.papers.Wording;
import tideover.web.edit.Outcome;
import tideover.web.edit.Provenances;
import tideover.web.edit.Typed;
import tideover.web.facts.FactRow.Choice;
import tideover.web.facts.Survey.Item;
import tideover.web.facts.Survey.Kind;
import tideover.web.facts.Survey.ThingLink;
import tideover.web.page.NotHere;
import tideover.web.page.Stop;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** Makes the survey: what sets the price first, then everything thing by thing. */
@Component
final class Surveys {
    private final FieldTable fields;
    private final Works works;
    private final Frames frames;
    private final SurveyFacts asked;

    Surveys(FieldTable fields, Works works, Frames frames) {
        this.fields = fields;
        this.asked = new SurveyFacts(fields);
        this.works = works;
        this.frames = frames;
    }

    Survey of(Work work, List<Typed> again, Outcome last, HttpServletRequest request) {
        Wording words = frames.words(request).with(work.installation());
        Things things = new Things(work.site());
        Waiting waiting = new Waiting(works.soFar(work).findings());
        FactRows rows = new FactRows(work, words, fields, waiting, again, last);
        List<Item> all = asked.of(work.site(), things, waiting).stream()
                .map(fact -> item(fact, "", rows, waiting, work, words))
                .toList();
        List<Item> open = all.stream()
                .filter(item -> item.row().mark() != Mark.KNOWN)
                .limit(SurveyFacts.FIRST)
                .toList();
        List<Item> known = all.stream()
                .filter(item -> item.row().mark() == Mark.KNOWN)
                .limit(SurveyFacts.FIRST)
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
        Item item = asked.find(fact(about), things)
                .map(fact -> item(fact, fresh, rows, waiting, work, words))
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

    private static Item item(Asked asked, String fresh, FactRows rows, Waiting waiting, Work work, Wording words) {
        Stated thing = asked.thing();
        FactRow row = rows.row(thing, asked.field());
        FactRow.Field where = row.house() != null ? row.house() : Objects.requireNonNull(row.plan());
        int findings = waiting.findings(asked.fact());
        FactSource source = asked.field().source();
        return new Item(
                row,
                where,
                ThingSheets.name(thing, thing.id(), words),
                work.address() + "/things/" + thing.id() + "#" + asked.fact().field(),
                findings == 0 ? "" : words.text("survey.waiting", PhraseArg.count(findings)),
                (row.house() == null && source != FactSource.DATA_SHEET ? Origin.PLANNED : Provenances.usual(source))
                        .name(),
                fresh);
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
