package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * How the inverter that leads island operation is set; only the fitter may change it.
 *
 * @param at               inverter
 * @param lossTimeS        from loss of the grid until it has opened its own relays [s]
 * @param feedbackTimeS    how long it waits for a feedback before it locks out [s]
 * @param formingTimeS     from the last feedback until its voltage stands [s]
 * @param observationTimeS how long the grid must be back before it returns [s]
 * @param gridMeter        meter by which it sees the grid while islanded; nothing: by an input
 */
public record IslandSettings(
        ThingId id,
        @Nullable String designation,
        @Nullable ThingId at,
        @Nullable Double lossTimeS,
        @Nullable Double feedbackTimeS,
        @Nullable Double formingTimeS,
        @Nullable Double observationTimeS,
        @Nullable ThingId gridMeter)
        implements Thing {}
