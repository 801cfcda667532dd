package tideover.engine.starting;

import org.jspecify.annotations.Nullable;
import tideover.engine.site.Conductor;

/**
 * The tightest moment on a source.
 *
 * @param line     on which line; nothing: over all lines, as the mean of their currents
 * @param beforeA  what flows before [A]
 * @param neededA  what would have to be given [A]
 * @param allowedA what can be given for that long [A]; infinite where the source is the grid
 * @param timeS    for how long [s]; infinite for what runs on
 */
public record Peak(@Nullable Conductor line, double beforeA, double neededA, double allowedA, double timeS) {

    /** Sums of what was scaled to a limit end a rounding error above it. */
    private static final double ROUNDING = 1 + 1e-9;

    /** Whether the source gives it. */
    public boolean isCarried() {
        return neededA <= allowedA * ROUNDING;
    }

    boolean isTighterThan(@Nullable Peak other) {
        return other == null || neededA * other.allowedA > other.neededA * allowedA;
    }
}
