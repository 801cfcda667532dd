package tideover.engine.site;

/** What it means that a signal is on: of a request what shall become, of a report what is. */
public enum SignalMeaning {
    /** The islanding switch is, or shall be, closed. */
    SWITCH_CLOSED,
    /** The islanding switch is, or shall be, open. */
    SWITCH_OPEN,
    /** The neutral–earth switch is, or shall be, closed. */
    LINK_CLOSED,
    /** The neutral–earth switch is, or shall be, open. */
    LINK_OPEN,
    /** The relays inside the inverter are open. */
    RELAYS_OPEN,
    /** The grid has voltage. */
    GRID_PRESENT,
    /** Nobody has stopped it by hand. */
    MAY_RUN
}
