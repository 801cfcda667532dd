package tideover.command.kept;

import java.util.List;
import tideover.store.customer.Customer;
import tideover.store.customer.CustomerFacts;
import tideover.store.customer.Customers.PersonalAttachments;
import tideover.store.site.SiteId;

/** What commands ask of customers. */
public interface KeptCustomers {

    /** Those that match, by name: of their facts at least name and town. */
    List<Customer> list(String text);

    /** Whose site it is, of their facts at least name and town. */
    List<Customer> of(KeptVariant variant);

    /** The same customer with all that is known. */
    Customer known(Customer customer);

    /** The sites that are a customer's. */
    List<SiteId> sites(Customer customer);

    /** Keeps a new one. */
    Customer add(CustomerFacts facts);

    /**
     * Changes what is known of a customer.
     *
     * @param before with all that was known when the change was thought of
     */
    Customer change(Customer before, CustomerFacts after);

    /** Says that a site, with all its variants, is this customer's. */
    void link(KeptVariant variant, Customer customer);

    void unlink(KeptVariant variant, Customer customer);

    void forget(Customer customer, PersonalAttachments attachments);
}
