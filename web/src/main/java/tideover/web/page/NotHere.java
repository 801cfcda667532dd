package tideover.web.page;

/** What was asked for is not there, or not any more. */
public final class NotHere extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** @param what kind and name, for the log */
    public NotHere(String what) {
        super(what);
    }
}
