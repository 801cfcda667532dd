package tideover.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as it is typed: what it prints where, and the status it ends with. */
class CommandLineTest {

    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder = Path.of("");

    private int run(Object... arguments) {
        String[] texts = new String[arguments.length];
        for (int i = 0; i < texts.length; i++) texts[i] = arguments[i].toString();
        return new Tideover(new PrintWriter(out, true), new PrintWriter(err, true), () -> DAY).run(texts);
    }

    @Test
    void aSoundHouseIsMetAndEndsWithZero() {
        assertThat(run("check", EXAMPLES.resolve("town-house.yaml"))).isZero();
        assertThat(out.toString()).startsWith("Amselweg 11").contains("Met: every finding that binds is met.");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void aMistakeIsNamedWithItsPlaceAndEndsWithOne() {
        assertThat(run("check", EXAMPLES.resolve("troubled/three-poles.yaml"))).isEqualTo(1);
        assertThat(out.toString())
                .contains("Not met", "QA1 Islanding switch", "[poles.neutral]")
                .doesNotContain("[poles.pen]");
    }

    @Test
    void anOpenQuestionForTheOperatorEndsWithOne() {
        assertThat(run("check", EXAMPLES.resolve("troubled/operator-not-asked.yaml")))
                .isEqualTo(1);
        assertThat(out.toString())
                .contains("Open: a fact or a limit is missing", "one letter to the grid operator answers 1");
    }

    @Test
    void calculationsAreShownOnRequestOnly() {
        run("check", EXAMPLES.resolve("troubled/long-cable-one-state.yaml"));
        assertThat(out.toString()).doesNotContain("Loop: source");
        run("check", EXAMPLES.resolve("troubled/long-cable-one-state.yaml"), "--calculation");
        assertThat(out.toString()).contains("Loop: source", "Fault current:", "Longest time");
    }

    @Test
    void aStateShowsWhatItDecidesAndWhatHoldsInAll() {
        int status =
                run("check", EXAMPLES.resolve("troubled/grid-only-neutral-before-rcd.yaml"), "--state", "CONNECTED");
        assertThat(status).isZero();
        assertThat(run(
                        "check",
                        EXAMPLES.resolve("troubled/grid-only-neutral-before-rcd.yaml"),
                        "--state",
                        "island_grid_waiting"))
                .isEqualTo(1);
    }

    @Test
    void refusedInputNamesFileLineAndFieldOnStandardErrorAndEndsWithTwo() throws IOException {
        Path bad = folder.resolve("bad.yaml");
        Files.writeString(
                bad, Files.readString(EXAMPLES.resolve("town-house.yaml")).replace("kind: SAUNA", "kind: SUANA"));
        assertThat(run("check", bad)).isEqualTo(2);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString())
                .contains("bad.yaml, line ", "SUANA. Did you mean SAUNA?")
                .doesNotContain("Exception");
    }

    @Test
    void refusedInputWritesNothing() throws IOException {
        Path drawing = folder.resolve("drawing.svg");
        assertThat(run("draw", folder.resolve("nothing.yaml"), "-o", drawing)).isEqualTo(2);
        assertThat(drawing).doesNotExist();
        try (var left = Files.list(folder)) {
            assertThat(left).isEmpty();
        }
    }

    @Test
    void aTimeCurrentSheetIsDrawnOfACircuit() throws IOException {
        Path drawing = folder.resolve("curves.svg");
        assertThat(run("draw", EXAMPLES.resolve("terrace.yaml"), "--curves", "kitchen-sockets", "-o", drawing))
                .isZero();
        assertThat(Files.readString(drawing)).contains("Kitchen sockets", "FC1 Back-up fuse");
    }

    @Test
    void aCircuitThatIsNotThereIsRefusedWithThoseThatAre() {
        Path drawing = folder.resolve("curves.svg");
        assertThat(run("draw", EXAMPLES.resolve("terrace.yaml"), "--curves", "sauna", "-o", drawing))
                .isEqualTo(2);
        assertThat(err.toString()).contains("no circuit with the id sauna", "kitchen-sockets");
        assertThat(drawing).doesNotExist();
    }

    @Test
    void aFileThatCannotBeWrittenIsSaidInASentence() throws IOException {
        Path file = folder.resolve("file");
        Files.writeString(file, "");
        assertThat(run("draw", EXAMPLES.resolve("terrace.yaml"), "-o", file.resolve("drawing.svg")))
                .isEqualTo(2);
        assertThat(err.toString()).contains("cannot be written").doesNotContain("Exception");
    }

