package tideover.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.store.attachment.AttachmentResult.Kept;
import tideover.store.attachment.Privacy;
import tideover.store.customer.Contact;
import tideover.store.customer.Customer;
import tideover.store.customer.CustomerFacts;
import tideover.store.customer.Customers.PersonalAttachments;
import tideover.store.site.SiteId;
import tideover.store.site.SiteSearch;

/** Who is forgotten is in no byte of the data folder any more. */
class ForgettingTest {
    private static final List<String> TRACES = List.of(
            "Martagoerlich",
            "martagoerlich",
            "Laerchenweg",
            "99887",
            "Hinterwald",
            "0551234",
            "mg@example",
            "Ringtwice",
            "Olebrand",
            "0559876",
            "ob@example",
            "earlierphone",
            "letterofmarta",
            "neighbour");

    @TempDir
    private Path folder;

    @Test
    void whoIsForgottenIsInNoByteOfTheDataFolder() throws IOException {
        try (Store store = Store.open(folder, TestSites.TABLE)) {
            for (int i = 0; i < 30; i++) store.customers().create(CustomerFacts.named("Somebody else " + i));
            store.sites().create(TestSites.house(), "As planned", TestSites.at(0));
            SiteId site = store.sites().list(SiteSearch.of("")).get(0).id();
            CustomerFacts early = facts("earlierphone");
            Customer marta = store.customers().create(early);
            store.customers().change(marta.id(), early, facts("0551234"));
            store.customers().link(site, marta.id());
            byte[] letter = ("%PDF-1.7\n" + "letterofmarta ".repeat(2000)).getBytes(StandardCharsets.US_ASCII);
            Kept kept =
                    (Kept) store.attachments().add(site, "", "letter.pdf", letter, Privacy.PERSONAL, TestSites.at(1));
            Kept removed = (Kept) store.attachments()
                    .add(
                            site,
                            "",
                            "photo.pdf",
                            "%PDF-1.7 neighbour".getBytes(StandardCharsets.US_ASCII),
                            Privacy.PERSONAL,
                            TestSites.at(1));
            store.attachments().remove(removed.attachment().id());
            assertThat(found()).contains("Martagoerlich", "earlierphone", "letterofmarta");

            store.customers().forget(marta.id(), TestSites.at(2).when(), PersonalAttachments.ERASE);

            assertThat(found()).isEmpty();
            assertThat(store.attachments().find(kept.attachment().id())).isEmpty();
            assertThat(store.customers().list("somebody")).hasSize(30);
            store.verify();
        }
        assertThat(found()).isEmpty();
    }

    private static CustomerFacts facts(String phone) {
        return new CustomerFacts(
                "Martagoerlich",
                "Laerchenweg 4",
                "99887",
                "Hinterwald",
                "Germany",
                phone,
                "mg@example.org",
                "Ringtwice",
                List.of(new Contact("caretaker", "Olebrand", "0559876", "ob@example.org")));
    }

    /** The traces that stand in some file of the folder. */
    private List<String> found() throws IOException {
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                String bytes = Files.readString(file, StandardCharsets.ISO_8859_1);
                for (String trace : TRACES) if (bytes.contains(trace)) found.add(trace);
            }
        }
        return found;
    }
}
