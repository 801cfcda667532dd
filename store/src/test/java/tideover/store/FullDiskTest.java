package tideover.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.store.site.RevisionId;
import tideover.store.site.VariantId;

/**
 * Writers for whom the system stops writing: files may grow no further, or the folder lets nothing be written. Each is a
 * process of its own, since such limits hold for a whole process.
 */
@Tag("slow")
class FullDiskTest {
    private static final int ROOM_BYTES = 400 * 1024;

    @TempDir
    private Path folder;

    @Test
    void aFullDiskLosesNothingAndWritingGoesOnOnceThereIsRoom() throws IOException, InterruptedException {
        Path data = folder.resolve("data");
        List<String> saved = new ArrayList<>();
        String refused;
        try (Child child = Child.start(data, folder, 7)) {
            assertThat(child.requireLine()).isEqualTo("ready");
            // Files may grow no further than this.
            limit(child, ROOM_BYTES + ":unlimited");
            String line = child.requireLine();
            for (; !line.startsWith("refused"); line = child.requireLine()) saved.add(line);
            refused = line;
            assertThat(saved).isNotEmpty();
            limit(child, "unlimited");
            int after = 0;
            while (after < 5) {
                line = child.requireLine();
                if (line.startsWith("refused")) continue;
                saved.add(line);
                after++;
            }
        }
        assertThat(refused).isIn("refused WRITE_FAILED", "refused DISK_FULL");
        assertAllThere(data, saved);
    }

    private static void limit(Child child, String sizes) throws IOException, InterruptedException {
        Process process = new ProcessBuilder("prlimit", "--pid", Long.toString(child.pid()), "--fsize=" + sizes)
                .inheritIO()
                .start();
        assertThat(process.waitFor()).isZero();
    }

    @Test
    void aTemporaryFolderWithoutRoomIsSaid() {
        String limited = "ulimit -f %d; exec \"$@\"".formatted(ROOM_BYTES / 1024);
        try (Child child = Child.start(folder.resolve("data"), folder, 7, "bash", "-c", limited, "bash")) {
            assertThat(child.line()).isEqualTo("stopped NOT_UNPACKED");
        }
    }

    @Test
    void aFolderThatMayOnlyBeReadIsSaidAndNothingIsLost() throws IOException {
        Path data = folder.resolve("data");
        List<String> saved = new ArrayList<>();
        try (Child child = Child.start(data, folder, 7)) {
            for (String line = child.requireLine(); saved.size() < 3; line = child.requireLine())
                if (line.startsWith("saved")) saved.add(line);
        }
        // What is in the log goes into the file, as at the end of every orderly day.
        Store.open(data, TestSites.TABLE).close();
        Files.setPosixFilePermissions(data, PosixFilePermissions.fromString("r-x------"));
        try (Child child = Child.start(data, folder, 7, withoutRightsOfRoot())) {
            assertThat(child.line()).isEqualTo("stopped FOLDER_READ_ONLY");
        }
        Path empty = Files.createDirectory(
                folder.resolve("empty"),
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("r-x------")));
        try (Child child = Child.start(empty, folder, 7, withoutRightsOfRoot())) {
            assertThat(child.line()).isEqualTo("stopped FOLDER_READ_ONLY");
        }
        try (Child child = Child.start(empty.resolve("data"), folder, 7, withoutRightsOfRoot())) {
            assertThat(child.line()).isEqualTo("stopped FOLDER_NOT_MADE");
        }
        Files.setPosixFilePermissions(data, PosixFilePermissions.fromString("rwx------"));
        assertAllThere(data, saved);
    }

    @Test
    void aDatabaseThatMayOnlyBeReadIsSaid() throws IOException {
        Path data = folder.resolve("data");
        Store.open(data, TestSites.TABLE).close();
        Files.setPosixFilePermissions(data.resolve(Store.FILE), PosixFilePermissions.fromString("r--------"));
        try (Child child = Child.start(data, folder, 7, withoutRightsOfRoot())) {
            String line = child.requireLine();
            assertThat(line.equals("ready") ? child.requireLine() : line)
                    .isIn("stopped FOLDER_READ_ONLY", "refused FOLDER_READ_ONLY");
        }
    }

    /** Modes of files do not bind root; without this capability they do. */
    private static String[] withoutRightsOfRoot() {
        return System.getProperty("user.name").equals("root")
                ? new String[] {"setpriv", "--bounding-set", "-dac_override,-dac_read_search"}
                : new String[0];
    }

    private static void assertAllThere(Path data, List<String> saved) {
        try (Store store = Store.open(data, TestSites.TABLE)) {
            store.verify();
            for (String line : saved) {
                String[] said = line.split(" ");
                RevisionId id = new RevisionId(new VariantId(said[1]), Long.parseLong(said[2]));
                assertThat(store.sites().at(id).revision().digest().hex()).isEqualTo(said[3]);
            }
        }
    }
}
