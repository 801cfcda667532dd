package tideover.engine.protection;

/** Which of the two fault currents of IEC 60909-0 is meant. */
public enum Extreme {
    /** Highest voltage, strongest grid, cold conductors, inverters adding what they can: for what devices must bear. */
    LARGEST,
    /** Lowest voltage, measured or weakest grid, warm conductors, nothing added: for what must make devices act. */
    SMALLEST
}
