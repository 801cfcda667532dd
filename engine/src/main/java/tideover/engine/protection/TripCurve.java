package tideover.engine.protection;

import java.util.List;
import tideover.engine.rules.Source;

/**
 * What the product standard guarantees of an overcurrent device: it waits at least, it has opened at the latest.
 *
 * <p>Currents are r.m.s. in one pole and stay as they are; times count from the start of the current, from cold.
 */
public sealed interface TripCurve permits BreakerCurve, FuseCurve {

    /**
     * What a standard states for one current.
     *
     * @param currentA r.m.s. [A]
     * @param timeS    opened within it, or not [s]
     */
    record Point(double currentA, double timeS, Source source) {}

    /** Rated current, I_n [A]. */
    double ratedCurrentA();

    /** Earliest opening at a current [s]; +infinity if it never opens, 0 if it may open at once. */
    double earliestS(double currentA);

    /** Latest opening at a current [s]; +infinity if opening is not guaranteed. */
    double latestS(double currentA);

    /**
     * Current that opens the device within a time for certain, the I_a of IEC 60364-4-41.
     *
     * @param timeS above 0 [s]
     * @return current [A]; +infinity if the standard guarantees no such time
     */
    double currentForDisconnectionA(double timeS);

    /** Current that opens the device within the conventional time, the I_2 of IEC 60364-4-43, 433.1 [A]. */
    double conventionalTrippingCurrentA();

    /** Where the current of {@link #currentForDisconnectionA} for a time stands. */
    Source source(double timeS);

    /** All that the standards state of one kind, smallest current first. */
    List<Point> points(Guarantee guarantee);
}
