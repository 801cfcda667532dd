package tideover.engine.site;

/** The operating states of an islandable installation; IEC 60364-8-82 knows connected and island mode. */
public enum OperatingState {
    /** Connected mode: the grid forms the voltage, the islanding switch is closed. */
    CONNECTED,
    /** Island mode, the grid has no voltage. */
    ISLAND_GRID_DEAD,
    /** Island mode, the grid is back and waits for the observation time: both sides live, the switch open. */
    ISLAND_GRID_WAITING,
    /** No voltage anywhere: battery empty, or the source locked out after a fault. */
    DARK,
    /** By-passed by hand: the grid feeds the house past the islanding switch, the island source is off. */
    BY_PASSED;

    /** Whether an island source forms the voltage of the island side. */
    public boolean isIsland() {
        return this == ISLAND_GRID_DEAD || this == ISLAND_GRID_WAITING;
    }

    /** Whether the grid has voltage. */
    public boolean isGridLive() {
        return this == CONNECTED || this == ISLAND_GRID_WAITING || this == BY_PASSED;
    }
}
