package tideover.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tideover.engine.assessment.Assessment;
import tideover.engine.protection.selectivity.TimeCurrentPath;
import tideover.engine.rules.RuleBook;
import tideover.engine.site.OperatingState;
import tideover.engine.wiring.schedule.CuttingList;
import tideover.files.SiteFileResult;
import tideover.files.SiteWriter;
import tideover.papers.handover.Handover;
import tideover.papers.json.AssessmentJson;
import tideover.papers.terminals.TerminalDrawing;
import tideover.papers.wiring.Listing;
import tideover.papers.wiring.WiringData;
import tideover.papers.wiring.WiringPart;

/** The papers of a site in one folder: the handover file, and beside it what machines and other programs read. */
final class HandoverFolder {

    /** More sheets than this nobody compares. */
    private static final int MOST_CURVES = 6;

    private final Desk desk;
    private final SiteFileResult.Readable file;
    private final Assessment assessment;
    private final List<TimeCurrentPath> curves;
    private final List<Listing> wiring;
    private final TerminalDrawing terminals;

    HandoverFolder(Desk desk, SiteFileResult.Readable file, RuleBook rules) {
        this.desk = desk;
        this.file = file;
        this.assessment = desk.assessor().explain(file.site(), rules);
        this.curves = desk.assessor().curves(assessment).ofStayingCircuits(MOST_CURVES);
        WiringData data = desk.wiring(file.site(), rules, CuttingList.USUAL_ALLOWANCE_M);
        this.terminals = desk.terminals(file);
        this.wiring = WiringPart.OF_HANDOVER.stream()
                .flatMap(part -> part.of(data).stream())
                .toList();
    }

    boolean requiredMet() {
        return assessment.requiredMet();
    }

    /** Makes everything, then writes it. @return the files written */
    List<Path> write(Path folder) {
        Map<String, byte[]> papers = new LinkedHashMap<>();
        Handover handover = Handover.of(assessment, desk.wording(), desk.stamp(file))
                .with(curves)
                .withWiring(wiring)
                .with(terminals);
        papers.put("handover.pdf", handover.pdf());
        papers.put("findings.json", utf8(new AssessmentJson(desk.wording(), assessment, file.digest()).text()));
        papers.put("site.json", utf8(new SiteWriter(desk.fields()).canonicalJson(file.site())));
        for (OperatingState state : assessment.installation().states())
            papers.put(
                    "diagram-" + state.name().toLowerCase(Locale.ROOT).replace('_', '-') + ".svg",
                    utf8(handover.diagram().in(state).svg()));
        List<Path> written = new ArrayList<>();
        papers.forEach((name, bytes) -> {
            desk.write(folder.resolve(name), bytes);
            written.add(folder.resolve(name));
        });
        return written;
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
