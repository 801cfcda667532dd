package tideover.engine.network.house;

import org.jspecify.annotations.Nullable;
import tideover.engine.site.Conductor;
import tideover.engine.site.ThingId;

/**
 * The neutral of a supply cable with several lines is interrupted while the house draws: what hangs on different lines then
 * shares the voltage between them.
 *
 * @param thing    whose supply cable
 * @param place    circuit that stands highest, or at which no voltage was found
 * @param line     on which line
 * @param voltageV there, line to neutral, r.m.s. [V]; nothing where none was found
 */
public record LostNeutral(
        ThingId thing,
        ThingId place,
        Conductor line,
        @Nullable Double voltageV) {}
