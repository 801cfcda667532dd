package tideover.web.customers;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import tideover.store.customer.Contact;
import tideover.store.customer.CustomerFacts;

/** What a form says of a customer. */
final class CustomerForm {
    private static final int LONGEST = 200;
    private static final int LONGEST_NOTE = 4000;

    private CustomerForm() {}

    /**
     * The facts in fields whose names begin so.
     *
     * @param prefix empty for what was typed, {@code was.} for what stood there
     */
    static CustomerFacts read(HttpServletRequest request, String prefix) {
        return new CustomerFacts(
                text(request, prefix + "name"),
                text(request, prefix + "street"),
                text(request, prefix + "postalCode"),
                text(request, prefix + "town"),
                text(request, prefix + "country"),
                text(request, prefix + "phone"),
                text(request, prefix + "mail"),
                note(request, prefix + "note"),
                contacts(request, prefix));
    }

    /** Contacts that say anything at all. */
    private static List<Contact> contacts(HttpServletRequest request, String prefix) {
        String[] names = values(request, prefix + "contact.name");
        String[] roles = values(request, prefix + "contact.role");
        String[] phones = values(request, prefix + "contact.phone");
        String[] mails = values(request, prefix + "contact.mail");
        List<Contact> contacts = new ArrayList<>();
        for (int i = 0; i < names.length; i++) {
            Contact contact = new Contact(at(roles, i), at(names, i), at(phones, i), at(mails, i));
            if (!contact.equals(new Contact("", "", "", ""))) contacts.add(contact);
        }
        return contacts;
    }

    private static String[] values(HttpServletRequest request, String name) {
        String[] values = request.getParameterValues(name);
        return values == null ? new String[0] : values;
    }

    private static String at(String[] values, int index) {
        return index < values.length ? plain(values[index], LONGEST) : "";
    }

    private static String text(HttpServletRequest request, String name) {
        String value = request.getParameter(name);
        return value == null ? "" : plain(value, LONGEST);
    }

    private static String note(HttpServletRequest request, String name) {
        String value = request.getParameter(name);
        if (value == null) return "";
        String lines = value.replace("\r\n", "\n").strip();
        return lines.substring(0, Math.min(lines.length(), LONGEST_NOTE));
    }

    /** On one line, without signs that no paper can bear. */
    private static String plain(String text, int longest) {
        String line = text.replaceAll("\\p{Cntrl}", " ").strip();
        return line.substring(0, Math.min(line.length(), longest));
    }
}
