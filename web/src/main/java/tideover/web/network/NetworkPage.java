package tideover.web.network;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tideover.papers.curves.CurveSheet;
import tideover.papers.json.NetworkAnswer;
import tideover.papers.json.NetworkJson;
import tideover.papers.json.NetworkTables;
import tideover.web.diagram.States;
import tideover.web.jobs.JobFile;
import tideover.web.page.Download;
import tideover.web.page.NotHere;
import tideover.web.page.Pages;
import tideover.web.page.TypedNumber;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** What flows, state by state and place by place, with some loads on and others off. */
@RestController
final class NetworkPage {
    private static final MediaType SVG = MediaType.parseMediaType("image/svg+xml");

    private final Works works;
    private final Pages pages;
    private final NetworkSheets sheets;
    private final PlaceSheets places;
    private final NetworkData data;
    private final Frames frames;

    NetworkPage(Works works, Pages pages, NetworkSheets sheets, PlaceSheets places, NetworkData data, Frames frames) {
        this.works = works;
        this.pages = pages;
        this.sheets = sheets;
        this.places = places;
        this.data = data;
        this.frames = frames;
    }

    @GetMapping("/sites/{variant}/network")
    ResponseEntity<byte[]> show(
            @PathVariable String variant,
            @RequestParam(defaultValue = "") String state,
            HttpServletRequest request,
            HttpServletResponse response) {
        Work work = works.open(variant);
        NetworkSheet sheet = sheets.of(work, States.shown(work.installation(), state), Loads.of(request), request);
        // The form's own address is longer than what it says.
        response.setHeader("HX-Push-Url", sheet.here());
        return pages.show("network", sheet);
    }

    @GetMapping("/sites/{variant}/network.json")
    ResponseEntity<byte[]> json(@PathVariable String variant, HttpServletRequest request) {
        NetworkAnswer answer = data.of(works.open(variant), frames.words(request));
        return Download.text(MediaType.APPLICATION_JSON, "network.json", new NetworkJson(answer).text());
    }

    @GetMapping("/sites/{variant}/network/{table}.csv")
    ResponseEntity<byte[]> table(@PathVariable String variant, @PathVariable String table, HttpServletRequest request) {
        NetworkTables tables = new NetworkTables(data.of(works.open(variant), frames.words(request)));
        String text = switch (table) {
            case "nodes" -> tables.nodes();
            case "branches" -> tables.branches();
            case "faults" -> tables.faults();
            default -> throw new NotHere("table " + table);
        };
        return Download.text(JobFile.CSV, table + ".csv", text);
    }

    @GetMapping("/sites/{variant}/network/{place}")
    ResponseEntity<byte[]> place(
            @PathVariable String variant,
            @PathVariable String place,
            @RequestParam(defaultValue = "") String state,
            HttpServletRequest request) {
        Work work = works.open(variant);
        return pages.show(
                "place",
                places.of(
                        work,
                        place,
                        States.shown(work.installation(), state),
                        TypedNumber.of(request.getParameter("faultOhm"), 0),
                        request));
    }

    @GetMapping("/sites/{variant}/network/{place}/curves.svg")
    ResponseEntity<byte[]> curves(
            @PathVariable String variant, @PathVariable String place, HttpServletRequest request) {
        CurveSheet sheet =
                places.curves(works.open(variant), place, request).orElseThrow(() -> new NotHere("curves of " + place));
        return Download.text(SVG, "curves-" + place + ".svg", sheet.svg());
    }
}
