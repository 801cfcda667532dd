package tideover.web.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Missing;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.FactId;
import tideover.papers.OpenQuestions;
import tideover.papers.Wording;
import tideover.web.findings.FindingsSheet.Errand;
import tideover.web.findings.FindingsSheet.Group;
import tideover.web.findings.FindingsSheet.Row;
import tideover.web.findings.FindingsSheet.Wanted;
import tideover.web.note.Margins;
import tideover.web.work.Work;

/** Findings as rows, and open ones by the fact they wait for. */
final class Rows {
    private final Wording words;
    private final Margins margins;

    Rows(Work work, Wording words) {
        this.words = words;
        this.margins = new Margins(work, words);
    }

    Row row(Finding finding) {
        List<String> kind = new ArrayList<>();
        kind.add(words.heading(finding.force()));
        Asked.topicOf(finding).ifPresent(topic -> kind.add(words.word(topic)));
        return new Row(
                margins.note(finding),
                finding.measure() == null ? "" : words.of(finding.measure()),
                String.join(" · ", kind));
    }

    List<Row> rows(List<Finding> findings) {
        return findings.stream().map(this::row).toList();
    }

    /** What a group waits for: facts, each with its findings, and limits. */
    Group open(Group empty, List<Finding> findings) {
        Map<FactId, Set<Finding>> byFact = new LinkedHashMap<>();
        List<Finding> forLimits = new ArrayList<>();
        for (Finding finding : findings)
            for (Missing missing : finding.missing()) {
                if (missing instanceof Missing.UnknownLimit) {
                    if (!forLimits.contains(finding)) forLimits.add(finding);
                } else {
                    byFact.computeIfAbsent(fact(missing), fact -> new LinkedHashSet<>())
                            .add(finding);
                }
            }
        OpenQuestions questions = OpenQuestions.of(findings, words);
        List<Errand> errands = questions.errands().stream()
                .map(errand -> new Errand(
                        words.heading(errand.source()),
                        words.text("note.answers", PhraseArg.count(errand.answers())),
                        errand.facts().stream()
                                .sorted(Comparator.comparingInt(fact ->
                                        -byFact.getOrDefault(fact, Set.of()).size()))
                                .map(fact -> wanted(fact, byFact.getOrDefault(fact, Set.of())))
                                .toList()))
                .toList();
        String waiting = forLimits.isEmpty()
                ? ""
                : words.text(
                        "note.limits",
                        PhraseArg.count(questions.openForLimits()),
                        PhraseArg.verbatim(words.joined(
                                questions.topics().stream().map(words::word).toList())));
        return new Group(
                empty.id(),
                empty.look(),
                empty.heading(),
                empty.count(),
                empty.about(),
                List.of(),
                errands,
                waiting,
                rows(forLimits),
                "");
    }

    private Wanted wanted(FactId fact, Set<Finding> waiting) {
        return new Wanted(
                words.capitalised(words.fact(fact)),
                margins.address(fact),
                words.text("findings.waiting", PhraseArg.count(waiting.size())),
                rows(List.copyOf(waiting)));
    }

    private static FactId fact(Missing missing) {
        if (missing instanceof Missing.UnknownFact unknown) return unknown.fact();
        if (missing instanceof Missing.AssumedFact assumed) return assumed.fact();
        if (missing instanceof Missing.OperatorAnswer answer) return answer.fact();
        throw new IllegalArgumentException("a limit is no fact: " + missing);
    }
}
