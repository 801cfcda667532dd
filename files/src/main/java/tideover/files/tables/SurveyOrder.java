package tideover.files.tables;

import java.util.List;

/** Which facts set the price of a job, the one that changes most first. */
public final class SurveyOrder {
    private SurveyOrder() {}

    /** Rows of the field table, such as {@code supply.mainFuse.ratedCurrentA}. */
    public static List<String> load() {
        return Table.read("survey-order.csv").map(row -> row.text("field"));
    }
}
