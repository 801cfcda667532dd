package tideover.engine.wiring.schedule;

/** A device of the same thing that a conductor passes between its two ends, in this order. */
public enum Via {
    OVERCURRENT_DEVICE,
    RESIDUAL_DEVICE,
    MEASURING_FUSE
}
