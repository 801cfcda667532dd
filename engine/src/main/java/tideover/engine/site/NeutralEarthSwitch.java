package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * The device that connects the island's neutral to earth while islanded (IEC 63445).
 *
 * @param neutralAt       thing at whose neutral bar it begins
 * @param earthAt         {@code main-earth}, an electrode, or a thing at whose PE bar it ends
 * @param feedbackContact what reports its position
 * @param restPosition    where it rests when its control supply is lost
 * @param builtInto       inverter it is part of; nothing: a device of its own
 */
public record NeutralEarthSwitch(
        ThingId id,
        @Nullable String designation,
        @Nullable ThingId neutralAt,
        @Nullable ThingId earthAt,
        @Nullable FeedbackContact feedbackContact,
        @Nullable RestPosition restPosition,
        @Nullable ThingId builtInto)
        implements Thing {}
