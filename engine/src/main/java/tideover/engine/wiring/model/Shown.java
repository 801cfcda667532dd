package tideover.engine.wiring.model;

/** What an indicator, a contact or an instrument shows. */
public enum Shown {
    /** No steady voltage. */
    NO_VOLTAGE,
    /** Line to neutral or to earth. */
    LINE_VOLTAGE,
    /** Line to line. */
    LINE_TO_LINE_VOLTAGE,
    /** One end is live, the other hangs in the air: the reading means nothing. */
    FLOATING,
    /** Two sources out of step. */
    UNSTEADY,
    JOINED,
    APART,
    ON,
    OFF,
    CLOSED,
    OPEN,
    /** Clockwise. */
    CLOCKWISE,
    ANTICLOCKWISE,
    /** The inverter says: connected. */
    CONNECTED,
    /** Island, grid dead. */
    ISLAND,
    /** Island, it observes the grid. */
    WAITING,
    /** Locked out. */
    LOCKED_OUT,
    /** Stopped, or without energy. */
    STOPPED,
    /** It never comes to rest. */
    UNSETTLED,
    RUNS,
    TRIPS,
    NOTHING_HAPPENS,
    ANSWERS,
    SILENT,
    /** Plus of the control supply. */
    PLUS,
    /** Its reference. */
    MINUS,
    /** Current flows. */
    FLOWS,
    NO_CURRENT,
    /** Set, and there, as planned. */
    AS_PLANNED,
    OTHERWISE,
    /** End resistors: none found, at one end, at both, more. */
    NO_RESISTOR,
    ONE_RESISTOR,
    TWO_RESISTORS,
    MORE_RESISTORS,
    SHORTED
}
