package tideover.web.api;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.Outcome;
import tideover.files.InputProblem;
import tideover.papers.Wording;
import tideover.store.site.SiteId;
import tideover.store.site.SiteRow;
import tideover.store.site.VariantRow;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** Puts what is kept into the form that programs are told. */
@Component
final class Told {
    private final Works works;

    Told(Works works) {
        this.works = works;
    }

    Answer.Head head(Work work, Wording words) {
        return new Answer.Head(variant(work.row()), revision(work.revision()), findings(work, words));
    }

    Answer.Findings findings(Work work, Wording words) {
        Assessment shown = works.soFar(work);
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Outcome outcome : Outcome.values()) {
            int count = shown.verdict().counts().getOrDefault(outcome, 0);
            if (count > 0) counts.put(outcome.name(), count);
        }
        return new Answer.Findings(
                shown.verdict().outcome().name(),
                words.with(work.installation()).of(shown.verdict()),
                counts,
                works.whole(work).isEmpty() && !works.hasFailed(work));
    }

    static Answer.Site site(SiteRow row) {
        return new Answer.Site(
                row.id().text(),
                time(row.createdAt()),
                row.archivedAt() == null ? null : time(row.archivedAt()),
                row.variants().stream().map(Told::variant).toList());
    }

    static Answer.Variant variant(VariantRow row) {
        return new Answer.Variant(
                row.id().text(),
                row.site().text(),
                row.name(),
                row.head(),
                row.designation(),
                row.country(),
                time(row.changedAt()));
    }

    static Answer.Revision revision(tideover.store.site.Revision revision) {
        return new Answer.Revision(
                revision.number(),
                revision.digest().hex(),
                revision.kind().name(),
                revision.contentOf(),
                revision.entry().who(),
                time(revision.entry().when()),
                revision.entry().note(),
                edits(revision.edits()));
    }

    static List<Answer.Edit> edits(List<tideover.files.Edit> edits) {
        return edits.stream()
                .map(edit -> new Answer.Edit(edit.path(), edit.before(), edit.after()))
                .toList();
    }

    static Answer.Refused refused(List<InputProblem> problems, Wording words) {
        return new Answer.Refused(problems.stream()
                .map(problem -> new Answer.Problem(
                        words.of(problem.phrase()), problem.file(), problem.line(), problem.column(), problem.field()))
                .toList());
    }

    static Answer.Attachment attachment(tideover.store.attachment.Attachment kept) {
        return new Answer.Attachment(
                kept.id().text(),
                kept.site().text(),
                kept.place(),
                kept.fileName(),
                kept.mediaType().text(),
                kept.digest().hex(),
                kept.sizeBytes(),
                kept.privacy() == tideover.store.attachment.Privacy.PERSONAL,
                kept.entry().who(),
                time(kept.entry().when()),
                kept.entry().note());
    }

    static Answer.KnownCustomer known(tideover.store.customer.Customer customer, List<SiteId> sites) {
        return new Answer.KnownCustomer(
                customer.id().text(),
                customer.forgottenAt() == null ? null : time(customer.forgottenAt()),
                customer.facts(),
                sites.stream().map(SiteId::text).toList());
    }

    static Answer.Customer customer(tideover.store.customer.Customer customer) {
        return new Answer.Customer(
                customer.id().text(), customer.facts().name(), customer.facts().town());
    }

    static @Nullable String orNothing(@Nullable String text) {
        return text == null || text.isEmpty() ? null : text;
    }

    private static String time(Instant moment) {
        return DateTimeFormatter.ISO_INSTANT.format(moment);
    }
}
