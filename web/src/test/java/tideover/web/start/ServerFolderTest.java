package tideover.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.files.FieldTable;
import tideover.store.Store;
import tideover.store.site.VariantId;
import tideover.web.trial.Program;
import tideover.web.trial.ServedProcess;
import tools.jackson.databind.json.JsonMapper;

/** A data folder that cannot be written, and one that goes away. */
@Tag("slow")
class ServerFolderTest {
    static {
        Main.quietLibraries();
    }

    @TempDir
    private Path folder;

    @Test
    void aFolderThatMayOnlyBeReadIsSaidInASentence() throws IOException {
        Path data = folder.resolve("data");
        Store.open(data, FieldTable.load()).close();
        Files.setPosixFilePermissions(data, PosixFilePermissions.fromString("r-x------"));
        Path empty = Files.createDirectory(
                folder.resolve("empty"),
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("r-x------")));
        try {
            for (Path readOnly : new Path[] {data, empty})
                assertRefused(readOnly, "The data folder " + readOnly + " may be read but not written. ");
            assertRefused(empty.resolve("inside"), "The data folder " + empty.resolve("inside") + " could not be made");
        } finally {
            Files.setPosixFilePermissions(data, PosixFilePermissions.fromString("rwx------"));
            Files.setPosixFilePermissions(empty, PosixFilePermissions.fromString("rwx------"));
        }
    }

    private void assertRefused(Path data, String sentence) throws IOException {
        try (ServedProcess refused = ServedProcess.launch(data, scratch(), withoutRightsOfRoot())) {
            assertThat(refused.waited()).isEqualTo(2);
            assertThat(refused.errors()).startsWith(sentence).hasLineCount(1);
            assertThat(refused.said()).isEqualTo(refused.errors());
        }
    }

    private Path scratch() throws IOException {
        return Files.createDirectories(folder.resolve("scratch"));
    }

    /** Modes of files do not bind root; without this capability they do. */
    private static String[] withoutRightsOfRoot() {
        return System.getProperty("user.name").equals("root")
                ? new String[] {"setpriv", "--bounding-set", "-dac_override,-dac_read_search"}
                : new String[0];
    }

    @Test
    void aFolderThatGoesAwayIsSaidAndNothingCountsAsSaved() throws IOException {
        Path data = folder.resolve("data");
        Path away = folder.resolve("away");
        byte[] house = Files.readAllBytes(Path.of("..", "examples", "town-house.yaml"));
        try (ServedProcess workbench = ServedProcess.open(data)) {
            Program program = workbench.program();
            String head = Program.text(program.post("/api/sites", house));
            VariantId variant = new VariantId(
                    new JsonMapper().readTree(head).at("/variant/variant").asString());
            HandOnSheet hand = new HandOnSheet(variant);
            hand.open(workbench);
            int before = hand.value(program);
            long first = hand.take(Hand.Step.EDIT, 1, before, 40);
            Files.move(data, away);
            HttpResponse<String> refused = hand.ask(Hand.Step.EDIT, first, 40, 41);
            String sentence = "The data folder " + data + " is no longer there. Bring it back";
            assertThat(refused.statusCode()).isEqualTo(503);
            assertThat(refused.body()).contains(sentence).doesNotContain("Exception");
            HttpResponse<byte[]> undone = program.post("/api/sites/" + variant + "/undo", "{\"base\": " + first + "}");
            assertThat(undone.statusCode()).isEqualTo(503);
            assertThat(Program.text(undone)).contains(sentence);
            Files.move(away, data);
            assertThat(hand.take(Hand.Step.EDIT, first, 40, 42)).isEqualTo(first + 1);
            Files.move(data, away);
            workbench.stop();
            workbench.waited();
            ServerStopTest.assertQuiet(workbench);
        }
    }
}
