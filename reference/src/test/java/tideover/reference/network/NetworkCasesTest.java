package tideover.reference.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every reference case, solved by ours, against what the libraries say. */
class NetworkCasesTest {

    /** As the libraries agree among each other; larger differences are listed in deviations.csv with their reason. */
    private static final double TOLERANCE_PER_UNIT = 1e-6;

    private static final Map<String, List<Expected>> EXPECTED = Expected.byCase();
    private static final List<Deviation> DEVIATIONS = Deviation.read();

    static List<NetworkCase> all() {
        return NetworkCase.all();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void oursSaysWhatTheLibrariesSay(NetworkCase one) {
        Solved solved = Solved.of(one);
        List<Expected> rows = EXPECTED.getOrDefault(one.name(), List.of());
        assertThat(rows).as("expected values of %s", one).isNotEmpty();
        double largestA = largestA(rows);
        List<String> off = new ArrayList<>();
        for (Expected row : rows) {
            double perUnit = row.perUnit(one, solved, largestA);
            // Written so that what is no number counts as off.
            if (!(perUnit <= allowed(row)))
                off.add("%s: ours %s, theirs %s, %.2e per unit"
                        .formatted(row, row.ours(one, solved), row.value(), perUnit));
        }
        assertThat(off).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("byHand")
    void oursSaysWhatComesOutOnPaper(ByHand row) {
        NetworkCase one = all().stream()
                .filter(each -> each.name().equals(row.expected().caseName()))
                .findFirst()
                .orElseThrow();
        // Half the last digit written, and a binary fraction so that a value in the middle is not lost.
        assertThat(row.expected().ours(one, Solved.of(one)).real())
                .as(row.formula())
                .isCloseTo(row.expected().value().real(), within(row.tolerance() + 1e-9));
    }

    static List<ByHand> byHand() {
        return ByHand.read();
    }

    @Test
    void listedDeviationsAreThereAndNotLargerThanListed() {
        Map<String, NetworkCase> cases = all().stream().collect(Collectors.toMap(NetworkCase::name, one -> one));
        for (Deviation deviation : DEVIATIONS) {
            NetworkCase one = cases.get(deviation.caseName());
            assertThat(one).as("case of %s", deviation).isNotNull();
            Solved solved = Solved.of(one);
            List<Expected> rows = EXPECTED.get(one.name());
            double largest = rows.stream()
                    .filter(deviation::covers)
                    .mapToDouble(row -> row.perUnit(one, solved, largestA(rows)))
                    .max()
                    .orElse(0);
            assertThat(largest).as("%s", deviation).isGreaterThan(TOLERANCE_PER_UNIT);
            assertThat(largest).as("%s", deviation).isBetween(deviation.perUnit() / 3, deviation.perUnit());
        }
    }

    @Test
    void everyExpectedValueBelongsToACaseAndThereAreAtLeastSixty() {
        Set<String> names = all().stream().map(NetworkCase::name).collect(Collectors.toCollection(TreeSet::new));
        assertThat(EXPECTED.keySet()).containsExactlyInAnyOrderElementsOf(names);
        assertThat(names).hasSizeGreaterThanOrEqualTo(60);
    }

    private static double allowed(Expected row) {
        return DEVIATIONS.stream()
                .filter(deviation -> deviation.covers(row))
                .mapToDouble(Deviation::perUnit)
                .max()
                .orElse(TOLERANCE_PER_UNIT);
    }

    private static double largestA(List<Expected> rows) {
        return rows.stream()
                .filter(Expected::isCurrent)
                .mapToDouble(row -> row.value().magnitude())
                .reduce(1, Math::max);
    }
}
