package tideover.web.circuits;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.installation.Installation;
import tideover.engine.network.Demand;
import tideover.engine.rules.Outcome;
import tideover.engine.rules.Unit;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Inverter;
import tideover.engine.site.PerLine;
import tideover.papers.Wording;
import tideover.web.circuits.Sheet.LineLoad;
import tideover.web.work.Work;

/** What the circuits that stay on may draw from each line at once, against what the inverters give: studied, not judged. */
final class LineLoads {
    /** How full a bar is at the source's current: room is left to show what is too much. */
    private static final int MARK_PERCENT = 82;

    private LineLoads() {}

    /** One for each line that an inverter can form; none while nobody knows enough. */
    static List<LineLoad> of(Work work, Wording words) {
        Installation installation = work.installation();
        Demand demand = work.atOnce().studies().demand();
        if (demand == null) return List.of();
        List<Circuit> staying =
                installation.circuits().stream().filter(installation::staysOn).toList();
        PerLine drawnA = demand.togetherA(staying);
        List<LineLoad> loads = new ArrayList<>();
        for (Conductor line : List.of(Conductor.L1, Conductor.L2, Conductor.L3)) {
            double givenA = givenA(installation, line);
            double lineA = drawnA.of(line);
            if (givenA <= 0 && lineA <= 0) continue;
            boolean enough = lineA <= givenA;
            int percent = givenA <= 0 ? 100 : (int) Math.min(100, Math.round(MARK_PERCENT * lineA / givenA));
            loads.add(new LineLoad(
                    words.word(line),
                    words.text("circuits.load", words.amount(lineA, Unit.A), words.amount(givenA, Unit.A)),
                    words.sign(enough ? Outcome.MET : Outcome.NOT_MET),
                    enough ? "met" : "not-met",
                    percent,
                    MARK_PERCENT));
        }
        return loads;
    }

    private static double givenA(Installation installation, Conductor line) {
        double sumA = 0;
        for (Inverter inverter : installation.formingInverters()) {
            Double currentA = inverter.lineCurrentA();
            if (currentA != null && inverter.has(line)) sumA += currentA;
        }
        return sumA;
    }
}
