package tideover.store.customer;

import java.util.List;
import tideover.store.database.PlainText;

/**
 * What is known of a customer; each part is empty where nobody said.
 *
 * @param street  with number, as on a letter
 * @param country as on a letter
 */
public record CustomerFacts(
        String name,
        String street,
        String postalCode,
        String town,
        String country,
        String phone,
        String mail,
        String note,
        List<Contact> contacts) {
    private static final int LONGEST = 200;
    private static final int LONGEST_NOTE = 4000;

    /** Nothing at all. */
    public static final CustomerFacts NONE = new CustomerFacts("", "", "", "", "", "", "", "", List.of());

    public CustomerFacts {
        contacts = List.copyOf(contacts);
    }

    /** The same, each part fit for a letter; contacts that say nothing at all are left out. */
    public CustomerFacts tidied() {
        return new CustomerFacts(
                line(name),
                line(street),
                line(postalCode),
                line(town),
                line(country),
                line(phone),
                line(mail),
                PlainText.lines(note, LONGEST_NOTE),
                contacts.stream()
                        .map(one ->
                                new Contact(line(one.role()), line(one.name()), line(one.phone()), line(one.mail())))
                        .filter(one -> !one.equals(new Contact("", "", "", "")))
                        .toList());
    }

    private static String line(String part) {
        return PlainText.line(part, LONGEST);
    }

    /** A customer of whom only the name is known. */
    public static CustomerFacts named(String name) {
        return new CustomerFacts(name, "", "", "", "", "", "", "", List.of());
    }
}
