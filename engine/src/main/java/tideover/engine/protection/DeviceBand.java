package tideover.engine.protection;

import tideover.engine.site.ThingId;

/**
 * One device on the way of a fault current.
 *
 * @param device    thing that holds it; {@code supply} for the main fuse
 * @param kind      by residual current or by overcurrent
 * @param currentA  what it sees, r.m.s. [A]
 * @param earliestS earliest opening [s]; +infinity where it must hold
 * @param latestS   latest opening [s]; +infinity where nothing is guaranteed
 */
public record DeviceBand(ThingId device, Clearing.DeviceKind kind, double currentA, double earliestS, double latestS) {}
