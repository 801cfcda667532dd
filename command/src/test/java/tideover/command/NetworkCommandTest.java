package tideover.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What flows and what faults do, as it is typed and as machines read it (docs/network-json.md). */
class NetworkCommandTest {

    private static final Path TOWN_HOUSE = Path.of("..", "examples", "town-house.yaml");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder = Path.of("");

    private int run(Object... arguments) {
        String[] texts = new String[arguments.length + 1];
        texts[0] = "network";
        for (int i = 0; i < arguments.length; i++) texts[i + 1] = arguments[i].toString();
        return new Tideover(new PrintWriter(out, true), new PrintWriter(err, true), () -> LocalDate.EPOCH).run(texts);
    }

    private JsonValue json(Object... arguments) {
        assertThat(run(arguments)).isZero();
        return JsonValue.of(out.toString());
    }

    /** A house of one board, without cables, on a stiff supply. */
    private Path house(String circuits) throws IOException {
        Path file = folder.resolve("house.yaml");
        Files.writeString(file, """
                format: 1
                house:
                  place: {country: DE}
                  supply: {earthingSystem: TN_S, lines: THREE, nominalVoltageV: 230, loopImpedanceOhm: 0.01,
                    prospectiveCurrentA: 23000, networkElectrodeOhm: 1}
                  boards: [{id: board, fedFrom: supply, conductors: [L1, L2, L3, N, PE]}]
                  circuits:
                """ + circuits.indent(4));
        return file;
    }

    @Test
    void anIslandFaultGivesWhatTheInverterGives() {
        JsonValue fault = json(TOWN_HOUSE, "--state", "ISLAND_GRID_DEAD", "--at", "oven", "--json")
                .at("states")
                .first()
                .at("faults")
                .find("kind", "LINE_TO_NEUTRAL");
        // The site file: faultCurrentA 24, shutOffTimeS 0.15, shutOffVoltageV 20. A B16 needs 80 A to trip at once.
        assertThat(fault.at("currentA").number()).isEqualTo(24);
        assertThat(fault.at("answer").text()).isEqualTo("LIMITED");
        assertThat(fault.at("clearing").at("kind").text()).isEqualTo("SOURCE_SHUTDOWN");
        assertThat(fault.at("clearing").at("latestS").number()).isEqualTo(0.15);
        assertThat(fault.at("clearing").at("voltageLeftV").number()).isEqualTo(20);
    }

    @Test
    void aCircuitsDropIsThatOfAnnexG() {
        JsonValue places = json(TOWN_HOUSE, "--state", "ISLAND_GRID_DEAD", "--json")
                .at("states")
                .first()
                .at("flows")
                .find("regime", "DRAWING")
                .at("places");
        JsonValue oven = places.find("place", "oven");
        double currentA = oven.at("currentA").at("L2").number();
        double dropV = 230
                * (oven.at("dropRatio").number()
                        - 1
                        + places.find("place", "rcd-ground")
                                        .at("voltageV")
                                        .at("L2")
                                        .number()
                                / 230
                        + (230
                                        - places.find("place", "inverter")
                                                .at("voltageV")
                                                .at("L2")
                                                .number())
                                / 230);
        // IEC 60364-5-52, G.52: u = b ρ1 L/S cosφ I with b = 2, ρ1 = 1.25 × 0.018 Ω mm²/m, 13 m of 2.5 mm², cosφ = 1.
        // Its
        // resistivity is rounded: ours, of IEC 60228 at 70 °C, is 1.5 % less.
        assertThat(dropV).isCloseTo(2 * 0.0225 * 13 / 2.5 * currentA, within(0.02 * dropV));
    }

    @Test
    void whatTheInverterCannotGiveIsSaidInWords() {
        assertThat(run(TOWN_HOUSE, "--state", "island_grid_dead")).isZero();
        // 14.5 A each line is what the site file says the inverter gives.
        assertThat(out.toString().replaceAll("\\s+", " "))
                .containsPattern("L3 27\\.6 A of 14\\.5 A: it shuts down then, and what it feeds goes dark");
    }

    @Test
    void anInterruptedNeutralDividesTheVoltageBetweenTwoLines() throws IOException {
        JsonValue lost = json(house("""
                        - {id: small, fedFrom: board, conductors: [L1, N, PE], load: {kind: WATER_HEATER, powerW: 1000}}
                        - {id: large, fedFrom: board, conductors: [L2, N, PE], load: {kind: WATER_HEATER, powerW: 2000}}
                        """), "--state", "CONNECTED", "--json")
                .at("states")
                .first()
                .at("interruptedNeutrals")
                .find("thing", "board");
        // By hand: 52.9 Ω and 26.45 Ω in series between lines, √3 × 230 V × 52.9 / 79.35; the supply takes less than
        // 0.05 V.
        assertThat(lost.at("place").text()).isEqualTo("small");
        assertThat(lost.at("voltageV").number()).isCloseTo(265.58, within(0.1));
    }

    @Test
    void thirdHarmonicsOfThreeLinesAddInTheNeutral() throws IOException {
        JsonValue place = json(house("""
                        - id: drive
                          fedFrom: board
                          conductors: [L1, L2, L3, N, PE]
                          load: {kind: FIXED, powerW: 6900, powerFactorRatio: 1, thirdHarmonicRatio: 0.33}
                        """), "--state", "CONNECTED", "--json")
                .at("states")
                .first()
                .at("flows")
                .find("regime", "DRAWING")
                .at("places")
                .find("place", "drive");
        // IEC 60364-5-52, Annex E: three times the third harmonic of a line, 3 × 0.33 × 10 A.
        assertThat(place.at("neutralThirdHarmonicA").number()).isCloseTo(9.9, within(1e-6));
    }

