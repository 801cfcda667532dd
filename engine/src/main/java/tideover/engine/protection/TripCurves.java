package tideover.engine.protection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tideover.engine.rules.Source;
import tideover.engine.site.Curve;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.OvercurrentKind;

/** What the product standards guarantee of circuit-breakers and gG fuses, by kind and rating. */
public final class TripCurves {

    private final Map<OvercurrentKind, Map<Curve, List<BreakerPoint>>> breakers = new EnumMap<>(OvercurrentKind.class);
    private final TreeMap<Double, List<FusePoint>> fuses = new TreeMap<>();
    private final TreeMap<Double, FuseConventional> conventional = new TreeMap<>();

    /**
     * One test of a circuit-breaker.
     *
     * @param kind          kind of breaker
     * @param curve         its instantaneous tripping
     * @param ratedAboveA   ratings above this [A]
     * @param ratedUpToA    and up to this [A]
     * @param multipleRatio test current over rated current
     * @param timeS         test time [s]
     */
    public record BreakerPoint(
            OvercurrentKind kind,
            Curve curve,
            double ratedAboveA,
            double ratedUpToA,
            double multipleRatio,
            Guarantee guarantee,
            double timeS,
            Source source) {}

    /**
     * One gate of a fuse-link, or one point of its disconnection table.
     *
     * @param currentA at which the guarantee holds [A]
     */
    public record FusePoint(double ratedCurrentA, Guarantee guarantee, double timeS, double currentA, Source source) {}

    /**
     * Conventional currents of fuse-links, over their rated current.
     *
     * @param ratedFromA       smallest rating of the band [A]
     * @param nonFusingRatio   holds for the conventional time
     * @param fusingRatio      melts within it, the bare fuse-link
     * @param cableFusingRatio melts within it, in its holder on a cable: what counts for the overload of a cable
     * @param timeS            conventional time [s]
     */
    public record FuseConventional(
            double ratedFromA,
            double nonFusingRatio,
            double fusingRatio,
            double cableFusingRatio,
            double timeS,
            Source source) {}

    public TripCurves(List<BreakerPoint> breakers, List<FusePoint> fuses, List<FuseConventional> conventional) {
        for (BreakerPoint point : breakers)
            this.breakers
                    .computeIfAbsent(point.kind(), k -> new EnumMap<>(Curve.class))
                    .computeIfAbsent(point.curve(), c -> new ArrayList<>(8))
                    .add(point);
        for (FusePoint point : fuses)
            this.fuses
                    .computeIfAbsent(point.ratedCurrentA(), rated -> new ArrayList<>(5))
                    .add(point);
        for (FuseConventional band : conventional) this.conventional.put(band.ratedFromA(), band);
    }

    /**
     * Curve of a device of the site.
     *
     * @return nothing if kind, curve or rating is not known, or the tables do not reach so far
     */
    public Optional<TripCurve> find(OvercurrentDevice device) {
        OvercurrentKind kind = device.kind();
        Curve curve = device.curve();
        Double ratedCurrentA = device.ratedCurrentA();
        if (kind == null || ratedCurrentA == null) return Optional.empty();
        if (kind == OvercurrentKind.FUSE) return findFuse(ratedCurrentA);
        return curve == null ? Optional.empty() : findBreaker(kind, curve, ratedCurrentA);
    }

    /**
     * Curve of a circuit-breaker.
     *
     * @param kind          {@link OvercurrentKind#MCB} or {@link OvercurrentKind#CIRCUIT_BREAKER}
     * @param ratedCurrentA above 0 [A]
     * @return nothing if the tables do not reach so far
     * @throws IllegalArgumentException for a fuse, which has no such curve
     * @see "IEC 60898-1, Table 7"
     */
    public Optional<TripCurve> findBreaker(OvercurrentKind kind, Curve curve, double ratedCurrentA) {
        if (kind == OvercurrentKind.FUSE) throw new IllegalArgumentException("a fuse has no curve " + curve);
        List<BreakerPoint> points = new ArrayList<>(8);
        for (BreakerPoint point : breakers.getOrDefault(kind, Map.of()).getOrDefault(curve, List.of()))
            if (ratedCurrentA > point.ratedAboveA() && ratedCurrentA <= point.ratedUpToA()) points.add(point);
        return points.isEmpty() ? Optional.empty() : Optional.of(new BreakerCurve(ratedCurrentA, points));
    }

    /**
     * Curve of a gG fuse-link. A rating that the tables do not know, such as 35 A, opens no later than the next larger
     * and no earlier than the next smaller one of the tables.
     *
     * @param ratedCurrentA above 0 [A]
     * @return nothing if the tables do not reach so far
     * @see "IEC 60269-1, Tables 2 and 3; IEC 60269-2; IEC 60269-3"
     */
    public Optional<TripCurve> findFuse(double ratedCurrentA) {
        Map.Entry<Double, List<FusePoint>> slower = fuses.ceilingEntry(ratedCurrentA);
        Map.Entry<Double, List<FusePoint>> faster = fuses.floorEntry(ratedCurrentA);
        Map.Entry<Double, FuseConventional> band = conventional.floorEntry(ratedCurrentA);
        if (slower == null || faster == null || band == null) return Optional.empty();
        FuseConventional ratios = band.getValue();

        List<TripCurve.Point> latest = points(slower.getValue(), Guarantee.WITHIN);
        latest.add(new TripCurve.Point(ratios.fusingRatio() * ratedCurrentA, ratios.timeS(), ratios.source()));
        latest.sort(Comparator.comparingDouble(TripCurve.Point::currentA));
        List<TripCurve.Point> earliest = points(faster.getValue(), Guarantee.NOT_WITHIN);
        earliest.add(new TripCurve.Point(ratios.nonFusingRatio() * ratedCurrentA, ratios.timeS(), ratios.source()));
        earliest.sort(Comparator.comparingDouble(TripCurve.Point::currentA));
        return Optional.of(new FuseCurve(ratedCurrentA, latest, earliest, ratios.cableFusingRatio()));
    }

    private static List<TripCurve.Point> points(List<FusePoint> rows, Guarantee guarantee) {
        List<TripCurve.Point> points = new ArrayList<>(4);
        for (FusePoint row : rows)
            if (row.guarantee() == guarantee)
                points.add(new TripCurve.Point(row.currentA(), row.timeS(), row.source()));
        return points;
    }
}
