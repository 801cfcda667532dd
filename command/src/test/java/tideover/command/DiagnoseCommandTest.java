package tideover.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The fault call as it is typed, and as machines read it (docs/wiring-model.md). */
class DiagnoseCommandTest {

    private static final Path TOWN_HOUSE = Path.of("..", "examples", "town-house.yaml");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder = Path.of("");

    private int run(String command, Object... arguments) {
        String[] texts = new String[arguments.length + 1];
        texts[0] = command;
        for (int i = 0; i < arguments.length; i++) texts[i + 1] = arguments[i].toString();
        return new Tideover(new PrintWriter(out, true), new PrintWriter(err, true), () -> LocalDate.EPOCH).run(texts);
    }

    private int diagnose(String... seen) {
        Object[] arguments = new Object[seen.length + 1];
        arguments[0] = TOWN_HOUSE;
        for (int i = 0; i < seen.length; i++) arguments[i + 1] = "--seen=" + seen[i];
        return run("diagnose", arguments);
    }

    @Test
    void aSwitchThatStaysClosedNamesTheCoreOfItsRequestAndTheNextReading() {
        assertThat(diagnose("island/position:QA1=closed")).isZero();
        assertThat(out.toString())
                .contains("island, circuits off: QA1 Islanding switch, position indicator  closed  open")
                .contains("Core 3 of WG1 (TB1:X4:4–QC1:31) touches plus of the control supply")
                .contains("TB1 output 1 is set to the opposite sense")
                .contains("The next reading worth taking")
                .contains("locked out");
    }

    @Test
    void aHouseThatReadsAsPlannedIsSaidToBeSo() {
        assertThat(diagnose("island-unloaded/mode:inverter=island")).isZero();
        assertThat(out.toString()).contains("The house as planned shows exactly this");
    }

    @Test
    void whatNoSingleMistakeExplainsNamesTheReadingToTakeAgain() {
        assertThat(diagnose("island/mode=island", "island/position:QA1=closed", "connected/mode=connected"))
                .isEqualTo(Status.NOT_MET);
        assertThat(out.toString())
                .contains("No single mistake or failure shows this.")
                .contains("position indicator: closed' the house would be as")
                .doesNotContain("The next reading worth taking");
    }