    @Test
    void moreThanCanArriveIsSaid() throws IOException {
        // 2 km of 1.5 mm² there and back have some 58 Ω: at 230 V no more than 230 W can arrive of the 3 kW asked for.
        Path far = house("""
                - id: pump
                  fedFrom: board
                  conductors: [L1, N, PE]
                  cable: {lengthM: 2000, crossSectionMm2: 1.5}
                  load: {kind: PUMP, powerW: 3000}
                """);
        assertThat(run(far, "--state", "CONNECTED")).isZero();
        assertThat(out.toString()).contains("Pump: more is drawn there than can arrive");
    }

    @Test
    void aFaultWithResistanceIsSmallerThanABoltedOne() {
        JsonValue fault = json(TOWN_HOUSE, "--state", "CONNECTED", "--at", "Oven", "--fault-resistance", "10", "--json")
                .at("states")
                .first()
                .at("faults")
                .find("kind", "LINE_TO_EARTH");
        // The loop is less than an ohm: 230 V × 1.1 over 10 Ω give 25.3 A, less what the loop takes, plus 24 A of the
        // inverter.
        assertThat(fault.at("currentA").number()).isBetween(46.0, 25.3 + 24);
    }

    @Test
    void tablesHoldTheNumbersOfTheObject() throws IOException {
        assertThat(run(TOWN_HOUSE, "-o", folder)).isZero();
        JsonValue states =
                JsonValue.of(Files.readString(folder.resolve("network.json"))).at("states");
        List<NamedCsvRecord> faults = records("faults.csv");
        int count = 0;
        for (JsonValue state : states.items())
            for (JsonValue fault : state.at("faults").items()) {
                NamedCsvRecord row = faults.get(count++);
                assertThat(row.getField("place")).isEqualTo(fault.at("place").text());
                assertThat(Double.parseDouble(row.getField("currentA")))
                        .isEqualTo(fault.at("currentA").number());
            }
        assertThat(faults).hasSize(count).hasSizeGreaterThan(1000);
        assertThat(records("nodes.csv")).anySatisfy(row -> {
            assertThat(row.getField("conductor")).isEqualTo("L2");
            assertThat(Double.parseDouble(row.getField("neutralVoltageV"))).isBetween(200.0, 240.0);
        });
        assertThat(records("branches.csv"))
                .extracting(row -> row.getField("part"))
                .contains("FEED", "CONTACT", "LINK_SWITCH", "ELECTRODE");
    }

    private List<NamedCsvRecord> records(String name) throws IOException {
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(folder.resolve(name))) {
            return reader.stream().toList();
        }
    }

    @Test
    void allThatGoesToAHobComesBackFromIt() throws IOException {
        run(TOWN_HOUSE, "--state", "CONNECTED", "--at", "hob", "-o", folder);
        double real = 0;
        double imaginary = 0;
        for (NamedCsvRecord row : records("branches.csv")) {
            double currentA = Double.parseDouble(row.getField("currentA"));
            double angleRad = Math.toRadians(Double.parseDouble(row.getField("angleDeg")));
            real += currentA * Math.cos(angleRad);
            imaginary += currentA * Math.sin(angleRad);
        }
        // Kirchhoff's first law. Angles are written to seven figures, which moves each of some 10 A by up to 10 µA.
        assertThat(Math.hypot(real, imaginary)).isLessThan(5e-5);
        assertThat(records("branches.csv")).hasSizeGreaterThanOrEqualTo(5);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"town-house.yaml", "troubled/nothing-clears-in-island.yaml", "arrangements/three-units.yaml"})
    void nothingInItIsNoNumber(String example) {
        run(Path.of("..", "examples", example), "--json");
        assertThat(out.toString().length()).isPositive();
        assertThat(out.toString().contains("NaN") || out.toString().contains("Infinity"))
                .isFalse();
    }

    @Test
    void aPlaceThatIsNotThereIsAnsweredWithThoseThatAre() {
        assertThat(run(TOWN_HOUSE, "--at", "nowhere")).isEqualTo(2);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString()).contains("nowhere", "kitchen-sockets").doesNotContain("Exception");
    }

    @Test
    void aStateThatDoesNotExistIsAnsweredWithThoseThatDo() throws IOException {
        assertThat(run(TOWN_HOUSE, "--state", "TILTED")).isEqualTo(2);
        assertThat(err.toString()).contains("TILTED", "ISLAND_GRID_DEAD");
        assertThat(run(house("- {id: one, fedFrom: board, conductors: [L1, N, PE]}"), "--state", "DARK"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("never in the state dark", "CONNECTED");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1", "NaN", "Infinity", "much"})
    void aFaultResistanceThatIsNoneIsRefused(String ohm) {
        assertThat(run(TOWN_HOUSE, "--fault-resistance", ohm)).isEqualTo(2);
        assertThat(err.toString()).contains(ohm).doesNotContain("Exception");
    }

    @Test
    void aHouseWithoutLoadsAndInverterHasItsMissingFactsNamed() throws IOException {
        assertThat(run(house("- {id: one, fedFrom: board, conductors: [L1, N, PE], cable: {crossSectionMm2: 2.5}}")))
                .isZero();
        assertThat(out.toString()).contains("gives nothing").contains("of one").doesNotContain("NaN");
    }

    @Test
    void shortByDefaultAllOnRequest() {
        run(TOWN_HOUSE);
        assertThat(out.toString().lines()).hasSizeLessThan(130).allMatch(line -> line.length() <= 100);
        out.getBuffer().setLength(0);
        run(TOWN_HOUSE, "--full");
        assertThat(out.toString().lines()).hasSizeGreaterThan(400);
    }
}
