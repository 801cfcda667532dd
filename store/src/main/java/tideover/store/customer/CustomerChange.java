package tideover.store.customer;

/** What came of changing what is known of a customer. */
public sealed interface CustomerChange {

    /** It is on the disk. */
    record Saved(Customer customer) implements CustomerChange {}

    /**
     * Somebody changed the customer meanwhile; nothing was saved.
     *
     * @param now as it stands there
     */
    record Conflicting(Customer now) implements CustomerChange {}
}
