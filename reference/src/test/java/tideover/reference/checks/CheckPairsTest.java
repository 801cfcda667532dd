package tideover.reference.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.assessment.Assessor;
import tideover.engine.rules.Check;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Missing;
import tideover.engine.rules.Outcome;
import tideover.engine.site.FactId;
import tideover.reference.Houses;

/**
 * Each check has a pair of houses that differ in one wire or one fact: met in one, not met in the other; and each that
 * needs a fact stays open without it. What must come out is common knowledge of the trade, said in the last column; the
 * clauses stand in the rule book.
 */
class CheckPairsTest {

    private static final Path FOLDER = Path.of("src/test/resources/tideover/reference/checks");

    /** Nothing is ever wrong with a rest position that is known, wherever it is. */
    private static final Set<String> NEVER_BROKEN = Set.of("switch.restPosition");

    /**
     * Silent where a fact of its own is missing, because another check speaks: that of the three currents of a cable, that
     * of loading.
     */
    private static final Set<String> NEVER_OPEN = Set.of("overload.tripping", "care.load");

    /** One pair. */
    record Pair(
            String check,
            String house,
            List<String> given,
            String failsWhen,
            String place,
            String state,
            String because) {
        @Override
        public String toString() {
            return "%s: %s".formatted(check, failsWhen);
        }
    }

    /** One house in which a fact is missing. */
    record Gap(String check, String house, String opensWhen, String place, String missing, String because) {
        @Override
        public String toString() {
            return "%s: %s".formatted(check, opensWhen);
        }
    }

    static List<Pair> pairs() {
        return rows("fails.csv")
                .map(row -> new Pair(row[0], row[1], edits(row[2]), row[3], row[4], row[5], row[6]))
                .toList();
    }

    static List<Gap> gaps() {
        return rows("opens.csv")
                .map(row -> new Gap(row[0], row[1], row[2], row[3], row[4], row[5]))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void oneWireOrFactTurnsMetIntoNotMet(Pair pair) {
        List<Finding> sound = findings(pair.check(), pair.house(), pair.given());
        assertThat(sound)
                .as("before")
                .isNotEmpty()
                .noneMatch(finding -> !finding.outcome().isSettled());
        List<String> edits = new ArrayList<>(pair.given());
        edits.removeIf(edit -> edit.split(":")[0].equals(pair.failsWhen().split(":")[0]));
        edits.add(pair.failsWhen());
        assertThat(findings(pair.check(), pair.house(), edits))
                .as(pair.because())
                .filteredOn(finding -> finding.outcome() == Outcome.NOT_MET)
                .extracting(finding -> finding.key().toString())
                .contains("%s %s %s".formatted(pair.check(), pair.place(), pair.state()));
    }

    @ParameterizedTest
    @MethodSource("gaps")
    void missingFactLeavesItOpenAndIsNamed(Gap gap) {
        assertThat(findings(gap.check(), gap.house(), edits(gap.opensWhen())))
                .as(gap.because())
                .filteredOn(finding -> finding.key().place().text().equals(gap.place()))
                .filteredOn(finding -> finding.outcome() == Outcome.OPEN)
                .flatExtracting(Finding::missing)
                .extracting(CheckPairsTest::fact)
                .contains(FactId.of(gap.missing()));
    }

    @Test
    void noCheckIsWithoutAPairNorWithoutAGap() {
        Set<String> ids = all().map(Check::id).collect(Collectors.toCollection(TreeSet::new));
        assertThat(all()).hasSameSizeAs(ids);
        assertThat(pairs())
                .extracting(Pair::check)
                .containsAll(less(ids, NEVER_BROKEN))
                .isSubsetOf(less(ids, NEVER_BROKEN));
        assertThat(gaps())
                .extracting(Gap::check)
                .containsAll(less(ids, NEVER_OPEN))
                .isSubsetOf(less(ids, NEVER_OPEN));
    }

    private static Set<String> less(Set<String> all, Set<String> some) {
        Set<String> rest = new TreeSet<>(all);
        assertThat(rest.removeAll(some)).isTrue();
        return rest;
    }

    private static Stream<Check<?>> all() {
        return Assessor.checks().stream();
    }

    private static FactId fact(Missing missing) {
        if (missing instanceof Missing.UnknownFact unknown) return unknown.fact();
        if (missing instanceof Missing.OperatorAnswer answer) return answer.fact();
        throw new AssertionError("waits for no fact: " + missing);
    }

    private static List<Finding> findings(String check, String house, List<String> edits) {
        Path base = switch (house) {
            case "terrace" -> Houses.TERRACE;
            case "farmhouse" -> Houses.FARMHOUSE;
            default -> FOLDER.resolve(house + ".yaml");
        };
        return Houses.assess(Houses.with(base, edits)).findings().stream()
                .filter(finding -> finding.key().check().equals(check))
                .toList();
    }

    private static List<String> edits(String cell) {
        return cell.isEmpty() ? List.of() : List.of(cell.split(" & "));
    }

    private static Stream<String[]> rows(String name) {
        try (InputStream in = Objects.requireNonNull(CheckPairsTest.class.getResourceAsStream(name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                            .lines()
                            .skip(1)
                            .map(line -> Arrays.stream(line.split("\\|", -1))
                                    .map(String::strip)
                                    .toArray(String[]::new))
                            .toList()
                            .stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
