package tideover.engine.protection.selectivity;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.network.Upstream;
import tideover.engine.protection.TripCurve;
import tideover.engine.site.ThingId;

/**
 * All that belongs on the time–current sheet of one circuit, connected and islanded.
 *
 * @param circuit      whose device is nearest to the fault
 * @param devices      overcurrent devices on the way from the grid, the circuit's own last
 * @param rcds         residual current devices on that way
 * @param largestA     largest fault current at the terminals of the circuit's device, connected, r.m.s. [A]; nothing if not known
 * @param smallestA    smallest fault current at the end of the circuit's cable that an overcurrent device has to clear,
 *                     connected, r.m.s. [A]; nothing if not known
 * @param source       island source that feeds the circuit; nothing for a grid-only circuit
 * @param sourceA      what it gives into a short circuit, r.m.s. per line [A]; nothing if not known
 * @param sourceStopsS when it has stopped then [s]; nothing if not known
 * @param withstandA2s what the circuit's conductors bear in up to 5 s, k²S² [A²s]; nothing if not known
 */
public record TimeCurrentPath(
        ThingId circuit,
        List<Device> devices,
        List<Residual> rcds,
        @Nullable Double largestA,
        @Nullable Double smallestA,
        @Nullable ThingId source,
        @Nullable Double sourceA,
        @Nullable Double sourceStopsS,
        @Nullable Double withstandA2s) {
    public TimeCurrentPath {
        devices = List.copyOf(devices);
        rcds = List.copyOf(rcds);
    }

    /** A device with its curve; nothing where kind, curve or rating is not known or no table reaches it. */
    public record Device(Upstream place, @Nullable TripCurve curve) {}

    /**
     * A residual current device.
     *
     * @param holder       thing that holds it
     * @param ratedA       rated residual current [A]; nothing if not known
     * @param latestS      latest opening at it [s]
     * @param quickLatestS latest opening at five times of it [s]
     */
    public record Residual(ThingId holder, @Nullable Double ratedA, double latestS, double quickLatestS) {}

    /** Whether another circuit's sheet would show the same curves: the same devices before a device of the same make-up. */
    boolean looksLike(TimeCurrentPath other) {
        if (devices.size() != other.devices.size()) return false;
        int last = devices.size() - 1;
        for (int i = 0; i < last; i++)
            if (!devices.get(i).place().equals(other.devices.get(i).place())) return false;
        return devices.get(last)
                .place()
                .device()
                .equals(other.devices.get(last).place().device());
    }
}
