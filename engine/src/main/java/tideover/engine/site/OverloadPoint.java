package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * One point of an inverter's overload curve.
 *
 * @param currentRatio current over continuous current per line, above 1
 * @param timeS        how long it can be given [s]
 */
public record OverloadPoint(
        @Nullable Double currentRatio, @Nullable Double timeS) {}
