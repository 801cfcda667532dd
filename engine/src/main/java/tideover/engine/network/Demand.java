package tideover.engine.network;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.Load;
import tideover.engine.site.LoadKind;
import tideover.engine.site.PerLine;
import tideover.engine.site.Plan;
import tideover.engine.site.Site;
import tideover.engine.site.ThingId;

/** What circuits draw and inverters feed, per line. Currents are added as if in phase, which is the safe side. */
public final class Demand {

    private final Installation installation;
    private final Coincidence coincidence;
    private final double nominalVoltageV;
    private final Map<ThingId, Optional<PerLine>> currents = new HashMap<>();

    /**
     * @param nominalVoltageV line to neutral [V]
     */
    public Demand(Installation installation, Coincidence coincidence, double nominalVoltageV) {
        this.installation = installation;
        this.coincidence = coincidence;
        this.nominalVoltageV = nominalVoltageV;
    }

    /**
     * Largest current of one circuit on each of its lines: as logged, else from its power.
     *
     * @return current [A]; nothing where the load is not known
     */
    public Optional<PerLine> findCurrentA(Circuit circuit) {
        Optional<PerLine> known = currents.get(circuit.id());
        if (known == null) {
            known = compute(circuit);
            currents.put(circuit.id(), known);
        }
        return known;
    }

    private Optional<PerLine> compute(Circuit circuit) {
        Load load = circuit.load();
        List<Conductor> lines = installation.lines(circuit.id());
        if (load == null || lines.isEmpty()) return Optional.empty();
        if (load.demandCurrentA() != null) return Optional.of(on(lines, load.demandCurrentA()));
        if (load.powerW() == null) return Optional.empty();
        double powerFactorRatio = load.powerFactorRatio() == null ? 1 : load.powerFactorRatio();
        // Two lines without a neutral carry the power at the voltage between them; else each line takes its share.
        boolean lineToLine = lines.size() == 2 && !circuit.has(Conductor.N) && !circuit.has(Conductor.PEN);
        double voltageV = lineToLine ? Math.sqrt(3) * nominalVoltageV : lines.size() * nominalVoltageV;
        return Optional.of(on(lines, load.powerW() / (voltageV * powerFactorRatio)));
    }

    /** Line to neutral [V]. */
    public double nominalVoltageV() {
        return nominalVoltageV;
    }

    /** What a circuit's current rests on. */
    public List<FactId> facts(Circuit circuit) {
        if (circuit.load() != null && circuit.load().demandCurrentA() != null)
            return List.of(circuit.fact("load.demandCurrentA"));
        return List.of(circuit.fact("load.powerW"), circuit.fact("load.powerFactorRatio"));
    }

    /** What of a circuit's load is missing to know its current. */
    public List<FactId> missing(Circuit circuit) {
        return findCurrentA(circuit).isPresent() ? List.of() : List.of(circuit.fact("load.powerW"));
    }

    /** Worst credible current of several circuits together on each line [A]; circuits without a known load are left out. */
    public PerLine togetherA(Collection<Circuit> circuits) {
        return new PerLine(
                togetherA(circuits, Conductor.L1),
                togetherA(circuits, Conductor.L2),
                togetherA(circuits, Conductor.L3));
    }

    private double togetherA(Collection<Circuit> circuits, Conductor line) {
        Circuit largest = largestSockets(circuits, line);
        double sum = 0;
        for (Circuit circuit : circuits) {
            double currentA = findCurrentA(circuit).map(each -> each.of(line)).orElse(0.0);
            if (currentA > 0) sum += ratio(why(circuit, largest)) * currentA;
        }
        return sum;
    }

    /**
     * What each of several circuits adds to the worst credible current together, on each of its lines, and why so much.
     * Circuits without a known load are left out.
     */
    public List<Share> shares(Collection<Circuit> circuits) {
        List<Share> shares = new ArrayList<>(2 * circuits.size());
        for (Conductor line : List.of(Conductor.L1, Conductor.L2, Conductor.L3)) {
            Circuit largest = largestSockets(circuits, line);
            for (Circuit circuit : circuits) {
                double currentA =
                        findCurrentA(circuit).map(each -> each.of(line)).orElse(0.0);
                if (currentA <= 0) continue;
                Share.Reason reason = why(circuit, largest);
                shares.add(new Share(circuit, line, currentA, ratio(reason), reason));
            }
        }
        return shares;
    }

