package tideover.reference.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Force;
import tideover.engine.rules.Missing;
import tideover.engine.rules.Outcome;
import tideover.engine.rules.Phrase;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.ControlCable;
import tideover.engine.site.FactId;
import tideover.engine.site.IslandSettings;
import tideover.engine.site.Port;
import tideover.engine.site.Thing;
import tideover.reference.Houses;

/**
 * Control wiring and bus worked out by hand. A core of 0.75 mm² counts 21 / 0.75 = 28 Ω/km; the supply of 24 V counts 0.95 of it.
 */
class ControlByHandTest {

    private static final Path HOUSE = Path.of("src/test/resources/tideover/reference/checks/wired.yaml");

    /**
     * The coil of the switch draws 0.2 A, that of the link 0.1 A. Both take the first core from plus (6 m) and the last to
     * minus (6 m), 0.3 A each; 6 m + 1 m carry the switch's own 0.2 A: 0.028 · (12 · 0.3 + 7 · 0.2) = 0.14 V.
     */
    @Test
    void coilHasWhatTheSupplyGivesLessTheDropOverEveryCore() {
        Finding finding = finding("control.coilVoltage", "switch-coil");
        assertThat(finding.outcome()).isEqualTo(Outcome.MET);
        assertThat(finding.measure().value()).isCloseTo(22.8 - 0.14, within(1e-9));
        assertThat(finding.measure().limit()).isEqualTo(20.4);
    }

    /** 19 m of cores lose 0.14 V; 2.4 V may be lost: 19 · 2.4 / 0.14 = 325.71 m. */
    @Test
    void largestLengthIsThatAtWhichAllThatMayBeLostIsLost() {
        Assessment assessment = Houses.explain(Houses.with(HOUSE, List.of()));
        Finding finding = finding(assessment, "control.coilVoltage", "switch-coil");
        Phrase line = assessment.calculations().get(finding.key()).stream()
                .filter(each -> each.key().equals("calculation.control.length"))
                .findFirst()
                .orElseThrow();
        assertThat(line.arguments())
                .singleElement()
                .isInstanceOfSatisfying(
                        PhraseArg.Amount.class,
                        amount -> assertThat(amount.value()).isCloseTo(325.714, within(0.0005)));
    }

    /** An input takes no wire back: 0.028 · (6 · 0.024 + 6 · 0.006) = 0.00504 V with four inputs on the first core. */
    @Test
    void inputLosesOnlyTheWayThere() {
        assertThat(finding("control.coilVoltage", "hear-switch-open").measure().value())
                .isCloseTo(22.8 - 0.00504, within(1e-9));
    }

    /** 0.2 + 0.1 + 4 · 0.006 = 0.324 A. */
    @Test
    void supplyGivesTheSumOfAllItFeeds() {
        assertThat(finding("control.supplyCurrent", "supply-24v").measure().value())
                .isCloseTo(0.324, within(1e-12));
    }

    /** A second wire past the request: the coil no longer needs it, though it still lies on the shortest way. */
    @Test
    void wirePastTheRequestIsFound() {
        assertThat(finding(
                                "control.request",
                                "switch-coil",
                                "p6.cores: [{mark: '6', from: link-mirror/21, to: by-pass-contact/11}, "
                                        + "{mark: X, from: supply-24v/P, to: link-interlock/31}]")
                        .phrase()
                        .key())
                .isEqualTo("control.request.unasked");
    }

    /** Plus permanently at A1, minus switched by an electronic output: the coil comes on by it all the same. */
    @Test
    void outputThatSwitchesMinusMovesTheCoilAsWell() {
        Finding finding = finding(
                "control.request",
                "switch-coil",
                "ask-switch.form: MINUS",
                "s1.cores: [{mark: '7', from: supply-24v/P, to: link-interlock/31}]",
                "p1.cores: [{mark: '1', from: supply-24v/P, to: ask-link/3}]",
                "p2.cores: []",
                "s3.cores: [{mark: '9', from: switch-coil/A2, to: ask-switch/1}]",
                "l3.cores: [{mark: '12', from: link-coil/A2, to: supply-24v/M}]");
        assertThat(finding.outcome()).isEqualTo(Outcome.MET);
    }

