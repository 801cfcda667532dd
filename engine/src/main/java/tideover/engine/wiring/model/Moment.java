package tideover.engine.wiring.model;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** One moment of a run and how long hazards have lasted by then; two that are equal go on alike. */
final class Moment {

    private static final double PER_SECOND = 1e6;

    private final long[] parts;

    /**
     * Takes all that decides how a run goes on; times are told apart down to a microsecond.
     *
     * @param sinceS how long each hazard has lasted; empty where that does not matter [s]
     */
    Moment(Machine machine, double[] sinceS) {
        double[] movingS = machine.movingS();
        long[] tripped = machine.tripped();
        parts = new long[4 + movingS.length + tripped.length + sinceS.length];
        int next = 0;
        parts[next++] = machine.gatesNow();
        parts[next++] = machine.mechanisms() << 8 | machine.phase().ordinal();
        parts[next++] = machine.surroundings().bits();
        parts[next++] = ticks(machine.timeLeftS());
        for (double seconds : movingS) parts[next++] = ticks(seconds);
        for (long devices : tripped) parts[next++] = devices;
        for (double seconds : sinceS) parts[next++] = ticks(seconds);
    }

    private static long ticks(double seconds) {
        return Double.isInfinite(seconds) ? Long.MAX_VALUE : Math.round(seconds * PER_SECOND);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Moment moment && Arrays.equals(parts, moment.parts);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(parts);
    }
}
