package tideover.papers.wiring;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.rules.Unit;
import tideover.engine.wiring.model.Changeover;
import tideover.engine.wiring.model.Defect;
import tideover.engine.wiring.model.Hazard;
import tideover.engine.wiring.model.HazardSearch;
import tideover.engine.wiring.model.HazardSearch.Exposure;
import tideover.engine.wiring.model.HazardSearch.Reached;
import tideover.engine.wiring.model.HazardSearch.When;
import tideover.engine.wiring.model.HouseModel;
import tideover.engine.wiring.model.Timing;
import tideover.papers.Wording;

/** How long the changeover takes, and what can come about in all states the healthy house reaches. */
final class ChangeoverPart implements WiringPart {

    @Override
    public String name() {
        return "changeover";
    }

    @Override
    public List<Listing> of(WiringData wiring) {
        return List.of(times(wiring), hazards(wiring));
    }

    private Listing times(WiringData wiring) {
        Wording wording = wiring.wording();
        HouseModel model = wiring.model().house();
        List<List<Cell>> rows = new ArrayList<>();
        if (model.findLeader().isPresent()) {
            Timing timing = model.timing();
            Changeover changeover = Changeover.of(model);
            row(rows, wording, "loss", changeover.noticingTimeS());
            row(rows, wording, "separated", changeover.separatingTimeS());
            if (!wiring.installation().neutralEarthSwitches().isEmpty())
                row(rows, wording, "earthed", changeover.earthingTimeS());
            row(rows, wording, "forming", changeover.formingTimeS());
            row(rows, wording, "sum", changeover.sumTimeS());
            row(rows, wording, "longest", timing.feedbackTimeS());
            row(rows, wording, "observed", timing.observationTimeS());
        }
        return new Listing(
                name(),
                wording.text("model.changeover"),
                List.of(wording.text(rows.isEmpty() ? "model.none" : "model.changeover.how")),
                List.of(
                        Column.data("stage"),
                        Column.toRead(wording.text("model.what"), 120),
                        Column.numbers("timeS", wording.text("model.time"), 30)),
                rows.isEmpty() ? List.of() : List.of(new Listing.Group("", rows)));
    }

    private static void row(List<List<Cell>> rows, Wording wording, String stage, double timeS) {
        rows.add(List.of(
                Cell.of(stage), Cell.of(wording.text("model.changeover." + stage)), Cell.of(timeS, Unit.S, wording)));
    }

    private static Listing hazards(WiringData wiring) {
        Wording wording = wiring.wording();
        HouseModel model = wiring.model().house();
        List<List<Cell>> rows = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        if (model.findLeader().isEmpty()) notes.add(wording.text("model.none"));
        else {
            Reached reached = HazardSearch.search(model, Defect.NONE, When.ANY_TIME);
            notes.add(wording.text("model.hazards.how", String.valueOf(reached.moments())));
            if (!reached.isWhole()) notes.add(wording.text("model.hazards.part"));
            for (Hazard hazard : Hazard.values())
                reached.find(hazard).ifPresent(exposure -> rows.add(cells(hazard, exposure, wording)));
            if (rows.isEmpty()) notes.add(wording.text("model.hazards.none"));
        }
        return new Listing(
                "hazards",
                wording.text("model.hazards"),
                notes,
                List.of(
                        Column.words("hazard", wording.text("model.hazard"), 80),
                        Column.numbers("longestS", wording.text("model.longest"), 24),
                        Column.words("phase", wording.text("model.meanwhile"), 60),
                        Column.words("after", wording.text("model.after"), 80)),
                rows.isEmpty() ? List.of() : List.of(new Listing.Group("", rows)));
    }

    private static List<Cell> cells(Hazard hazard, Exposure exposure, Wording wording) {
        List<String> after = exposure.happenings().stream().map(wording::word).toList();
        Double longestS = Double.isFinite(exposure.longestS()) ? exposure.longestS() : null;
        return List.of(
                Cell.of(wording.word(hazard), hazard.name()),
                new Cell(longestS == null ? wording.text("model.stays") : wording.amount(longestS, Unit.S), longestS),
                Cell.of(exposure.phase(), wording),
                Cell.of(String.join(", ", after)));
    }
}
