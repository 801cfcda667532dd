package tideover.papers.diagnosis;

/** A fact of the house that stands beneath a question or an advice. */
public enum CallFact {
    /** What each line of the island source can give, for how long. */
    OVERLOAD,
    /** Circuits that stay on, line by line. */
    LINES,
    /** Circuits that are not fed in the island. */
    GRID_ONLY,
    /** Residual current devices and what is behind them. */
    RCDS,
    BATTERIES,
    /** Bus ports as planned. */
    BUS,
    /** In which state each device on a bus answers. */
    ANSWERS,
    /** What is read across the bus line, dead. */
    RESISTANCE,
    /** What inputs and outputs show while connected and in the island. */
    SIGNALS,
    /** Voltages at the islanding switch while connected and in the island. */
    VOLTAGES
}