    @ParameterizedTest
    @CsvSource({
        "island-unloaded/voltage:islanding-switch:island-side-L1-N=230 V, LINE_VOLTAGE",
        "island-unloaded/voltage:QA1:island-side-L1-N=230, LINE_VOLTAGE",
        "island-unl/voltage:QA1:island side L1-N=line-voltage, LINE_VOLTAGE",
        "connected-unloaded/control-voltage:request-switch:X4:4=24, PLUS",
        "dead/bus-resistance=60, TWO_RESISTORS",
        "connected/INPUT:switch-open-input=Off, OFF"
    })
    void readingsAndValuesMayBeShortened(String seen, String shown) {
        assertThat(run("diagnose", TOWN_HOUSE, "--seen=" + seen, "--json")).isZero();
        JsonValue rows = JsonValue.of(out.toString()).at("parts").first().at("rows");
        assertThat(rows.first().at("shown").text()).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "foo | foo has no value",
                "mode=island | mode fits more than one reading: connected-unloaded/mode:inverter",
                "island/possition:QA1=open | Near to it: island-unloaded/position:islanding-switch",
                "zzzzzzzz=1 | tideover diagnose SITE --list WORD",
                "island-unloaded/mode:inverter=purple | cannot show purple. Write one of connected, island, waiting",
                "island-unloaded/mode:inverter= | has no value"
            })
    void whatCannotBeUnderstoodIsAnsweredWithWhatIsNear(String seen, String said) {
        assertThat(diagnose(seen)).isEqualTo(Status.REFUSED);
        assertThat(err.toString()).contains(said);
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void oneReadingWithTwoValuesIsRefused() {
        assertThat(diagnose("island-unloaded/mode:inverter=island", "island-unl/mode=locked"))
                .isEqualTo(Status.REFUSED);
        assertThat(err.toString()).contains("island-unloaded/mode:inverter is given twice");
    }

    @Test
    void aHouseWithoutAnIslandHasNothingToDiagnose() throws IOException {
        Path file = folder.resolve("house.yaml");
        Files.writeString(file, """
                format: 1
                house:
                  place: {country: DE}
                  supply: {earthingSystem: TN_S, lines: THREE, nominalVoltageV: 230}
                """);
        assertThat(run("diagnose", file, "--list")).isEqualTo(Status.REFUSED);
        assertThat(err.toString()).contains("Nothing in this house can form an island");
        assertThat(run("wiring", file, "--part", "states,steps,changeover,coverage,mistakes"))
                .isZero();
        assertThat(out.toString()).contains("Nothing here can form an island.").doesNotContain("NaN");
    }

    @ParameterizedTest
    @CsvSource({
        "overload, terrace",
        "rcd, farmhouse",
        "battery, terrace",
        "bus, farmhouse",
        "lockout, terrace",
        "no-return, town-house",
        "part-dark, terrace"
    })
    void everyTreeIsFilledWithTheHouse(String trouble, String house) {
        assertThat(run("diagnose", Path.of("..", "examples", house + ".yaml"), "--call", trouble))
                .isZero();
        assertThat(out.toString())
                .contains("yes: ")
                .doesNotContain("{")
                .doesNotContain("NaN")
                .doesNotContain("null");
    }

    @Test
    void overloadTellsWhatALineCanGiveAndWhatLiesOnIt() {
        assertThat(run("diagnose", TOWN_HOUSE, "--call", "overload", "--answer", "yes,yes"))
                .isZero();
        // The inverter of the town house: 14.5 A, 1.25 times for 10 s.
        assertThat(out.toString())
                .contains("14.5 A on each line, 10 kVA in all; 18.1 A for 10 s")
                .contains("L2: Oven B16")
                .doesNotContain("Switch off the breakers of all circuits");
    }

    @Test
    void answersThatLeadNowhereAreRefused() {
        assertThat(run("diagnose", TOWN_HOUSE, "--call", "rcd", "--answer", "maybe"))
                .isEqualTo(Status.REFUSED);
        assertThat(run("diagnose", TOWN_HOUSE, "--call", "rcd", "--answer", "no,no"))
                .isEqualTo(Status.REFUSED);
        assertThat(run("diagnose", TOWN_HOUSE, "--call", "flood")).isEqualTo(Status.REFUSED);
        assertThat(err.toString())
                .contains("maybe is no answer")
                .contains("This way ends after one answer")
                .contains("Write one of overload, rcd, battery, bus");
    }

    @Test
    void statesAreOneColumnEachAndMachinesReadTheirNames() {
        assertThat(run("wiring", TOWN_HOUSE, "--part", "states", "--json")).isZero();
        JsonValue rows = JsonValue.of(out.toString()).at("parts").first().at("rows");
        JsonValue link = rows.items().get(2);
        assertThat(link.at("reading").text()).isEqualTo("position:neutral-earth-switch");
        assertThat(link.at("CONNECTED").text()).isEqualTo("OPEN");
        assertThat(link.at("ISLAND_GRID_DEAD").text()).isEqualTo("CLOSED");
    }

    @Test
    void coverageCountsEveryMistakeOnceAndNamesWhatToAdd() {
        assertThat(run("wiring", TOWN_HOUSE, "--part", "coverage,changeover")).isZero();
        assertThat(out.toString())
                .contains("Every single mistake and failure, and what reveals it")
                .contains("Revealed by no step: the control supply is not earthed")
                .contains("Smallest set of steps to add")
                // 0.1 s loss, 0.02 s release of the switch, 0.025 s operation of the link, 3 s forming.
                .containsPattern("Without voltage in all\\s+3\\.1[45] s");
    }
}
