package tideover.store.database;

import org.jdbi.v3.core.statement.Query;

/** Words that each must occur somewhere: the patterns {@code :word1} to {@code :word4} of a search. */
public final class SearchWords {
    private static final int COUNT = 4;

    private SearchWords() {}

    /** The query with its patterns; what follows a fourth word belongs to it. */
    public static Query bind(String text, Query query) {
        String[] words = Folding.fold(text).split(" ", COUNT);
        for (int i = 0; i < COUNT; i++) query.bind("word" + (i + 1), anywhere(i < words.length ? words[i] : ""));
        return query;
    }

    /** For LIKE with ! as its escape. */
    private static String anywhere(String folded) {
        return "%" + folded.replace("!", "!!").replace("%", "!%").replace("_", "!_") + "%";
    }
}
