package tideover.web.work;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Outcome;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Topic;
import tideover.papers.OpenQuestions;
import tideover.papers.Wording;
import tideover.web.page.Frame;
import tideover.web.page.Pages;
import tideover.web.page.SiteHead;
import tideover.web.page.Stop;

/** The frame around the pages of a site: its head and the way, with what is open at each stop. */
@Component
public final class Frames {
    private final Pages pages;
    private final Works works;

    Frames(Pages pages, Works works) {
        this.pages = pages;
        this.works = works;
    }

    /** Wording for whoever asks. */
    public Wording words(HttpServletRequest request) {
        return pages.words(request);
    }

    /**
     * The frame of one of its pages.
     *
     * @param words knows the printed names of the site's things
     */
    public Frame of(HttpServletRequest request, Wording words, Work work, Stop here) {
        return pages.frame(request, words, head(work, words, here), words.text(here.key()));
    }

    /**
     * The frame of one of its pages that is no stop.
     *
     * @param shown what of the site is shown, worded
     */
    public Frame beside(HttpServletRequest request, Wording words, Work work, String shown) {
        return pages.frame(request, words, head(work, words, null), shown);
    }

    private SiteHead head(Work work, Wording words, @Nullable Stop here) {
        String name = work.row().designation().isEmpty()
                ? words.text("frame.unnamed")
                : work.row().designation();
        return new SiteHead(
                work.address(),
                name,
                work.row().name(),
                work.revision().number(),
                when(work.revision().entry().when(), words.locale()),
                here,
                open(work, words));
    }

    /** A moment as it is read today: the time alone, or the day before it. */
    public static String when(Instant moment, Locale locale) {
        ZonedDateTime at = moment.atZone(ZoneId.systemDefault());
        String time = DateTimeFormatter.ofLocalizedTime(FormatStyle.SHORT)
                .withLocale(locale)
                .format(at);
        if (at.toLocalDate().equals(LocalDate.now(ZoneId.systemDefault()))) return time;
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                        .withLocale(locale)
                        .format(at) + ", " + time;
    }

    private Map<Stop, String> open(Work work, Wording words) {
        Assessment shown = works.soFar(work);
        Map<Stop, String> open = new EnumMap<>(Stop.class);
        int questions = OpenQuestions.of(shown.findings(), words).errands().stream()
                .mapToInt(errand -> errand.facts().size())
                .sum();
        if (questions > 0) open.put(Stop.SURVEY, words.text("way.toAsk", PhraseArg.count(questions)));
        int wrong = 0;
        int wiring = 0;
        for (Finding finding : shown.findings()) {
            if (!finding.isBlocking() || finding.outcome() == Outcome.OPEN) continue;
            wrong++;
            Topic topic = Topic.findByLimit(finding.key().check()).orElse(null);
            if (topic == Topic.CONTROL || topic == Topic.BUS || topic == Topic.WIRING) wiring++;
        }
        if (wrong > 0) open.put(Stop.FINDINGS, words.text("way.notMet", PhraseArg.count(wrong)));
        if (wiring > 0) open.put(Stop.WIRING, words.text("way.notMet", PhraseArg.count(wiring)));
        return open;
    }
}
