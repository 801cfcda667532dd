package tideover.web.customers;

import java.util.List;
import tideover.store.customer.Contact;
import tideover.store.customer.CustomerFacts;
import tideover.web.page.Frame;

/**
 * What is known of a customer.
 *
 * @param address   of the customer's page
 * @param sites     address of the sites found under that name
 * @param before    what stands there, which a change goes from
 * @param shown     what the fields show: the same, or what was typed and not taken
 * @param contacts  those shown, and an empty one
 * @param forgotten when everything was erased, worded; empty while it was not
 * @param problem   why it was not taken; empty where nothing was refused
 */
public record CustomerSheet(
        Frame frame,
        String address,
        String sites,
        CustomerFacts before,
        CustomerFacts shown,
        List<Contact> contacts,
        String forgotten,
        String problem) {
    public CustomerSheet {
        contacts = List.copyOf(contacts);
    }

    /**
     * A single fact that is filled in as a text.
     *
     * @param name of its field
     * @param kind of field, as pages know it
     */
    public record Line(String name, String before, String shown, String kind) {}

    /** The facts that are filled in as texts, in the order of a letter. */
    public List<Line> lines() {
        return List.of(
                new Line("name", before.name(), shown.name(), "text"),
                new Line("street", before.street(), shown.street(), "text"),
                new Line("postalCode", before.postalCode(), shown.postalCode(), "text"),
                new Line("town", before.town(), shown.town(), "text"),
                new Line("country", before.country(), shown.country(), "text"),
                new Line("phone", before.phone(), shown.phone(), "tel"),
                new Line("mail", before.mail(), shown.mail(), "text"));
    }
}
