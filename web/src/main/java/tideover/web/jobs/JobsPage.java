package tideover.web.jobs;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tideover.papers.Wording;
import tideover.web.page.Download;
import tideover.web.page.NotHere;
import tideover.web.page.Pages;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** How far long work is, what it made, and its end. */
@RestController
final class JobsPage {
    private static final String JOB = "/sites/{variant}/jobs/{id}";

    private final Jobs jobs;
    private final JobViews views;
    private final Works works;
    private final Pages pages;
    private final Frames frames;

    JobsPage(Jobs jobs, JobViews views, Works works, Pages pages, Frames frames) {
        this.jobs = jobs;
        this.views = views;
        this.works = works;
        this.pages = pages;
        this.frames = frames;
    }

    /**
     * Where it is.
     *
     * @param step what script has seen already: nothing new is answered with nothing
     */
    @GetMapping(JOB)
    ResponseEntity<byte[]> show(
            @PathVariable String variant,
            @PathVariable String id,
            @RequestParam(defaultValue = "-1") int step,
            HttpServletRequest request) {
        Work work = works.open(variant);
        Job job = find(work, id);
        if (isScript(request) && job.moment().step() == step)
            return ResponseEntity.noContent().build();
        return answer(job, work, request);
    }

    @PostMapping(JOB + "/cancel")
    ResponseEntity<byte[]> cancel(@PathVariable String variant, @PathVariable String id, HttpServletRequest request) {
        Work work = works.open(variant);
        Job job = find(work, id);
        jobs.cancel(job);
        return answer(job, work, request);
    }

    @GetMapping(JOB + "/{file}")
    ResponseEntity<byte[]> file(@PathVariable String variant, @PathVariable String id, @PathVariable String file) {
        JobFile made = find(works.open(variant), id)
                .find(file)
                .orElseThrow(() -> new NotHere("file " + file + " of work " + id));
        return Download.of(made.type(), made.name(), made.bytes());
    }

    private Job find(Work work, String id) {
        return jobs.find(work.row().id(), id).orElseThrow(() -> new NotHere("work " + id));
    }

    /** To script the part of the page; to a form the page. What is finished brings more than its own part. */
    private ResponseEntity<byte[]> answer(Job job, Work work, HttpServletRequest request) {
        Wording words = frames.words(request).with(work.installation());
        JobView view = views.of(job, work, words, request);
        if (!isScript(request))
            return ResponseEntity.status(HttpStatus.SEE_OTHER)
                    .header(HttpHeaders.LOCATION, view.back())
                    .build();
        return pages.show("jobPart", view);
    }

    private static boolean isScript(HttpServletRequest request) {
        return request.getHeader("HX-Request") != null;
    }
}
