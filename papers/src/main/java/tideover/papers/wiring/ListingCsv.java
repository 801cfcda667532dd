package tideover.papers.wiring;

import java.util.List;

/**
 * Listings as CSV (RFC 4180, lines end with a line feed): what programs read, quantities in the unit of their column. A text
 * that a spreadsheet would take for a formula stands behind an apostrophe.
 */
public final class ListingCsv {

    /** What spreadsheets compute instead of showing it. */
    private static final String FORMULA = "=+-@\t\r";

    private ListingCsv() {}

    /** A listing; the heading of its group is the first column. */
    public static String of(Listing listing) {
        List<Column> columns = listing.columns();
        StringBuilder text = new StringBuilder("group");
        for (Column column : columns) if (column.isData()) text.append(',').append(column.field());
        text.append('\n');
        for (Listing.Group group : listing.groups())
            for (List<Cell> row : group.rows()) {
                text.append(quoted(guarded(group.title())));
                for (int i = 0; i < row.size(); i++)
                    if (columns.get(i).isData()) text.append(',').append(quoted(plain(row.get(i))));
                text.append('\n');
            }
        return text.toString();
    }

    private static String plain(Cell cell) {
        return cell.value() instanceof Number ? cell.data() : guarded(cell.data());
    }

    private static String guarded(String text) {
        return text.isEmpty() || FORMULA.indexOf(text.charAt(0)) < 0 ? text : "'" + text;
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
