package tideover.papers.wiring;

import java.util.List;
import java.util.stream.IntStream;

/**
 * One table in words, with what programs read beside it.
 *
 * @param part    name of the part it tells
 * @param title   its heading
 * @param notes   what has to be known to read it, sentence by sentence
 * @param columns of all groups
 * @param groups  of rows that belong together
 */
public record Listing(String part, String title, List<String> notes, List<Column> columns, List<Group> groups) {

    /**
     * Rows that belong together.
     *
     * @param title what they have in common; empty where there is nothing to say
     * @param rows  each with one cell for each column
     */
    public record Group(String title, List<List<Cell>> rows) {
        public Group {
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    public Listing {
        notes = List.copyOf(notes);
        columns = List.copyOf(columns);
        groups = List.copyOf(groups);
        for (Group group : groups)
            for (List<Cell> row : group.rows())
                if (row.size() != columns.size())
                    throw new IllegalArgumentException(
                            "%s: %d cells in %d columns: %s".formatted(part, row.size(), columns.size(), row));
    }

    /** Places of the columns in which a person finds anything to read. */
    public List<Integer> shown() {
        return IntStream.range(0, columns.size())
                .filter(i -> columns.get(i).isShown())
                .filter(i -> groups.stream()
                        .flatMap(group -> group.rows().stream())
                        .anyMatch(row -> !row.get(i).text().isEmpty()))
                .boxed()
                .toList();
    }

    /** Number of rows. */
    public int size() {
        return groups.stream().mapToInt(group -> group.rows().size()).sum();
    }
}
