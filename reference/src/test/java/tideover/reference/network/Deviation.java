package tideover.reference.network;

import java.util.List;

/**
 * Where a library and ours differ by more than the tolerance, and why: a row of deviations.csv.
 *
 * @param caseName which case
 * @param tool     which library
 * @param quantity which quantity; * stands for all
 * @param name     which point or element; * stands for all
 * @param perUnit  most that the two may differ
 * @param reason   why they do
 */
record Deviation(String caseName, String tool, String quantity, String name, double perUnit, String reason) {

    static List<Deviation> read() {
        return Expected.read("deviations.csv").stream()
                .map(row -> new Deviation(
                        row.getField("case"),
                        row.getField("tool"),
                        row.getField("quantity"),
                        row.getField("name"),
                        Double.parseDouble(row.getField("perUnit")),
                        row.getField("reason")))
                .toList();
    }

    boolean covers(Expected row) {
        return row.caseName().equals(caseName)
                && row.tool().equals(tool)
                && (quantity.equals("*") || row.quantity().equals(quantity))
                && (name.equals("*") || row.name().equals(name));
    }
}
