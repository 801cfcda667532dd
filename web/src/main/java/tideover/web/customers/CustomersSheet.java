package tideover.web.customers;

import java.util.List;
import tideover.web.page.Frame;

/**
 * The customers there are, by name.
 *
 * @param query   what was searched for; empty for all
 * @param counted how many there are, worded
 */
public record CustomersSheet(Frame frame, String query, List<Row> rows, String counted) {
    public CustomersSheet {
        rows = List.copyOf(rows);
    }

    /** One customer. */
    public record Row(String address, String name, String place, String phone) {}
}
