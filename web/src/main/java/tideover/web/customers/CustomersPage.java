package tideover.web.customers;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tideover.engine.rules.PhraseArg;
import tideover.papers.Wording;
import tideover.store.Store;
import tideover.store.customer.Contact;
import tideover.store.customer.Customer;
import tideover.store.customer.CustomerChange;
import tideover.store.customer.CustomerFacts;
import tideover.store.customer.CustomerId;
import tideover.store.customer.Customers.PersonalAttachments;
import tideover.web.customers.CustomersSheet.Row;
import tideover.web.page.NotHere;
import tideover.web.page.Pages;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** Customers: who they are, whose site is whose, and what it takes to forget them. */
@RestController
final class CustomersPage {
    private static final String CUSTOMER = "/customers/{id}";
    private static final String OF_SITE = "/sites/{variant}/customers";

    private final Store store;
    private final Works works;
    private final Pages pages;
    private final Clock clock;

    CustomersPage(Store store, Works works, Pages pages, Clock clock) {
        this.store = store;
        this.works = works;
        this.pages = pages;
        this.clock = clock;
    }

    @GetMapping("/customers")
    ResponseEntity<byte[]> list(@RequestParam(defaultValue = "") String q, HttpServletRequest request) {
        Wording words = pages.words(request);
        List<Row> rows = store.customers().list(q.strip()).stream()
                .map(one -> new Row(
                        "/customers/" + one.id(),
                        one.facts().name(),
                        String.join(" ", one.facts().postalCode(), one.facts().town())
                                .strip(),
                        one.facts().phone()))
                .toList();
        return pages.show(
                "customers",
                new CustomersSheet(
                        pages.frame(request, "customers.title"),
                        q.strip(),
                        rows,
                        words.text("customers.counted", PhraseArg.count(rows.size()))));
    }

    @GetMapping(CUSTOMER)
    ResponseEntity<byte[]> show(@PathVariable String id, HttpServletRequest request) {
        Customer customer = customer(id);
        return pages.show("customer", sheet(customer, customer.facts(), "", request));
    }

    @PostMapping(CUSTOMER)
    ResponseEntity<byte[]> change(@PathVariable String id, HttpServletRequest request) {
        Customer customer = customer(id);
        CustomerFacts typed = CustomerForm.read(request, "");
        if (typed.name().isEmpty())
            return pages.show(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    "customer",
                    sheet(customer, typed, "customers.needed.name", request));
        CustomerChange change = store.customers().change(customer.id(), CustomerForm.read(request, "was."), typed);
        if (change instanceof CustomerChange.Conflicting conflicting)
            return pages.show(
                    HttpStatus.CONFLICT, "customer", sheet(conflicting.now(), typed, "customers.conflict", request));
        return to("/customers/" + customer.id());
    }

    /** Erases all that is known; it takes the name, typed, so that no slip of a finger does it. */
    @PostMapping(CUSTOMER + "/forget")
    ResponseEntity<byte[]> forget(
            @PathVariable String id,
            @RequestParam(defaultValue = "") String name,
            @RequestParam(defaultValue = "KEEP") PersonalAttachments photos,
            HttpServletRequest request) {
        Customer customer = customer(id);
        if (!name.strip().equalsIgnoreCase(customer.facts().name().strip()))
            return pages.show(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    "customer",
                    sheet(customer, customer.facts(), "customers.otherName", request));
        store.customers().forget(customer.id(), clock.instant(), photos);
        return to("/customers");
    }

    @PostMapping(OF_SITE)
    ResponseEntity<byte[]> add(@PathVariable String variant, HttpServletRequest request) {
        Work work = works.open(variant);
        CustomerFacts facts = CustomerFacts.named(CustomerForm.read(request, "").name());
        if (facts.name().isEmpty()) return to(work.address() + "/folder#newCustomer");
        Customer customer = store.customers().create(facts);
        store.customers().link(work.row().site(), customer.id());
        return to("/customers/" + customer.id());
    }

    @PostMapping(OF_SITE + "/link")
    ResponseEntity<byte[]> link(@PathVariable String variant, @RequestParam String customer) {
        Work work = works.open(variant);
        store.customers().link(work.row().site(), customer(customer).id());
        return to(work.address() + "/folder");
    }

    @PostMapping(OF_SITE + "/unlink")
    ResponseEntity<byte[]> unlink(@PathVariable String variant, @RequestParam String customer) {
        Work work = works.open(variant);
        store.customers().unlink(work.row().site(), customer(customer).id());
        return to(work.address() + "/folder");
    }

    private CustomerSheet sheet(Customer customer, CustomerFacts shown, String problemKey, HttpServletRequest request) {
        Wording words = pages.words(request);
        List<Contact> contacts = new ArrayList<>(shown.contacts());
        contacts.add(new Contact("", "", "", ""));
        Instant forgotten = customer.forgottenAt();
        return new CustomerSheet(
                pages.frame(request, "customers.one"),
                "/customers/" + customer.id(),
                "/?q=" + URLEncoder.encode(customer.facts().name(), StandardCharsets.UTF_8),
                customer.facts(),
                shown,
                contacts,
                forgotten == null ? "" : Frames.when(forgotten, words.locale()),
                problemKey.isEmpty() ? "" : words.text(problemKey));
    }

    private Customer customer(String id) {
        try {
            return store.customers().find(new CustomerId(id)).orElseThrow(() -> new NotHere("customer " + id));
        } catch (IllegalArgumentException e) {
            throw new NotHere("customer " + id);
        }
    }

    private static ResponseEntity<byte[]> to(String address) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.LOCATION, address)
                .build();
    }
}
