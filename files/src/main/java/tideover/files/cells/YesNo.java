package tideover.files.cells;

/** The two words of a field that holds yes or no. */
public enum YesNo {
    YES,
    NO
}