    /**
     * Largest current in a neutral over which several circuits return. Of their fundamental currents those on one line
     * count, as nothing may be drawn on the others; a load on three lines leaves none. Third harmonics add, whatever the
     * line.
     *
     * @param shares what each adds on each line
     * @see "IEC 60364-5-52:2009, 523.6 and Annex E"
     */
    public static NeutralCurrent neutralCurrent(Collection<Share> shares) {
        double[] unbalanceA = new double[3];
        double thirdA = 0;
        Map<ThingId, Integer> lines = new HashMap<>();
        for (Share share : shares) lines.merge(share.circuit().id(), 1, Integer::sum);
        for (Share share : shares) {
            if (!share.circuit().has(Conductor.N) && !share.circuit().has(Conductor.PEN)) continue;
            Double ratio = thirdHarmonicRatio(share.circuit());
            double third = ratio == null ? 0 : ratio;
            thirdA += third * share.addedA();
            if (lines.getOrDefault(share.circuit().id(), 0) < 3)
                unbalanceA[share.line().ordinal()] += Math.sqrt(1 - third * third) * share.addedA();
        }
        double largestA = Math.max(unbalanceA[0], Math.max(unbalanceA[1], unbalanceA[2]));
        return new NeutralCurrent(largestA, thirdA);
    }

    private static @Nullable Double thirdHarmonicRatio(Circuit circuit) {
        return circuit.load() == null ? null : circuit.load().thirdHarmonicRatio();
    }

    private @Nullable Circuit largestSockets(Collection<Circuit> circuits, Conductor line) {
        Circuit largest = null;
        double largestA = 0;
        for (Circuit circuit : circuits) {
            Load load = circuit.load();
            if (load == null || load.kind() != LoadKind.SOCKETS || load.demandCurrentA() != null) continue;
            double currentA = findCurrentA(circuit).map(each -> each.of(line)).orElse(0.0);
            // Of two alike the first by its id, whatever the order in the file.
            boolean isFirst = largest == null || circuit.id().compareTo(largest.id()) < 0;
            if (currentA < largestA || currentA == largestA && !(isFirst && currentA > 0)) continue;
            largest = circuit;
            largestA = currentA;
        }
        return largest;
    }

    private static Share.Reason why(Circuit circuit, @Nullable Circuit largestSockets) {
        Load load = circuit.load();
        if (load != null && load.demandCurrentA() != null) return Share.Reason.LOGGED;
        if (load != null && load.kind() == LoadKind.LIGHTING) return Share.Reason.LIGHTING;
        if (load == null || load.kind() != LoadKind.SOCKETS) return Share.Reason.IN_FULL;
        return largestSockets != null && circuit.id().equals(largestSockets.id())
                ? Share.Reason.LARGEST_SOCKETS
                : Share.Reason.FURTHER_SOCKETS;
    }

    private double ratio(Share.Reason reason) {
        return switch (reason) {
            case LOGGED, LARGEST_SOCKETS, IN_FULL -> 1;
            case FURTHER_SOCKETS -> coincidence.furtherSocketsRatio();
            case LIGHTING -> coincidence.lightingRatio();
        };
    }

    /**
     * Largest current an inverter feeds on each of its lines.
     *
     * @return current [A]; nothing where no rating is known
     */
    public Optional<PerLine> findFeedInA(Inverter inverter) {
        List<Conductor> lines = installation.lines(inverter.id());
        if (lines.isEmpty()) return Optional.empty();
        Double powerVa = inverter.feedInPowerW() != null ? inverter.feedInPowerW() : inverter.ratedPowerVa();
        if (powerVa != null) return Optional.of(on(lines, powerVa / (lines.size() * nominalVoltageV)));
        return Optional.ofNullable(inverter.lineCurrentA()).map(currentA -> on(lines, currentA));
    }

    /** The demand of the house as found, nothing of the plan carried out. */
    public Demand asFound() {
        Site site = installation.site();
        Site found = new Site(site.house(), Plan.NONE, site.evidence());
        return new Demand(Installation.of(found), coincidence, nominalVoltageV);
    }

    /** Largest current the supply cable of a thing carries when connected: what is drawn or what is fed back, which never add [A]. */
    public double carriedA(ThingId thing) {
        PerLine fedA = PerLine.ZERO;
        for (Inverter inverter : invertersBehind(thing))
            fedA = fedA.plus(findFeedInA(inverter).orElse(PerLine.ZERO));
        return Math.max(togetherA(circuitsBehind(thing)).largest(), fedA.largest());
    }

    /** Circuits fed through a thing in the connected mode, itself included. */
    public List<Circuit> circuitsBehind(ThingId thing) {
        List<Circuit> behind = new ArrayList<>();
        for (Circuit circuit : installation.circuits())
            if (circuit.id().equals(thing) || installation.isBehind(circuit, thing)) behind.add(circuit);
        return behind;
    }

    /** Inverters connected behind a thing, itself included. */
    public List<Inverter> invertersBehind(ThingId thing) {
        List<Inverter> behind = new ArrayList<>();
        for (Inverter inverter : installation.inverters())
            if (inverter.id().equals(thing) || installation.isBehind((Fed) inverter, thing)) behind.add(inverter);
        return behind;
    }

    private static PerLine on(List<Conductor> lines, double currentA) {
        return new PerLine(
                lines.contains(Conductor.L1) ? currentA : 0,
                lines.contains(Conductor.L2) ? currentA : 0,
                lines.contains(Conductor.L3) ? currentA : 0);
    }
}
