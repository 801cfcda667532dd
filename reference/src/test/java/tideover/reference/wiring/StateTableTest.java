package tideover.reference.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.installation.Installation;
import tideover.engine.site.OperatingState;
import tideover.engine.wiring.model.HouseModel;
import tideover.engine.wiring.model.Shown;
import tideover.engine.wiring.procedure.StateTable;
import tideover.engine.wiring.procedure.StateTable.Group;
import tideover.engine.wiring.procedure.StateTable.Row;
import tideover.reference.Houses;

/** What should be read in each operating state, computed, against tables written by hand; their README says how. */
class StateTableTest {

    private static final Path FOLDER = Path.of("src/test/resources/tideover/reference/wiring/states");

    static List<Path> houses() {
        return StatesOfTheModelTest.sound();
    }

    private static Map<String, Row> computed(Path house) {
        Map<String, Row> rows = new LinkedHashMap<>();
        for (Row row : StateTable.of(HouseModel.of(Installation.of(Houses.read(house))))
                .rows()) rows.put(row.reading().id(), row);
        return rows;
    }

    /** By reading, what it shows in each state. */
    private static Map<String, Map<OperatingState, Shown>> byHand(Path house) {
        String name = house.getFileName().toString().replace(".yaml", ".csv");
        List<String[]> lines = lines(FOLDER.resolve(name));
        String[] head = lines.get(0);
        Map<String, Map<OperatingState, Shown>> table = new LinkedHashMap<>();
        for (String[] line : lines.subList(1, lines.size())) {
            Map<OperatingState, Shown> shown = new TreeMap<>();
            for (int i = 1; i < head.length - 1; i++)
                shown.put(OperatingState.valueOf(head[i]), Shown.valueOf(line[i]));
            assertThat(table.put(line[0], shown)).as("%s twice", line[0]).isNull();
        }
        return table;
    }

    private static List<String[]> lines(Path file) {
        try {
            return java.nio.file.Files.readAllLines(file).stream()
                    .map(line -> line.strip().split("\\s*\\|\\s*"))
                    .toList();
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("houses")
    void everyReadingIsWhatWasReasonedByHand(Path house) {
        Map<String, Row> computed = computed(house);
        List<String> otherwise = new ArrayList<>();
        byHand(house).forEach((id, shown) -> {
            Row row = computed.get(id);
            if (row == null) otherwise.add(id + " is not in the table");
            else if (!shown.equals(row.shown()))
                otherwise.add(id + ": by hand " + shown + ", computed " + new TreeMap<>(row.shown()));
        });
        assertThat(otherwise).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("houses")
    void noIndicatorContactOrSignalIsLeftOut(Path house) {
        List<String> demanded = computed(house).values().stream()
                .filter(row -> row.group() == Group.INDICATORS
                        || row.group() == Group.CONTACTS
                        || row.group() == Group.SIGNALS)
                .map(row -> row.reading().id())
                .toList();
        assertThat(demanded).isNotEmpty();
        assertThat(byHand(house).keySet()).containsAll(demanded);
    }
}