    /** An input that wets the contact itself is joined over it, from its terminal to its common. */
    @Test
    void inputThatWetsItsContactHearsOverIt() {
        List<String> wetting = List.of(
                "hear-switch-open.form: CONTACT",
                "hear-switch-open.terminals: ['5', '5C']",
                "p3.cores: [{mark: '3', from: supply-24v/P, to: link-make/13}]",
                "p4.cores: [{mark: '4', from: switch-mirror/21, to: hear-switch-open/5C}]");
        assertThat(finding("control.feedback", "hear-switch-open", wetting.toArray(String[]::new))
                        .outcome())
                .isEqualTo(Outcome.MET);
    }

    /** Two contacts in parallel, one of each sense: the input is always on, and no contact alone is needed. */
    @Test
    void contactsInParallelDoNotMakeAFeedback() {
        Finding finding = finding(
                "control.feedback",
                "hear-switch-open",
                "f1.cores: [{mark: '13', from: switch-mirror/22, to: hear-switch-open/5}, "
                        + "{mark: X, from: link-make/14, to: hear-switch-open/5}]");
        assertThat(finding.phrase().key()).isEqualTo("control.feedback.always");
    }

    /** A motor that opens the switch needs voltage to do so; the mirror contact tells when it has not. */
    @Test
    void openingCoilIsGuardedByTheFeedback() {
        assertThat(finding("control.wireBreak", "switch-coil", "switch-coil.onMeans: SWITCH_OPEN")
                        .phrase()
                        .key())
                .isEqualTo("control.wireBreak.guarded");
    }

    /** A changeover by-pass cannot parallel the sources, so nothing need stop the inverter. */
    @Test
    void changeoverByPassNeedsNoContact() {
        assertThat(finding("control.stopped", "by-pass", "by-pass.kind: CHANGEOVER", "f4.cores: []")
                        .outcome())
                .isEqualTo(Outcome.MET);
    }

    /** Without a meter an input that a relay of the grid's voltage closes will do. */
    @Test
    void inputThatHearsTheGridWillDo() {
        assertThat(finding("control.gridSense", "inverter", "settings.gridMeter: null", "may-run.onMeans: GRID_PRESENT")
                        .outcome())
                .isEqualTo(Outcome.MET);
    }

    /** Where the switch is part of the inverter nothing need be wired, and nobody asks for it. */
    @Test
    void switchInsideTheInverterNeedsNoRequestAndNoFeedback() {
        Assessment assessment = Houses.assess(Houses.with(
                HOUSE, List.of("islanding-switch.builtInto: inverter", "neutral-earth-switch.builtInto: inverter")));
        assertThat(assessment.findings())
                .extracting(finding -> finding.key().check())
                .doesNotContain("control.request", "control.interlock");
    }

