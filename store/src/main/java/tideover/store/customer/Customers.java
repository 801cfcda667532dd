package tideover.store.customer;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.jdbi.v3.core.statement.Update;
import org.jspecify.annotations.Nullable;
import tideover.store.database.Database;
import tideover.store.database.Folding;
import tideover.store.database.SearchWords;
import tideover.store.database.Sql;
import tideover.store.database.Times;
import tideover.store.site.SiteId;

/**
 * The customers of a store. What a method here answers for is on the disk when it returns. Safe to share between threads.
 */
public final class Customers {
    private final Database database;

    public Customers(Database database) {
        this.database = database;
    }

    /** Keeps a new customer. */
    public Customer create(CustomerFacts facts) {
        CustomerId id = CustomerId.fresh();
        return database.write(sql -> {
            bound(facts, sql.update("customer/insert").bind("id", id.text())).execute();
            insertContacts(id, facts.contacts(), sql);
            return new Customer(id, facts, null);
        });
    }

    /**
     * Changes what is known of a customer.
     *
     * @param before what was known when the change was thought of
     */
    public CustomerChange change(CustomerId id, CustomerFacts before, CustomerFacts after) {
        return database.write(sql -> {
            Customer now = require(id, sql);
            if (now.forgottenAt() != null || !now.facts().equals(before)) return new CustomerChange.Conflicting(now);
            bound(after, sql.update("customer/update").bind("id", id.text())).execute();
            sql.update("contact/delete").bind("customer", id.text()).execute();
            insertContacts(id, after.contacts(), sql);
            return new CustomerChange.Saved(new Customer(id, after, null));
        });
    }

    public Optional<Customer> find(CustomerId id) {
        return database.read(sql -> find(id, sql));
    }

    /**
     * The customers that match, by name; forgotten ones are not among them.
     *
     * @param text words that each must occur in name or town; empty for all
     */
    public List<Customer> list(String text) {
        return database.read(sql -> SearchWords.bind(text, sql.query("customer/search"))
                .map((row, context) -> customer(row, sql))
                .list());
    }

    /** The customers of a site, by name; a forgotten one is still among them, without its facts. */
    public List<Customer> of(SiteId site) {
        return database.read(sql -> sql.query("customer/of_site")
                .bind("site", site.text())
                .map((row, context) -> customer(row, sql))
                .list());
    }

    /** The sites that are a customer's. */
    public List<SiteId> sites(CustomerId customer) {
        return database.read(sql -> sql.query("customer/sites")
                .bind("customer", customer.text())
                .map((row, context) -> new SiteId(row.getString("site_id")))
                .list());
    }

    /** Says that a site is this customer's; several may share one. */
    public void link(SiteId site, CustomerId customer) {
        database.write(sql -> {
            require(customer, sql);
            return linked("customer/link", site, customer, sql);
        });
    }

    /** Says that a site is no longer this customer's. */
    public void unlink(SiteId site, CustomerId customer) {
        database.write(sql -> linked("customer/unlink", site, customer, sql));
    }

    private static int linked(String statement, SiteId site, CustomerId customer, Sql sql) {
        return sql.update(statement)
                .bind("site", site.text())
                .bind("customer", customer.text())
                .execute();
    }

    /** What becomes of attachments marked as personal at the sites of a customer who is forgotten. */
    public enum PersonalAttachments {
        KEEP,
        ERASE
    }

    /**
     * Erases everything known of a customer, down to the bytes of the database file. No revision changes; backups made
     * before still hold it.
     */
    public void forget(CustomerId id, Instant when, PersonalAttachments attachments) {
        database.write(sql -> {
            require(id, sql);
            sql.update("contact/delete").bind("customer", id.text()).execute();
            if (attachments == PersonalAttachments.ERASE) {
                sql.update("attachment/delete_personal")
                        .bind("customer", id.text())
                        .execute();
                sql.update("attachment/drop_bodies").execute();
            }
            return sql.update("customer/forget")
                    .bind("id", id.text())
                    .bind("forgottenAt", Times.text(when))
                    .execute();
        });
        database.eraseTraces();
    }

    private static Customer require(CustomerId id, Sql sql) {
        return find(id, sql).orElseThrow(() -> new NoSuchElementException("there is no customer " + id));
    }

    private static Optional<Customer> find(CustomerId id, Sql sql) {
        return sql.query("customer/find")
                .bind("id", id.text())
                .map((row, context) -> customer(row, sql))
                .findOne();
    }

    private static Customer customer(ResultSet row, Sql sql) throws SQLException {
        String id = row.getString("id");
        List<Contact> contacts = sql.query("contact/of_customer")
                .bind("customer", id)
                .map((contact, context) -> new Contact(
                        contact.getString("role"),
                        contact.getString("name"),
                        contact.getString("phone"),
                        contact.getString("mail")))
                .list();
        return new Customer(
                new CustomerId(id),
                new CustomerFacts(
                        row.getString("name"),
                        row.getString("street"),
                        row.getString("postal_code"),
                        row.getString("town"),
                        row.getString("country"),
                        row.getString("phone"),
                        row.getString("mail"),
                        row.getString("note"),
                        contacts),
                time(row.getString("forgotten_at")));
    }

    private static Update bound(CustomerFacts facts, Update update) {
        return update.bind("name", facts.name())
                .bind("street", facts.street())
                .bind("postalCode", facts.postalCode())
                .bind("town", facts.town())
                .bind("country", facts.country())
                .bind("phone", facts.phone())
                .bind("mail", facts.mail())
                .bind("note", facts.note())
                .bind("searched", Folding.fold(facts.name() + " " + facts.town()));
    }

    private static void insertContacts(CustomerId id, List<Contact> contacts, Sql sql) {
        for (int i = 0; i < contacts.size(); i++)
            sql.update("contact/insert")
                    .bind("customer", id.text())
                    .bind("ordinal", i + 1)
                    .bind("role", contacts.get(i).role())
                    .bind("name", contacts.get(i).name())
                    .bind("phone", contacts.get(i).phone())
                    .bind("mail", contacts.get(i).mail())
                    .execute();
    }

    private static @Nullable Instant time(@Nullable String text) {
        return text == null ? null : Times.of(text);
    }
}
