package tideover.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.NoSuchElementException;
import org.junit.jupiter.api.Test;
import tideover.store.customer.Contact;
import tideover.store.customer.Customer;
import tideover.store.customer.CustomerChange;
import tideover.store.customer.CustomerFacts;
import tideover.store.customer.CustomerId;
import tideover.store.customer.Customers;
import tideover.store.customer.Customers.PersonalAttachments;
import tideover.store.site.Revision;
import tideover.store.site.SiteId;
import tideover.store.site.SiteSearch;
import tideover.store.site.VariantId;

/** What is kept of people, and what is left when they are forgotten. */
class CustomersTest extends OnEveryMake {
    private static final CustomerFacts MARTA = new CustomerFacts(
            "Marta Görlich",
            "Lärchenweg 4",
            "99999",
            "Hinterwald",
            "Germany",
            "+49 000 1234",
            "marta@example.org",
            "Ring twice.",
            List.of(
                    new Contact("caretaker", "Ole Brand", "+49 000 5678", "ole@example.org"),
                    new Contact("daughter", "Ida Görlich", "", "")));

    private Customers customers() {
        return store().customers();
    }

    @Test
    void aCustomerIsTheSameAfterARestart() {
        Customer created = customers().create(MARTA);
        assertThat(reopened().customers().find(created.id())).contains(created);
        assertThat(created.facts()).isEqualTo(MARTA);
    }

    @Test
    void customersAreFoundByNameAndTownInTheOrderOfNames() {
        Customer marta = customers().create(MARTA);
        Customer anton = customers().create(CustomerFacts.named("Anton Berg"));
        assertThat(customers().list("")).containsExactly(anton, marta);
        assertThat(customers().list("gorlich hinter")).containsExactly(marta);
        assertThat(customers().list("berg hinter")).isEmpty();
    }

    @Test
    void aChangeThatAnotherWindowOvertookIsNotMade() {
        Customer marta = customers().create(MARTA);
        CustomerFacts moved = CustomerFacts.named("Marta Görlich-Berg");
        assertThat(customers().change(marta.id(), MARTA, moved))
                .isEqualTo(new CustomerChange.Saved(new Customer(marta.id(), moved, null)));
        assertThat(customers().change(marta.id(), MARTA, CustomerFacts.named("Marta")))
                .isEqualTo(new CustomerChange.Conflicting(new Customer(marta.id(), moved, null)));
        assertThat(customers().find(marta.id())).contains(new Customer(marta.id(), moved, null));
    }

    @Test
    void aSiteIsFoundByTheNameAndTownOfItsCustomers() {
        SiteId site = site();
        Customer marta = customers().create(MARTA);
        customers().link(site, marta.id());
        customers().link(site, marta.id());
        assertThat(customers().of(site)).containsExactly(marta);
        assertThat(found("görlich larch")).containsExactly(site);
        assertThat(found("HINTERWALD")).containsExactly(site);
        customers().unlink(site, marta.id());
        assertThat(customers().of(site)).isEmpty();
        assertThat(found("hinterwald")).isEmpty();
    }

    @Test
    void forgettingErasesThePersonAndLeavesEveryRevision() {
        SiteId site = site();
        VariantId variant =
                store().sites().find(site).orElseThrow().variants().get(0).id();
        List<Revision> before = store().sites().revisions(variant);
        Customer marta = customers().create(MARTA);
        customers().link(site, marta.id());
        customers().forget(marta.id(), TestSites.at(9).when(), PersonalAttachments.KEEP);
        Customer forgotten =
                new Customer(marta.id(), CustomerFacts.NONE, TestSites.at(9).when());
        assertThat(customers().of(site)).containsExactly(forgotten);
        assertThat(customers().list("")).isEmpty();
        assertThat(found("görlich")).isEmpty();
        assertThat(customers().change(marta.id(), CustomerFacts.NONE, MARTA))
                .isEqualTo(new CustomerChange.Conflicting(forgotten));
        assertThat(store().sites().revisions(variant)).isEqualTo(before);
        assertThat(store().sites().head(variant).site()).isEqualTo(TestSites.house());
    }

    @Test
    void aCustomerThatIsNotThereIsSaid() {
        CustomerId nobody = new CustomerId("0123456789abcdef");
        assertThat(customers().find(nobody)).isEmpty();
        assertThatThrownBy(() -> customers().link(site(), nobody)).isInstanceOf(NoSuchElementException.class);
    }

    private SiteId site() {
        store().sites().create(TestSites.house(), "As planned", TestSites.at(0));
        return found("larch").get(0);
    }

    private List<SiteId> found(String text) {
        return store().sites().list(SiteSearch.of(text)).stream()
                .map(row -> row.id())
                .toList();
    }
}
