package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * An overcurrent protective device.
 *
 * @param kind              circuit-breaker or fuse
 * @param curve             instantaneous tripping of a breaker; nothing for a fuse
 * @param ratedCurrentA     rated current [A]
 * @param breakingCapacityA rated short-circuit capacity, r.m.s. [A]
 */
public record OvercurrentDevice(
        @Nullable OvercurrentKind kind,
        @Nullable Curve curve,
        @Nullable Double ratedCurrentA,
        @Nullable Double breakingCapacityA) {}
