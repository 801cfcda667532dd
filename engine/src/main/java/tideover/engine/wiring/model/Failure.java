package tideover.engine.wiring.model;

import tideover.engine.site.ThingId;

/** A switching device that fails. */
public sealed interface Failure {

    /** The device. */
    ThingId device();

    /** It stays where it was, whatever its coil does: coil burnt, mechanism stuck, motor dead. */
    record Unmoved(ThingId device) implements Failure {}

    /** One main contact stays closed: welded. Poles are counted from 0, lines first. */
    record Welded(ThingId device, int pole) implements Failure {}

    /** One main contact never closes. Poles are counted from 0, lines first. */
    record Interrupted(ThingId device, int pole) implements Failure {}

    /** The extra-low voltage is lost; the device is the port that should give it. */
    record SupplyLost(ThingId device) implements Failure {}
}
