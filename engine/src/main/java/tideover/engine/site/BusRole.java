package tideover.engine.site;

/** What a device does on a bus. */
public enum BusRole {
    /** Asks: the one client of a line. */
    CLIENT,
    /** Answers when asked. */
    SERVER
}
