package tideover.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.store.customer.CustomerFacts;
import tideover.store.database.StoreRefusal;
import tideover.store.database.StoreRefusal.Reason;
import tideover.store.site.Revision;
import tideover.store.site.RevisionId;
import tideover.store.site.RevisionKind;
import tideover.store.site.SiteRow;
import tideover.store.site.SiteSearch;
import tideover.store.site.StoredSite;
import tideover.store.site.VariantId;

/** A database file written by the first version is lifted; one from a newer program is left alone. */
class OldStoreTest {
    /** Larch lane 4 in {@code old/version-1.db}: created, oven cable 12 to 13.5, to 14, undone. */
    private static final VariantId LARCH_LANE = new VariantId("89ffb52c4b168e18");

    @TempDir
    private Path folder;

    @BeforeEach
    void layOldFile() throws IOException {
        try (InputStream old = OldStoreTest.class.getResourceAsStream("old/version-1.db")) {
            Files.copy(old, file());
        }
    }

    @Test
    void whatTheFirstVersionWroteIsReadAndGoesOn() {
        try (Store store = Store.open(folder, TestSites.TABLE)) {
            List<Revision> revisions = store.sites().revisions(LARCH_LANE);
            assertThat(revisions)
                    .extracting(Revision::kind)
                    .containsExactly(
                            RevisionKind.CREATED, RevisionKind.EDITED, RevisionKind.EDITED, RevisionKind.UNDONE);
            assertThat(revisions.get(1).entry().note()).isEqualTo("measured with the tape");
            StoredSite head = store.sites().head(LARCH_LANE);
            assertThat(TestSites.value(head.site(), "oven.cable.lengthM")).isEqualTo("13.5");
            assertThat(head.revision().digest().hex()).startsWith("7e81239a3cae");
            store.sites().redo(LARCH_LANE, 4, TestSites.at(10));
            assertThat(TestSites.value(store.sites().head(LARCH_LANE).site(), "oven.cable.lengthM"))
                    .isEqualTo("14");
            SiteRow muller = store.sites().list(SiteSearch.of("müller")).get(0);
            store.customers()
                    .link(
                            muller.id(),
                            store.customers()
                                    .create(CustomerFacts.named("Marta"))
                                    .id());
            assertThat(store.sites().list(SiteSearch.of("marta"))).hasSize(1);
        }
    }

    @Test
    void aDatabaseOfANewerProgramIsRefusedAndLeftAsItIs() throws SQLException, IOException {
        execute("INSERT INTO flyway_schema_history SELECT 99, '0099', 'later', 'SQL', 'V0099__later.sql', 1, 'x',"
                + " '2030-01-01', 1, 1");
        byte[] before = Files.readAllBytes(file());
        assertThatThrownBy(() -> Store.open(folder, TestSites.TABLE))
                .isInstanceOfSatisfying(
                        StoreRefusal.class,
                        refusal -> assertThat(refusal.reason()).isEqualTo(Reason.STORE_NEWER));
        assertThat(Files.readAllBytes(file())).isEqualTo(before);
    }

    @Test
    void aSiteOfANewerFormatIsRefusedAndTheOthersAreRead() throws SQLException {
        execute("UPDATE site_body SET format = 2 WHERE digest LIKE '2e2256f9ba84%'");
        try (Store store = Store.open(folder, TestSites.TABLE)) {
            assertThatThrownBy(() -> store.sites().at(new RevisionId(LARCH_LANE, 1)))
                    .isInstanceOfSatisfying(
                            StoreRefusal.class,
                            refusal -> assertThat(refusal.reason()).isEqualTo(Reason.SITE_NEWER));
            assertThat(store.sites().head(LARCH_LANE).revision().number()).isEqualTo(4);
        }
    }

    private Path file() {
        return folder.resolve(Store.FILE);
    }

    private void execute(String statement) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file());
                Statement sql = connection.createStatement()) {
            assertThat(sql.executeUpdate(statement)).isEqualTo(1);
        }
    }
}
