package tideover.papers.diagnosis;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A question, or what to read and do.
 *
 * @param id      its name in the bundle
 * @param yes     where a yes leads; nothing where it is no question
 * @param no      where a no leads; nothing where it is no question
 * @param facts   what of the house stands beneath it
 * @param caution where the hand goes
 */
public record CallNode(
        String id, @Nullable CallNode yes, @Nullable CallNode no, List<CallFact> facts, Caution caution) {
    public CallNode {
        facts = List.copyOf(facts);
    }

    /** Where the hand goes. */
    public enum Caution {
        /** Nowhere: displays, breakers, plugs. */
        LOOK,
        /** To parts under voltage. */
        LIVE,
        /** To parts that are isolated first. */
        DEAD
    }
}
