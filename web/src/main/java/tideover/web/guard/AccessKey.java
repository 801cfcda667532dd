package tideover.web.guard;

/**
 * The key of commands and programs: kept in the private data folder while the workbench runs, sent as a bearer token.
 *
 * @param text the key
 */
public record AccessKey(String text) {
    /** A key for this run. */
    public static AccessKey random() {
        return new AccessKey(Secret.random());
    }

    @Override
    public String toString() {
        // Records print their parts; this one must not reach a log.
        return "AccessKey";
    }
}
