package tideover.engine.wiring.schedule;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Material;
import tideover.engine.wiring.colour.Colour;

/**
 * All pieces of one sort of cable or wire.
 *
 * @param stock  what they are cut from
 * @param pieces in the order of the schedules
 */
public record Cut(Stock stock, List<Piece> pieces) {

    /** What is cut. */
    public enum Kind {
        POWER_CABLE,
        POWER_WIRE,
        CONTROL_CABLE,
        CONTROL_WIRE
    }

    /**
     * A sort of cable or wire.
     *
     * @param kind             what it is
     * @param cores            number of cores; 1 of a wire
     * @param crossSectionMm2  of its cores; of a power cable of the lines; nothing: not known [mm²]
     * @param thinnestCoreMm2  of a power cable whose cores differ: the thinnest; else nothing [mm²]
     * @param colour           of a wire
     * @param material         of a power cable or wire; nothing: not known
     */
    public record Stock(
            Kind kind,
            int cores,
            @Nullable Double crossSectionMm2,
            @Nullable Double thinnestCoreMm2,
            @Nullable Colour colour,
            @Nullable Material material) {}

    /**
     * One piece.
     *
     * @param designation of the cable or wire
     * @param lengthM     from end to end, with the allowance; nothing: to be measured on site [m]
     */
    public record Piece(String designation, @Nullable Double lengthM) {}

    public Cut {
        pieces = List.copyOf(pieces);
    }

    /** Sum of the pieces whose length is known [m]. */
    public double sumM() {
        return pieces.stream()
                .map(Piece::lengthM)
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .sum();
    }

    /** How many pieces are to be measured on site. */
    public int unmeasured() {
        return (int) pieces.stream().filter(piece -> piece.lengthM() == null).count();
    }

    /** Whether all pieces are to be measured on site. */
    public boolean isUnmeasured() {
        return unmeasured() == pieces.size();
    }
}
