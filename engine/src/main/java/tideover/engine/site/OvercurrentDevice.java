package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * An overcurrent protective device.
 *
 * @param kind                circuit-breaker or fuse
 * @param curve               instantaneous tripping of a breaker; nothing for a fuse
 * @param ratedCurrentA       rated current [A]
 * @param breakingCapacityA   rated short-circuit capacity, r.m.s. [A]
 * @param energyLimitingClass class of let-through printed on a breaker, 1 to 3 (EN 60898-1); 3 lets through least
 */
public record OvercurrentDevice(
        @Nullable OvercurrentKind kind,
        @Nullable Curve curve,
        @Nullable Double ratedCurrentA,
        @Nullable Double breakingCapacityA,
        @Nullable Integer energyLimitingClass) {}
