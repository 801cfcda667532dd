package tideover.engine.protection;

import java.util.List;
import tideover.engine.site.FactId;
import tideover.engine.site.ThingId;

/** How a fault ends: a story in time, not a number. */
public sealed interface Clearing {

    /** Until disconnected, or until the source has left 50 V a.c. or less [s]; +infinity if that never comes for certain. */
    double latestS();

    /**
     * A protective device opens.
     *
     * @param device    thing that holds it
     * @param kind      by residual current or by overcurrent
     * @param earliestS earliest opening [s]
     * @param latestS   latest opening [s]
     */
    record ByDevice(ThingId device, DeviceKind kind, double earliestS, double latestS) implements Clearing {}

    /**
     * The source shuts itself down.
     *
     * @param source   which
     * @param latestS  time [s]
     * @param voltageLeftV line to earth after that [V]
     */
    record BySourceShutdown(ThingId source, double latestS, double voltageLeftV) implements Clearing {}

    /** Nothing ends it for certain. */
    record Never() implements Clearing {
        @Override
        public double latestS() {
            return Double.POSITIVE_INFINITY;
        }
    }

    /**
     * Facts are missing to say.
     *
     * @param facts which
     */
    record Unknown(List<FactId> facts) implements Clearing {
        public Unknown {
            facts = List.copyOf(facts);
        }

        @Override
        public double latestS() {
            return Double.POSITIVE_INFINITY;
        }
    }

    /** What opens a device. */
    enum DeviceKind {
        RESIDUAL_CURRENT,
        OVERCURRENT
    }
}
