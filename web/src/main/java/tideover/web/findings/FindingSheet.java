package tideover.web.findings;

import java.util.List;
import tideover.web.findings.FindingsSheet.Row;
import tideover.web.page.Frame;

/**
 * One finding with everything behind it.
 *
 * @param address of the site
 * @param all     address of all findings at the same place
 * @param base    number of the revision
 * @param title   what was judged, and where
 * @param row     the finding
 * @param lines   its calculation, line by line
 * @param states  the same check at the same place in the other states
 * @param facts   what it rests on
 * @param missing what it waits for, worded
 * @param limit   the rule book that was asked
 */
public record FindingSheet(
        Frame frame,
        String address,
        String all,
        long base,
        String title,
        Row row,
        List<String> lines,
        List<Row> states,
        List<FactRow> facts,
        List<String> missing,
        String limit) {
    public FindingSheet {
        lines = List.copyOf(lines);
        states = List.copyOf(states);
        facts = List.copyOf(facts);
        missing = List.copyOf(missing);
    }

    /**
     * A fact and who says so.
     *
     * @param words   what it is called and of which thing
     * @param address where it is read and changed
     * @param value   with its unit; empty where nobody knows
     * @param origin  who or what says so
     * @param look    {@code assumed} where nobody has said so yet, else empty
     * @param by      person, day and document; empty where nothing is known
     */
    public record FactRow(String words, String address, String value, String origin, String look, String by) {}
}
