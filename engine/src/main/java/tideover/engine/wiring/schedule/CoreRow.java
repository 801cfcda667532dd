package tideover.engine.wiring.schedule;

import org.jspecify.annotations.Nullable;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.colour.Colour;

/**
 * One core of the control wiring.
 *
 * @param cable           cable or bundle it lies in
 * @param run             short name of that cable
 * @param position        place in the cable, counted from 1; 0 for the screen
 * @param kind            what it is
 * @param mark            its number or colour as printed on it
 * @param colour          its colour; nothing where its mark is a number or nobody has said
 * @param pair            of a cable twisted in pairs: which pair, counted from 1; else 0
 * @param from            where it begins; nothing: not connected
 * @param to              where it ends; nothing: not connected
 * @param crossSectionMm2 its section [mm²]
 * @param lengthM         of the cable [m]
 * @param ferrule         ferrule at each end; nothing: none fits, or it is not connected
 */
public record CoreRow(
        ThingId cable,
        String run,
        int position,
        CoreKind kind,
        @Nullable String mark,
        @Nullable Colour colour,
        int pair,
        @Nullable ControlEnd from,
        @Nullable ControlEnd to,
        @Nullable Double crossSectionMm2,
        @Nullable Double lengthM,
        @Nullable Ferrule ferrule) {

    /** Its own designation, such as {@code WG1.3}; of the screen {@code WF1.SH}. */
    public String designation() {
        return run + "." + (kind == CoreKind.SCREEN ? "SH" : position);
    }

    /** What its label says at the beginning: its designation and where its other end is. */
    public String labelFrom() {
        return to == null ? designation() : designation() + " " + to.text();
    }

    /** What its label says at the end. */
    public String labelTo() {
        return from == null ? designation() : designation() + " " + from.text();
    }
}
