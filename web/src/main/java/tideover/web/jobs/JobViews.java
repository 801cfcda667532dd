package tideover.web.jobs;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import tideover.engine.rules.PhraseArg;
import tideover.papers.Wording;
import tideover.web.jobs.JobView.FileLink;
import tideover.web.page.Pages;
import tideover.web.work.Work;

/** Words long work. */
@Component
public final class JobViews {
    private static final int KILO = 1000;

    private final Jobs jobs;

    JobViews(Jobs jobs) {
        this.jobs = jobs;
    }

    /** The last work of a kind on a site, if there is any. */
    public Optional<JobView> newest(JobKind kind, Work work, Wording words, HttpServletRequest request) {
        return jobs.newest(kind, work.row().id()).map(job -> of(job, work, words, request));
    }

    JobView of(Job job, Work work, Wording words, HttpServletRequest request) {
        Job.Moment moment = job.moment();
        String address = work.address() + "/jobs/" + job.id();
        boolean isOlder = job.revision().number() != work.revision().number();
        List<FileLink> files = job.result().files().stream()
                .map(file -> new FileLink(
                        file.name(), what(file, words), address + "/" + file.name(), size(file.size(), words)))
                .toList();
        return new JobView(
                words,
                job.kind().path(),
                address,
                work.address() + job.kind().page(),
                Pages.formToken(request),
                moment.state(),
                moment.step(),
                sentence(moment, words),
                moment.done(),
                moment.all(),
                isOlder ? words.text("job.older", Long.toString(job.revision().number())) : "",
                files);
    }

    private static String sentence(Job.Moment moment, Wording words) {
        if (moment.state() != Job.State.RUNNING || moment.doing() == null)
            return words.text("job." + moment.state().name());
        return words.text(
                "job.doing",
                PhraseArg.count(Math.min(moment.done() + 1, moment.all())),
                PhraseArg.count(moment.all()),
                PhraseArg.verbatim(words.of(moment.doing())));
    }

    /** Files of one kind share their words; a page says what each kind is. */
    private static String what(JobFile file, Wording words) {
        int dot = file.name().lastIndexOf('.');
        return words.text("job.file." + file.name().substring(dot + 1));
    }

    private static String size(int bytes, Wording words) {
        return words.text("job.size", PhraseArg.count(Math.max(1, Math.round((float) bytes / KILO))));
    }
}
