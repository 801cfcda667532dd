package tideover.command.kept;

import static tideover.command.kept.WorkbenchCalls.encoded;

import java.io.StringWriter;
import java.time.Instant;
import java.util.List;
import tideover.papers.json.Json;
import tideover.store.customer.Contact;
import tideover.store.customer.Customer;
import tideover.store.customer.CustomerFacts;
import tideover.store.customer.CustomerId;
import tideover.store.customer.Customers.PersonalAttachments;
import tideover.store.site.SiteId;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.json.JsonFactory;

/** The customers of a workbench that runs. */
record RunningCustomers(WorkbenchCalls calls) implements KeptCustomers {

    @Override
    public List<Customer> list(String text) {
        return listed("/customers?text=" + encoded(text));
    }

    @Override
    public List<Customer> of(KeptVariant variant) {
        return listed(RunningWorkbench.address(variant, "/customers"));
    }

    private List<Customer> listed(String path) {
        return calls.json(calls.reading(path)).at("customers").items().stream()
                .map(each -> new Customer(
                        new CustomerId(each.at("customer").text()),
                        new CustomerFacts(
                                each.at("name").text(), "", "", each.at("town").text(), "", "", "", "", List.of()),
                        null))
                .toList();
    }

    @Override
    public Customer known(Customer customer) {
        return customer(calls.json(calls.reading(address(customer))));
    }

    @Override
    public List<SiteId> sites(Customer customer) {
        return calls.json(calls.reading(address(customer))).at("sites").items().stream()
                .map(site -> new SiteId(site.text()))
                .toList();
    }

    @Override
    public Customer add(CustomerFacts facts) {
        StringWriter body = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(Json.PRETTY, body)) {
            write(json, facts);
        }
        return customer(calls.json(calls.post("/customers", body.toString())));
    }

    @Override
    public Customer change(Customer before, CustomerFacts after) {
        StringWriter body = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(Json.PRETTY, body)) {
            json.writeStartObject();
            json.writeName("before");
            write(json, before.facts());
            json.writeName("after");
            write(json, after);
            json.writeEndObject();
        }
        return customer(calls.json(calls.post(address(before), body.toString())));
    }

    @Override
    public void link(KeptVariant variant, Customer customer) {
        calls.json(calls.post(ofSite(variant, customer), ""));
    }

    @Override
    public void unlink(KeptVariant variant, Customer customer) {
        calls.json(calls.request(ofSite(variant, customer)).DELETE());
    }

    @Override
    public void forget(Customer customer, PersonalAttachments attachments) {
        calls.json(
                calls.request(address(customer) + "?attachments=" + attachments).DELETE());
    }

    private static String address(Customer customer) {
        return "/customers/" + customer.id();
    }

    private static String ofSite(KeptVariant variant, Customer customer) {
        return RunningWorkbench.address(variant, "/customers/" + customer.id());
    }

    private static void write(JsonGenerator json, CustomerFacts facts) {
        json.writeStartObject();
        json.writeStringProperty("name", facts.name());
        json.writeStringProperty("street", facts.street());
        json.writeStringProperty("postalCode", facts.postalCode());
        json.writeStringProperty("town", facts.town());
        json.writeStringProperty("country", facts.country());
        json.writeStringProperty("phone", facts.phone());
        json.writeStringProperty("mail", facts.mail());
        json.writeStringProperty("note", facts.note());
        json.writeArrayPropertyStart("contacts");
        for (Contact contact : facts.contacts()) {
            json.writeStartObject();
            json.writeStringProperty("role", contact.role());
            json.writeStringProperty("name", contact.name());
            json.writeStringProperty("phone", contact.phone());
            json.writeStringProperty("mail", contact.mail());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static Customer customer(JsonValue known) {
        JsonValue facts = known.at("facts");
        String forgotten = known.at("forgotten").text();
        return new Customer(
                new CustomerId(known.at("customer").text()),
                new CustomerFacts(
                        facts.at("name").text(),
                        facts.at("street").text(),
                        facts.at("postalCode").text(),
                        facts.at("town").text(),
                        facts.at("country").text(),
                        facts.at("phone").text(),
                        facts.at("mail").text(),
                        facts.at("note").text(),
                        facts.at("contacts").items().stream()
                                .map(one -> new Contact(
                                        one.at("role").text(),
                                        one.at("name").text(),
                                        one.at("phone").text(),
                                        one.at("mail").text()))
                                .toList()),
                forgotten.isEmpty() ? null : Instant.parse(forgotten));
    }
}
