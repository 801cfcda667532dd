package tideover.web.findings;

import jakarta.servlet.http.HttpServletRequest;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import tideover.engine.assessment.Assessment;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Missing;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.Evidence;
import tideover.engine.site.FactId;
import tideover.engine.site.Origin;
import tideover.engine.site.Thing;
import tideover.papers.FactText;
import tideover.papers.Wording;
import tideover.web.findings.FindingSheet.FactRow;
import tideover.web.note.Margins;
import tideover.web.page.NotHere;
import tideover.web.page.Stop;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** Makes the sheet of one finding. */
@Component
final class FindingSheets {
    private final Works works;
    private final Frames frames;

    FindingSheets(Works works, Frames frames) {
        this.works = works;
        this.frames = frames;
    }

    /**
     * A finding with its calculation.
     *
     * @param state which of its states; where that decides nothing, the one that asks for most
     */
    FindingSheet of(Work work, String check, String place, String state, HttpServletRequest request) {
        Assessment explained = works.explained(work);
        List<Finding> alike = explained.findings().stream()
                .filter(finding -> finding.key().check().equals(check)
                        && finding.key().place().text().equals(place))
                .toList();
        Finding finding = chosen(alike, state).orElseThrow(() -> new NotHere("finding " + check + " " + place));
        Wording words = frames.words(request).with(explained.installation());
        Rows rows = new Rows(work, words);
        Asked here = Asked.ALL.with(finding.key().place());
        return new FindingSheet(
                frames.of(request, words, work, Stop.FINDINGS),
                work.address(),
                work.address() + FindingsSheets.PAGE + here.query(),
                work.revision().number(),
                title(finding, words),
                rows.row(finding),
                explained.calculations().getOrDefault(finding.key(), List.of()).stream()
                        .map(words::of)
                        .toList(),
                rows.rows(alike.stream().filter(other -> !other.equals(finding)).toList()),
                facts(work, explained.installation(), finding, words),
                missing(finding, words),
                words.text(
                        "findings.ruleBook",
                        String.join(" < ", explained.rules().layers())));
    }

    private static Optional<Finding> chosen(List<Finding> alike, String state) {
        for (Finding finding : alike)
            if (finding.key().state() != null && finding.key().state().name().equals(state))
                return Optional.of(finding);
        Optional<Finding> worst = Optional.empty();
        for (Finding finding : alike)
            if (worst.isEmpty() || Shown.of(finding).compareTo(Shown.of(worst.get())) < 0) worst = Optional.of(finding);
        return worst;
    }

    private static String title(Finding finding, Wording words) {
        String topic =
                Asked.topicOf(finding).map(words::heading).orElse(finding.key().check());
        return words.text("findings.title", topic, words.name(finding.key().place()));
    }

    private static List<FactRow> facts(Work work, Installation installation, Finding finding, Wording words) {
        Margins margins = new Margins(work, words);
        FactText texts = new FactText(words);
        List<FactRow> rows = new ArrayList<>();
        for (FactId fact : finding.facts()) {
            Optional<Thing> thing = installation.find(fact.thing());
            boolean isKnown = thing.isPresent() && thing.get().value(fact.field()) != null;
            Origin origin = installation.origins().of(fact);
            rows.add(new FactRow(
                    words.capitalised(words.fact(fact)),
                    margins.address(fact),
                    isKnown ? texts.value(thing.get(), fact) : words.text("findings.notKnown"),
                    isKnown ? words.word(origin) : "",
                    isKnown && origin == Origin.ASSUMED ? "assumed" : "",
                    isKnown ? said(installation.origins().find(fact), words) : ""));
        }
        return rows;
    }

    private static String said(Optional<Evidence> evidence, Wording words) {
        if (evidence.isEmpty()) return "";
        List<String> parts = new ArrayList<>();
        Evidence found = evidence.get();
        if (found.by() != null) parts.add(found.by());
        if (found.on() != null)
            parts.add(DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                    .withLocale(words.locale())
                    .format(found.on()));
        if (found.document() != null) parts.add(found.document());
        return String.join(" · ", parts);
    }

    private static List<String> missing(Finding finding, Wording words) {
        List<String> sentences = new ArrayList<>();
        for (Missing missing : finding.missing()) {
            if (missing instanceof Missing.UnknownFact m) sentences.add(way(m.fact(), words));
            if (missing instanceof Missing.AssumedFact m) sentences.add(way(m.fact(), words));
            if (missing instanceof Missing.OperatorAnswer m)
                sentences.add(words.text("findings.askOperator", words.fact(m.fact())));
            if (missing instanceof Missing.UnknownLimit m) sentences.add(words.text("findings.noLimit", m.limit()));
        }
        return sentences;
    }

    private static String way(FactId fact, Wording words) {
        return words.text(
                "findings.way",
                PhraseArg.verbatim(words.capitalised(words.fact(fact))),
                PhraseArg.word(words.source(fact)));
    }
}
