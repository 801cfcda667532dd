package tideover.papers.handover;

import java.util.ArrayList;
import java.util.List;
import tideover.papers.Wording;
import tideover.papers.wiring.Column;
import tideover.papers.wiring.Listing;

/** Wiring lists as tables on landscape pages. */
final class WiringPages {

    /** Larger groups may be broken over pages. */
    private static final int MOST_ROWS_TOGETHER = 9;

    /** Width of a landscape page between its margins [mm]. */
    private static final int PAGE = 270;

    /** What the style sheet adds to each column, rounded up [mm]. */
    private static final int PADDING = 2;

    /** What the template shows. */
    record Content(List<Table> listings) {}

    /** @param span number of columns */
    record Table(String title, List<String> notes, List<Head> heads, int span, List<Group> groups) {}

    /** @param width on the page [mm] */
    record Head(String text, String look, int width) {}

    record Group(String title, String look, List<Row> rows) {}

    record Row(List<Cell> cells) {}

    record Cell(String text, String look) {}

    private WiringPages() {}

    static String body(List<Listing> listings, Wording wording) {
        Content content = new Content(listings.stream().map(WiringPages::table).toList());
        return Template.in("wiring.xhtml").fill(content, wording);
    }

    private static Table table(Listing listing) {
        List<Column> columns = listing.columns();
        List<Integer> shown = listing.shown();
        int widths = shown.stream().mapToInt(i -> columns.get(i).width()).sum();
        List<Head> heads = new ArrayList<>();
        for (int i : shown)
            heads.add(new Head(
                    columns.get(i).head(), look(columns.get(i)), columns.get(i).width() * PAGE / widths - PADDING));
        List<Group> groups = new ArrayList<>();
        for (Listing.Group group : listing.groups()) {
            List<Row> rows = new ArrayList<>();
            for (List<tideover.papers.wiring.Cell> cells : group.rows())
                rows.add(new Row(shown.stream()
                        .map(i -> new Cell(cells.get(i).text(), look(columns.get(i))))
                        .toList()));
            groups.add(new Group(group.title(), rows.size() > MOST_ROWS_TOGETHER ? "long" : "", rows));
        }
        return new Table(listing.title(), listing.notes(), heads, heads.size(), groups);
    }

    private static String look(Column column) {
        return column.align() == Column.Align.RIGHT ? "n" : "";
    }
}
