package tideover.engine.wiring.schedule;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Edge;
import tideover.engine.site.Conductor;
import tideover.engine.site.Material;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.colour.Colour;

/**
 * One conductor of the power wiring, from terminal to terminal.
 *
 * @param run             the cable or bundle it belongs to, such as {@code WD3}
 * @param thing           whose conductor it is: the thing it supplies, the link, the by-pass, the measuring meter
 * @param part            what it is in the netlist; a measuring neutral counts as {@link Edge.Part#FEED}
 * @param conductor       which one
 * @param from            end nearer to the grid; of a link the neutral's end
 * @param to              the other end
 * @param via             devices between the ends, from the grid on
 * @param before          where it began as found, if it is moved; else nothing
 * @param laying          laid anew, existing, or without cable
 * @param colour          its colour; nothing where it has none, such as a busbar
 * @param endMark         further colour at its ends; nothing: none
 * @param crossSectionMm2 its section; nothing: not known [mm²]
 * @param basis           where the section comes from
 * @param material        copper or aluminium
 * @param lengthM         one way; nothing: not known [m]
 * @param ferruleFrom     ferrule at its beginning, if its conductor is stranded; nothing: none fits or none is needed
 * @param ferruleTo       the same at its end
 */
public record PowerRow(
        String run,
        ThingId thing,
        Edge.Part part,
        Conductor conductor,
        PowerEnd from,
        PowerEnd to,
        List<Via> via,
        @Nullable PowerEnd before,
        Laying laying,
        @Nullable Colour colour,
        @Nullable Colour endMark,
        @Nullable Double crossSectionMm2,
        Basis basis,
        @Nullable Material material,
        @Nullable Double lengthM,
        @Nullable Ferrule ferruleFrom,
        @Nullable Ferrule ferruleTo) {

    /** Where the section of a conductor comes from. */
    public enum Basis {
        STATED,
        /** Not stated: as thick as the conductor of the path it stands beside. */
        LIKE_THE_PATH,
        UNKNOWN
    }

    public PowerRow {
        via = List.copyOf(via);
    }

    /** Its own designation, such as {@code WD3.L1}. */
    public String designation() {
        return run + "." + conductor;
    }

    /** What its label says at the beginning: its designation and where its other end is. */
    public String labelFrom() {
        return designation() + " " + to.text();
    }

    /** What its label says at the end. */
    public String labelTo() {
        return designation() + " " + from.text();
    }
}
