package tideover.command;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The wiring lists, as they are typed and as machines read them (docs/wiring-lists.md). */
class WiringCommandTest {

    private static final Path TOWN_HOUSE = Path.of("..", "examples", "town-house.yaml");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder = Path.of("");

    private int run(Object... arguments) {
        String[] texts = new String[arguments.length + 1];
        texts[0] = "wiring";
        for (int i = 0; i < arguments.length; i++) texts[i + 1] = arguments[i].toString();
        return new Tideover(new PrintWriter(out, true), new PrintWriter(err, true), () -> LocalDate.EPOCH).run(texts);
    }

    @ParameterizedTest
    @ValueSource(strings = {"power", "control", "cutting", "labels", "parts", "built"})
    void eachPartCanBeHadAlone(String part) {
        assertThat(run(TOWN_HOUSE, "--part", part)).isZero();
        assertThat(out.toString().lines()).hasSizeGreaterThan(2).allMatch(line -> line.length() <= 110);
        assertThat(out.toString()).contains("prove dead");
    }

    @Test
    void scheduleNamesBothEndsOfAWire() {
        assertThat(run(TOWN_HOUSE, "--part", "power")).isZero();
        assertThat(out.toString().lines())
                .anyMatch(line -> line.contains("FC1:L2") && line.contains("QA1:3L2") && line.contains("black BK"));
    }

    @Test
    void partThatIsNoneIsRefusedWithThoseThereAre() {
        assertThat(run(TOWN_HOUSE, "--part", "pwr")).isEqualTo(2);
        assertThat(err.toString()).contains("pwr").contains("power, control, cutting, labels, parts, built");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1", "NaN", "Infinity"})
    void allowanceThatIsNoLengthIsRefused(String allowance) {
        assertThat(run(TOWN_HOUSE, "--allowance", allowance)).isEqualTo(2);
        assertThat(err.toString()).contains(allowance).contains("metres");
    }

    @Test
    void filesTellTheSameInFormsForPersonsAndPrograms() throws IOException {
        assertThat(run(TOWN_HOUSE, "-o", folder)).isZero();
        List<NamedCsvRecord> rows;
        try (CsvReader<NamedCsvRecord> reader =
                CsvReader.builder().ofNamedCsvRecord(Files.newBufferedReader(folder.resolve("power.csv")))) {
            rows = reader.stream().toList();
        }
        JsonValue json = JsonValue.of(Files.readString(folder.resolve("wiring.json")));
        assertThat(json.at("parts").items())
                .extracting(part -> part.at("part").text())
                .contains("power", "control", "cutting", "labels", "parts", "built");
        List<JsonValue> power = json.at("parts").items().get(0).at("rows").items();
        assertThat(power).hasSameSizeAs(rows);
        for (int i = 0; i < rows.size(); i++) {
            assertThat(power.get(i).at("wire").text()).isEqualTo(rows.get(i).getField("wire"));
            assertThat(power.get(i).at("from").text()).isEqualTo(rows.get(i).getField("from"));
        }
        assertThat(rows).anySatisfy(row -> {
            assertThat(row.getField("wire")).isEqualTo("WD4.L1");
            assertThat(row.getField("crossSectionMm2")).isEqualTo("10.0");
            assertThat(row.getField("torqueToNm")).isEqualTo("2.5");
            assertThat(row.getField("labelFrom")).isEqualTo("WD4.L1 QA1:1L1");
        });
        assertThat(Files.readAllBytes(folder.resolve("wiring.pdf")))
                .startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
    }

    @Test
    void deviceDeliveredInsteadOfAnotherIsToldWithWhatBecameOpen() throws IOException {
        Path file = folder.resolve("built.yaml");
        Files.writeString(
                file,
                Files.readString(TOWN_HOUSE)
                        + "built:\n  swapped: [islanding-switch]\n  nameplates:\n"
                        + "    - {id: plate, at: islanding-switch, serialNumber: '1234'}\n");
        assertThat(run(file, "--part", "built")).isZero();
        assertThat(out.toString())
                .contains("not known")
                .contains("serial number")
                .contains("1234")
                .contains("? Open");
    }

    @Test
    void houseThatNobodyAltersHasEmptyLists() throws IOException {
        Path file = folder.resolve("house.yaml");
        Files.writeString(file, """
                format: 1
                house:
                  place: {country: DE}
                  supply: {earthingSystem: TN_S, lines: THREE, nominalVoltageV: 230}
                  boards: [{id: board, fedFrom: supply, conductors: [L1, L2, L3, N, PE]}]
                """);
        assertThat(run(file)).isZero();
        assertThat(out.toString())
                .contains("The plan touches no power wiring.")
                .contains("No control wiring is stated.")
                .contains("Nothing is to be cut.");
    }
}
