package tideover.engine.network;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import tideover.engine.site.Insulation;
import tideover.engine.site.Material;

/** Short-time heating of conductors without loss of heat, for faults of up to 5 s. */
public final class AdiabaticTable {

    private final Map<Use, Map<Insulation, Factors>> factors = new EnumMap<>(Use.class);

    /** Where a conductor lies and so how warm it may be when the fault begins. */
    public enum Use {
        /** Line, or protective conductor in a cable or bunched: at its operating temperature. */
        CORE,
        /** Protective conductor on its own: at 30 °C. */
        SEPARATE
    }

    /**
     * The k of one kind of conductor, both materials [A·√s/mm²].
     *
     * @param copper    k of copper [A·√s/mm²]
     * @param aluminium k of aluminium [A·√s/mm²]
     */
    public record Factors(double copper, double aluminium) {}

    /** One row of the table. */
    public record Row(Use use, Insulation insulation, Factors factors) {}

    public AdiabaticTable(List<Row> rows) {
        for (Row row : rows)
            factors.computeIfAbsent(row.use(), u -> new EnumMap<>(Insulation.class))
                    .put(row.insulation(), row.factors());
        for (Use use : Use.values()) for (Insulation insulation : Insulation.values()) require(use, insulation);
    }

    /**
     * The k of the adiabatic equation.
     *
     * @return k [A·√s/mm²]; 115 for a PVC-insulated copper core
     * @see "IEC 60364-4-43:2008, Table 43A; IEC 60364-5-54:2011, Tables A.54.2 and A.54.4"
     */
    public double k(Material material, Insulation insulation, Use use) {
        Factors both = require(use, insulation);
        return switch (material) {
            case COPPER -> both.copper();
            case ALUMINIUM -> both.aluminium();
        };
    }

    /**
     * Smallest cross-section that bears a fault.
     *
     * @param faultCurrentA r.m.s. [A]
     * @param timeS         until it is cleared [s], 0.1 to 5; below, the let-through of the device counts
     * @param k             of the conductor [A·√s/mm²]
     * @return cross-section [mm²]
     * @see "IEC 60364-5-54:2011, 543.1.2"
     */
    public static double smallestMm2(double faultCurrentA, double timeS, double k) {
        return faultCurrentA * Math.sqrt(timeS) / k;
    }

    private Factors require(Use use, Insulation insulation) {
        Factors found = factors.getOrDefault(use, Map.of()).get(insulation);
        if (found == null) throw new IllegalArgumentException("no k for %s, %s".formatted(use, insulation));
        return found;
    }
}
