package tideover.engine.protection.shortcircuit;

import static tideover.engine.rules.PhraseArg.amount;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.network.AdiabaticTable;
import tideover.engine.network.Upstream;
import tideover.engine.protection.Clearing;
import tideover.engine.protection.Extreme;
import tideover.engine.protection.FaultCourse;
import tideover.engine.protection.FaultCourses;
import tideover.engine.protection.FaultKind;
import tideover.engine.protection.Tables;
import tideover.engine.protection.TripCurve;
import tideover.engine.rules.Trace;
import tideover.engine.rules.Unit;
import tideover.engine.site.Cable;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Insulation;
import tideover.engine.site.Material;
import tideover.engine.site.OperatingState;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.OvercurrentKind;

/**
 * What a fault does to a conductor until it is cleared: its Joule integral.
 *
 * @param currentA r.m.s. [A]
 * @param heatA2s  Joule integral [A²s]; +infinity where nothing clears it within the time the equation holds for
 * @param missing  facts that might make it less
 * @see "IEC 60364-4-43:2008, 434.5.2; IEC 60364-5-54:2011, 543.1.2"
 */
record FaultHeat(double currentA, double heatA2s, List<FactId> missing) {

    /** Beyond this heat goes out of the conductor and the equation no longer holds (434.5.2) [s]. */
    private static final double LONGEST_S = 5;

    FaultHeat {
        missing = List.copyOf(missing);
    }

    /**
     * At the beginning of a conductor, where most flows: what the device lets through.
     *
     * @param breaking the device before the conductor, which breaks what may flow
     */
    static FaultHeat atBeginning(Tables tables, Breaking breaking) {
        OvercurrentDevice device = breaking.ending();
        double currentA = breaking.prospective().currentA();
        double byCurveA2s = tables.tripCurves()
                .find(device)
                .map(curve -> byCurveA2s(curve, currentA))
                .orElse(Double.POSITIVE_INFINITY);
        double heatA2s = tables.letThrough().find(device, currentA).orElse(byCurveA2s);
        return new FaultHeat(
                currentA, heatA2s, missing(breaking.backup() == null ? breaking.device() : breaking.backup()));
    }

    private static List<FactId> missing(Upstream device) {
        List<FactId> missing = new ArrayList<>(0);
        OvercurrentDevice own = device.device();
        if (own.ratedCurrentA() == null) missing.add(device.ratedCurrent());
        if (own.kind() == null) missing.add(device.fact("kind"));
        if (own.kind() == OvercurrentKind.MCB && own.curve() == null) missing.add(device.curve());
        if (own.kind() == OvercurrentKind.MCB && own.energyLimitingClass() == null)
            missing.add(device.fact("energyLimitingClass"));
        return missing;
    }

    /** At the end of a thing's cable, where least flows and devices take longest: the worst of some kinds of fault. */
    static FaultHeat atEnd(FaultCourses faults, Fed fed, List<FaultKind> kinds) {
        FaultHeat worst = new FaultHeat(0, 0, List.of());
        for (FaultKind kind : kinds)
            for (FaultCourse course : faults.courses(kind, fed, OperatingState.CONNECTED, Extreme.SMALLEST, 0)) {
                double heatA2s = heatA2s(course.currentA(), course.clearing().latestS());
                if (course.currentA() == 0 || heatA2s < worst.heatA2s) continue;
                List<FactId> missing =
                        course.clearing() instanceof Clearing.Unknown unknown ? unknown.facts() : course.missing();
                worst = new FaultHeat(course.currentA(), heatA2s, missing);
            }
        return worst;
    }

    private static double byCurveA2s(TripCurve curve, double currentA) {
        return heatA2s(currentA, curve.latestS(currentA));
    }

    private static double heatA2s(double currentA, double timeS) {
        return timeS > LONGEST_S ? Double.POSITIVE_INFINITY : currentA * currentA * timeS;
    }

    /** Whether nothing clears it within the time for which the equation holds. */
    boolean isUnending() {
        return heatA2s == Double.POSITIVE_INFINITY;
    }

    /** Takes down both ends of a cable. */
    static void explain(FaultHeat beginning, FaultHeat end, Trace trace) {
        if (!trace.isOn()) return;
        trace.line(
                "calculation.shortCircuit.beginning",
                amount(beginning.currentA, Unit.A),
                amount(beginning.heatA2s, Unit.A2S));
        if (end.isUnending()) trace.line("calculation.shortCircuit.unending", amount(end.currentA, Unit.A));
        else trace.line("calculation.shortCircuit.end", amount(end.currentA, Unit.A), amount(end.heatA2s, Unit.A2S));
    }

    /**
     * What a core of a cable bears without loss of heat, k²S².
     *
     * @param crossSectionMm2 of the core [mm²]
     * @return Joule integral [A²s]
     */
    static double withstandA2s(Tables tables, Cable cable, double crossSectionMm2) {
        double k = k(tables, cable);
        return k * k * crossSectionMm2 * crossSectionMm2;
    }

    /** The k of a core [A·√s/mm²]; of a protective conductor too: where it lies on its own it bears more. */
    static double k(Tables tables, Cable cable) {
        return tables.adiabatic()
                .k(
                        cable.material() == null ? Material.COPPER : cable.material(),
                        cable.insulation() == null ? Insulation.PVC : cable.insulation(),
                        AdiabaticTable.Use.CORE);
    }

    /** Longest time a current may flow in what bears so much [s]. */
    static double longestS(double withstandA2s, double currentA) {
        return Math.min(LONGEST_S, withstandA2s / (currentA * currentA));
    }
}
