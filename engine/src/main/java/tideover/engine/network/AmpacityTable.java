package tideover.engine.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import tideover.engine.site.InstallationMethod;
import tideover.engine.site.Insulation;
import tideover.engine.site.Material;

/** Ampacity of cables by reference method, with the corrections for temperature and grouping. */
public final class AmpacityTable {

    private final List<List<Row>> rowsByKey;
    private final Map<Surroundings, Map<Insulation, Steps>> temperatures;
    private final Map<InstallationMethod, Steps> groupings;

    /** One conductor at the table's own conditions: 30 °C air or 20 °C soil, no other circuit beside it. */
    public record Row(
            Material material,
            Insulation insulation,
            InstallationMethod method,
            LoadedConductors loaded,
            double crossSectionMm2,
            Ampacity ampacity) {}

    /** Factor for a temperature of the surroundings. */
    public record Temperature(
            Surroundings surroundings, Insulation insulation, double ambientDegC, double factorRatio) {}

    /** Factor for a number of loaded circuits laid together; rows start at one circuit. */
    public record Grouping(InstallationMethod method, int circuits, double factorRatio) {}

    public AmpacityTable(List<Row> rows, List<Temperature> temperatures, List<Grouping> groupings) {
        int keys = key(Material.ALUMINIUM, Insulation.XLPE, InstallationMethod.E, LoadedConductors.THREE) + 1;
        List<List<Row>> byKey = new ArrayList<>(keys);
        for (int i = 0; i < keys; i++) byKey.add(new ArrayList<>(11));
        for (Row row : rows)
            byKey.get(key(row.material(), row.insulation(), row.method(), row.loaded()))
                    .add(row);
        byKey.forEach(list -> list.sort(Comparator.comparingDouble(Row::crossSectionMm2)));
        rowsByKey = byKey.stream().map(List::copyOf).toList();

        Map<Surroundings, Map<Insulation, TreeMap<Double, Double>>> byTemperature = new EnumMap<>(Surroundings.class);
        for (Temperature row : temperatures)
            byTemperature
                    .computeIfAbsent(row.surroundings(), s -> new EnumMap<>(Insulation.class))
                    .computeIfAbsent(row.insulation(), i -> new TreeMap<>())
                    .put(row.ambientDegC(), row.factorRatio());
        this.temperatures = new EnumMap<>(Surroundings.class);
        byTemperature.forEach((surroundings, byInsulation) -> {
            Map<Insulation, Steps> steps = new EnumMap<>(Insulation.class);
            byInsulation.forEach((insulation, factors) -> steps.put(insulation, new Steps(factors)));
            this.temperatures.put(surroundings, steps);
        });

        Map<InstallationMethod, TreeMap<Double, Double>> byMethod = new EnumMap<>(InstallationMethod.class);
        for (Grouping row : groupings)
            byMethod.computeIfAbsent(row.method(), m -> new TreeMap<>())
                    .put((double) row.circuits(), row.factorRatio());
        this.groupings = new EnumMap<>(InstallationMethod.class);
        byMethod.forEach((method, factors) -> this.groupings.put(method, new Steps(factors)));
    }

    /**
     * Ampacity at the table's own conditions.
     *
     * @param crossSectionMm2 of a line conductor [mm²]
     * @return nothing if the table has no such conductor
     * @see "IEC 60364-5-52:2009, Tables B.52.2 to B.52.5 and B.52.10 to B.52.13"
     */
    public Optional<Ampacity> find(
            Material material,
            Insulation insulation,
            InstallationMethod method,
            LoadedConductors loaded,
            double crossSectionMm2) {
        for (Row row : rowsByKey.get(key(material, insulation, method, loaded)))
            if (row.crossSectionMm2() == crossSectionMm2) return Optional.of(row.ampacity());
        return Optional.empty();
    }

