package tideover.files.tables;

import org.jspecify.annotations.Nullable;
import tideover.engine.site.Converter;
import tideover.engine.site.Curve;
import tideover.engine.site.Importance;
import tideover.engine.site.LoadKind;
import tideover.engine.site.RcdType;
import tideover.engine.site.StartKind;
import tideover.engine.site.SupplyLines;

/**
 * What the circuit of a load is like in most houses: something to begin with, never more than an assumption.
 *
 * @param id                its lasting name, such as {@code kitchen-sockets}
 * @param kind              what it feeds
 * @param powerW            largest active power at once [W]
 * @param lines             on one line or on three
 * @param curve             of its breaker
 * @param ratedCurrentA     of its breaker [A]
 * @param crossSectionMm2   of its cable [mm²]
 * @param lengthM           of its cable, one way [m]
 * @param converter         electronics inside; nothing where makes differ
 * @param start             how its motor starts
 * @param startCurrentRatio starting current over running current; nothing without a motor
 * @param startTimeS        how long that lasts [s]; nothing without a motor
 * @param ownRcd            type of an RCD of its own; nothing where it shares one
 * @param importance        in an outage
 * @param staysOn           whether it mostly stays on
 * @param usual             whether most houses have it
 */
public record TypicalLoad(
        String id,
        LoadKind kind,
        double powerW,
        SupplyLines lines,
        Curve curve,
        double ratedCurrentA,
        double crossSectionMm2,
        double lengthM,
        @Nullable Converter converter,
        StartKind start,
        @Nullable Double startCurrentRatio,
        @Nullable Double startTimeS,
        @Nullable RcdType ownRcd,
        Importance importance,
        Habit staysOn,
        Habit usual) {

    /** Whether something is so in most houses. */
    public enum Habit {
        YES,
        NO
    }
}
