package tideover.files.text;

import java.util.Collection;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Finds the name a person most likely meant. */
public final class Nearest {
    // Comparing every unknown name with every known one would make a hostile file slow to refuse.
    private static final int MOST_COMPARISONS = 200_000;
    private static final int LONGEST = 60;

    private int comparisons;

    /** The candidate with the fewest edits; nothing where none is near. */
    public @Nullable String of(String found, Collection<String> candidates) {
        if (found.isEmpty() || found.length() > LONGEST || comparisons + candidates.size() > MOST_COMPARISONS)
            return null;
        comparisons += candidates.size();
        String wanted = found.toLowerCase(Locale.ROOT);
        String best = null;
        int fewest = 1 + found.length() / 3;
        for (String candidate : candidates) {
            if (Math.abs(candidate.length() - found.length()) > fewest) continue;
            int edits = edits(wanted, candidate.toLowerCase(Locale.ROOT));
            if (edits >= fewest && (edits > fewest || best != null)) continue;
            fewest = edits;
            best = candidate;
        }
        return best;
    }

    /** Letters changed, added, left out, or swapped with their neighbour (optimal string alignment distance). */
    static int edits(String a, String b) {
        int[][] edits = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) edits[i][0] = i;
        for (int j = 0; j <= b.length(); j++) edits[0][j] = j;
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int changed = edits[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                edits[i][j] = Math.min(changed, 1 + Math.min(edits[i - 1][j], edits[i][j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1))
                    edits[i][j] = Math.min(edits[i][j], edits[i - 2][j - 2] + 1);
            }
        }
        return edits[a.length()][b.length()];
    }
}
