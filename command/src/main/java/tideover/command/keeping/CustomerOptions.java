package tideover.command.keeping;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import tideover.command.Desk;
import tideover.command.Refusal;
import tideover.store.customer.Contact;
import tideover.store.customer.CustomerFacts;

/** What may be said of a customer; what is not given stays as it is, what is given empty is forgotten. */
@Command
final class CustomerOptions {
    private static final int PARTS = 4;

    @Option(names = "--name", paramLabel = "NAME", descriptionKey = "customers.name")
    private @Nullable String name;

    @Option(names = "--street", paramLabel = "TEXT", descriptionKey = "customers.street")
    private @Nullable String street;

    @Option(names = "--postal-code", paramLabel = "TEXT", descriptionKey = "customers.postalCode")
    private @Nullable String postalCode;

    @Option(names = "--town", paramLabel = "TEXT", descriptionKey = "customers.town")
    private @Nullable String town;

    @Option(names = "--country", paramLabel = "TEXT", descriptionKey = "customers.country")
    private @Nullable String country;

    @Option(names = "--phone", paramLabel = "NUMBER", descriptionKey = "customers.phone")
    private @Nullable String phone;

    @Option(names = "--mail", paramLabel = "ADDRESS", descriptionKey = "customers.mail")
    private @Nullable String mail;

    @Option(names = "--note", paramLabel = "TEXT", descriptionKey = "customers.note")
    private @Nullable String note;

    @Option(names = "--contact", paramLabel = "ROLE;NAME;PHONE;MAIL", descriptionKey = "customers.contact")
    private List<String> contacts = new ArrayList<>();

    /** Whether anything is said at all. */
    boolean isGiven() {
        return !contacts.isEmpty()
                || Stream.of(name, street, postalCode, town, country, phone, mail, note)
                        .anyMatch(part -> part != null);
    }

    /** The same facts with what was given. @throws Refusal where a contact is none */
    CustomerFacts over(CustomerFacts facts, Desk desk) {
        return new CustomerFacts(
                or(name, facts.name()),
                or(street, facts.street()),
                or(postalCode, facts.postalCode()),
                or(town, facts.town()),
                or(country, facts.country()),
                or(phone, facts.phone()),
                or(mail, facts.mail()),
                or(note, facts.note()),
                contacts.isEmpty()
                        ? facts.contacts()
                        : contacts.stream().map(text -> contact(text, desk)).toList());
    }

    private static Contact contact(String text, Desk desk) {
        String[] given = text.split(";", -1);
        if (given.length > PARTS) throw new Refusal(List.of(desk.sentence("customers.contactForm", text)));
        String[] parts = {"", "", "", ""};
        System.arraycopy(given, 0, parts, 0, given.length);
        return new Contact(parts[0], parts[1], parts[2], parts[3]);
    }

    private static String or(@Nullable String given, String now) {
        return given == null ? now : given;
    }
}
