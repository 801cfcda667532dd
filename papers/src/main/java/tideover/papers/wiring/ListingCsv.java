package tideover.papers.wiring;

import java.util.List;
import java.util.stream.Collectors;

/** Listings as CSV (RFC 4180, lines end with a line feed): what programs read, quantities in the unit of their column. */
public final class ListingCsv {

    private ListingCsv() {}

    /** A listing; the heading of its group is the first column. */
    public static String of(Listing listing) {
        StringBuilder text = new StringBuilder("group");
        for (Column column : listing.columns()) text.append(',').append(column.field());
        text.append('\n');
        for (Listing.Group group : listing.groups())
            for (List<Cell> row : group.rows())
                text.append(quoted(group.title()))
                        .append(',')
                        .append(row.stream()
                                .map(Cell::data)
                                .map(ListingCsv::quoted)
                                .collect(Collectors.joining(",")))
                        .append('\n');
        return text.toString();
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
