package tideover.web.wiring;

import jakarta.servlet.http.HttpServletRequest;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.schedule.CuttingList;
import tideover.papers.Wording;
import tideover.papers.terminals.TerminalDrawing;
import tideover.papers.terminals.TerminalSheet;
import tideover.papers.wiring.Listing;
import tideover.papers.wiring.WiringData;
import tideover.papers.wiring.WiringPart;
import tideover.web.diagram.StateLink;
import tideover.web.jobs.Job;
import tideover.web.jobs.JobKind;
import tideover.web.jobs.JobView;
import tideover.web.jobs.JobViews;
import tideover.web.jobs.Jobs;
import tideover.web.page.NotHere;
import tideover.web.page.Stop;
import tideover.web.page.TypedNumber;
import tideover.web.wiring.WiringSheet.Allowance;
import tideover.web.wiring.WiringSheet.Drawing;
import tideover.web.wiring.WiringSheet.Need;
import tideover.web.work.Frames;
import tideover.web.work.Work;

/** Makes the sheets about wiring. */
@Component
final class WiringSheets {
    static final String PAGE = "/wiring";
    static final String TERMINALS = "terminals";

    /** Parts in which it counts how much longer pieces are cut. */
    private static final Set<String> CUT = Set.of("cutting", "parts");

    private final Frames frames;
    private final WiringSources sources;
    private final Jobs jobs;
    private final JobViews views;

    WiringSheets(Frames frames, WiringSources sources, Jobs jobs, JobViews views) {
        this.frames = frames;
        this.sources = sources;
        this.jobs = jobs;
        this.views = views;
    }

    WiringSheet of(Work work, String part, String device, TypedNumber allowance, HttpServletRequest request) {
        Wording words = frames.words(request).with(work.installation());
        if (part.equals(TERMINALS)) return terminals(work, device, words, request);
        if (MistakeSearch.PARTS.contains(part)) return searched(work, part, words, request);
        List<Listing> listings = listings(work, part, allowance, words);
        Allowance shown = CUT.contains(part) ? allowance(allowance, words) : null;
        return sheet(work, part, words, request, listings, List.of(), List.of(), shown, null);
    }

    /** The tables of a part that is there at once. */
    List<Listing> listings(Work work, String part, TypedNumber allowance, Wording words) {
        WiringPart known = WiringSources.find(part).orElseThrow(() -> new NotHere("part " + part));
        return known.of(sources.of(work, words, allowance.or(CuttingList.USUAL_ALLOWANCE_M)));
    }

    /** The tables of all parts that are there at once. */
    List<Listing> atOnce(Work work, Wording words) {
        WiringData wiring = sources.of(work, words);
        return WiringPart.ALL.stream()
                .filter(part -> !MistakeSearch.PARTS.contains(part.name()))
                .flatMap(part -> part.of(wiring).stream())
                .toList();
    }

    private static Allowance allowance(TypedNumber typed, Wording words) {
        String usual = NumberFormat.getNumberInstance(words.locale()).format(CuttingList.USUAL_ALLOWANCE_M);
        boolean isUsual = typed.text().isEmpty();
        return new Allowance(
                isUsual ? usual : typed.text(),
                typed.isKnown() ? "" : words.text("wiring.allowance", typed.text()),
                isUsual || !typed.isKnown() ? "" : "?allowance=" + typed.text());
    }

    private WiringSheet searched(Work work, String part, Wording words, HttpServletRequest request) {
        Optional<Job> newest = jobs.newest(JobKind.MISTAKES, work.row().id());
        List<Listing> listings = newest.map(job -> job.result().listings()).orElse(List.of());
        List<Listing> shown = listings.stream()
                .filter(listing -> part.equals("mistakes") == listing.part().equals("mistakes"))
                .toList();
        JobView view = views.newest(JobKind.MISTAKES, work, words, request).orElse(null);
        return sheet(work, part, words, request, shown, List.of(), List.of(), null, view);
    }

    private WiringSheet terminals(Work work, String device, Wording words, HttpServletRequest request) {
        WiringData wiring = sources.of(work, words);
        TerminalDrawing all = sources.terminals(work, wiring);
        Optional<ThingId> one = all.devices().stream()
                .filter(each -> each.text().equals(device))
                .findFirst();
        String page = work.address() + PAGE + "?part=" + TERMINALS;
        List<StateLink> devices = new ArrayList<>();
        devices.add(new StateLink(words.text("wiring.cabinet"), page, one.isEmpty() ? "here" : ""));
        for (ThingId each : all.devices())
            devices.add(new StateLink(
                    words.name(each),
                    page + "&device=" + each,
                    one.filter(each::equals).isPresent() ? "here" : ""));
        List<Drawing> drawings = new ArrayList<>();
        for (TerminalSheet sheet : one.map(all::only).orElse(all).sheets())
            if (one.isPresent() || !sheet.isUpright())
                drawings.add(new Drawing(
                        sheet.title(),
                        sheet.pageSvg(work::address),
                        "%s/wiring/terminals/%s.svg%s"
                                .formatted(
                                        work.address(),
                                        sheet.name(),
                                        one.map(id -> "?device=" + id).orElse(""))));
        return sheet(work, TERMINALS, words, request, List.of(), devices, drawings, null, null);
    }

    /** A sheet of the terminal drawing as a file. */
    Optional<TerminalSheet> sheet(Work work, String name, String device, HttpServletRequest request) {
        Wording words = frames.words(request).with(work.installation());
        TerminalDrawing all = sources.terminals(work, sources.of(work, words));
        TerminalDrawing drawing = all.devices().stream()
                .filter(each -> each.text().equals(device))
                .findFirst()
                .map(all::only)
                .orElse(all);
        return drawing.sheets().stream()
                .filter(sheet -> sheet.name().equals(name))
                .findFirst();
    }

    private WiringSheet sheet(
            Work work,
            String part,
            Wording words,
            HttpServletRequest request,
            List<Listing> listings,
            List<StateLink> devices,
            List<Drawing> drawings,
            @Nullable Allowance allowance,
            @Nullable JobView search) {
        return new WiringSheet(
                frames.of(request, words, work, Stop.WIRING),
                work.address(),
                part,
                parts(work, part, words),
                listings,
                devices,
                drawings,
                allowance,
                search,
                MistakeSearch.PARTS.contains(part) ? Need.SEARCH : Need.NOTHING);
    }

    private static List<StateLink> parts(Work work, String here, Wording words) {
        List<String> names = new ArrayList<>();
        for (WiringPart part : WiringPart.ALL) {
            if (part.name().equals(MistakeSearch.PARTS.get(0))) names.add(TERMINALS);
            names.add(part.name());
        }
        return names.stream()
                .map(name -> new StateLink(
                        words.text("wiring.part." + name),
                        work.address() + PAGE + "?part=" + name,
                        name.equals(here) ? "here" : ""))
                .toList();
    }
}
