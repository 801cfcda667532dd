package tideover.engine.site;

/** Where the main contacts of a switch are. */
public enum MainContacts {
    OPEN,
    CLOSED
}
