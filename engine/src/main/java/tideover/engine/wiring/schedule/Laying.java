package tideover.engine.wiring.schedule;

/** How a conductor comes to be where it is. */
public enum Laying {
    /** A core of a cable laid for this job. */
    CABLE,
    /** A single wire laid for this job. */
    WIRE,
    /** Found in the house and connected anew; colours and sections are as found. */
    EXISTING,
    /** No cable: a busbar, a bridge, or a device that sits directly at the one before it. */
    DIRECT;

    /** Whether it is laid for this job. */
    public boolean isNew() {
        return this == CABLE || this == WIRE;
    }
}
