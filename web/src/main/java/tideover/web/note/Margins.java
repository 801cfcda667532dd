package tideover.web.note;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Force;
import tideover.engine.rules.Outcome;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.FactId;
import tideover.engine.site.ThingId;
import tideover.papers.OpenQuestions;
import tideover.papers.Wording;
import tideover.web.note.Margin.Errand;
import tideover.web.note.Margin.Pending;
import tideover.web.note.Note.Advice;
import tideover.web.note.Note.FactLink;
import tideover.web.work.Work;

/** Makes notes of findings. */
public final class Margins {
    /** Places named in the address of the margin, which must stay an address. */
    private static final int MOST_PLACES = 60;

    private final Work work;
    private final Wording words;

    /** @param words knows the printed names of the site's things */
    public Margins(Work work, Wording words) {
        this.work = work;
        this.words = words;
    }

    /**
     * All notes; those of the places named first come in their order.
     *
     * @param whole all findings, or nothing while slow ones are computed
     * @param order places as they stand on the sheet beside the margin
     */
    public Margin of(Optional<Assessment> whole, List<ThingId> order) {
        Assessment shown = whole.orElse(work.atOnce());
        Map<ThingId, Integer> ranks =
                IntStream.range(0, order.size()).boxed().collect(Collectors.toMap(order::get, i -> i, (a, b) -> a));
        List<Finding> sorted = new ArrayList<>(shown.findings());
        sorted.sort(Comparator.comparingInt(
                finding -> ranks.getOrDefault(finding.key().place(), order.size())));
        List<Note> wrong = new ArrayList<>();
        List<Note> advice = new ArrayList<>();
        List<Note> left = new ArrayList<>();
        for (Finding finding : sorted) {
            if (finding.outcome().isSettled()) continue;
            if (finding.accepted() != null) left.add(note(finding));
            else if (finding.force() == Force.ADVISED && finding.outcome() != Outcome.OPEN) advice.add(note(finding));
            else if (finding.outcome() != Outcome.OPEN) wrong.add(note(finding));
        }
        OpenQuestions open = OpenQuestions.of(shown.findings(), words);
        return new Margin(
                words.of(shown.verdict()),
                words.counts(shown.verdict()),
                wrong,
                open.errands().stream().map(this::errand).toList(),
                limits(open),
                advice,
                left,
                shown.verdict().counts().getOrDefault(Outcome.MET, 0),
                whole.isPresent() ? Pending.COMPLETE : Pending.COMPUTING,
                work.address(),
                work.revision().number(),
                order.stream().limit(MOST_PLACES).map(ThingId::text).collect(Collectors.joining(",")));
    }

    /** One finding. */
    public Note note(Finding finding) {
        boolean mayBeAccepted =
                finding.force() == Force.ADVISED && !finding.outcome().isSettled();
        return new Note(
                finding.key().check(),
                finding.key().place().text(),
                words.name(finding.key().place()),
                finding.outcome().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                words.outcome(finding.outcome()),
                words.of(finding),
                finding.source() == null ? "" : words.of(finding.source()),
                finding.limit() == null ? "" : work.address() + "/limits#" + finding.limit(),
                finding.key().state() == null ? "" : words.heading(finding.key().state()),
                finding.facts().stream().map(fact -> link(fact, finding)).toList(),
                lines(finding),
                mayBeAccepted ? Advice.MAY_BE_ACCEPTED : Advice.BINDING,
                finding.accepted());
    }

    private Errand errand(OpenQuestions.Errand errand) {
        return new Errand(
                words.heading(errand.source()),
                errand.facts().stream().map(this::link).toList(),
                words.text("note.answers", PhraseArg.count(errand.answers())));
    }

    private String limits(OpenQuestions open) {
        if (open.limits().isEmpty()) return "";
        List<String> topics = open.topics().stream().map(words::word).toList();
        return words.text(
                "note.limits", PhraseArg.count(open.openForLimits()), PhraseArg.verbatim(words.joined(topics)));
    }

    private FactLink link(FactId fact) {
        return new FactLink(words.fact(fact), address(fact), "");
    }

    private FactLink link(FactId fact, Finding finding) {
        String assumed = finding.assumptions().contains(fact) ? words.text("note.assumed") : "";
        return new FactLink(words.fact(fact), address(fact), assumed);
    }

    /** Where a fact is read and changed. */
    public String address(FactId fact) {
        return "%s/things/%s#%s".formatted(work.address(), fact.thing(), fact.field());
    }

    private String lines(Finding finding) {
        String address = "%s/findings/%s/%s"
                .formatted(
                        work.address(),
                        URLEncoder.encode(finding.key().check(), StandardCharsets.UTF_8),
                        finding.key().place());
        return finding.key().state() == null
                ? address
                : address + "?state=" + finding.key().state().name();
    }
}
