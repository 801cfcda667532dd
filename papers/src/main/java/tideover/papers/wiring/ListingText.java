package tideover.papers.wiring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tideover.papers.Wording;

/** Listings as plain text, lines of at most {@value #WIDTH} columns: long cells broken between words. */
public final class ListingText {

    /** Columns of a line. */
    public static final int WIDTH = 110;

    private static final int NARROWEST = 10;
    private static final String INDENT = "  ";
    private static final String BETWEEN = "  ";

    private ListingText() {}

    /** A listing with its heading, ending with a line break. */
    public static String of(Listing listing) {
        StringBuilder text = new StringBuilder();
        text.append(listing.title()).append('\n');
        for (String note : listing.notes()) wrapped(note, WIDTH - 2).forEach(line -> line(text, INDENT + line));
        if (listing.size() == 0) return text.toString();
        List<Integer> shown = listing.shown();
        int[] widths = widths(listing, shown);
        text.append('\n');
        row(
                text,
                listing,
                shown,
                widths,
                listing.columns().stream().map(Column::head).toList());
        for (Listing.Group group : listing.groups()) {
            if (!group.title().isEmpty()) wrapped(group.title(), WIDTH).forEach(line -> line(text, line));
            for (List<Cell> cells : group.rows())
                row(text, listing, shown, widths, cells.stream().map(Cell::text).toList());
        }
        return text.toString();
    }

    /** What stands below all lists. */
    public static String caution(Wording wording) {
        return "\n" + String.join("\n", wrapped(wording.text("wiring.caution"), WIDTH)) + "\n";
    }

    /** As wide as they need; where that is too much, the widest ones give way. */
    private static int[] widths(Listing listing, List<Integer> shown) {
        int[] widths = new int[shown.size()];
        for (int i = 0; i < widths.length; i++) {
            int column = shown.get(i);
            widths[i] = listing.columns().get(column).head().length();
            for (Listing.Group group : listing.groups())
                for (List<Cell> row : group.rows())
                    widths[i] = Math.max(widths[i], row.get(column).text().length());
        }
        while (INDENT.length() + Arrays.stream(widths).sum() + BETWEEN.length() * (widths.length - 1) > WIDTH) {
            int widest = 0;
            for (int i = 1; i < widths.length; i++) if (widths[i] > widths[widest]) widest = i;
            if (widths[widest] <= NARROWEST) break;
            widths[widest]--;
        }
        return widths;
    }

    private static void row(
            StringBuilder text, Listing listing, List<Integer> shown, int[] widths, List<String> cells) {
        List<List<String>> broken = new ArrayList<>();
        for (int i = 0; i < widths.length; i++) broken.add(wrapped(cells.get(shown.get(i)), widths[i]));
        int lines = broken.stream().mapToInt(List::size).max().orElse(0);
        for (int at = 0; at < lines; at++) {
            StringBuilder line = new StringBuilder(INDENT);
            for (int i = 0; i < widths.length; i++) {
                String cell = at < broken.get(i).size() ? broken.get(i).get(at) : "";
                String space = " ".repeat(Math.max(0, widths[i] - cell.length()));
                boolean right = listing.columns().get(shown.get(i)).align() == Column.Align.RIGHT;
                line.append(right ? space + cell : cell + space).append(BETWEEN);
            }
            line(text, line.toString());
        }
    }

    private static void line(StringBuilder text, String line) {
        text.append(line.stripTrailing()).append('\n');
    }

    /** Broken between words; a word that is too long stays whole. */
    public static List<String> wrapped(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            if (line.length() > 0) line.append(' ');
            line.append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
