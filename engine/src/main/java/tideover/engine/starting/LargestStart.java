package tideover.engine.starting;

/**
 * The largest motor of a kind that starts at a place while the house draws what the sources give beside it.
 *
 * @param runningA its current once it runs, on each line [A]; 0 where none starts
 * @param startA   its current while it starts, on each line [A]
 * @param timeS    how long that lasts [s]
 * @param limitedBy what a larger one would break first
 */
public record LargestStart(double runningA, double startA, double timeS, LimitedBy limitedBy) {

    /** What stands in the way of a larger motor. */
    public enum LimitedBy {
        /** What the sources give for that long. */
        SOURCE,
        /** The voltage at a board. */
        DIP
    }
}
