package tideover.store.attachment;

/** A picture that does not hold together: cut short, or altered on the way. */
final class DamagedFile extends Exception {
    private static final long serialVersionUID = 1;

    DamagedFile(String message) {
        super(message);
    }
}
