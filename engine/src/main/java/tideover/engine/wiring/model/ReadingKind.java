package tideover.engine.wiring.model;

import java.util.List;

/** What can be read, and how much it takes. */
public enum ReadingKind {
    /** What the inverter says it is about. */
    MODE(1, Shown.CONNECTED, Shown.ISLAND, Shown.WAITING, Shown.STOPPED, Shown.LOCKED_OUT, Shown.UNSETTLED),
    /** Position indicator of a switching device. */
    POSITION(1, Shown.CLOSED, Shown.OPEN),
    /** Whether an input is on, on the device's display. */
    INPUT(1, Shown.ON, Shown.OFF),
    /** Whether an output is on, on the device's display. */
    OUTPUT(1, Shown.ON, Shown.OFF),
    /** Whether an auxiliary contact is closed, by its indicator or measured with its wire lifted. */
    CONTACT(4, Shown.CLOSED, Shown.OPEN),
    /** Whether a coil is energised, by its lamp or across its ends. */
    COIL(4, Shown.ON, Shown.OFF),
    /** Whether a meter answers on the bus, on the inverter's display. */
    BUS(1, Shown.ANSWERS, Shown.SILENT),
    /** Voltage of a line on a meter's display. */
    METER(1, Shown.LINE_VOLTAGE, Shown.LINE_TO_LINE_VOLTAGE, Shown.NO_VOLTAGE, Shown.FLOATING, Shown.UNSTEADY),
    /** Setting of a port against the plan. */
    SETTING(2, Shown.AS_PLANNED, Shown.OTHERWISE),
    /** Neutral–earth links to be seen at a board. */
    LINK_SEEN(2, Shown.AS_PLANNED, Shown.OTHERWISE),
    /** Voltage between two power terminals. */
    VOLTAGE(3, Shown.LINE_VOLTAGE, Shown.LINE_TO_LINE_VOLTAGE, Shown.NO_VOLTAGE, Shown.FLOATING, Shown.UNSTEADY),
    /** Phase sequence. */
    ROTATION(3, Shown.CLOCKWISE, Shown.ANTICLOCKWISE, Shown.NO_VOLTAGE),
    /** Voltage of a control terminal against the reference. */
    CONTROL_VOLTAGE(4, Shown.PLUS, Shown.MINUS, Shown.NO_VOLTAGE, Shown.LINE_VOLTAGE),
    /** A load switched in. */
    LOAD(4, Shown.RUNS, Shown.TRIPS, Shown.NOTHING_HAPPENS),
    /** RCD test from line to PE. */
    RCD_TEST(5, Shown.TRIPS, Shown.NOTHING_HAPPENS),
    /** Current in link and protective conductor while a load is switched in. */
    EARTH_CURRENT(5, Shown.NO_CURRENT, Shown.FLOWS),
    /** Dead, between two power terminals. */
    CONTINUITY(8, Shown.JOINED, Shown.APART),
    /** Dead, between the ends of a control core. */
    CORE_CONTINUITY(8, Shown.JOINED, Shown.APART),
    /** Dead, across a bus. */
    BUS_RESISTANCE(8, Shown.TWO_RESISTORS, Shown.ONE_RESISTOR, Shown.NO_RESISTOR, Shown.MORE_RESISTORS, Shown.SHORTED);

    private final int effort;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of of enums
    private final List<Shown> possible;

    ReadingKind(int effort, Shown... possible) {
        this.effort = effort;
        this.possible = List.of(possible);
    }

    /** What it can show. */
    public List<Shown> possible() {
        return possible;
    }

    /** Rough effort; a look is 1. Own choice: only their order matters. */
    public int effort() {
        return effort;
    }
}
