package tideover.engine.site;

/** How many lines the grid brings. */
public enum SupplyLines {
    /** One line and neutral. */
    ONE,
    /** Three lines and neutral. */
    THREE
}
