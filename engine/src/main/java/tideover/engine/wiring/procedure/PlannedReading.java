package tideover.engine.wiring.procedure;

import org.jspecify.annotations.Nullable;
import tideover.engine.installation.control.Wire;
import tideover.engine.wiring.model.Ids;
import tideover.engine.wiring.model.Reading;

/**
 * A reading taken in one situation.
 *
 * @param index     position in {@link Procedure#readings()}
 * @param situation how the house stands
 * @param lifted    control core that was lifted before; nothing: none
 * @param reading   what is read
 */
public record PlannedReading(
        int index, Situation situation, @Nullable Wire lifted, Reading reading) {

    /** Lasting name, such as {@code island-unloaded/voltage:main-board:L1-N}. */
    public String id() {
        String word = Ids.of(situation);
        String without = lifted == null ? "" : "/without-" + lifted.cable().id() + "." + (lifted.position() + 1);
        return word + without + "/" + reading.id();
    }
}
