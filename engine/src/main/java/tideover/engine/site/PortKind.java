package tideover.engine.site;

/** What a control port does. */
public enum PortKind {
    /** Gives a signal: a request, or the report of a position. Terminals: of a contact both ends, else the one terminal. */
    OUTPUT,
    /** Takes a signal. Terminals: the input; of an input that wets a contact itself, its common behind it. */
    INPUT,
    /** Coil or motor of a switch. Terminals: A1 and A2, or what the maker calls them. */
    COIL,
    /** Auxiliary contact of a switch. Terminals: its two ends. */
    AUXILIARY_CONTACT,
    /** Gives the extra-low voltage for control. Terminals: plus, then the reference (minus). */
    SUPPLY
}
