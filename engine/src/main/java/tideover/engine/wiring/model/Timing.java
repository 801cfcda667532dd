package tideover.engine.wiring.model;

import org.jspecify.annotations.Nullable;
import tideover.engine.site.IslandSettings;

/**
 * Times of the changeover.
 *
 * @param lossTimeS        from loss of the grid until the inverter has opened its relays [s]
 * @param feedbackTimeS    longest wait for a feedback [s]
 * @param formingTimeS     from the last feedback until its voltage stands [s]
 * @param observationTimeS how long the grid must be back [s]
 */
public record Timing(double lossTimeS, double feedbackTimeS, double formingTimeS, double observationTimeS) {

    /** Moving time of a switch about which nothing is stated [s]; common practice for small contactors, below 0.1 s. */
    static final double MOVING_TIME_S = 0.05;

    /** Until an inverter about which nothing is stated has shut off after a fault [s]; common practice. */
    static final double SHUT_OFF_TIME_S = 0.1;

    /** Where nobody has stated a setting; common practice, and only to let the model run: the check says it is open. */
    private static final Timing USUAL = new Timing(0.2, 2, 3, 60);

    static Timing of(@Nullable IslandSettings settings) {
        if (settings == null) return USUAL;
        return new Timing(
                or(settings.lossTimeS(), USUAL.lossTimeS),
                or(settings.feedbackTimeS(), USUAL.feedbackTimeS),
                or(settings.formingTimeS(), USUAL.formingTimeS),
                or(settings.observationTimeS(), USUAL.observationTimeS));
    }

    private static double or(@Nullable Double stated, double usual) {
        return stated == null ? usual : stated;
    }
}
