package tideover.engine.network;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Installation;
import tideover.engine.site.Cable;
import tideover.engine.site.Conductor;
import tideover.engine.site.Electrode;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Insulation;
import tideover.engine.site.Material;
import tideover.engine.site.Supply;
import tideover.engine.site.Thing;

/** Impedance of each edge of the netlist; contacts and busbars count as nothing. */
public final class Impedances {

    /** Weight of a run nobody has surveyed: avoided where there is another way, and named where there is none [Ω]. */
    private static final double UNKNOWN_OHM = 1e6;

    /**
     * For what nobody has measured of the network, its loop and its earth: worse than any network's, so that no overcurrent
     * device may rely on it, while a residual current device still acts [Ω] (own choice).
     */
    public static final double UNMEASURED_NETWORK_OHM = 100;

    private final double[] resistanceOhm;
    private final double[] reactanceOhm;
    private final List<List<FactId>> missing;

    /**
     * @param temperatureDegC conductor temperature of PVC-insulated cables [°C]; XLPE adds the 20 K it may run warmer
     */
    public Impedances(Installation installation, ConductorTable table, double temperatureDegC) {
        this(installation, table, temperatureDegC, temperatureDegC + 20, UNKNOWN_OHM);
    }

    /**
     * For what flows in service: a run nobody has surveyed counts as nothing, so that no drop is claimed that nobody knows
     * of.
     */
    public static Impedances inService(Installation installation, ConductorTable table, double temperatureDegC) {
        return new Impedances(installation, table, temperatureDegC, temperatureDegC + 20, 0);
    }

    /** Impedances before anything has flowed: all conductors at one temperature [°C]. */
    public static Impedances cold(Installation installation, ConductorTable table, double temperatureDegC) {
        return new Impedances(installation, table, temperatureDegC, temperatureDegC, UNKNOWN_OHM);
    }

    private Impedances(
            Installation installation, ConductorTable table, double pvcDegC, double xlpeDegC, double unknownRunOhm) {
        List<Edge> edges = installation.edges();
        resistanceOhm = new double[edges.size()];
        reactanceOhm = new double[edges.size()];
        missing = new ArrayList<>(edges.size());
        for (Edge edge : edges) {
            List<FactId> facts = missingFacts(edge);
            missing.add(facts);
            if (facts.isEmpty()) fill(edge, table, pvcDegC, xlpeDegC);
            else resistanceOhm[edge.index()] = unknownOhm(edge, unknownRunOhm);
        }
    }

    /**
     * Absolute value of the impedance of an edge [Ω]; very large where a fact is missing. Adding absolute values along a
     * path gives no less than the true sum, which is the safe side for fault currents.
     */
    public double ohm(Edge edge) {
        int index = edge.index();
        return reactanceOhm[index] == 0 ? resistanceOhm[index] : Math.hypot(resistanceOhm[index], reactanceOhm[index]);
    }

    /** Resistance of an edge [Ω]; very large where a fact is missing. */
    public double resistanceOhm(Edge edge) {
        return resistanceOhm[edge.index()];
    }

    /** Reactance of an edge at 50 Hz [Ω]. */
    public double reactanceOhm(Edge edge) {
        return reactanceOhm[edge.index()];
    }

    /** Facts without which the impedance of an edge is not known. */
    public List<FactId> missing(Edge edge) {
        return missing.get(edge.index());
    }

    private static double unknownOhm(Edge edge, double unknownRunOhm) {
        return switch (edge.part()) {
            case NETWORK_EARTH -> UNMEASURED_NETWORK_OHM;
            case FEED -> unknownRunOhm;
            case ELECTRODE, THROUGH, CONTACT, BY_PASS, SPLIT_NEUTRAL, SPLIT_EARTH, LINK, LINK_SWITCH, BOND ->
                UNKNOWN_OHM;
        };
    }

    private static List<FactId> missingFacts(Edge edge) {
        Thing thing = edge.thing();
        switch (edge.part()) {
            case FEED -> {
                Cable cable = ((Fed) thing).cable();
                if (cable == null || (cable.lengthM() != null && cable.crossSectionMm2() != null)) return List.of();
                List<FactId> facts = new ArrayList<>(2);
                if (cable.lengthM() == null) facts.add(thing.fact("cable.lengthM"));
                if (cable.crossSectionMm2() == null) facts.add(thing.fact("cable.crossSectionMm2"));
                return facts;
            }
            case ELECTRODE -> {
                return ((Electrode) thing).resistanceOhm() == null ? List.of(thing.fact("resistanceOhm")) : List.of();
            }
            case NETWORK_EARTH -> {
                return ((Supply) thing).networkElectrodeOhm() == null
                        ? List.of(thing.fact("networkElectrodeOhm"))
                        : List.of();
            }
            case THROUGH, CONTACT, BY_PASS, SPLIT_NEUTRAL, SPLIT_EARTH, LINK, LINK_SWITCH, BOND -> {
                return List.of();
            }
        }
        throw new IllegalStateException("no such part " + edge.part());
    }

    private void fill(Edge edge, ConductorTable table, double pvcDegC, double xlpeDegC) {
        switch (edge.part()) {
            case FEED -> {
                Cable cable = ((Fed) edge.thing()).cable();
                if (cable != null)
                    fill(
                            edge.index(),
                            cable,
                            edge.conductor(),
                            table,
                            cable.insulation() == Insulation.XLPE ? xlpeDegC : pvcDegC);
            }
            case ELECTRODE -> resistanceOhm[edge.index()] = known(((Electrode) edge.thing()).resistanceOhm());
            case NETWORK_EARTH -> resistanceOhm[edge.index()] = known(((Supply) edge.thing()).networkElectrodeOhm());
            case THROUGH, CONTACT, BY_PASS, SPLIT_NEUTRAL, SPLIT_EARTH, LINK, LINK_SWITCH, BOND -> {}
        }
    }

    private void fill(int index, Cable cable, Conductor conductor, ConductorTable table, double temperatureDegC) {
        double lineMm2 = known(cable.crossSectionMm2());
        Double own = conductor.isProtective()
                ? cable.protectiveCrossSectionMm2()
                : conductor == Conductor.N ? cable.neutralCrossSectionMm2() : null;
        double crossSectionMm2 = own == null ? lineMm2 : own;
        Material material = cable.material() == null ? Material.COPPER : cable.material();
        double lengthKm = known(cable.lengthM()) / 1000;
        resistanceOhm[index] = lengthKm * table.resistanceOhmPerKm(material, crossSectionMm2, temperatureDegC);
        reactanceOhm[index] = lengthKm * table.reactanceOhmPerKm(crossSectionMm2);
    }

    private static double known(@Nullable Double value) {
        if (value == null) throw new IllegalStateException("asked for a fact that is missing");
        return value;
    }
}
