package tideover.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.files.Edit;
import tideover.store.database.StoreRefusal;
import tideover.store.database.StoreRefusal.Reason;
import tideover.store.site.SiteSearch;
import tideover.store.site.VariantId;

/** What stops the store is said, and nothing is half written. */
class RefusalTest {
    @TempDir
    private Path folder;

    @TempDir
    private Path scratch;

    @Test
    void theDataFolderIsMadeForItsOwnerOnly() throws IOException {
        Path data = folder.resolve("a").resolve("data");
        try (Store store = Store.open(data, TestSites.TABLE)) {
            store.sites().create(TestSites.house(), "As planned", TestSites.at(0));
            assertThat(mode(data)).isEqualTo("rwx------");
            for (String name : List.of("tideover.db", "tideover.db-wal", "tideover.lock"))
                assertThat(mode(data.resolve(name))).as(name).isEqualTo("rw-------");
        }
    }

    @Test
    void aFolderThatCannotBeMadeIsSaid() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "not a folder");
        assertRefused(file.resolve("data"), Reason.FOLDER_NOT_MADE);
        assertRefused(file, Reason.FOLDER_NOT_MADE);
    }

    @Test
    void aSecondOwnerIsRefusedUntilTheFirstIsGone() {
        VariantId variant;
        try (Store store = Store.open(folder, TestSites.TABLE)) {
            variant = store.sites()
                    .create(TestSites.house(), "As planned", TestSites.at(0))
                    .revision()
                    .id()
                    .variant();
            assertRefused(folder, Reason.IN_USE);
            assertThat(store.sites().head(variant).revision().number()).isEqualTo(1);
            // The refusal within this process has not let another one in.
            try (Child child = Child.start(folder, scratch, 1)) {
                assertThat(child.line()).isEqualTo("stopped IN_USE");
            }
        }
        try (Store store = Store.open(folder, TestSites.TABLE)) {
            assertThat(store.sites().head(variant).revision().number()).isEqualTo(1);
        }
    }

    @Test
    void anotherProcessIsRefusedAndItsEndLetsGoOfTheFolder() {
        try (Child child = Child.start(folder.resolve("data"), folder, 1)) {
            assertThat(child.requireLine()).isEqualTo("ready");
            assertRefused(folder.resolve("data"), Reason.IN_USE);
            child.kill();
            child.waited();
            Store.open(folder.resolve("data"), TestSites.TABLE).close();
        }
    }

    @Test
    void aFileThatIsNoDatabaseIsLeftAsItIs() throws IOException {
        Path file = Files.writeString(folder.resolve(Store.FILE), "a letter, not a database");
        Path log = Files.writeString(folder.resolve(Store.FILE + "-wal"), "and its log");
        assertRefused(folder, Reason.NOT_A_STORE);
        assertThat(file).hasContent("a letter, not a database");
        assertThat(log).hasContent("and its log");
    }

    @Test
    void anEmptyFileWithALogIsNotTakenForANewStore() throws IOException {
        Files.createFile(folder.resolve(Store.FILE));
        Path log = Files.writeString(folder.resolve(Store.FILE + "-wal"), "what was written");
        assertRefused(folder, Reason.DAMAGED);
        assertThat(log).hasContent("what was written");
    }

    @Test
    void aDatabaseOfAnotherProgramIsLeftAsItIs() throws IOException, SQLException {
        Path file = folder.resolve(Store.FILE);
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute("CREATE TABLE other (x)");
        }
        byte[] before = Files.readAllBytes(file);
        assertRefused(folder, Reason.NOT_A_STORE);
        assertThat(file).hasBinaryContent(before);
    }

    @Test
    void aDamagedDatabaseIsSaidWhenTheDamageIsMet() throws IOException {
        VariantId variant;
        try (Store store = Store.open(folder, TestSites.TABLE)) {
            variant = store.sites()
                    .create(TestSites.house(), "As planned", TestSites.at(0))
                    .revision()
                    .id()
                    .variant();
        }
        Path file = folder.resolve(Store.FILE);
        byte[] bytes = Files.readAllBytes(file);
        // All but the first page, in which the tables are listed.
        Arrays.fill(bytes, 4096, bytes.length, (byte) 0x5A);
        Files.write(file, bytes);
        assertThatThrownBy(() -> {
                    try (Store store = Store.open(folder, TestSites.TABLE)) {
                        store.sites().head(variant);
                    }
                })
                .satisfies(isRefusal(Reason.DAMAGED));
    }

    @Test
    void aFolderThatGoesAwayMeanwhileIsSaid() throws IOException {
        Path data = folder.resolve("data");
        try (Store store = Store.open(data, TestSites.TABLE)) {
            Files.move(data, folder.resolve("elsewhere"));
            assertThatThrownBy(() -> store.sites().list(SiteSearch.of(""))).satisfies(isRefusal(Reason.FOLDER_GONE));
            assertThatThrownBy(() -> store.sites().create(TestSites.house(), "As planned", TestSites.at(0)))
                    .satisfies(isRefusal(Reason.FOLDER_GONE));
        }
    }

    @Test
    void aFolderThatGoesAwayAmidWorkIsSaidAndWorkGoesOnOnceItIsBack() throws IOException {
        Path data = folder.resolve("data");
        Path elsewhere = folder.resolve("elsewhere");
        try (Store store = Store.open(data, TestSites.TABLE)) {
            VariantId variant = store.sites()
                    .create(TestSites.house(), "As planned", TestSites.at(0))
                    .revision()
                    .id()
                    .variant();
            // From now on there are connections that would go on with files nobody finds any more.
            assertThat(store.sites().list(SiteSearch.of(""))).hasSize(1);
            Edit edit = new Edit("oven.cable.lengthM", "12", "13");
            Files.move(data, elsewhere);
            assertThatThrownBy(() -> store.sites().change(variant, 1, List.of(edit), TestSites.at(1)))
                    .satisfies(isRefusal(Reason.FOLDER_GONE));
            assertThatThrownBy(() -> store.sites().list(SiteSearch.of(""))).satisfies(isRefusal(Reason.FOLDER_GONE));
            assertThatThrownBy(() -> store.backup(folder.resolve("monday.db")))
                    .satisfies(isRefusal(Reason.FOLDER_GONE));
            Files.move(elsewhere, data);
            store.sites().change(variant, 1, List.of(edit), TestSites.at(1));
            assertThat(store.sites().revisions(variant)).hasSize(2);
        }
    }

    @Test
    void aDatabaseThatWasTakenAwayOrExchangedAmidWorkIsSaid() throws IOException {
        Path data = folder.resolve("data");
        Path file = data.resolve(Store.FILE);
        try (Store store = Store.open(data, TestSites.TABLE)) {
            store.sites().create(TestSites.house(), "As planned", TestSites.at(0));
            Files.move(file, folder.resolve("kept.db"));
            assertThatThrownBy(() -> store.sites().create(TestSites.house(), "As planned", TestSites.at(0)))
                    .satisfies(isRefusal(Reason.STORE_GONE));
            Files.copy(folder.resolve("kept.db"), file);
            assertThatThrownBy(() -> store.sites().create(TestSites.house(), "As planned", TestSites.at(0)))
                    .satisfies(isRefusal(Reason.STORE_GONE));
            Files.delete(file);
            Files.move(folder.resolve("kept.db"), file);
            store.sites().create(TestSites.house(), "As planned", TestSites.at(0));
            assertThat(store.sites().list(SiteSearch.of(""))).hasSize(2);
        }
    }

    @Test
    void aBackupIntoAFolderThatIsNotThereIsSaid() {
        try (Store store = Store.open(folder.resolve("data"), TestSites.TABLE)) {
            assertThatThrownBy(() -> store.backup(folder.resolve("nowhere").resolve("monday.db")))
                    .satisfies(isRefusal(Reason.FILE_MISSING));
        }
    }

    @Test
    void aFailedChangeLeavesTheHeadAsItWas() throws SQLException {
        try (Store store = Store.open(folder, TestSites.TABLE)) {
            VariantId variant = store.sites()
                    .create(TestSites.house(), "As planned", TestSites.at(0))
                    .revision()
                    .id()
                    .variant();
            try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(Store.FILE));
                    Statement statement = connection.createStatement()) {
                statement.execute(
                        "CREATE TRIGGER stop BEFORE UPDATE ON variant BEGIN SELECT RAISE(ABORT, 'stop'); END");
                Edit edit = new Edit("oven.cable.lengthM", "12", "13");
                assertThatThrownBy(() -> store.sites().change(variant, 1, List.of(edit), TestSites.at(1)))
                        .hasMessageContaining("stop");
                assertThat(store.sites().revisions(variant)).hasSize(1);
                statement.execute("DROP TRIGGER stop");
                store.sites().change(variant, 1, List.of(edit), TestSites.at(1));
                assertThat(store.sites().revisions(variant)).hasSize(2);
            }
        }
    }

    private static void assertRefused(Path data, Reason reason) {
        assertThatThrownBy(() -> Store.open(data, TestSites.TABLE).close()).satisfies(isRefusal(reason));
    }

    static Consumer<Throwable> isRefusal(Reason reason) {
        return thrown -> {
            assertThat(thrown).isInstanceOf(StoreRefusal.class);
            assertThat(((StoreRefusal) thrown).reason()).isEqualTo(reason);
        };
    }

    private static String mode(Path path) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
    }
}
