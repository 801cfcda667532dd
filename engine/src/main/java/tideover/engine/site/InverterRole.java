package tideover.engine.site;

/** What an inverter does for the voltage. */
public enum InverterRole {
    /** Can form the voltage of the island. */
    GRID_FORMING,
    /** Needs a voltage formed by another source. */
    GRID_FOLLOWING
}
