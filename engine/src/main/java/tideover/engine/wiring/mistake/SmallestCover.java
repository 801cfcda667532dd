package tideover.engine.wiring.mistake;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * The smallest number of sets that cover a universe, exactly: what only one set covers decides first, what is dominated
 * falls out, the rest is branch and bound with independent elements as the bound. Checked in tests against a
 * general-purpose integer programme.
 */
public final class SmallestCover {

    private List<Integer> best = List.of();

    private SmallestCover() {}

    /**
     * Chooses sets.
     *
     * @param sets     what each covers
     * @param universe what is to be covered; elements that no set covers are left out
     * @return positions of the chosen sets, ascending; of several smallest choices always the same
     */
    public static List<Integer> of(List<BitSet> sets, BitSet universe) {
        BitSet coverable = new BitSet();
        for (BitSet set : sets) coverable.or(set);
        coverable.and(universe);
        SmallestCover search = new SmallestCover();
        search.best = greedy(sets, coverable);
        search.branch(sets, coverable, allOf(sets), new ArrayList<>());
        List<Integer> chosen = new ArrayList<>(search.best);
        chosen.sort(null);
        return List.copyOf(chosen);
    }

    private static List<Integer> allOf(List<BitSet> sets) {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < sets.size(); i++) all.add(i);
        return all;
    }

    private static List<Integer> greedy(List<BitSet> sets, BitSet universe) {
        BitSet left = (BitSet) universe.clone();
        List<Integer> chosen = new ArrayList<>();
        while (!left.isEmpty()) {
            int most = -1;
            int mostCovered = 0;
            for (int i = 0; i < sets.size(); i++) {
                int covered = common(sets.get(i), left);
                if (covered > mostCovered) {
                    mostCovered = covered;
                    most = i;
                }
            }
            chosen.add(most);
            left.andNot(sets.get(most));
        }
        return chosen;
    }

    private static int common(BitSet a, BitSet b) {
        BitSet both = (BitSet) a.clone();
        both.and(b);
        return both.cardinality();
    }

    private void branch(List<BitSet> sets, BitSet left, List<Integer> usable, List<Integer> chosen) {
        if (left.isEmpty()) {
            if (chosen.size() < best.size()) best = List.copyOf(chosen);
            return;
        }
        List<Integer> useful = withoutDominated(sets, left, usable);
        if (chosen.size() + bound(sets, left, useful) >= best.size()) return;
        int element = rarest(sets, left, useful);
        List<Integer> covering = useful.stream()
                .filter(set -> sets.get(set).get(element))
                .sorted((a, b) -> common(sets.get(b), left) - common(sets.get(a), left))
                .toList();
        List<Integer> rest = new ArrayList<>(useful);
        for (int set : covering) {
            BitSet still = (BitSet) left.clone();
            still.andNot(sets.get(set));
            rest.remove((Integer) set);
            chosen.add(set);
            branch(sets, still, rest, chosen);
            chosen.remove(chosen.size() - 1);
        }
    }

    /** A set is of no use beside another that covers all that it covers. */
    private static List<Integer> withoutDominated(List<BitSet> sets, BitSet left, List<Integer> usable) {
        List<BitSet> rests = new ArrayList<>();
        for (int set : usable) {
            BitSet rest = (BitSet) sets.get(set).clone();
            rest.and(left);
            rests.add(rest);
        }
        List<Integer> kept = new ArrayList<>();
        for (int i = 0; i < usable.size(); i++) {
            if (rests.get(i).isEmpty()) continue;
            boolean isDominated = false;
            for (int j = 0; j < usable.size() && !isDominated; j++) {
                if (i == j || !contains(rests.get(j), rests.get(i))) continue;
                isDominated = !contains(rests.get(i), rests.get(j)) || j < i;
            }
            if (!isDominated) kept.add(usable.get(i));
        }
        return kept;
    }

    private static boolean contains(BitSet large, BitSet small) {
        BitSet rest = (BitSet) small.clone();
        rest.andNot(large);
        return rest.isEmpty();
    }

    /** Elements no two of which one set covers need as many sets. */
    private static int bound(List<BitSet> sets, BitSet left, List<Integer> usable) {
        BitSet open = (BitSet) left.clone();
        int count = 0;
        while (!open.isEmpty()) {
            int element = rarest(sets, open, usable);
            count++;
            boolean isCovered = false;
            for (int set : usable)
                if (sets.get(set).get(element)) {
                    open.andNot(sets.get(set));
                    isCovered = true;
                }
            // What the sets left cannot cover ends this branch.
            if (!isCovered) return Integer.MAX_VALUE / 2;
        }
        return count;
    }

    private static int rarest(List<BitSet> sets, BitSet left, List<Integer> usable) {
        int rarest = -1;
        int fewest = Integer.MAX_VALUE;
        for (int element = left.nextSetBit(0); element >= 0; element = left.nextSetBit(element + 1)) {
            int covering = 0;
            for (int set : usable) if (sets.get(set).get(element)) covering++;
            if (covering < fewest) {
                fewest = covering;
                rarest = element;
            }
        }
        return rarest;
    }
}
