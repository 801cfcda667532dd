package tideover.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.files.Edit;
import tideover.store.attachment.Photos;
import tideover.store.attachment.Privacy;
import tideover.store.database.StoreRefusal;
import tideover.store.database.StoreRefusal.Reason;
import tideover.store.site.RevisionId;
import tideover.store.site.SiteSearch;
import tideover.store.site.VariantId;

/** A backup holds everything of one moment, and is read whole before it takes the place of anything. */
class BackupTest {
    @TempDir
    private Path folder;

    private Path data;
    private Path backup;
    private VariantId variant;

    @BeforeEach
    void keepSomething() {
        data = folder.resolve("data");
        backup = folder.resolve("monday.db");
        try (Store store = open(data)) {
            variant = store.sites()
                    .create(TestSites.house(), "As planned", TestSites.at(0))
                    .revision()
                    .id()
                    .variant();
            store.attachments()
                    .add(
                            store.sites().list(SiteSearch.of("")).get(0).id(),
                            "oven",
                            "oven.jpg",
                            Photos.jpeg(6),
                            Privacy.ORDINARY,
                            TestSites.at(1));
            store.backup(backup);
        }
    }

    @Test
    void whatWasBackedUpComesBackAndTheOldStaysBesideIt() throws IOException {
        change("13");
        Optional<Path> kept =
                Store.restore(data, backup, TestSites.TABLE, TestSites.at(9).when());
        assertThat(kept).contains(data.resolve("tideover-2026-11-30T070900Z.db"));
        assertThat(length(data)).isEqualTo("12");
        try (Store store = open(data)) {
            store.verify();
            assertThat(store.attachments()
                            .of(store.sites().list(SiteSearch.of("")).get(0).id()))
                    .hasSize(1);
        }
        Path other = folder.resolve("other");
        Store.restore(
                other, kept.orElseThrow(), TestSites.TABLE, TestSites.at(10).when());
        assertThat(length(other)).isEqualTo("13");
        assertThat(names(data)).containsExactly("tideover-2026-11-30T070900Z.db", "tideover.db", "tideover.lock");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(data.resolve("tideover.db"))))
                .isEqualTo("rw-------");
    }

    @Test
    void aBackupIsOneFileForItsOwnerOnly() throws IOException {
        assertThat(names(folder)).containsExactly("data", "monday.db");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(backup)))
                .isEqualTo("rw-------");
        assertThatThrownBy(() -> {
                    try (Store store = open(data)) {
                        store.backup(backup);
                    }
                })
                .satisfies(refusal(Reason.FILE_EXISTS, backup));
    }

    @Test
    void workGoesOnWhileABackupIsWritten() throws InterruptedException {
        Path during = folder.resolve("during.db");
        try (Store store = open(data)) {
            AtomicBoolean done = new AtomicBoolean();
            long[] written = {1};
            Thread writer = new Thread(() -> {
                while (!done.get()) {
                    String now = TestSites.value(store.sites().head(variant).site(), "oven.cable.lengthM");
                    String next = now.equals("12") ? "13" : "12";
                    store.sites()
                            .change(
                                    variant,
                                    written[0],
                                    List.of(new Edit("oven.cable.lengthM", now, next)),
                                    TestSites.at(1));
                    written[0]++;
                }
            });
            writer.start();
            store.backup(during);
            done.set(true);
            writer.join();
            assertThat(store.sites().revisions(variant)).hasSize((int) written[0]);
        }
        Path other = folder.resolve("other");
        Store.restore(other, during, TestSites.TABLE, TestSites.at(2).when());
        try (Store store = open(other)) {
            assertThat(store.sites().revisions(variant)).isNotEmpty();
        }
    }

    @Test
    void aDamagedBackupIsRefusedAndNothingChanges() throws IOException {
        change("13");
        byte[] good = Files.readAllBytes(backup);
        // Zeroes over each part of the file in turn: whichever page they hit, the answer is a sentence or the whole
        // content.
        for (int at = 0; at < good.length; at += good.length / 16) {
            Files.write(backup, good);
            try (RandomAccessFile file = new RandomAccessFile(backup.toFile(), "rw")) {
                file.seek(at);
                file.write(new byte[3000]);
            }
            try {
                Store.restore(
                        folder.resolve("copy-" + at),
                        backup,
                        TestSites.TABLE,
                        TestSites.at(9).when());
                try (Store store = open(folder.resolve("copy-" + at))) {
                    assertThat(TestSites.value(store.sites().head(variant).site(), "oven.cable.lengthM"))
                            .isEqualTo("12");
                }
            } catch (StoreRefusal refusal) {
                assertThat(refusal.reason())
                        .isIn(Reason.DAMAGED, Reason.NOT_A_STORE, Reason.SITE_DAMAGED, Reason.ATTACHMENT_DAMAGED);
                assertThat(names(folder.resolve("copy-" + at))).containsExactly("tideover.lock");
            }
        }
        Files.write(backup, Arrays.copyOf(good, good.length / 2));
        assertThatThrownBy(() -> Store.restore(
                        data, backup, TestSites.TABLE, TestSites.at(9).when()))
                .satisfies(refusal(Reason.DAMAGED, backup));
        assertThat(length(data)).isEqualTo("13");
        assertThat(names(data)).containsExactly("tideover.db", "tideover.lock");
    }

    @Test
    void aRevisionThatIsNotWhatWasKeptIsRefused() throws Exception {
        execute(backup, "UPDATE site_body SET deflated = (SELECT deflated || x'00' FROM site_body)");
        assertThat(length(restored("a"))).isEqualTo("12");
        execute(backup, "UPDATE site_body SET deflated = x'789c030000000001'");
        assertThatThrownBy(() -> restored("b"))
                .isInstanceOfSatisfying(
                        StoreRefusal.class,
                        refusal -> assertThat(refusal.reason()).isEqualTo(Reason.SITE_DAMAGED));
    }

    @Test
    void aPhotoThatIsNotWhatWasKeptIsRefused() throws Exception {
        execute(backup, "UPDATE attachment_body SET content = x'00'");
        assertThatThrownBy(() -> restored("a"))
                .isInstanceOfSatisfying(
                        StoreRefusal.class,
                        refusal -> assertThat(refusal.reason()).isEqualTo(Reason.ATTACHMENT_DAMAGED));
    }

    @Test
    void aBackupOfANewerProgramOrOfSomethingElseIsRefused() throws Exception {
        execute(
                backup,
                "INSERT INTO flyway_schema_history SELECT 99, '0099', 'later', 'SQL', 'x', 1, 'x', '2030-01-01', 1, 1");
        assertThatThrownBy(() -> restored("a"))
                .isInstanceOfSatisfying(
                        StoreRefusal.class,
                        refusal -> assertThat(refusal.reason()).isEqualTo(Reason.STORE_NEWER));
        Files.writeString(backup, "a letter");
        assertThatThrownBy(() -> restored("b")).satisfies(refusal(Reason.NOT_A_STORE, backup));
        Files.write(backup, new byte[0]);
        assertThatThrownBy(() -> restored("c")).satisfies(refusal(Reason.NOT_A_STORE, backup));
        Files.delete(backup);
        assertThatThrownBy(() -> restored("d")).satisfies(refusal(Reason.FILE_MISSING, backup));
        Path foreign = folder.resolve("foreign.db");
        execute(foreign, "CREATE TABLE other (x)");
        assertThatThrownBy(() -> Store.restore(
                        folder.resolve("e"),
                        foreign,
                        TestSites.TABLE,
                        TestSites.at(0).when()))
                .satisfies(refusal(Reason.NOT_A_STORE, foreign));
    }

    @Test
    void aBackupOfTheFirstVersionIsLifted() throws IOException {
        try (InputStream old = BackupTest.class.getResourceAsStream("old/version-1.db")) {
            Files.copy(old, folder.resolve("old.db"));
        }
        Store.restore(
                data, folder.resolve("old.db"), TestSites.TABLE, TestSites.at(9).when());
        try (Store store = open(data)) {
            assertThat(store.sites()
                            .at(new RevisionId(new VariantId("89ffb52c4b168e18"), 3))
                            .site())
                    .isNotNull();
            assertThat(store.customers().list("")).isEmpty();
        }
    }

    @Test
    void aCopyOfARunningStoreIsTakenWithWhatLiesBesideIt() throws IOException {
        try (Store store = open(data)) {
            store.sites().change(variant, 1, List.of(new Edit("oven.cable.lengthM", "12", "13")), TestSites.at(1));
            Files.copy(data.resolve("tideover.db"), folder.resolve("raw.db"));
            Files.copy(data.resolve("tideover.db-wal"), folder.resolve("raw.db-wal"));
        }
        Path other = folder.resolve("other");
        Store.restore(
                other,
                folder.resolve("raw.db"),
                TestSites.TABLE,
                TestSites.at(2).when());
        assertThat(length(other)).isEqualTo("13");
    }

    @Test
    void aDamagedStoreIsReplacedAndKeptWithItsLog() throws IOException {
        Files.writeString(data.resolve("tideover.db"), "ruined".repeat(1000));
        Files.writeString(data.resolve("tideover.db-wal"), "log");
        Store.restore(data, backup, TestSites.TABLE, TestSites.at(9).when());
        assertThat(length(data)).isEqualTo("12");
        assertThat(Files.readString(data.resolve("tideover-2026-11-30T070900Z.db"), StandardCharsets.UTF_8))
                .startsWith("ruined");
        assertThat(names(data))
                .containsExactly(
                        "tideover-2026-11-30T070900Z.db",
                        "tideover-2026-11-30T070900Z.db-wal",
                        "tideover.db",
                        "tideover.lock");
    }

    @Test
    void aRunningStoreIsNotReplaced() {
        try (Store store = open(data)) {
            assertThatThrownBy(() -> Store.restore(
                            data, backup, TestSites.TABLE, TestSites.at(9).when()))
                    .satisfies(refusal(Reason.IN_USE, data));
            assertThat(store.sites().head(variant).revision().number()).isEqualTo(1);
        }
    }

    private Path restored(String name) {
        Path other = folder.resolve(name);
        Store.restore(other, backup, TestSites.TABLE, TestSites.at(9).when());
        return other;
    }

    private void change(String length) {
        try (Store store = open(data)) {
            store.sites().change(variant, 1, List.of(new Edit("oven.cable.lengthM", "12", length)), TestSites.at(5));
        }
    }

    private String length(Path where) {
        try (Store store = open(where)) {
            return TestSites.value(store.sites().head(variant).site(), "oven.cable.lengthM");
        }
    }

    private static Store open(Path where) {
        return Store.open(where, TestSites.TABLE);
    }

    private static Consumer<Throwable> refusal(Reason reason, Path about) {
        return thrown -> {
            assertThat(thrown).isInstanceOf(StoreRefusal.class).hasMessageContaining(about.toString());
            assertThat(((StoreRefusal) thrown).reason()).isEqualTo(reason);
        };
    }

    private static List<String> names(Path where) throws IOException {
        try (Stream<Path> files = Files.list(where)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static void execute(Path file, String statement) throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement sql = connection.createStatement()) {
            sql.executeUpdate(statement);
        }
    }
}