    @Test
    void anUnknownCommandIsAnsweredWithTheNearest() {
        assertThat(run("chek", "x")).isEqualTo(2);
        assertThat(err.toString()).contains("check");
    }

    @Test
    void drawingShowsEachCircuit() throws IOException {
        Path drawing = folder.resolve("new/drawing.svg");
        assertThat(run("draw", EXAMPLES.resolve("terrace.yaml"), "-o", drawing, "--state", "DARK"))
                .isZero();
        assertThat(Files.readString(drawing)).startsWith("<?xml").contains("</svg>");
    }

    @Test
    void aRuleBookOfOnesOwnIsLaidOverThatOfTheCountry() throws IOException {
        Path own = folder.resolve("own.yaml");
        Files.writeString(own, """
                book: OURS
                over: DE
                name: Our own conditions
                limits:
                  - {limit: link.electrodeLargestOhm, value: 5, force: REQUIRED, source: Conditions, clause: "3", verification: OWN_CHOICE}
                """);
        assertThat(run("check", EXAMPLES.resolve("town-house.yaml"), "--rules", own))
                .isEqualTo(1);
        assertThat(out.toString()).contains("[link.electrode]", "OURS");
    }

    @Test
    void aRuleBookIsListedWithSourcesAndVerification() {
        assertThat(run("rules", "DE")).isZero();
        assertThat(out.toString())
                .contains("poles.neutral.TT = MUST", "VDE-AR-E 2510-2:2021-02, 6.410.2", "seen in a public text");
    }

    @Test
    void theReadmeShowsWhatIsPrinted() throws IOException {
        run("check", EXAMPLES.resolve("troubled/ac-type-before-converter.yaml"));
        String printed = out.toString().lines().limit(9).collect(Collectors.joining("\n"));
        assertThat(Files.readString(Path.of("..", "README.md"))).contains(printed);
    }

    @Test
    void aCountryWithoutBookIsSaidWithTheBooksThereAre() {
        assertThat(run("rules", "XX")).isEqualTo(2);
        assertThat(err.toString()).contains("no rule book for XX", "IEC, DE, UK, AU, AT");
    }

    @Test
    void theSchemaIsThePublishedOne() throws IOException {
        assertThat(run("schema")).isZero();
        assertThat(out.toString()).isEqualTo(Files.readString(Path.of("..", "docs", "site.schema.json")));
    }

    @Test
    @Tag("slow")
    void theDemoOfPapersJudgesTheTownHouseAndMakesItsPapers() {
        assertThat(run("demo", "--papers", "--examples", EXAMPLES, "-o", folder.resolve("demo")))
                .isZero();
        assertThat(folder.resolve("demo/handover.pdf")).isNotEmptyFile();
        assertThat(folder.resolve("demo/findings.json")).isNotEmptyFile();
        assertThat(folder.resolve("demo/diagram-island-grid-dead.svg")).isNotEmptyFile();
    }

    @Test
    void terminalDrawingIsAPaperAndAFileForEachSheet() throws IOException {
        assertThat(run("draw", EXAMPLES.resolve("town-house.yaml"), "--terminals", "-o", folder))
                .isZero();
        assertThat(folder.resolve("terminals.pdf")).isNotEmptyFile();
        assertThat(Files.readString(folder.resolve("terminals-connections.svg")))
                .contains("QA1 Islanding switch", "TB1 Hybrid inverter");
        assertThat(Files.readString(folder.resolve("terminals-card-1.svg"))).contains("to QC1:32");
    }

    @Test
    void terminalsOfOneDeviceAreOneCard() throws IOException {
        assertThat(run("draw", EXAMPLES.resolve("town-house.yaml"), "--device", "inverter", "-o", folder))
                .isZero();
        assertThat(folder.resolve("terminals-connections.svg")).doesNotExist();
        assertThat(Files.readString(folder.resolve("terminals-card-1.svg"))).contains("TB1 Hybrid inverter");
    }

    @Test
    void aDeviceWithoutTerminalsIsRefusedWithThoseThatHaveSome() {
        assertThat(run("draw", EXAMPLES.resolve("town-house.yaml"), "--device", "Sauna!", "-o", folder))
                .isEqualTo(2);
        assertThat(err.toString()).contains("Sauna!", "islanding-switch").doesNotContain("at tideover");
        assertThat(folder.resolve("terminals.pdf")).doesNotExist();
    }

    @Test
    void helpNamesEveryCommand() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString())
                .contains("serve", "check", "draw", "network", "handover", "letter", "demo", "rules", "schema");
    }
}
