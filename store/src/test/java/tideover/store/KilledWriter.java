package tideover.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import tideover.files.Edit;
import tideover.store.attachment.Privacy;
import tideover.store.customer.CustomerFacts;
import tideover.store.database.StoreRefusal;
import tideover.store.site.ChangeResult;
import tideover.store.site.ChangeResult.Saved;
import tideover.store.site.Revision;
import tideover.store.site.SiteRow;
import tideover.store.site.SiteSearch;
import tideover.store.site.Sites;
import tideover.store.site.StoredSite;
import tideover.store.site.VariantId;

/**
 * A process that writes into a real store until it is killed. Each line it prints says what is on the disk by then:
 * {@code saved VARIANT NUMBER DIGEST .}; the dot shows that the line is whole.
 */
final class KilledWriter {
    private final Store store;
    private final Random random;

    private KilledWriter(Store store, Random random) {
        this.store = store;
        this.random = random;
    }

    /** Arguments: data folder, seed. */
    public static void main(String[] arguments) throws InterruptedException {
        try (Store store = Store.open(Path.of(arguments[0]), TestSites.TABLE)) {
            say("ready");
            KilledWriter writer = new KilledWriter(store, new Random(Long.parseLong(arguments[1])));
            while (true) {
                try {
                    writer.write();
                } catch (StoreRefusal refusal) {
                    say("refused " + refusal.reason());
                    // Whoever started this makes room, and then it has to go on.
                    Thread.sleep(20);
                }
            }
        } catch (StoreRefusal refusal) {
            say("stopped " + refusal.reason());
        }
    }

    private void write() {
        Sites sites = store.sites();
        List<SiteRow> rows = sites.list(SiteSearch.of(""));
        int chance = random.nextInt(100);
        if (rows.isEmpty() || chance < 2) {
            said(sites.create(TestSites.house("House " + chance), "As planned", TestSites.at(0)));
            return;
        }
        SiteRow row = rows.get(random.nextInt(rows.size()));
        VariantId variant = row.latest().id();
        long head = row.latest().head();
        if (chance < 4) {
            said(sites.newVariant(variant, "Variant " + chance, TestSites.at(0)));
        } else if (chance < 6) {
            store.attachments().add(row.id(), "oven", "note.pdf", pdf(), Privacy.PERSONAL, TestSites.at(0));
        } else if (chance < 8) {
            store.customers()
                    .link(
                            row.id(),
                            store.customers()
                                    .create(CustomerFacts.named("Marta"))
                                    .id());
        } else if (chance < 20) {
            said(sites.undo(variant, head, TestSites.at(0)));
        } else if (chance < 30) {
            said(sites.redo(variant, head, TestSites.at(0)));
        } else {
            String now = TestSites.value(sites.head(variant).site(), "oven.cable.lengthM");
            Edit edit = new Edit("oven.cable.lengthM", now, Integer.toString(1 + random.nextInt(90)));
            said(sites.change(variant, head, List.of(edit), TestSites.at(0)));
        }
    }

    private byte[] pdf() {
        return ("%PDF-1.7 " + "x".repeat(random.nextInt(40_000))).getBytes(StandardCharsets.US_ASCII);
    }

    private static void said(ChangeResult result) {
        if (result instanceof Saved saved) said(saved.head());
    }

    private static void said(StoredSite stored) {
        Revision revision = stored.revision();
        say("saved %s %d %s"
                .formatted(
                        revision.id().variant(),
                        revision.number(),
                        revision.digest().hex()));
    }

    private static void say(String line) {
        System.out.println(line + " .");
        System.out.flush();
    }
}
