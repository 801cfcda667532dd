package tideover.papers.handover;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Force;
import tideover.engine.rules.Missing;
import tideover.engine.rules.Outcome;
import tideover.engine.rules.Phrase;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Source;
import tideover.engine.site.FactId;
import tideover.engine.site.Thing;
import tideover.papers.FactText;
import tideover.papers.Wording;

/** Findings as rows of the papers, and what they rest on: sources and assumptions. */
final class FindingList {

    /** @param outcome sign and word; {@code look} chooses its ink */
    record Row(
            String outcome,
            String look,
            String place,
            String state,
            String sentence,
            String measure,
            String check,
            String force,
            String source,
            String assumed,
            String accepted,
            String calculation) {}

    /** What is said alike of several places, once. */
    record Alike(String sentence, String places) {}

    /** Findings of one check: those told alike of several places, and the others. */
    record Group(String sign, String look, String check, String sources, List<Alike> alike, List<Row> rows) {}

    /** Findings under one heading, each for itself or check by check. */
    record Section(String heading, List<Row> rows, List<Group> groups) {}

    /** @param uses checks judged by it; {@code findings} is their number */
    record SourceRow(String document, String clause, String verification, String uses, int findings) {}

    /** @param findings that rest on it */
    record AssumptionRow(String fact, String value, String errand, int findings) {}

    private final Assessment assessment;
    private final Wording wording;

    FindingList(Assessment assessment, Wording wording) {
        this.assessment = assessment;
        this.wording = wording;
    }

    /** All findings: what has to be done first and each for itself, the rest check by check; no section is empty. */
    List<Section> sections() {
        List<Section> sections = List.of(
                new Section(wording.text("handover.findings.notMet"), binding(Outcome.NOT_MET), List.of()),
                new Section(wording.text("handover.findings.notCertain"), binding(Outcome.NOT_CERTAIN), List.of()),
                new Section(wording.text("handover.findings.open"), List.of(), grouped(Outcome.OPEN)),
                new Section(wording.text("handover.findings.advice"), advice(), List.of()),
                new Section(wording.text("handover.findings.met"), List.of(), grouped(Outcome.MET)),
                new Section(
                        wording.text("handover.findings.notApplicable"), List.of(), grouped(Outcome.NOT_APPLICABLE)));
        return sections.stream()
                .filter(section ->
                        !section.rows().isEmpty() || !section.groups().isEmpty())
                .toList();
    }

    /** Binding findings of an outcome. */
    private List<Row> binding(Outcome outcome) {
        return rows(finding -> finding.outcome() == outcome && finding.force() != Force.ADVISED);
    }

    /** What is advised and not so. */
    private List<Row> advice() {
        return rows(finding -> finding.force() == Force.ADVISED
                && !finding.outcome().isSettled()
                && finding.outcome() != Outcome.OPEN);
    }

    /** Findings of an outcome, check by check. */
    private List<Group> grouped(Outcome outcome) {
        Map<String, List<Finding>> byCheck = new LinkedHashMap<>();
        for (Finding finding : assessment.findings())
            if (finding.outcome() == outcome)
                byCheck.computeIfAbsent(finding.key().check(), check -> new ArrayList<>())
                        .add(finding);
        List<Group> groups = new ArrayList<>();
        byCheck.forEach((check, findings) -> groups.add(group(outcome, check, findings)));
        return groups;
    }

    private Group group(Outcome outcome, String check, List<Finding> findings) {
        Map<String, List<Finding>> bySentence = new LinkedHashMap<>();
        for (Finding finding : findings)
            bySentence
                    .computeIfAbsent(ofEach(finding), sentence -> new ArrayList<>())
                    .add(finding);
        List<Alike> alike = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        bySentence.forEach((sentence, of) -> {
            if (of.size() == 1) rows.add(row(of.get(0)));
            else
                alike.add(new Alike(
                        sentence,
                        wording.names(of.stream().map(f -> f.key().place()).toList())));
        });
        return new Group(
                wording.sign(outcome), look(outcome), wording.text("check." + check), sources(findings), alike, rows);
    }

