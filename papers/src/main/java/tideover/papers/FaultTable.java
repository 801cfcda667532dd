package tideover.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tideover.engine.protection.FaultCourse;
import tideover.engine.rules.Unit;
import tideover.engine.site.ThingId;

/** Faults in columns of plain text, a line for each place and kind. */
final class FaultTable {

    private static final int NAME = 28;
    private static final int FAULT = 9;
    private static final int CURRENT = 8;
    private static final int VOLTAGE = 8;
    private static final int ENDS = 35;

    private FaultTable() {}

    static List<String> lines(List<FaultRanking.Pair> pairs, Wording wording, FaultWording faults) {
        List<String> lines = new ArrayList<>();
        lines.add(line(
                wording.text("network.place"),
                wording.text("network.column.fault"),
                wording.text("network.column.smallest"),
                wording.text("network.column.largest"),
                wording.text("network.column.touch"),
                wording.text("network.column.ends")));
        ThingId before = ThingId.PLACE;
        for (FaultRanking.Pair pair : pairs) {
            FaultCourse smallest = pair.smallest();
            lines.add(line(
                    smallest.place().equals(before) ? "" : wording.name(smallest.place()),
                    faults.between(smallest),
                    wording.amount(smallest.currentA(), Unit.A),
                    wording.amount(pair.largest().currentA(), Unit.A),
                    String.format(Locale.ROOT, "%.1f", smallest.touchVoltageV()),
                    faults.ends(smallest.clearing())));
            before = smallest.place();
        }
        return lines;
    }

    private static String line(String name, String fault, String smallest, String largest, String touch, String ends) {
        return Columns.left(name, NAME)
                + Columns.left(fault, FAULT)
                + Columns.right(smallest, CURRENT)
                + Columns.right(largest, CURRENT)
                + Columns.right(touch, VOLTAGE)
                + "  "
                + Columns.left(ends, ENDS);
    }
}
