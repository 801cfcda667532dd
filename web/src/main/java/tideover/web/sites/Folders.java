package tideover.web.sites;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import tideover.engine.rules.PhraseArg;
import tideover.papers.Wording;
import tideover.store.Store;
import tideover.store.customer.Customer;
import tideover.store.site.SiteId;
import tideover.store.site.SiteRow;
import tideover.store.site.VariantRow;
import tideover.web.page.NotHere;
import tideover.web.sites.Folder.Here;
import tideover.web.sites.Folder.Person;
import tideover.web.sites.Folder.VariantLink;
import tideover.web.work.Frames;
import tideover.web.work.Work;

/** Makes the folder of a site. */
@Component
final class Folders {
    private final Store store;
    private final Frames frames;

    Folders(Store store, Frames frames) {
        this.store = store;
        this.frames = frames;
    }

    /**
     * The folder.
     *
     * @param typed    what was typed and not taken, by field
     * @param problems why, by field
     */
    Folder of(Work work, Map<String, String> typed, Map<String, String> problems, HttpServletRequest request) {
        Wording words = frames.words(request).with(work.installation());
        SiteId id = work.row().site();
        SiteRow site = store.sites().find(id).orElseThrow(() -> new NotHere("site " + id));
        List<VariantLink> variants = new ArrayList<>();
        for (VariantRow variant : site.variants())
            variants.add(new VariantLink(
                    "/sites/" + variant.id(),
                    variant.name(),
                    variant.id().equals(work.row().id()) ? Here.YES : Here.NO));
        Instant shelved = site.archivedAt();
        List<Customer> people = store.customers().of(id);
        List<Customer> others = new ArrayList<>(store.customers().list(""));
        others.removeIf(one -> people.stream().anyMatch(known -> known.id().equals(one.id())));
        return new Folder(
                frames.beside(request, words, work, words.text("folder.title")),
                work.address(),
                work.row().name(),
                work.row().designation(),
                variants,
                shelved == null ? "" : Frames.when(shelved, words.locale()),
                people.stream().map(one -> person(one, words)).toList(),
                others.stream().map(one -> person(one, words)).toList(),
                words.text(
                        "folder.photos.count",
                        PhraseArg.count(store.attachments().of(id).size())),
                typed,
                problems);
    }

    private static Person person(Customer customer, Wording words) {
        String name = customer.forgottenAt() != null
                ? words.text("customers.forgotten")
                : customer.facts().town().isEmpty()
                        ? customer.facts().name()
                        : customer.facts().name() + ", " + customer.facts().town();
        return new Person(customer.id().text(), name);
    }
}
