package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * A fixed connection of a neutral to earth. The split of a PEN is not listed here: it follows from the conductors.
 *
 * @param neutralAt thing at whose neutral bar the link begins
 * @param earthAt   {@code main-earth}, an electrode, or a thing at whose PE bar it ends
 */
public record NeutralEarthLink(
        ThingId id,
        @Nullable String designation,
        @Nullable ThingId neutralAt,
        @Nullable ThingId earthAt) implements Thing {}
