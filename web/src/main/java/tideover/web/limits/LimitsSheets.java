package tideover.web.limits;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.RuleBook;
import tideover.engine.rules.Topic;
import tideover.engine.rules.Verification;
import tideover.papers.LimitText;
import tideover.papers.Wording;
import tideover.web.limits.LimitsSheet.Part;
import tideover.web.limits.LimitsSheet.Row;
import tideover.web.page.Stop;
import tideover.web.work.Frames;
import tideover.web.work.Work;

/** Makes the sheet with the limits of a site. */
@Component
final class LimitsSheets {
    private final Frames frames;

    LimitsSheets(Frames frames) {
        this.frames = frames;
    }

    LimitsSheet of(Work work, HttpServletRequest request) {
        Wording words = frames.words(request).with(work.installation());
        RuleBook book = work.atOnce().rules();
        Map<Topic, List<Limit>> limits = book.limits().stream()
                .collect(Collectors.groupingBy(
                        limit -> Topic.findByLimit(limit.id()).orElseThrow(),
                        () -> new EnumMap<>(Topic.class),
                        Collectors.toList()));
        return new LimitsSheet(
                frames.of(request, words, work, Stop.FINDINGS),
                work.address(),
                words.text("limits.book", book.country(), String.join(" < ", book.layers())),
                counts(book.limits(), words),
                List.of(Topic.values()).stream()
                        .map(topic -> part(work, book, topic, limits.getOrDefault(topic, List.of()), words))
                        .toList());
    }

    private static String counts(Collection<Limit> limits, Wording words) {
        long compared = limits.stream()
                .filter(limit -> limit.source().verification() == Verification.COMPARED)
                .count();
        return words.text("limits.counts", PhraseArg.count(limits.size()), PhraseArg.count((int) compared));
    }

    private static Part part(Work work, RuleBook book, Topic topic, List<Limit> limits, Wording words) {
        return new Part(
                topic.word(),
                words.heading(topic),
                words.heading(book.stance(topic)),
                work.address() + "/findings?topic=" + topic.word(),
                limits.stream().map(limit -> row(limit, words)).toList());
    }

    private static Row row(Limit limit, Wording words) {
        return new Row(
                limit.id(),
                LimitText.of(limit, words),
                words.word(limit.force()),
                limit.source().document(),
                limit.source().clause(),
                words.word(limit.source().verification()),
                limit.book(),
                Objects.requireNonNullElse(limit.note(), ""));
    }
}
