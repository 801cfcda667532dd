package tideover.engine.starting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.network.Demand;
import tideover.engine.network.Share;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Load;

/**
 * What one circuit draws when the voltage comes back.
 *
 * @param lines    its lines
 * @param running  once it runs
 * @param starting while it starts; as running where nothing starts
 * @param startS   how long that takes [s]; 0 where nothing starts
 */
record PickUpItem(Circuit circuit, List<Conductor> lines, Currents running, Currents starting, double startS) {

    /**
     * The circuits of an island. What comes back by itself, by thermostat, level or clock, comes in full; what people
     * switch on draws its share, and no more than the sources give beside the rest.
     */
    static List<PickUpItem> of(SourceGroup island, Demand demand, Motors motors, Bound bound) {
        List<PickUpItem> items = new ArrayList<>(island.circuits().size());
        List<Circuit> others = new ArrayList<>();
        Currents anyway = Currents.ZERO;
        for (Circuit circuit : island.circuits()) {
            Optional<Motor> motor = Motors.has(circuit) ? motors.find(circuit, bound) : Optional.empty();
            if (motor.isEmpty() || (motor.get().startsWithoutInrush() && isSwitchedByHand(circuit, bound))) {
                others.add(circuit);
                continue;
            }
            items.add(of(circuit, motor.get()));
            anyway = anyway.plus(motor.get().running());
        }
        List<Share> byHand = new ArrayList<>();
        List<Share> byItself = new ArrayList<>();
        for (Share share : demand.shares(others))
            (isSwitchedByHand(share.circuit(), bound) ? byHand : byItself).add(share);
        for (Share share : byItself)
            anyway = anyway.plus(
                    share.line(), Currents.lagging(share.addedA(), Motors.powerFactorRatio(share.circuit())));
        Base rest = new Base(byHand, island.capacities(), anyway, List.of());
        for (Circuit circuit : others) items.add(of(circuit, byItself, byHand, rest));
        return items;
    }

    private static PickUpItem of(Circuit circuit, Motor motor) {
        return new PickUpItem(
                circuit,
                motor.lines(),
                motor.running(),
                motor.starting(),
                motor.startsWithoutInrush() ? 0 : motor.timeS());
    }

    private static PickUpItem of(Circuit circuit, List<Share> byItself, List<Share> byHand, Base rest) {
        Currents drawn = Currents.ZERO;
        List<Conductor> lines = new ArrayList<>(3);
        double powerFactorRatio = Motors.powerFactorRatio(circuit);
        for (Share share : byItself)
            if (share.circuit().id().equals(circuit.id())) {
                lines.add(share.line());
                drawn = drawn.plus(share.line(), Currents.lagging(share.addedA(), powerFactorRatio));
            }
        for (Share share : byHand)
            if (share.circuit().id().equals(circuit.id())) {
                lines.add(share.line());
                drawn = drawn.plus(share.line(), Currents.lagging(rest.keptA(share), powerFactorRatio));
            }
        return new PickUpItem(circuit, lines, drawn, drawn, 0);
    }

    /** Sockets, cooking, sauna and fixed equipment, unless a compressor starts in it (common practice). */
    private static boolean isSwitchedByHand(Circuit circuit, Bound bound) {
        Load load = circuit.load();
        if (load == null || load.kind() == null) return bound == Bound.BEST;
        return switch (load.kind()) {
            case SOCKETS, FIXED, COOKING, SAUNA -> true;
            case LIGHTING,
                    HEAT_PUMP,
                    WATER_HEATER,
                    CAR_CHARGER,
                    PUMP,
                    MOTOR,
                    VENTILATION,
                    CONTROL,
                    MEDICAL,
                    SUB_SUPPLY -> false;
        };
    }

    /** Whether a motor asks for more while it starts than afterwards. */
    boolean hasStart() {
        return startS > 0;
    }

    /** What it draws when a while has passed since it was switched on. */
    Currents after(double timeS) {
        return startS >= timeS ? starting : running;
    }
}
