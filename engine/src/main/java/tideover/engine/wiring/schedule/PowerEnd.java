package tideover.engine.wiring.schedule;

import org.jspecify.annotations.Nullable;
import tideover.engine.site.Terminals;
import tideover.engine.site.ThingId;

/**
 * One end of a power conductor.
 *
 * @param thing           device, board or earth it is at
 * @param side            which set of terminals; nothing for devices without two, such as an earth or the neutral–earth switch
 * @param tag             short name of the thing, as labels bear it
 * @param terminal        the maker's name of the terminal; where nobody has stated it, the conductor's own name
 * @param torqueNm        tightening torque [Nm]
 * @param strippedLengthM length to strip [m]
 */
public record PowerEnd(
        ThingId thing,
        @Nullable Terminals side,
        String tag,
        String terminal,
        @Nullable Double torqueNm,
        @Nullable Double strippedLengthM) {

    /** Thing and terminal, as a label bears them: {@code QA1:1L1}. */
    public String text() {
        return tag + ":" + terminal;
    }
}
