package tideover.store.customer;

import java.util.List;

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
    /** Nothing at all. */
    public static final CustomerFacts NONE = new CustomerFacts("", "", "", "", "", "", "", "", List.of());

    public CustomerFacts {
        contacts = List.copyOf(contacts);
    }

    /** A customer of whom only the name is known. */
    public static CustomerFacts named(String name) {
        return new CustomerFacts(name, "", "", "", "", "", "", "", List.of());
    }
}
