package tideover.web.api;

import java.time.Clock;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tideover.store.Store;
import tideover.store.customer.Customer;
import tideover.store.customer.CustomerId;
import tideover.store.customer.Customers;
import tideover.store.customer.Customers.PersonalAttachments;
import tideover.store.database.Ids;
import tideover.web.page.NotHere;

/** Customers as programs find and forget them. */
@RestController
@RequestMapping("/api/customers")
final class CustomersApi {
    private final Customers customers;
    private final Clock clock;

    CustomersApi(Store store, Clock clock) {
        this.customers = store.customers();
        this.clock = clock;
    }

    @GetMapping
    Answer.Customers list(@RequestParam(defaultValue = "") String text) {
        return new Answer.Customers(
                customers.list(text.strip()).stream().map(Told::customer).toList());
    }

    /** Erases everything known of a customer; revisions stay as they are. */
    @DeleteMapping("/{customer}")
    ResponseEntity<Void> forget(
            @PathVariable String customer, @RequestParam(defaultValue = "ERASE") PersonalAttachments attachments) {
        customers.forget(require(customer).id(), clock.instant(), attachments);
        return ResponseEntity.noContent().build();
    }

    private Customer require(String id) {
        if (!Ids.isWellFormed(id)) throw new NotHere("customer " + id);
        return customers.find(new CustomerId(id)).orElseThrow(() -> new NotHere("customer " + id));
    }
}
