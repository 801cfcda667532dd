package tideover.command.keeping;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tideover.command.Desk;
import tideover.command.Refusal;
import tideover.command.Status;
import tideover.command.kept.Keeping;
import tideover.command.kept.KeptCustomers;
import tideover.command.kept.KeptVariant;
import tideover.store.customer.Contact;
import tideover.store.customer.Customer;
import tideover.store.customer.CustomerFacts;
import tideover.store.site.SiteId;
import tideover.store.site.SiteSearch.Shelf;

/** Customers: who they are, and whose site is whose. */
@Command(name = "customers", resourceBundle = "tideover.command.help", sortOptions = false)
public final class CustomersCommand extends KeptCommand {
    @Parameters(paramLabel = "TEXT", arity = "0..*", descriptionKey = "customers.text")
    private List<String> words = List.of();

    @Option(names = "--show", paramLabel = "CUSTOMER", descriptionKey = "customers.show")
    private @Nullable String show;

    @Option(names = "--add", paramLabel = "NAME", descriptionKey = "customers.add")
    private @Nullable String add;

    @Option(names = "--change", paramLabel = "CUSTOMER", descriptionKey = "customers.change")
    private @Nullable String change;

    @Option(names = "--link", paramLabel = "CUSTOMER", descriptionKey = "customers.link")
    private @Nullable String link;

    @Option(names = "--unlink", paramLabel = "CUSTOMER", descriptionKey = "customers.unlink")
    private @Nullable String unlink;

    @Option(names = "--site", paramLabel = "SITE", descriptionKey = "customers.site")
    private @Nullable String site;

    @Mixin
    private CustomerOptions typed = new CustomerOptions();

    public CustomersCommand(Desk desk) {
        super(desk);
    }

    @Override
    int work(Keeping keeping) {
        refuseWhatDoesNotGoTogether();
        if (add != null) return add(keeping, add);
        if (change != null) return change(keeping.customers(), change);
        if (link != null || unlink != null) return link(keeping);
        if (show != null) tell(keeping, MeantCustomer.require(show, keeping.customers(), desk));
        else list(keeping);
        return Status.DONE;
    }

    private void refuseWhatDoesNotGoTogether() {
        List<String> problems = new ArrayList<>();
        long actions = Stream.of(show, add, change, link, unlink)
                .filter(action -> action != null)
                .count();
        if (actions > 1 || actions == 1 && !words.isEmpty()) problems.add(desk.sentence("customers.oneAtATime"));
        if ((link != null || unlink != null) && site == null) problems.add(desk.sentence("customers.whichSite"));
        boolean takesFacts = add != null || change != null;
        if (typed.isGiven() && !takesFacts) problems.add(desk.sentence("customers.factsOfWhom"));
        if (change != null && !typed.isGiven()) problems.add(desk.sentence("customers.nothingToChange"));
        if (site != null && (show != null || change != null || !words.isEmpty()))
            problems.add(desk.sentence("customers.siteWithWhat"));
        if (!problems.isEmpty()) throw new Refusal(problems);
    }

    private int add(Keeping keeping, String name) {
        // A site that is not there is told before anything is kept.
        KeptVariant variant = site == null ? null : require(keeping, site);
        CustomerFacts facts = typed.over(CustomerFacts.named(name), desk);
        Customer added = keeping.customers().add(facts);
        desk.out().println(MeantCustomer.line(added, desk));
        if (variant != null) {
            keeping.customers().link(variant, added);
            desk.out()
                    .println(desk.sentence(
                            "customers.linked",
                            variant.designation(),
                            added.facts().name()));
        }
        return Status.DONE;
    }

    private int change(KeptCustomers customers, String named) {
        Customer before = customers.known(MeantCustomer.require(named, customers, desk));
        Customer after = customers.change(before, typed.over(before.facts(), desk));
        desk.out().println(MeantCustomer.line(after, desk));
        print(after.facts());
        return Status.DONE;
    }

    private int link(Keeping keeping) {
        KeptVariant variant = require(keeping, site == null ? "" : site);
        boolean linking = link != null;
        String named = link != null ? link : unlink;
        // Also a forgotten one may be taken from a site; it bears no name any more.
        List<Customer> there = keeping.customers().of(variant);
        Customer customer = there.stream()
                .filter(one -> one.id().text().equals(named))
                .findFirst()
                .orElseGet(() -> MeantCustomer.require(named == null ? "" : named, keeping.customers(), desk));
        boolean theirs = there.stream().anyMatch(one -> one.id().equals(customer.id()));
        if (!linking && !theirs)
            throw new Refusal(List.of(desk.sentence(
                    "customers.notTheirs",
                    variant.designation(),
                    customer.facts().name())));
        if (linking) keeping.customers().link(variant, customer);
        else keeping.customers().unlink(variant, customer);
        desk.out()
                .println(desk.sentence(
                        linking ? "customers.linked" : "customers.unlinked",
                        variant.designation(),
                        customer.facts().name().isEmpty()
                                ? customer.id().text()
                                : customer.facts().name()));
        return Status.DONE;
    }

    private void list(Keeping keeping) {
        List<Customer> found = site == null
                ? keeping.customers().list(String.join(" ", words))
                : keeping.customers().of(require(keeping, site));
        found.forEach(customer -> desk.out().println(MeantCustomer.line(customer, desk)));
        if (found.isEmpty()) desk.say(site == null ? "customers.none" : "customers.noneOfSite");
    }

    private void tell(Keeping keeping, Customer meant) {
        Customer customer = keeping.customers().known(meant);
        desk.out().println(MeantCustomer.line(customer, desk));
        print(customer.facts());
        Set<String> sites = new HashSet<>();
        for (SiteId one : keeping.customers().sites(customer)) sites.add(one.text());
        // The search of sites looks into names of their customers too.
        for (KeptVariant variant : keeping.list(customer.facts().name(), Shelf.BOTH))
            if (sites.contains(variant.site())) desk.out().println(desk.sentence("customers.has", line(variant)));
    }

    private void print(CustomerFacts facts) {
        print("street", facts.street());
        print("postalCode", facts.postalCode());
        print("country", facts.country());
        print("phone", facts.phone());
        print("mail", facts.mail());
        facts.note().lines().forEach(line -> print("note", line));
        for (Contact contact : facts.contacts())
            print(
                    "contact",
                    Stream.of(contact.role(), contact.name(), contact.phone(), contact.mail())
                            .filter(part -> !part.isEmpty())
                            .toList());
    }

    private void print(String what, List<String> parts) {
        print(what, String.join(" · ", parts));
    }

    private void print(String what, String value) {
        if (!value.isEmpty())
            desk.out().println(desk.sentence("customers.fact", desk.sentence("customers." + what), value));
    }
}
