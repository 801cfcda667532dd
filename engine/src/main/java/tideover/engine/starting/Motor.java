package tideover.engine.starting;

import java.util.List;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.StartKind;

/**
 * A motor that starts.
 *
 * @param thing                 at whose terminals: its circuit, or a board or inverter for one that is only thought of
 * @param lines                 on which lines
 * @param start                 how
 * @param runningA              current of each line once it runs [A]
 * @param powerFactorRatio      cos φ then
 * @param startRatio            starting current over running current, at least 1
 * @param startPowerFactorRatio cos φ while it starts
 * @param timeS                 duration of the start [s]
 */
public record Motor(
        Fed thing,
        List<Conductor> lines,
        StartKind start,
        double runningA,
        double powerFactorRatio,
        double startRatio,
        double startPowerFactorRatio,
        double timeS) {

    public Motor {
        if (!(runningA >= 0) || !(startRatio > 0) || !(timeS >= 0))
            throw new IllegalArgumentException("%s runs with %s A, starts with %s times that for %s s"
                    .formatted(thing.id(), runningA, startRatio, timeS));
        lines = List.copyOf(lines);
    }

    /** Current of each line while it starts, at nominal voltage [A]. */
    public double startA() {
        return startsWithoutInrush() ? runningA : startRatio * runningA;
    }

    /** Whether its start asks for no more than its service: a converter that ramps up, or takes some milliseconds. */
    public boolean startsWithoutInrush() {
        return startRatio <= 1 || timeS == 0;
    }

    /** The same kind of motor with another running current. */
    Motor withRunningA(double otherA) {
        return new Motor(thing, lines, start, otherA, powerFactorRatio, startRatio, startPowerFactorRatio, timeS);
    }

    /** The same motor at the terminals of another thing. */
    Motor at(Fed place) {
        return new Motor(place, lines, start, runningA, powerFactorRatio, startRatio, startPowerFactorRatio, timeS);
    }

    Currents running() {
        return Currents.on(lines, runningA, powerFactorRatio);
    }

    Currents starting() {
        return startsWithoutInrush() ? running() : Currents.on(lines, startA(), startPowerFactorRatio);
    }
}
