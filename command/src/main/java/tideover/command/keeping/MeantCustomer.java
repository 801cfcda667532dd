package tideover.command.keeping;

import java.util.List;
import tideover.command.Desk;
import tideover.command.Refusal;
import tideover.command.kept.KeptCustomers;
import tideover.store.customer.Customer;

/** Customers by their names. */
final class MeantCustomer {
    private MeantCustomer() {}

    /** The one that is meant, by lasting name or whole name: nobody is changed or forgotten for a part of a name. */
    static Customer require(String named, KeptCustomers customers, Desk desk) {
        List<Customer> meant = customers.list("").stream()
                .filter(customer -> customer.id().text().equals(named)
                        || customer.facts().name().equalsIgnoreCase(named.strip()))
                .toList();
        if (meant.size() == 1) return meant.get(0);
        List<Customer> near = meant.isEmpty() ? customers.list(named) : meant;
        if (near.isEmpty()) throw new Refusal(List.of(desk.sentence("keeping.noCustomer", named)));
        StringBuilder lines = new StringBuilder(desk.sentence("keeping.whichCustomer", named));
        for (Customer customer : near) lines.append(System.lineSeparator()).append(line(customer, desk));
        throw new Refusal(List.of(lines.toString()));
    }

    /** A customer in one line. */
    static String line(Customer customer, Desk desk) {
        String name = customer.facts().name();
        return desk.sentence(
                "keeping.customer",
                customer.id().text(),
                name.isEmpty() ? desk.sentence("customers.forgotten") : name,
                customer.facts().town());
    }
}
