package tideover.engine.site;

/** What kind of place a battery stands in. */
public enum BatteryPlace {
    /** A room for technical equipment only. */
    TECHNICAL_ROOM,
    CELLAR,
    GARAGE,
    /** Hall, landing or stairs on the way out of the house. */
    ESCAPE_ROUTE,
    SLEEPING_ROOM,
    LIVING_ROOM,
    LOFT,
    OUTDOORS
}
