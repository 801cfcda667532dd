package tideover.web.api;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.files.Edit;
import tideover.papers.Wording;
import tideover.store.customer.Contact;
import tideover.store.customer.CustomerFacts;

/** What programs ask for, as JSON. */
final class Wanted {
    private Wanted() {}

    /** A part of the body that has to be there. @throws Unreadable where it is not */
    static <T> T required(String name, @Nullable T part) {
        if (part == null) throw new Unreadable("api.missing", name);
        return part;
    }

    /** A part of a request cannot be read. */
    static final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final String key;
        private final String name;

        /** @param key of the sentence into which the name is put */
        Unreadable(String key, String name) {
            super(key + " " + name);
            this.key = key;
            this.name = name;
        }

        String sentence(Wording words) {
            return words.text(key, name);
        }
    }

    /**
     * A change.
     *
     * @param base  number of the revision that was looked at
     * @param edits made one after the other, all or none
     * @param note  what is to be said to it in the list of revisions
     */
    record Change(
            @Nullable Long base,
            @Nullable List<Edit> edits,
            @Nullable String note) {}

    /** A step back or forth from a revision. */
    record Step(@Nullable Long base) {}

    /** A return to what an earlier revision was. */
    record Restore(@Nullable Long base, @Nullable Long revision) {}

    /** What is to be known of a customer; what is left out is not known. */
    record Customer(
            @Nullable String name,
            @Nullable String street,
            @Nullable String postalCode,
            @Nullable String town,
            @Nullable String country,
            @Nullable String phone,
            @Nullable String mail,
            @Nullable String note,
            @Nullable List<Person> contacts) {

        CustomerFacts facts() {
            return new CustomerFacts(
                    said(name),
                    said(street),
                    said(postalCode),
                    said(town),
                    said(country),
                    said(phone),
                    said(mail),
                    said(note),
                    contacts == null
                            ? List.of()
                            : contacts.stream().map(Person::contact).toList());
        }
    }

    /** Somebody to call about a customer's house. */
    record Person(
            @Nullable String role,
            @Nullable String name,
            @Nullable String phone,
            @Nullable String mail) {
        Contact contact() {
            return new Contact(said(role), said(name), said(phone), said(mail));
        }
    }

    /**
     * A change of what is known of a customer.
     *
     * @param before what was known when the change was thought of
     */
    record CustomerChange(
            @Nullable Customer before, @Nullable Customer after) {}

    private static String said(@Nullable String part) {
        return part == null ? "" : part;
    }
}
