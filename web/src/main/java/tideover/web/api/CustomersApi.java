package tideover.web.api;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tideover.store.Store;
import tideover.store.customer.Customer;
import tideover.store.customer.CustomerChange;
import tideover.store.customer.CustomerFacts;
import tideover.store.customer.CustomerId;
import tideover.store.customer.Customers;
import tideover.store.customer.Customers.PersonalAttachments;
import tideover.store.database.Ids;
import tideover.store.site.SiteId;
import tideover.web.page.NotHere;
import tideover.web.page.Pages;
import tideover.web.work.Works;

/** Customers as programs find, change and forget them, and whose site is whose. */
@RestController
final class CustomersApi {
    private static final String ALL = "/api/customers";
    private static final String ONE = ALL + "/{customer}";
    private static final String OF_SITE = "/api/sites/{variant}/customers";

    private final Customers customers;
    private final Works works;
    private final Pages pages;
    private final Clock clock;

    CustomersApi(Store store, Works works, Pages pages, Clock clock) {
        this.customers = store.customers();
        this.works = works;
        this.pages = pages;
        this.clock = clock;
    }

    @GetMapping(ALL)
    Answer.Customers list(@RequestParam(defaultValue = "") String text) {
        return told(customers.list(text.strip()));
    }

    @PostMapping(ALL)
    ResponseEntity<?> add(@RequestBody Wanted.Customer wanted, HttpServletRequest request) {
        CustomerFacts facts = wanted.facts().tidied();
        if (facts.name().isEmpty()) return refused(HttpStatus.UNPROCESSABLE_CONTENT, "customers.needed.name", request);
        return ResponseEntity.status(HttpStatus.CREATED).body(known(customers.create(facts)));
    }

    @GetMapping(ONE)
    Answer.KnownCustomer show(@PathVariable String customer) {
        return known(require(customer));
    }

    @PostMapping(ONE)
    ResponseEntity<?> change(
            @PathVariable String customer, @RequestBody Wanted.CustomerChange wanted, HttpServletRequest request) {
        CustomerId id = require(customer).id();
        CustomerFacts before = Wanted.required("before", wanted.before()).facts();
        CustomerFacts after = Wanted.required("after", wanted.after()).facts().tidied();
        if (after.name().isEmpty()) return refused(HttpStatus.UNPROCESSABLE_CONTENT, "customers.needed.name", request);
        CustomerChange change = customers.change(id, before, after);
        return change instanceof CustomerChange.Saved saved
                ? ResponseEntity.ok(known(saved.customer()))
                : refused(HttpStatus.CONFLICT, "api.customer.conflict", request);
    }

    /** Erases everything known of a customer; revisions stay as they are. */
    @DeleteMapping(ONE)
    ResponseEntity<Void> forget(
            @PathVariable String customer, @RequestParam(defaultValue = "ERASE") PersonalAttachments attachments) {
        customers.forget(require(customer).id(), clock.instant(), attachments);
        return ResponseEntity.noContent().build();
    }

    @GetMapping(OF_SITE)
    Answer.Customers of(@PathVariable String variant) {
        return told(customers.of(site(variant)));
    }

    @PostMapping(OF_SITE + "/{customer}")
    ResponseEntity<Void> link(@PathVariable String variant, @PathVariable String customer) {
        customers.link(site(variant), require(customer).id());
        return ResponseEntity.noContent().build();
    }

    @DeleteMapping(OF_SITE + "/{customer}")
    ResponseEntity<Void> unlink(@PathVariable String variant, @PathVariable String customer) {
        customers.unlink(site(variant), require(customer).id());
        return ResponseEntity.noContent().build();
    }

    private static Answer.Customers told(List<Customer> found) {
        return new Answer.Customers(found.stream().map(Told::customer).toList());
    }

    private Answer.KnownCustomer known(Customer customer) {
        return Told.known(customer, customers.sites(customer.id()));
    }

    private ResponseEntity<Answer.Refused> refused(HttpStatus status, String key, HttpServletRequest request) {
        String sentence = pages.words(request).text(key);
        return ResponseEntity.status(status).body(new Answer.Refused(List.of(Answer.Problem.of(sentence))));
    }

    private SiteId site(String variant) {
        return works.open(variant).row().site();
    }

    private Customer require(String id) {
        if (!Ids.isWellFormed(id)) throw new NotHere("customer " + id);
        return customers.find(new CustomerId(id)).orElseThrow(() -> new NotHere("customer " + id));
    }
}
