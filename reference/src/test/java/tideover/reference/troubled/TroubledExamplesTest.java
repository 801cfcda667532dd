package tideover.reference.troubled;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.rules.Outcome;
import tideover.engine.site.Site;
import tideover.reference.Houses;

/**
 * Each mistake gives the findings an electrician expects of it, written down beside it before the program judged it, none
 * more and none less; the houses without a mistake give none.
 */
class TroubledExamplesTest {

    private static final Path TROUBLED = Houses.EXAMPLES.resolve("troubled");

    /** Mistakes of the trade that the checks of this step cover, and the house in which each was made. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "three-pole switch where four are demanded, three-poles",
        "back-up fuse above the switch's largest, backup-fuse-too-large",
        "everything stays on through a switch too small, everything-stays-on",
        "feed-in above the switch's rating, feed-in-above-rating",
        "main RCD on the grid side, main-rcd-on-grid-side",
        "AC-type RCD before a converter, ac-type-before-converter",
        "A-type upstream of B, a-type-upstream-of-b",
        "rated current of an RCD, rcd-rated-current",
        "no neutral–earth switch, no-neutral-earth-switch",
        "second link left in a sub-board, second-link",
        "PEN behind a four-pole switch, pen-behind-four-poles",
        "grid-only circuit's neutral behind the main RCD, grid-only-neutral-behind-rcd",
        "grid-only circuit's neutral between switch and RCD, grid-only-neutral-before-rcd",
        "a staying circuit's neutral on the grid side, staying-neutral-on-grid-side",
        "forgotten neutral bridge, forgotten-neutral-bridge",
        "shared neutral split, shared-neutral-split",
        "staying circuit that nothing clears in the island, nothing-clears-in-island",
        "long cable failing disconnection in one state only, long-cable-one-state",
        "inverter cable in TT without RCD, inverter-cable-without-rcd",
        "unidirectional RCBO fed backwards, one-way-rcbo",
        "measuring neutral missing, measuring-neutral-missing",
        "measuring neutral on the wrong side, measuring-neutral-wrong-side",
        "measuring neutral with too large a fuse, measuring-neutral-fuse",
        "circuit the meter does not see, circuit-past-the-meter",
        "conductor too small for its method, conductor-too-small",
        "breaking capacity, breaking-capacity",
        "short circuit while islanded that nothing ends in time, short-circuit-in-the-island",
        "no lockable isolation at the second source, no-lockable-isolation",
        "no notice, no-notice",
        "no by-pass, no-by-pass",
        "feedback contact of the wrong kind, ordinary-feedback",
        "existing two-wire circuit with PEN meant to stay on, two-wire-with-pen",
        "existing two-wire circuit without PE meant to stay on, two-wire-without-pe",
        "busbar fed from two sides, busbar-fed-from-two-sides",
        "AC-coupled PV above what the battery takes, pv-above-what-battery-takes",
        "pump that cannot start, pump-that-cannot-start",
        "operator not asked, operator-not-asked",
        "no own electrode, no-own-electrode",
        "all single-phase loads on L1, all-on-one-line",
        "input number used twice, input-number-twice",
        "bus without termination, bus-without-termination",
        "bus address twice, bus-address-twice",
        "bus lines crossed, bus-crossed",
        "bus rate left as it came, bus-rate-differs",
        "request wires on the wrong outputs, request-on-wrong-output",
        "interlock of the two switches left out, interlock-left-out",
        "feedback that mirrors the request, feedback-mirrors-request",
        "feedback of the wrong sense, feedback-of-wrong-sense",
        "coil too far away, coil-too-far",
        "observation time too short, observation-too-short",
        "long cable failing drop in one state only, voltage-drop"
    })
    void mistakeIsThereAndIsFound(String mistake, String name) {
        assertThat(Houses.unsettled(Houses.assess(Houses.read(TROUBLED.resolve(name + ".yaml")))))
                .as(mistake)
                .isNotEmpty();
    }

    @Test
    void everyMistakeSaysWhatItMustGive() throws IOException {
        assertThat(namesIn(TROUBLED, ".yaml"))
                .isEqualTo(namesIn(TROUBLED, ".expected"))
                .hasSizeGreaterThanOrEqualTo(51);
    }

    static List<Path> all() {
        return Houses.all();
    }

    @ParameterizedTest
    @MethodSource("all")
    void houseGivesExactlyTheFindingsWrittenBesideIt(Path house) throws IOException {
        Path beside = house.resolveSibling(house.getFileName().toString().replace(".yaml", ".expected"));
        List<String> expected = Files.exists(beside) ? Files.readAllLines(beside) : List.of();
        assertThat(Houses.unsettled(Houses.assess(Houses.read(house)))).containsExactlyInAnyOrderElementsOf(expected);
    }

    static List<Path> arrangements() {
        return Houses.yamlBelow(Houses.EXAMPLES.resolve("arrangements"));
    }

    @ParameterizedTest
    @MethodSource("arrangements")
    void arrangementGivesWhatItsFirstLinesSay(Path house) throws IOException {
        Outcome outcome = Houses.assess(Houses.read(house)).verdict().outcome();
        assertThat(Files.readString(house))
                .contains(outcome == Outcome.MET ? "# Expected: all required met" : "# Expected: open");
        assertThat(outcome).isIn(Outcome.MET, Outcome.OPEN);
    }

    /** Nothing of a sound house rests on an assumption, and something of each of its kinds is met. */
    @ParameterizedTest
    @CsvSource({"town-house, 28", "farmhouse, 15", "terrace, 9"})
    void soundHouseIsMetWithoutAssumptions(String name, int fewestCircuits) {
        Site site = Houses.read(Houses.EXAMPLES.resolve(name + ".yaml"));
        var assessment = Houses.assess(site);
        assertThat(assessment.installation().circuits()).hasSizeGreaterThanOrEqualTo(fewestCircuits);
        assertThat(assessment.verdict().outcome()).isEqualTo(Outcome.MET);
        assertThat(assessment.verdict().assumptions()).isZero();
        assertThat(assessment.requiredMet()).isTrue();
    }

    private static List<String> namesIn(Path folder, String ending) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(ending))
                    .map(name -> name.substring(0, name.length() - ending.length()))
                    .sorted()
                    .toList();
        }
    }
}
