package tideover.engine.starting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.installation.View;
import tideover.engine.network.Demand;
import tideover.engine.network.StartTable;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Load;
import tideover.engine.site.LoadKind;
import tideover.engine.site.OperatingState;
import tideover.engine.site.PerLine;
import tideover.engine.site.StartKind;

/** The motors of a house: their own figures, else those of the table for their kind of start. */
final class Motors {

    private final Installation installation;
    private final Demand demand;
    private final StartTable table;

    Motors(Installation installation, Demand demand, StartTable table) {
        this.installation = installation;
        this.demand = demand;
        this.table = table;
    }

    /** Circuits with a motor that an island source feeds. */
    static List<Circuit> thatStayOn(Installation installation) {
        View island = installation.in(OperatingState.ISLAND_GRID_DEAD);
        List<Circuit> all = new ArrayList<>();
        for (Circuit circuit : installation.circuits())
            if (has(circuit) && island.findSource(circuit).isPresent()) all.add(circuit);
        return all;
    }

    /** Whether a circuit feeds a motor, or something that nearly always is one. */
    static boolean has(Circuit circuit) {
        Load load = circuit.load();
        if (load == null) return false;
        if (load.start() != null) return load.start() != StartKind.NONE;
        return load.kind() == LoadKind.PUMP || load.kind() == LoadKind.MOTOR || load.kind() == LoadKind.HEAT_PUMP;
    }

    /** The motor of a circuit; nothing where its power is not known. */
    Optional<Motor> find(Circuit circuit, Bound bound) {
        Load load = circuit.load();
        Optional<PerLine> runningA = demand.findCurrentA(circuit);
        if (load == null || runningA.isEmpty()) return Optional.empty();
        StartKind start =
                load.start() != null ? load.start() : bound == Bound.WORST ? StartKind.DIRECT : StartKind.NONE;
        Motor typical = typical(
                circuit,
                installation.lines(circuit.id()),
                start,
                runningA.get().largest(),
                powerFactorRatio(circuit),
                bound);
        return Optional.of(new Motor(
                circuit,
                typical.lines(),
                start,
                typical.runningA(),
                typical.powerFactorRatio(),
                stated(load.startCurrentRatio(), typical.startRatio()),
                typical.startPowerFactorRatio(),
                stated(load.startTimeS(), typical.timeS())));
    }

    /** A motor by the table alone. While it starts the largest power factor counts: it adds most to what others draw. */
    Motor typical(
            Fed thing, List<Conductor> lines, StartKind start, double runningA, double powerFactorRatio, Bound bound) {
        StartTable.Row row = table.require(start);
        boolean worst = bound == Bound.WORST;
        return new Motor(
                thing,
                lines,
                start,
                runningA,
                powerFactorRatio,
                worst ? row.largestRatio() : row.smallestRatio(),
                row.largestPowerFactorRatio(),
                worst ? row.longestS() : row.shortestS());
    }

    /** What of a motor is taken from the table because nobody has stated it. */
    List<FactId> missing(Circuit circuit) {
        List<FactId> missing = new ArrayList<>(0);
        Load load = circuit.load();
        if (load == null) return missing;
        if (load.start() == null) missing.add(circuit.fact("load.start"));
        if (load.startCurrentRatio() == null) missing.add(circuit.fact("load.startCurrentRatio"));
        if (load.startTimeS() == null && load.start() != StartKind.INVERTER)
            missing.add(circuit.fact("load.startTimeS"));
        return missing;
    }

    static double powerFactorRatio(Circuit circuit) {
        Load load = circuit.load();
        return load == null || load.powerFactorRatio() == null ? 1 : load.powerFactorRatio();
    }

    private static double stated(@Nullable Double own, double table) {
        return own == null ? table : own;
    }
}
