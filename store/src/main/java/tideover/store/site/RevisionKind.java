package tideover.store.site;

/** How a revision came about. */
public enum RevisionKind {
    CREATED,
    IMPORTED,
    EDITED,
    UNDONE,
    REDONE,
    RESTORED
}
