package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * An overcurrent protective device.
 *
 * @param kind                            circuit-breaker or fuse
 * @param curve                           instantaneous tripping of a breaker; nothing for a fuse
 * @param ratedCurrentA                   rated current [A]
 * @param breakingCapacityA               rated short-circuit capacity, r.m.s. [A]
 * @param energyLimitingClass             class of let-through printed on a breaker, 1 to 3 (EN 60898-1); 3 lets through least
 * @param largestBackupFuseA              largest gG fuse before it with which its maker backs it up [A]
 * @param conditionalShortCircuitCurrentA with that back-up fuse, r.m.s. [A]
 */
public record OvercurrentDevice(
        @Nullable OvercurrentKind kind,
        @Nullable Curve curve,
        @Nullable Double ratedCurrentA,
        @Nullable Double breakingCapacityA,
        @Nullable Integer energyLimitingClass,
        @Nullable Double largestBackupFuseA,
        @Nullable Double conditionalShortCircuitCurrentA) {}
