package tideover.engine.wiring.mistake;

/** Kinds of wiring mistake and of failure. */
public enum MistakeKind {
    /** A power conductor is not connected. */
    OPEN,
    /** Two conductors of one cable touch. */
    TOUCHING,
    /** Two conductors of one cable have changed places at its end. */
    EXCHANGED,
    /** The three lines have moved on by one. */
    ROTATED,
    /** A neutral is on the bar of another group, board or side of the switch. */
    WRONG_NEUTRAL_BAR,
    /** A neutral–earth link is missing or its wire is loose. */
    LINK_MISSING,
    /** A neutral–earth link that should not be there. */
    SECOND_LINK,
    /** The measuring neutral is not connected. */
    MEASURING_NEUTRAL_OPEN,
    /** The measuring neutral is on another bar. */
    MEASURING_NEUTRAL_MOVED,
    /** A control core is not connected. */
    CORE_OPEN,
    /** Two control cores touch. */
    CORES_TOUCHING,
    /** A control core touches plus of the control supply. */
    CORE_TO_PLUS,
    /** A control core touches the reference of the control supply. */
    CORE_TO_REFERENCE,
    /** A control core touches earth. */
    CORE_TO_EARTH,
    /** A control core touches a line conductor. */
    CORE_TO_LINE,
    /** Two control cores have changed places at one end. */
    CORES_EXCHANGED,
    /** A control core is on the terminal of another number. */
    WRONG_NUMBER,
    /** An input or output is set to the opposite sense. */
    WRONG_SENSE,
    /** The settings of two inputs or outputs are exchanged. */
    SETTINGS_EXCHANGED,
    /** Two devices on a bus have one address. */
    ADDRESS_TWICE,
    /** A device on a bus has an address nobody asks for. */
    ADDRESS_WRONG,
    /** A device on a bus has another bit rate. */
    RATE_WRONG,
    /** An end resistor is missing. */
    RESISTOR_MISSING,
    /** An end resistor is switched in where none should be. */
    RESISTOR_EXTRA,
    /** A switching device does not move. */
    UNMOVED,
    /** A main contact is welded. */
    WELDED,
    /** A main contact does not close. */
    INTERRUPTED,
    /** The control supply is lost. */
    SUPPLY_LOST;

    /** Whether it is a device that fails, and nothing that a person did. */
    public boolean isFailure() {
        return this == UNMOVED || this == WELDED || this == INTERRUPTED || this == SUPPLY_LOST;
    }
}
