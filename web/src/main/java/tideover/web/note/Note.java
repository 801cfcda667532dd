package tideover.web.note;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One finding as it is read.
 *
 * @param check    id of the check
 * @param place    id of the thing it concerns
 * @param name     printed name of that thing
 * @param look     end of the style of its outcome, such as {@code not-met}
 * @param outcome  sign and word
 * @param sentence what is so
 * @param clause   where the limit stands and how far it was verified; empty where there is no limit
 * @param limit    address of that limit; empty where it is none of the rule book
 * @param state    the state that decides, worded; empty where the state does not matter
 * @param facts    what it rests on
 * @param lines    address of its calculation
 * @param advice   whether it may be accepted with a reason
 * @param accepted the planner's reason for leaving it
 */
public record Note(
        String check,
        String place,
        String name,
        String look,
        String outcome,
        String sentence,
        String clause,
        String limit,
        String state,
        List<FactLink> facts,
        String lines,
        Advice advice,
        @Nullable String accepted) {

    /** Whether a planner may leave it. */
    public enum Advice {
        BINDING,
        MAY_BE_ACCEPTED
    }

    /**
     * A fact and where it is changed.
     *
     * @param words   what it is called and of which thing
     * @param address of the place where it is read and changed
     * @param assumed worded where it is only assumed, else empty
     */
    public record FactLink(String words, String address, String assumed) {}

    public Note {
        facts = List.copyOf(facts);
    }
}
