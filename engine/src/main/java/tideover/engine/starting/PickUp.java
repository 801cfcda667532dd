package tideover.engine.starting;

import java.util.List;
import tideover.engine.site.FactId;
import tideover.engine.site.ThingId;

/** What happens when an island forms its voltage anew, after a transfer or out of the dark, and all loads call at once. */
public sealed interface PickUp {

    /**
     * Circuits switched on together.
     *
     * @param circuits which, in the order in which one after another would be safest
     * @param atS      counted from the first step, when the motors of the steps before have run up [s]
     */
    record Step(List<ThingId> circuits, double atS) {
        public Step {
            circuits = List.copyOf(circuits);
        }
    }

    /** The sources carry everything at once. */
    record AllAtOnce(Peak atOnce) implements PickUp {}

    /** Not all at once, but one step after another. */
    record InSequence(Peak atOnce, List<Step> steps) implements PickUp {
        public InSequence {
            steps = List.copyOf(steps);
        }
    }

    /**
     * Not even one after another.
     *
     * @param heldBack circuits that must stay off
     * @param steps    in which the rest comes
     */
    record NotPossible(Peak atOnce, List<ThingId> heldBack, List<Step> steps) implements PickUp {
        public NotPossible {
            heldBack = List.copyOf(heldBack);
            steps = List.copyOf(steps);
        }
    }

    /** It hangs on facts nobody has stated. */
    record Unknown(List<FactId> facts) implements PickUp {
        public Unknown {
            facts = List.copyOf(facts);
        }
    }
}
