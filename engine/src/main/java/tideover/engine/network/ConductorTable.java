package tideover.engine.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import tideover.engine.site.Material;

/** Resistance and reactance of conductors: the largest resistance the conductor standard allows. */
public final class ConductorTable {

    /** Temperature at which the rows hold [°C] (IEC 60228). */
    private static final double ROW_TEMPERATURE_DEG_C = 20;

    private final Map<Material, Curve> curves;
    private final Reactance reactance;

    /**
     * One row: a solid or stranded conductor (class 1 or 2) at 20 °C.
     *
     * @param crossSectionMm2   nominal cross-section [mm²]
     * @param resistanceOhmPerKm largest d.c. resistance at 20 °C [Ω/km]
     */
    public record Row(Material material, double crossSectionMm2, double resistanceOhmPerKm) {
        public Row {
            if (!(crossSectionMm2 > 0) || !(resistanceOhmPerKm > 0))
                throw new IllegalArgumentException("%s: crossSectionMm2 %s and resistanceOhmPerKm %s must be positive"
                        .formatted(material, crossSectionMm2, resistanceOhmPerKm));
        }
    }

    /**
     * Reactance of a multi-core cable or of single cores in trefoil.
     *
     * @param ohmPerKm            of one conductor [Ω/km]
     * @param fromCrossSectionMm2 below this section it is neglected against the resistance [mm²]
     */
    public record Reactance(double ohmPerKm, double fromCrossSectionMm2) {}

    /**
     * @param rows                    in any order; at least one for each material
     * @param zeroResistanceDegC      temperature at which the straight line of resistance over temperature meets zero
     *                                [°C]: -234.5 for copper, -228 for aluminium (IEC 60228, Annex A)
     */
    public ConductorTable(List<Row> rows, Map<Material, Double> zeroResistanceDegC, Reactance reactance) {
        this.reactance = reactance;
        curves = new EnumMap<>(Material.class);
        for (Material material : Material.values()) {
            Double zeroDegC = zeroResistanceDegC.get(material);
            List<Row> own = new ArrayList<>();
            for (Row row : rows) if (row.material() == material) own.add(row);
            if (zeroDegC == null || own.isEmpty())
                throw new IllegalArgumentException("the conductor table says nothing about " + material);
            own.sort(Comparator.comparingDouble(Row::crossSectionMm2));
            curves.put(
                    material,
                    new Curve(
                            own.stream().mapToDouble(Row::crossSectionMm2).toArray(),
                            own.stream().mapToDouble(Row::resistanceOhmPerKm).toArray(),
                            zeroDegC));
        }
    }

    /**
     * Resistance of one conductor, one way.
     *
     * <p>A section between two rows lies on the straight line between them on double logarithmic paper, one beyond the
     * rows has the resistivity of the last row: such sections are not standard ones.
     *
     * @param crossSectionMm2 nominal cross-section [mm²], above 0
     * @param temperatureDegC of the conductor [°C]
     * @return resistance [Ω/km], d.c., which for these sections is that at 50 Hz too
     * @throws IllegalArgumentException if the cross-section is not positive
     * @see "IEC 60228:2004, Tables 1 and 2 and Annex A"
     */
    public double resistanceOhmPerKm(Material material, double crossSectionMm2, double temperatureDegC) {
        if (!(crossSectionMm2 > 0))
            throw new IllegalArgumentException("crossSectionMm2 %s must be positive".formatted(crossSectionMm2));
        return Objects.requireNonNull(curves.get(material)).resistanceOhmPerKm(crossSectionMm2, temperatureDegC);
    }

    /**
     * Reactance of one conductor, one way.
     *
     * @return reactance at 50 Hz [Ω/km]; 0 for small sections, where the resistance hides it
     * @see "IEC 60364-5-52:2009, Annex G"
     */
    public double reactanceOhmPerKm(double crossSectionMm2) {
        return crossSectionMm2 >= reactance.fromCrossSectionMm2() ? reactance.ohmPerKm() : 0;
    }

    private static final class Curve {
        private final double[] crossSectionMm2;
        private final double[] resistanceOhmPerKm;
        private final double zeroDegC;

        Curve(double[] crossSectionMm2, double[] resistanceOhmPerKm, double zeroDegC) {
            this.crossSectionMm2 = crossSectionMm2;
            this.resistanceOhmPerKm = resistanceOhmPerKm;
            this.zeroDegC = zeroDegC;
        }

        double resistanceOhmPerKm(double sectionMm2, double temperatureDegC) {
            return coldOhmPerKm(sectionMm2) * (temperatureDegC - zeroDegC) / (ROW_TEMPERATURE_DEG_C - zeroDegC);
        }

        private double coldOhmPerKm(double sectionMm2) {
            int last = crossSectionMm2.length - 1;
            int i = 0;
            while (i <= last && crossSectionMm2[i] < sectionMm2) i++;
            if (i <= last && crossSectionMm2[i] == sectionMm2) return resistanceOhmPerKm[i];
            if (i == 0 || i > last) {
                int end = i == 0 ? 0 : last;
                return resistanceOhmPerKm[end] * crossSectionMm2[end] / sectionMm2;
            }
            double share = Math.log(sectionMm2 / crossSectionMm2[i - 1])
                    / Math.log(crossSectionMm2[i] / crossSectionMm2[i - 1]);
            return resistanceOhmPerKm[i - 1] * Math.pow(resistanceOhmPerKm[i] / resistanceOhmPerKm[i - 1], share);
        }
    }
}
