package tideover.papers.terminals;

import org.jspecify.annotations.Nullable;

/**
 * One row of a card: a terminal at each edge of the frame and what lies between them.
 *
 * @param heading what it is for; empty where the terminals say enough
 */
record Row(String heading, @Nullable Post left, @Nullable Post right, Picture picture) {

    /** The largest number of conductors at one of its terminals, at least one. */
    int leads() {
        return Math.max(1, Math.max(count(left), count(right)));
    }

    private static int count(@Nullable Post post) {
        return post == null ? 0 : post.leads().size();
    }
}
