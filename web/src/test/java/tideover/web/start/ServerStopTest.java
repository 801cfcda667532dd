package tideover.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.BindException;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.files.FieldTable;
import tideover.store.ServingFile;
import tideover.store.Store;
import tideover.store.site.SiteSearch;
import tideover.web.trial.ServedProcess;

/** How the workbench ends, and begins again. */
@Tag("slow")
class ServerStopTest {
    private static final FieldTable FIELDS = FieldTable.load();
    private static final int ENDED_BY_SIGTERM = 128 + 15;
    private static final long PATIENCE_NANOS = 10_000_000_000L;

    static {
        Main.quietLibraries();
    }

    @TempDir
    private Path folder;

    @Test
    void whoeverIsBeingServedWhenItIsStoppedIsAnsweredFirst() throws Exception {
        Path data = folder.resolve("data");
        byte[] house = Files.readAllBytes(Path.of("..", "examples", "town-house.yaml"));
        try (ServedProcess workbench = ServedProcess.open(data);
                Socket line = new Socket("127.0.0.1", workbench.port())) {
            line.setSoTimeout(30_000);
            OutputStream out = line.getOutputStream();
            String head = """
                    POST /api/sites HTTP/1.1\r
                    Host: 127.0.0.1:%d\r
                    Authorization: Bearer %s\r
                    Content-Type: application/yaml\r
                    Content-Length: %d\r
                    Expect: 100-continue\r
                    \r
                    """.formatted(workbench.port(), workbench.key(), house.length);
            out.write(head.getBytes(StandardCharsets.US_ASCII));
            out.flush();
            // Said by the server when it begins to read what is sent: by now the request is under way.
            assertThat(answer(line.getInputStream())).startsWith("HTTP/1.1 100");
            out.write(house, 0, house.length / 2);
            out.flush();
            workbench.stop();
            awaitStopping(data);
            out.write(house, house.length / 2, house.length - house.length / 2);
            out.flush();
            assertThat(answer(line.getInputStream())).startsWith("HTTP/1.1 201");
            assertThat(workbench.waited()).isEqualTo(ENDED_BY_SIGTERM);
            assertQuiet(workbench);
        }
        // Closed, and not just left: all is in the one file.
        assertThat(data.resolve("tideover.db-wal")).doesNotExist();
        try (Store store = Store.open(data, FIELDS)) {
            store.verify();
            assertThat(store.sites().list(SiteSearch.of(""))).hasSize(1);
        }
    }

    @Test
    void stoppedWithoutAnybodyServedItEndsQuietly() {
        try (ServedProcess workbench = ServedProcess.open(folder.resolve("data"))) {
            assertThat(workbench.visitor().read("/sites/new").statusCode()).isEqualTo(200);
            workbench.stop();
            assertThat(workbench.waited()).isEqualTo(ENDED_BY_SIGTERM);
            assertQuiet(workbench);
            assertThat(ServingFile.find(folder.resolve("data"))).isEmpty();
        }
    }

    @Test
    void whereTheUsualPortIsTakenItServesOnAnotherOneAndKeepsItsFolder() throws IOException {
        Path data = folder.resolve("data");
        try (ServerSocket other = new ServerSocket()) {
            try {
                other.bind(new InetSocketAddress("127.0.0.1", 7463));
            } catch (BindException e) {
                // Taken already: all the better.
            }
            try (ServedProcess first = ServedProcess.open(data);
                    ServedProcess second = ServedProcess.launch(data)) {
                assertThat(first.visitor().read("/sites/new").statusCode()).isEqualTo(200);
                assertThat(second.waited()).isZero();
            }
        }
    }

    @Test
    void aSecondStartOnTheSameFolderPrintsAFurtherAddressAndEnds() {
        Path data = folder.resolve("data");
        try (ServedProcess first = ServedProcess.open(data);
                ServedProcess second = ServedProcess.launch(data)) {
            String address = Objects.requireNonNull(second.printedAddress());
            assertThat(second.waited()).isZero();
            assertThat(second.errors()).isEmpty();
            assertThat(address).startsWith(first.at("/enter?token=")).isNotEqualTo(first.printedAddress());
            assertThat(first.stranger().readAt(address).statusCode()).isEqualTo(303);
            assertThat(first.stranger().readAt(address).statusCode()).isEqualTo(401);
            assertThat(first.isRunning()).isTrue();
        }
    }

    @Test
    void whatAKilledWorkbenchLeavesBehindKeepsNobodyFromStarting() throws IOException {
        Path data = folder.resolve("data");
        String left;
        try (ServedProcess killed = ServedProcess.open(data)) {
            killed.kill();
            killed.waited();
            left = Files.readString(data.resolve("serving"));
        }
        try (ServedProcess next = ServedProcess.open(data)) {
            assertThat(Files.readString(data.resolve("serving"))).isNotEqualTo(left);
            assertThat(next.program().get("/api/sites").statusCode()).isEqualTo(200);
        }
    }

    @Test
    void aWorkbenchThatAnswersNobodyIsSaidToOwnTheFolder() throws IOException {
        Path data = folder.resolve("data");
        // Another command of ours is at work, and what a killed workbench wrote is still there.
        try (Store store = Store.open(data, FIELDS)) {
            new ServingFile(1, "key").write(data);
            try (ServedProcess refused = ServedProcess.launch(data)) {
                assertThat(refused.waited()).isEqualTo(2);
                assertThat(refused.said()).startsWith("The data folder " + data + " is in use by another Tideover.");
                assertQuiet(refused);
            }
            assertThat(store.sites().list(SiteSearch.of(""))).isEmpty();
        }
    }

    private static void awaitStopping(Path data) throws InterruptedException {
        long end = System.nanoTime() + PATIENCE_NANOS;
        while (ServingFile.find(data).isPresent()) {
            assertThat(System.nanoTime()).as("the key is still there").isLessThan(end);
            Thread.sleep(10);
        }
        // The connector stops listening a moment after that.
        Thread.sleep(300);
    }

    /** The head of an answer. */
    private static String answer(InputStream in) throws IOException {
        StringBuilder head = new StringBuilder();
        while (head.indexOf("\r\n\r\n") < 0) {
            int next = in.read();
            if (next < 0) return "closed after " + head;
            head.append((char) next);
        }
        return head.toString();
    }

    static void assertQuiet(ServedProcess ended) {
        assertThat(ended.said()).doesNotContain("Exception", "Error", "\tat ", "WARN", "ERROR");
    }
}
