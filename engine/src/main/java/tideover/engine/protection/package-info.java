/**
 * Devices that clear faults and overloads, the times they may take, and how far they can be relied on.
 *
 * <p>Holds in every operating state; whether a source can give the current a device needs is asked elsewhere. Tripping
 * follows IEC 60898-1 and IEC 60947-2 (circuit-breakers), IEC 60269 (gG fuses), IEC 61008-1, IEC 61009-1 and IEC 62423
 * (residual current devices); the times allowed follow IEC 60364-4-41. The rows themselves are handed in, each with its
 * source.
 */
@NullMarked
package tideover.engine.protection;

import org.jspecify.annotations.NullMarked;