    /** Where nobody has stated any terminal, core or setting one finding asks for them, and nothing is called a mistake. */
    @Test
    void houseWithoutControlTerminalsIsAskedForThemOnce() {
        List<String> stripped = new ArrayList<>();
        for (Thing thing : Houses.read(HOUSE).planned().values())
            if (thing instanceof Port || thing instanceof ControlCable || thing instanceof IslandSettings)
                stripped.add("without " + thing.id());
        assertThat(Houses.assess(Houses.with(HOUSE, stripped)).findings())
                .filteredOn(finding -> finding.key().check().matches("(control|bus)\\..*"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.key().toString()).isEqualTo("control.request islanding-switch -");
                    assertThat(finding.missing())
                            .containsExactly(new Missing.UnknownFact(FactId.of("islanding-switch.terminals")));
                });
    }

    /** Two questions of 8 + 45 bytes and one of 8 + 25: 2 · 118.75 ms + 95.83 ms + 300 ms. */
    @Test
    void roundIsTheSumOfAllQuestionsAndOneTimeOut() {
        Finding finding = finding("bus.budget", "bus-inverter");
        double characterS = 11 / 9600.0;
        double twentyS = 53 * characterS + 7 * characterS + 0.05;
        double tenS = 33 * characterS + 7 * characterS + 0.05;
        assertThat(finding.measure().value()).isCloseTo(2 * twentyS + tenS + 0.3, within(1e-12));
        assertThat(finding.measure().value()).isCloseTo(0.6333, within(0.00005));
    }

    /** 120 Ω twice and 1.5 unit loads: 59.553 Ω; 5 V · 59.553 / (2 · 560 + 59.553) = 0.2524 V. */
    @Test
    void idleLineIsHeldAboveTheThreshold() {
        assertThat(finding("bus.bias", "bus-inverter").measure().value()).isCloseTo(0.2524, within(0.00005));
    }

    /** Receivers that are safe below zero need no such resistors: that they are missing is advice. */
    @Test
    void lineThatNothingHoldsIsAdvice() {
        Finding finding = finding("bus.bias", "bus-inverter", "bus-inverter.biasOhm: null");
        assertThat(finding.outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(finding.force()).isEqualTo(Force.ADVISED);
    }

    /** On the network only the servers' own time counts: 2 · 0.05 + 0.05 + 0.3 s. */
    @Test
    void networkHasNoCharactersAndNoEndResistors() {
        Assessment assessment = Houses.assess(Houses.with(
                HOUSE,
                List.of(
                        "bus-inverter.medium: TCP",
                        "bus-meter.medium: TCP",
                        "bus-meter.networkAddress: 192.168.7.20",
                        "bus-pump.medium: TCP",
                        "bus-pump.networkAddress: 192.168.7.21")));
        assertThat(finding(assessment, "bus.budget", "bus-inverter").measure().value())
                .isCloseTo(0.45, within(1e-12));
        assertThat(assessment.findings())
                .extracting(finding -> finding.key().check())
                .filteredOn(check -> check.startsWith("bus."))
                .containsOnly("bus.budget", "bus.address", "bus.client");
        assertThat(finding(assessment, "control.gridSense", "inverter").outcome())
                .isEqualTo(Outcome.MET);
    }

    /** A third meter on a cable of its own from the second: the line branches, and has more ends than resistors. */
    @Test
    void lineThatBranchesIsFound() throws IOException {
        String branched = Files.readString(HOUSE)
                .replace(
                        "  controlCables:\n",
                        "    - {id: bus-third, at: meter, medium: RS485, role: SERVER, terminals: ['+', '-', '0']}\n"
                                + "  controlCables:\n"
                                + "    - {id: bus-3, cores: [{mark: WH, from: bus-meter/+, to: bus-third/+}]}\n");
        assertThat(finding(Houses.assess(Houses.of(branched)), "bus.termination", "bus-meter")
                        .phrase()
                        .key())
                .isEqualTo("bus.termination.branched");
    }

    /** The bytes to be heard when unit 1 is asked for twenty registers: C2's frame with other numbers, CRC by hand. */
    @Test
    void calculationPrintsTheFrameToBeHeard() {
        Assessment assessment = Houses.explain(Houses.with(HOUSE, List.of()));
        Finding finding = finding(assessment, "bus.budget", "bus-inverter");
        assertThat(assessment.calculations().get(finding.key()))
                .filteredOn(line -> line.key().equals("calculation.bus.frame"))
                .extracting(line -> ((PhraseArg.Verbatim) line.arguments().get(1)).text())
                .containsExactly("01 03 00 00 00 14 45 C5", "02 03 00 00 00 0A C5 FE");
    }

    private static Finding finding(String check, String place, String... edits) {
        return finding(Houses.assess(Houses.with(HOUSE, List.of(edits))), check, place);
    }

    private static Finding finding(Assessment assessment, String check, String place) {
        return assessment.findings().stream()
                .filter(finding -> finding.key().check().equals(check))
                .filter(finding -> finding.key().place().text().equals(place))
                .findFirst()
                .map(Objects::requireNonNull)
                .orElseThrow(() -> new AssertionError("nothing of " + check + " at " + place));
    }
}
