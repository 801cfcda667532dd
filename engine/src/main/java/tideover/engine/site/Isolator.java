package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * A point where a source is isolated for work.
 *
 * @param isolates source it isolates: {@code supply}, an inverter, a battery or a PV array
 * @param kind     what makes the isolation
 * @param lockable whether it can be locked open
 * @param room     where it is
 */
public record Isolator(
        ThingId id,
        @Nullable String designation,
        @Nullable ThingId isolates,
        @Nullable IsolatorKind kind,
        @Nullable Boolean lockable,
        @Nullable String room)
        implements Thing {}
