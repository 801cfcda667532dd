package tideover.engine.site;

/** On which side of a thing a terminal is. */
public enum Terminals {
    /** Where its supply cable ends; of the islanding switch: the grid side. */
    INCOMING,
    /** Where what it feeds begins; of the islanding switch: the island side; of an inverter or load: its own terminals. */
    OUTGOING
}
