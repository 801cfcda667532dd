package tideover.reference.network;

import java.util.List;
import tideover.engine.network.flow.Phasor;

/**
 * What a person works out on paper for one of the cases: a row of by-hand.csv.
 *
 * @param expected  which magnitude of which case
 * @param formula   as written on paper
 * @param tolerance half the last digit written
 */
record ByHand(Expected expected, String formula, double tolerance) {

    static List<ByHand> read() {
        return Expected.read("by-hand.csv").stream()
                .map(row -> new ByHand(
                        new Expected(
                                row.getField("case"),
                                row.getField("quantity"),
                                row.getField("name"),
                                Phasor.of(Double.parseDouble(row.getField("value"))),
                                "hand"),
                        row.getField("formula"),
                        Double.parseDouble(row.getField("tolerance"))))
                .toList();
    }

    @Override
    public String toString() {
        return "%s = %s".formatted(expected, formula);
    }
}
