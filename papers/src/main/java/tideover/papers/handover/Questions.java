package tideover.papers.handover;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.FactId;
import tideover.engine.site.FactSource;
import tideover.engine.site.ThingId;
import tideover.papers.OpenQuestions;
import tideover.papers.Wording;

/** What open findings wait for, as a list to take along: errand by errand, thing by thing. */
final class Questions {

    /** One errand, told with the number of findings it answers. */
    record Errand(String heading, List<Row> rows) {}

    /** What is asked of one thing. */
    record Row(String thing, String facts) {}

    private final Wording wording;
    private final OpenQuestions open;

    Questions(Assessment assessment, Wording wording) {
        this.wording = wording;
        this.open = OpenQuestions.of(assessment.findings(), wording);
    }

    List<Errand> errands() {
        return open.errands().stream()
                .map(errand -> new Errand(
                        wording.capitalised(wording.text(
                                "report.errand", PhraseArg.word(errand.source()), PhraseArg.count(errand.answers()))),
                        rows(errand.facts())))
                .toList();
    }

    private List<Row> rows(List<FactId> facts) {
        Map<ThingId, List<String>> byThing = new LinkedHashMap<>();
        for (FactId fact : facts)
            byThing.computeIfAbsent(fact.thing(), thing -> new ArrayList<>()).add(wording.field(fact));
        List<Row> rows = new ArrayList<>();
        byThing.forEach((thing, fields) ->
                rows.add(new Row(wording.capitalised(wording.name(thing)), String.join("; ", fields))));
        return rows;
    }

    /** What only the grid operator can answer. */
    List<FactId> ofOperator() {
        return open.errands().stream()
                .filter(errand -> errand.source() == FactSource.ASK_OPERATOR)
                .flatMap(errand -> errand.facts().stream())
                .toList();
    }

    /** Topics of which the rule book lacks a limit. */
    List<String> topics() {
        return open.topics().stream().map(wording::heading).toList();
    }

    /** Number of findings that wait for the rule book. */
    int openForLimits() {
        return open.openForLimits();
    }

    /** Whether nothing is open. */
    boolean isEmpty() {
        return open.errands().isEmpty() && open.limits().isEmpty();
    }
}