    /** What is said of a place, without its name; with its name where there is more to show than the sentence. */
    private String ofEach(Finding finding) {
        if (!finding.missing().isEmpty() && finding.missing().stream().allMatch(Missing.UnknownLimit.class::isInstance))
            return wording.of(finding);
        boolean isPlain = finding.outcome() != Outcome.OPEN
                && finding.assumptions().isEmpty()
                && assessment
                        .calculations()
                        .getOrDefault(finding.key(), List.of())
                        .isEmpty();
        if (!isPlain) return finding.key().toString();
        PhraseArg place = PhraseArg.name(finding.key().place());
        PhraseArg each = PhraseArg.verbatim(wording.text("handover.each"));
        List<PhraseArg> arguments = finding.phrase().arguments().stream()
                .map(argument -> argument.equals(place) ? each : argument)
                .toList();
        return wording.capitalised(wording.of(new Phrase(finding.phrase().key(), arguments)));
    }

    private String sources(List<Finding> findings) {
        Set<String> sources = new LinkedHashSet<>();
        for (Finding finding : findings) if (finding.source() != null) sources.add(wording.of(finding.source()));
        return String.join("; ", sources);
    }

    private List<Row> rows(Predicate<Finding> of) {
        return assessment.findings().stream().filter(of).map(this::row).toList();
    }

    private Row row(Finding finding) {
        List<String> steps = new ArrayList<>();
        for (Phrase step : assessment.calculations().getOrDefault(finding.key(), List.of()))
            steps.add(wording.of(step));
        return new Row(
                wording.outcome(finding.outcome()),
                look(finding.outcome()),
                wording.capitalised(wording.name(finding.key().place())),
                finding.key().state() == null ? "" : wording.word(finding.key().state()),
                wording.of(finding),
                finding.measure() == null ? "" : wording.of(finding.measure()),
                wording.text("check." + finding.key().check()),
                wording.word(finding.force()),
                finding.source() == null ? "" : wording.of(finding.source()),
                assumed(finding),
                finding.accepted() == null ? "" : wording.text("report.accepted", finding.accepted()),
                String.join(" · ", steps));
    }

    private String assumed(Finding finding) {
        if (finding.assumptions().isEmpty() || finding.outcome() == Outcome.OPEN) return "";
        List<String> facts = finding.assumptions().stream().map(wording::fact).toList();
        return wording.text("handover.assumed", wording.joined(facts));
    }

    private static String look(Outcome outcome) {
        return switch (outcome) {
            case MET, NOT_APPLICABLE -> "ok";
            case NOT_MET -> "no";
            case OPEN, NOT_CERTAIN -> "ask";
        };
    }

    /** Each source once, by document. */
    List<SourceRow> sources() {
        Map<Source, Set<String>> uses = new TreeMap<>(Comparator.comparing(Source::document)
                .thenComparing(Source::clause)
                .thenComparing(Source::verification));
        Map<Source, Integer> findings = new LinkedHashMap<>();
        for (Finding finding : assessment.findings()) {
            if (finding.source() == null || finding.outcome() == Outcome.NOT_APPLICABLE) continue;
            uses.computeIfAbsent(finding.source(), source -> new LinkedHashSet<>())
                    .add(wording.text("check." + finding.key().check()));
            findings.merge(finding.source(), 1, Integer::sum);
        }
        List<SourceRow> rows = new ArrayList<>();
        uses.forEach((source, checks) -> rows.add(new SourceRow(
                source.document(),
                source.clause(),
                wording.word(source.verification()),
                String.join("; ", checks),
                findings.getOrDefault(source, 0))));
        return rows;
    }

    /** Each assumption under a finding once, most used first. */
    List<AssumptionRow> assumptions() {
        Map<FactId, Integer> findings = new LinkedHashMap<>();
        for (Finding finding : assessment.findings())
            for (FactId fact : finding.assumptions()) findings.merge(fact, 1, Integer::sum);
        FactText texts = new FactText(wording);
        return findings.entrySet().stream()
                .sorted(Map.Entry.<FactId, Integer>comparingByValue()
                        .reversed()
                        .thenComparing(entry -> entry.getKey().toString()))
                .map(entry -> {
                    FactId fact = entry.getKey();
                    Thing thing = assessment.installation().find(fact.thing()).orElse(null);
                    String value = thing == null || thing.value(fact.field()) == null ? "" : texts.value(thing, fact);
                    return new AssumptionRow(
                            wording.capitalised(wording.fact(fact)),
                            value,
                            wording.word(wording.source(fact)),
                            entry.getValue());
                })
                .toList();
    }
}
