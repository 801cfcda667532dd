package tideover.web.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.web.trial.Desk;
import tideover.web.trial.Visitor;

@Tag("slow")
class EveryHouseTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final List<String> STATES =
            List.of("connected", "island-grid-dead", "island-grid-waiting", "dark", "by-passed");
    private static final List<String> PARTS = List.of(
            "power",
            "control",
            "cutting",
            "labels",
            "parts",
            "built",
            "states",
            "changeover",
            "steps",
            "terminals",
            "coverage");

    private static Desk desk;

    @BeforeAll
    static void open() {
        desk = Desk.open();
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    /** Whole site files; and houses of which nearly nothing is known yet. */
    static Stream<String> houses() throws IOException {
        try (Stream<Path> all = Files.walk(EXAMPLES)) {
            List<String> whole = all.filter(path -> path.toString().endsWith(".yaml"))
                    .map(EveryHouseTest::read)
                    .filter(text -> !text.contains("variantOf"))
                    .toList();
            return Stream.concat(
                    whole.stream(),
                    Stream.of(
                            "format: 1\nhouse: {place: {designation: Bare, country: DE}, circuits: [{id: lamp}]}\n",
                            "format: 1\nhouse: {place: {country: GB}}\nplan: {inverters: [{id: box, role: GRID_FORMING}]}\n"));
        }
    }

    private static String read(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @MethodSource("houses")
    void everyPageCanBeShownOfEveryHouse(String house) {
        String site = desk.importSite(house);
        Visitor visitor = desk.visitor();
        for (String page : List.of(
                "/findings",
                "/findings?show=met",
                "/findings?show=open",
                "/limits",
                "/wiring/diagnosis",
                "/wiring/diagnosis?situation=connected",
                "/handover",
                "/findings.json")) assertShown(visitor, site + page);
        for (String state : STATES) {
            assertShown(visitor, site + "/diagram?state=" + state);
            assertShown(visitor, site + "/network?state=" + state);
        }
        for (String part : PARTS) assertShown(visitor, site + "/wiring?part=" + part);
    }

    private static void assertShown(Visitor visitor, String address) {
        HttpResponse<String> answer = visitor.read(address);
        assertThat(answer.statusCode()).as(address).isEqualTo(200);
        assertThat(answer.body()).as(address).doesNotContain("{0}", "{1}", "${", "java.");
    }
}
