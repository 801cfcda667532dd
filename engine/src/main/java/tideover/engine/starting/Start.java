package tideover.engine.starting;

import java.util.List;
import tideover.engine.site.FactId;

/** How the start of one motor goes on the sources of its island. */
public sealed interface Start {

    /** The sources give the start current for as long as it lasts, and the running current after it. */
    record Carried(Motor motor, Peak peak) implements Start {}

    /**
     * It is more than the sources give for that long: they shut down, the house goes dark.
     *
     * @param largest of the same kind that would start there
     */
    record Exceeds(Motor motor, Peak peak, LargestStart largest) implements Start {}

    /**
     * It hangs on facts nobody has stated.
     *
     * @param facts which
     */
    record Unknown(List<FactId> facts) implements Start {
        public Unknown {
            facts = List.copyOf(facts);
        }
    }
}
