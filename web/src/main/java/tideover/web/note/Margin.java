package tideover.web.note;

import java.util.List;

/**
 * Everything the program notes of a site.
 *
 * @param verdict sentence of the whole
 * @param counts  how many findings it sums up
 * @param wrong   not met or not certain, binding
 * @param errands what is open, by the way of getting it
 * @param limits  what the rule book says nothing about, worded; empty where it says all
 * @param advice  not followed and not accepted
 * @param left    advice accepted with a reason
 * @param met     number of findings met
 * @param pending whether slow findings are still computed
 * @param address of the site
 * @param base    number of the revision
 * @param order   ids of the places whose notes come first, a comma between them
 */
public record Margin(
        String verdict,
        String counts,
        List<Note> wrong,
        List<Errand> errands,
        String limits,
        List<Note> advice,
        List<Note> left,
        int met,
        Pending pending,
        String address,
        long base,
        String order) {
    public Margin {
        wrong = List.copyOf(wrong);
        errands = List.copyOf(errands);
        advice = List.copyOf(advice);
        left = List.copyOf(left);
    }

    /** Whether all findings are there. */
    public enum Pending {
        COMPLETE,
        COMPUTING,
        /** They could not be computed; what is shown is not all. */
        FAILED
    }

    /**
     * One way of getting facts.
     *
     * @param words   what is to be done
     * @param facts   what it brings
     * @param answers how many findings wait for it, worded
     */
    public record Errand(String words, List<Note.FactLink> facts, String answers) {
        public Errand {
            facts = List.copyOf(facts);
        }
    }

    /** The same with what became of slow findings. */
    public Margin with(Pending other) {
        return new Margin(verdict, counts, wrong, errands, limits, advice, left, met, other, address, base, order);
    }

    /** Whether there is nothing to note. */
    public boolean isClean() {
        return wrong.isEmpty() && errands.isEmpty() && advice.isEmpty() && limits.isEmpty();
    }
}
