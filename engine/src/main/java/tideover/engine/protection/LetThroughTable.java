package tideover.engine.protection;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tideover.engine.rules.Source;
import tideover.engine.site.Curve;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.OvercurrentKind;

/**
 * Let-through energy of devices that open faster than their time–current curves can say: Joule integral until a short
 * circuit is cleared. Breakers go by their energy limiting class, gG fuses by their rated current; one the table does not
 * know, such as 35 A, lets through no more than the next larger and holds no less than the next smaller one.
 */
public final class LetThroughTable {

    private static final double MELTING_TIME_S = 0.01;

    private final List<BreakerRow> breakers;
    private final TreeMap<Double, FuseRow> fuses = new TreeMap<>();

    /**
     * Breakers of one class.
     *
     * @param ratedAboveA         rated current above this [A]
     * @param ratedUpToA          rated current up to this [A]
     * @param breakingCapacityA   rated short-circuit capacity at which it was tested [A]
     * @param energyLimitingClass printed on the device
     * @param fromMultipleRatio   current over rated current from which it opens at once; the row says nothing below
     * @param letThroughA2s       largest Joule integral [A²s]
     */
    public record BreakerRow(
            Curve curve,
            double ratedAboveA,
            double ratedUpToA,
            double breakingCapacityA,
            int energyLimitingClass,
            double fromMultipleRatio,
            double letThroughA2s,
            Source source) {

        private boolean isOf(OvercurrentDevice device) {
            Double ratedA = device.ratedCurrentA();
            Double capacityA = device.breakingCapacityA();
            Integer printed = device.energyLimitingClass();
            return curve == device.curve()
                    && ratedA != null
                    && ratedA > ratedAboveA
                    && ratedA <= ratedUpToA
                    && capacityA != null
                    && capacityA == breakingCapacityA
                    && printed != null
                    && printed == energyLimitingClass;
        }
    }

    /**
     * A gG fuse.
     *
     * @param ratedCurrentA           rated current [A]
     * @param smallestMeltingA2s      Joule integral until it melts in 0.01 s, at least [A²s]
     * @param largestMeltingA2s       the same, at most [A²s]
     * @param testSmallestMeltingA2s  Joule integral until it melts in the test of selectivity, at least [A²s]
     * @param testLargestOperatingA2s Joule integral until the arc is out in the test of selectivity, at most [A²s]
     */
    public record FuseRow(
            double ratedCurrentA,
            double smallestMeltingA2s,
            double largestMeltingA2s,
            double testSmallestMeltingA2s,
            double testLargestOperatingA2s,
            Source source) {

        /** Below this current it may melt so slowly that its curve must be asked [A]. */
        private double fromCurrentA() {
            return Math.sqrt(largestMeltingA2s / MELTING_TIME_S);
        }

        /** The table's two ways of testing differ; the larger value is the safe side [A²s]. */
        private double letThroughA2s() {
            return Math.max(largestMeltingA2s, testLargestOperatingA2s);
        }
    }

    public LetThroughTable(List<BreakerRow> breakers, List<FuseRow> fuses) {
        this.breakers = List.copyOf(breakers);
        for (FuseRow row : fuses) this.fuses.put(row.ratedCurrentA(), row);
    }

    /**
     * Largest Joule integral a device lets through at a short circuit it opens at once.
     *
     * @param prospectiveA prospective short-circuit current, r.m.s. [A]
     * @return integral [A²s]; nothing for a device the table does not know, above its breaking capacity, or at a current
     *     at which its time–current curve holds
     * @see "EN 60898-1, Annex ZA (breakers); IEC 60269-1, Table 7, and IEC 60269-2 (gG fuses)"
     */
    public Optional<Double> find(OvercurrentDevice device, double prospectiveA) {
        Double ratedA = device.ratedCurrentA();
        Double capacityA = device.breakingCapacityA();
        if (ratedA == null || capacityA != null && prospectiveA > capacityA) return Optional.empty();
        if (device.kind() == OvercurrentKind.FUSE)
            return Optional.ofNullable(fuses.ceilingEntry(ratedA))
                    .map(Map.Entry::getValue)
                    .filter(row -> prospectiveA >= row.fromCurrentA())
                    .map(FuseRow::letThroughA2s);
        if (device.kind() != OvercurrentKind.MCB) return Optional.empty();
        return breakers.stream()
                .filter(row -> row.isOf(device) && prospectiveA >= row.fromMultipleRatio() * ratedA)
                .map(BreakerRow::letThroughA2s)
                .findFirst();
    }

    /**
     * Joule integral below which a gG fuse certainly does not melt: what a device behind it may let through.
     *
     * @return integral [A²s]; nothing for another device or a rating the table does not know
     */
    public Optional<Double> findHoldingA2s(OvercurrentDevice device) {
        Double ratedA = device.ratedCurrentA();
        if (ratedA == null || device.kind() != OvercurrentKind.FUSE) return Optional.empty();
        return Optional.ofNullable(fuses.floorEntry(ratedA))
                .map(Map.Entry::getValue)
                .map(row -> Math.min(row.smallestMeltingA2s(), row.testSmallestMeltingA2s()));
    }

    /**
     * Whether two gG fuses in series are selective at short circuits that melt them faster than their curves say.
     *
     * @param behind the one nearer to the fault
     * @param before the one nearer to the source
     * @return false also for other devices and for ratings the table does not know
     * @see "IEC 60269-2, test of selectivity"
     */
    public boolean isSelective(OvercurrentDevice behind, OvercurrentDevice before) {
        Double behindA = behind.ratedCurrentA();
        Double beforeA = before.ratedCurrentA();
        if (behindA == null || beforeA == null) return false;
        if (behind.kind() != OvercurrentKind.FUSE || before.kind() != OvercurrentKind.FUSE) return false;
        Map.Entry<Double, FuseRow> operating = fuses.ceilingEntry(behindA);
        Map.Entry<Double, FuseRow> melting = fuses.floorEntry(beforeA);
        return operating != null
                && melting != null
                && operating.getValue().testLargestOperatingA2s()
                        <= melting.getValue().testSmallestMeltingA2s();
    }
}
