package tideover.engine.site;

/** How the house is put back on the grid by hand. */
public enum ByPassKind {
    /** Three-position changeover switch, break before make. */
    CHANGEOVER,
    /** Switch interlocked with the island source. */
    INTERLOCKED,
    /** Switch without interlock. */
    PLAIN
}
