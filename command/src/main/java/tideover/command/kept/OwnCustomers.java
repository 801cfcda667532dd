package tideover.command.kept;

import java.time.Clock;
import java.util.List;
import tideover.command.Desk;
import tideover.command.Refusal;
import tideover.store.customer.Customer;
import tideover.store.customer.CustomerChange;
import tideover.store.customer.CustomerFacts;
import tideover.store.customer.Customers;
import tideover.store.customer.Customers.PersonalAttachments;
import tideover.store.site.SiteId;

/** The customers of the store that this process opened. */
record OwnCustomers(OwnStore store, Customers customers, Desk desk, Clock clock) implements KeptCustomers {

    @Override
    public List<Customer> list(String text) {
        return customers.list(text);
    }

    @Override
    public List<Customer> of(KeptVariant variant) {
        return customers.of(store.site(variant));
    }

    @Override
    public Customer known(Customer customer) {
        return customers.find(customer.id()).orElse(customer);
    }

    @Override
    public List<SiteId> sites(Customer customer) {
        return customers.sites(customer.id());
    }

    @Override
    public Customer add(CustomerFacts facts) {
        return customers.create(named(facts));
    }

    @Override
    public Customer change(Customer before, CustomerFacts after) {
        if (customers.change(before.id(), before.facts(), named(after)) instanceof CustomerChange.Saved saved)
            return saved.customer();
        throw new Refusal(List.of(desk.sentence("api.customer.conflict")));
    }

    private CustomerFacts named(CustomerFacts facts) {
        CustomerFacts tidied = facts.tidied();
        if (tidied.name().isEmpty()) throw new Refusal(List.of(desk.sentence("customers.needed.name")));
        return tidied;
    }

    @Override
    public void link(KeptVariant variant, Customer customer) {
        customers.link(store.site(variant), customer.id());
    }

    @Override
    public void unlink(KeptVariant variant, Customer customer) {
        customers.unlink(store.site(variant), customer.id());
    }

    @Override
    public void forget(Customer customer, PersonalAttachments attachments) {
        customers.forget(customer.id(), clock.instant(), attachments);
    }
}
