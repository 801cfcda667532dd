package tideover.reference.network;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import tideover.engine.network.flow.Phasor;

/**
 * One value that a library gives: a row of expected.csv.
 *
 * @param caseName which case
 * @param quantity voltage, voltageBetween, runCurrent, tieCurrent, sourceCurrent, shortCurrent; …Magnitude without angle
 * @param name     point, two points, or element
 * @param value    r.m.s. [V or A]; of a magnitude the real part alone
 * @param tool     which library, and how it was asked
 */
record Expected(String caseName, String quantity, String name, Phasor value, String tool) {

    private static final double NOMINAL_VOLTAGE_V = 230;

    static Map<String, List<Expected>> byCase() {
        return read("expected.csv").stream()
                .map(row -> new Expected(
                        row.getField("case"),
                        row.getField("quantity"),
                        row.getField("name"),
                        new Phasor(number(row.getField("re")), number(row.getField("im"))),
                        row.getField("tool")))
                .collect(Collectors.groupingBy(Expected::caseName));
    }

    static List<NamedCsvRecord> read(String file) {
        try (CsvReader<NamedCsvRecord> rows =
                CsvReader.builder().ofNamedCsvRecord(Files.newBufferedReader(NetworkCase.FOLDER.resolve(file)))) {
            return rows.stream().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }

    private static double number(String cell) {
        return cell.isEmpty() ? 0 : Double.parseDouble(cell);
    }

    boolean isMagnitude() {
        return quantity.endsWith("Magnitude");
    }

    boolean isCurrent() {
        return quantity.contains("Current");
    }

    /** What ours says instead. */
    Phasor ours(NetworkCase one, Solved solved) {
        Phasor ours = phasor(one, solved);
        return isMagnitude() ? Phasor.of(ours.magnitude()) : ours;
    }

    private Phasor phasor(NetworkCase one, Solved solved) {
        String plain = quantity.replace("Magnitude", "");
        return switch (plain) {
            case "voltage" -> solved.voltageV(number(one.points(), name));
            case "voltageBetween" -> {
                String[] ends = name.split(" ", 2);
                yield solved.voltageV(number(one.points(), ends[0]))
                        .minus(solved.voltageV(number(one.points(), ends[1])));
            }
            case "shortCurrent" ->
                solved.shortA(List.copyOf(one.shorts().keySet()).indexOf(name));
            default -> solved.branchA(number(one.branches(), plain.replace("Current", " ") + name));
        };
    }

    private int number(Map<String, Integer> numbers, String wanted) {
        Integer number = numbers.get(wanted);
        if (number == null) throw new AssertionError("%s has no '%s'".formatted(caseName, wanted));
        return number;
    }

    /** Difference from ours: a voltage over 230 V, a current over the largest one of the case. */
    double perUnit(NetworkCase one, Solved solved, double largestA) {
        return ours(one, solved).minus(value).magnitude() / (isCurrent() ? largestA : NOMINAL_VOLTAGE_V);
    }

    @Override
    public String toString() {
        return "%s %s %s by %s".formatted(caseName, quantity, name, tool);
    }
}
