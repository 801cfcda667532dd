package tideover.web.diagram;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tideover.engine.installation.Installation;
import tideover.engine.site.OperatingState;
import tideover.papers.Wording;
import tideover.papers.diagram.Diagram;
import tideover.papers.drawing.DrawingStyle;
import tideover.web.page.Download;
import tideover.web.page.Pages;
import tideover.web.page.Stop;
import tideover.web.work.Frames;
import tideover.web.work.Stamps;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** The diagram, the file of it, and how all drawings look. */
@RestController
final class DiagramPage {
    private static final MediaType CSS = MediaType.parseMediaType("text/css;charset=UTF-8");
    private static final MediaType SVG = MediaType.parseMediaType("image/svg+xml");

    private final Works works;
    private final Pages pages;
    private final Frames frames;
    private final Stamps stamps;

    DiagramPage(Works works, Pages pages, Frames frames, Stamps stamps) {
        this.works = works;
        this.pages = pages;
        this.frames = frames;
        this.stamps = stamps;
    }

    /** In the state asked for; without one in that for which the house is planned. */
    @GetMapping("/sites/{variant}/diagram")
    ResponseEntity<byte[]> show(
            @PathVariable String variant, @RequestParam(defaultValue = "") String state, HttpServletRequest request) {
        Work work = works.open(variant);
        return pages.show("diagram", sheet(work, States.shown(work.installation(), state), request));
    }

    @GetMapping("/sites/{variant}/diagram.svg")
    ResponseEntity<byte[]> file(
            @PathVariable String variant, @RequestParam(defaultValue = "") String state, HttpServletRequest request) {
        Work work = works.open(variant);
        OperatingState shown = States.shown(work.installation(), state);
        Wording words = frames.words(request).with(work.installation());
        return Download.text(
                SVG,
                "diagram-" + States.path(shown) + ".svg",
                diagram(work, words).in(shown).svg());
    }

    @GetMapping("/assets/drawing.css")
    ResponseEntity<byte[]> style() {
        return ResponseEntity.ok()
                .contentType(CSS)
                .header("Cache-Control", "no-cache")
                .body(DrawingStyle.css().getBytes(StandardCharsets.UTF_8));
    }

    private DiagramSheet sheet(Work work, OperatingState state, HttpServletRequest request) {
        Installation installation = work.installation();
        Wording words = frames.words(request).with(installation);
        Diagram diagram = diagram(work, words).in(state);
        String page = work.address() + "/diagram";
        List<StateLink> states =
                States.links(installation, state, words, other -> page + "?state=" + States.path(other));
        return new DiagramSheet(
                frames.of(request, words, work, Stop.DIAGRAM),
                work.address(),
                states,
                LiveWords.of(installation, state, words),
                diagram.pageSvg(work::address),
                diagram.title(),
                page + ".svg?state=" + States.path(state));
    }

    private Diagram diagram(Work work, Wording words) {
        return Diagram.of(work.installation(), words, stamps.of(work));
    }
}
