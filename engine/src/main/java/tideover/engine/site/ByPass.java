package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * A hand-operated path past the islanding switch.
 *
 * @param kind    what keeps it from paralleling the sources
 * @param fedFrom thing at whose outgoing terminals it begins
 * @param leadsTo thing at whose outgoing terminals it ends, on the island side
 * @param poles   poles it connects: the lines first, one more is the neutral
 */
public record ByPass(
        ThingId id,
        @Nullable String designation,
        @Nullable ByPassKind kind,
        @Nullable ThingId fedFrom,
        @Nullable ThingId leadsTo,
        @Nullable Integer poles)
        implements Thing {}
