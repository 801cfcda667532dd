package tideover.engine.protection.selectivity;

/**
 * Up to which current two overcurrent devices in series are selective on a short circuit.
 *
 * @param currentA limit [A]; 0 if they are not from where the device behind opens at once
 * @param beyond   what is known above it
 */
public record SelectiveLimit(double currentA, Beyond beyond) {

    /** What is known of currents above the limit. */
    public enum Beyond {
        /** Both open at once: that is how they are built. */
        BOTH_OPEN,
        /** The device before melts by energy; the standards do not say how much the one behind lets through. */
        NOT_KNOWN
    }
}
