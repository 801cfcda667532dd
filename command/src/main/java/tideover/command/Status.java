package tideover.command;

/** What a command ends with. */
final class Status {

    /** Every binding finding is met or not applicable, or what was asked for was done. */
    static final int DONE = 0;
    /** A binding finding is not met, open or not certain. */
    static final int NOT_MET = 1;
    /** Input was refused; nothing was written. */
    static final int REFUSED = 2;
    /** The fault is ours. */
    static final int OUR_FAULT = 3;

    private Status() {}
}
