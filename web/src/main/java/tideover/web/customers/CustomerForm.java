package tideover.web.customers;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import tideover.store.customer.Contact;
import tideover.store.customer.CustomerFacts;

/** What a form says of a customer. */
final class CustomerForm {
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
                        text(request, prefix + "note"),
                        contacts(request, prefix))
                .tidied();
    }

    private static List<Contact> contacts(HttpServletRequest request, String prefix) {
        String[] names = values(request, prefix + "contact.name");
        String[] roles = values(request, prefix + "contact.role");
        String[] phones = values(request, prefix + "contact.phone");
        String[] mails = values(request, prefix + "contact.mail");
        List<Contact> contacts = new ArrayList<>();
        for (int i = 0; i < names.length; i++)
            contacts.add(new Contact(at(roles, i), at(names, i), at(phones, i), at(mails, i)));
        return contacts;
    }

    private static String[] values(HttpServletRequest request, String name) {
        String[] values = request.getParameterValues(name);
        return values == null ? new String[0] : values;
    }

    private static String at(String[] values, int index) {
        return index < values.length ? values[index] : "";
    }

    private static String text(HttpServletRequest request, String name) {
        String value = request.getParameter(name);
        return value == null ? "" : value;
    }
}
