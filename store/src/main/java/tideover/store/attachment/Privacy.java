package tideover.store.attachment;

/** Whether an attachment says something about a person. */
public enum Privacy {
    ORDINARY,
    /** May be erased when the customer is forgotten. */
    PERSONAL
}
