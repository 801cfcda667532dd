package tideover.engine.wiring.model;

/** What can be read, and how much it takes. */
public enum ReadingKind {
    /** What the inverter says it is about. */
    MODE(1),
    /** Position indicator of a switching device. */
    POSITION(1),
    /** Whether an input is on, on the device's display. */
    INPUT(1),
    /** Whether an output is on, on the device's display. */
    OUTPUT(1),
    /** Whether an auxiliary contact is closed, by its indicator or measured with its wire lifted. */
    CONTACT(4),
    /** Whether a coil is energised, by its lamp or across its ends. */
    COIL(4),
    /** Whether a meter answers on the bus, on the inverter's display. */
    BUS(1),
    /** Voltage of a line on a meter's display. */
    METER(1),
    /** Setting of a port against the plan. */
    SETTING(2),
    /** Neutral–earth links to be seen at a board. */
    LINK_SEEN(2),
    /** Voltage between two power terminals. */
    VOLTAGE(3),
    /** Phase sequence. */
    ROTATION(3),
    /** Voltage of a control terminal against the reference. */
    CONTROL_VOLTAGE(4),
    /** A load switched in. */
    LOAD(4),
    /** RCD test from line to PE. */
    RCD_TEST(5),
    /** Current in link and protective conductor while a load is switched in. */
    EARTH_CURRENT(5),
    /** Dead, between two power terminals. */
    CONTINUITY(8),
    /** Dead, between the ends of a control core. */
    CORE_CONTINUITY(8),
    /** Dead, across a bus. */
    BUS_RESISTANCE(8);

    private final int effort;

    ReadingKind(int effort) {
        this.effort = effort;
    }

    /** Rough effort; a look is 1. Own choice: only their order matters. */
    public int effort() {
        return effort;
    }
}