    /**
     * Factor for the temperature of the surroundings; between two rows on the straight line between them.
     *
     * @param ambientDegC air, or soil for buried cables [°C]
     * @return nothing above the last row, where the conductor has hardly any margin left; below the first row its factor
     * @see "IEC 60364-5-52:2009, Tables B.52.14 and B.52.15"
     */
    public OptionalDouble findTemperatureRatio(InstallationMethod method, Insulation insulation, double ambientDegC) {
        Map<Insulation, Steps> byInsulation = temperatures.get(Surroundings.of(method));
        Steps steps = byInsulation == null ? null : byInsulation.get(insulation);
        return steps == null ? OptionalDouble.empty() : steps.findBetween(ambientDegC);
    }

    /**
     * Factor for circuits bunched together, all of them fully loaded.
     *
     * @param circuits number of loaded circuits, this one counted, 1 or more
     * @return factor of the next number in the table; nothing beyond its last
     * @throws IllegalArgumentException if circuits is below 1
     * @see "IEC 60364-5-52:2009, Tables B.52.17 to B.52.19"
     */
    public OptionalDouble findGroupingRatio(InstallationMethod method, int circuits) {
        if (circuits < 1) throw new IllegalArgumentException("circuits %s must be 1 or more".formatted(circuits));
        if (circuits == 1) return OptionalDouble.of(1);
        Steps steps = groupings.get(method);
        return steps == null ? OptionalDouble.empty() : steps.findNext(circuits);
    }

    /**
     * Ampacity as laid, I_z, with its factors.
     *
     * @param circuits    loaded circuits bunched together, this one counted, 1 or more
     * @param ambientDegC air, or soil for buried cables [°C]
     * @return nothing if the tables have no such conductor, temperature or number of circuits
     */
    public Optional<InstalledAmpacity> findInstalled(
            Material material,
            Insulation insulation,
            InstallationMethod method,
            LoadedConductors loaded,
            double crossSectionMm2,
            int circuits,
            double ambientDegC) {
        Optional<Ampacity> tabulated = find(material, insulation, method, loaded, crossSectionMm2);
        OptionalDouble temperatureRatio = findTemperatureRatio(method, insulation, ambientDegC);
        OptionalDouble groupingRatio = findGroupingRatio(method, circuits);
        if (tabulated.isEmpty() || temperatureRatio.isEmpty() || groupingRatio.isEmpty()) return Optional.empty();
        return Optional.of(
                new InstalledAmpacity(tabulated.get(), temperatureRatio.getAsDouble(), groupingRatio.getAsDouble()));
    }

    /** Cross-sections the table knows for such a conductor, smallest first [mm²]. */
    public List<Double> crossSectionsMm2(
            Material material, Insulation insulation, InstallationMethod method, LoadedConductors loaded) {
        return rowsByKey.get(key(material, insulation, method, loaded)).stream()
                .map(Row::crossSectionMm2)
                .toList();
    }

    private static int key(
            Material material, Insulation insulation, InstallationMethod method, LoadedConductors loaded) {
        int key = material.ordinal();
        key = key * Insulation.values().length + insulation.ordinal();
        key = key * InstallationMethod.values().length + method.ordinal();
        return key * LoadedConductors.values().length + loaded.ordinal();
    }

    /** Factors over a quantity that rises from row to row. */
    private static final class Steps {
        private final double[] at;
        private final double[] factorRatio;

        Steps(TreeMap<Double, Double> factors) {
            at = factors.keySet().stream().mapToDouble(Double::doubleValue).toArray();
            factorRatio =
                    factors.values().stream().mapToDouble(Double::doubleValue).toArray();
        }

        OptionalDouble findNext(double value) {
            for (int i = 0; i < at.length; i++) if (at[i] >= value) return OptionalDouble.of(factorRatio[i]);
            return OptionalDouble.empty();
        }

        OptionalDouble findBetween(double value) {
            if (value <= at[0]) return OptionalDouble.of(factorRatio[0]);
            for (int i = 1; i < at.length; i++) {
                if (value == at[i]) return OptionalDouble.of(factorRatio[i]);
                if (value < at[i]) {
                    double share = (value - at[i - 1]) / (at[i] - at[i - 1]);
                    return OptionalDouble.of(factorRatio[i - 1] + share * (factorRatio[i] - factorRatio[i - 1]));
                }
            }
            return OptionalDouble.empty();
        }
    }
}
