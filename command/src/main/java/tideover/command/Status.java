package tideover.command;

/** What a command ends with. */
public final class Status {

    /** Every binding finding is met or not applicable, or what was asked for was done. */
    public static final int DONE = 0;
    /** A binding finding is not met, open or not certain. */
    public static final int NOT_MET = 1;
    /** Input was refused; nothing was written. */
    public static final int REFUSED = 2;
    /** The fault is ours. */
    public static final int OUR_FAULT = 3;

    private Status() {}
}
