package tideover.engine.wiring.schedule;

import tideover.engine.site.ThingId;

/**
 * One label to print.
 *
 * @param kind what it is stuck to
 * @param at   thing it is at
 * @param text what it says
 */
public record Label(Kind kind, ThingId at, String text) {

    /** What a label is stuck to, in the order of printing: each kind has a material of its own. */
    public enum Kind {
        NOTICE,
        DEVICE,
        TERMINAL,
        CABLE,
        WIRE_END
    }
}
