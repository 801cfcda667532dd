package tideover.engine.protection.selectivity;

import java.util.List;
import java.util.Optional;
import tideover.engine.protection.Guarantee;
import tideover.engine.protection.LetThroughTable;
import tideover.engine.protection.Tables;
import tideover.engine.protection.TripCurve;
import tideover.engine.protection.TripCurves;
import tideover.engine.protection.selectivity.SelectiveLimit.Beyond;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.OvercurrentKind;

/** How far overcurrent devices in series are selective; computes and never judges. */
public final class Selectivity {

    /** Below this breakers open at once and bands say nothing more: IEC 60898-1, Table 7, and the last gate of IEC 60269. */
    private static final double INSTANTANEOUS_S = 0.1;

    private final TripCurves curves;
    private final LetThroughTable letThrough;

    public Selectivity(Tables tables) {
        this.curves = tables.tripCurves();
        this.letThrough = tables.letThrough();
    }

    /**
     * Limit of selectivity of two devices in series on a short circuit.
     *
     * @param behind       the one nearer to the fault
     * @param before       the one nearer to the source
     * @param prospectiveA largest current that can flow at the one behind [A]
     * @return the limit, no more than the prospective current where let-through decides, +infinity for fuses that are
     *     selective at any; nothing where a curve is not known
     * @see "IEC 60364-5-53:2019, 536.4.1"
     */
    public Optional<SelectiveLimit> limit(OvercurrentDevice behind, OvercurrentDevice before, double prospectiveA) {
        TripCurve nearer = curves.find(behind).orElse(null);
        TripCurve farther = curves.find(before).orElse(null);
        if (nearer == null || farther == null) return Optional.empty();
        if (behind.kind() == OvercurrentKind.FUSE && before.kind() == OvercurrentKind.FUSE)
            return Optional.of(ofFuses(nearer, farther, letThrough.isSelective(behind, before)));
        double limitA = ofBands(new CurvePair(nearer, farther));
        if (limitA == 0 || before.kind() != OvercurrentKind.FUSE)
            return Optional.of(new SelectiveLimit(limitA, Beyond.BOTH_OPEN));
        boolean holds = limitA < prospectiveA && holdsEnergy(behind, before, prospectiveA);
        return Optional.of(new SelectiveLimit(holds ? prospectiveA : limitA, Beyond.NOT_KNOWN));
    }

    /** The largest current at which the one behind is certainly first, if that is so from where it opens at once. */
    private static double ofBands(CurvePair pair) {
        List<CurvePair.Range> certain = pair.certain();
        double atOnceA = pair.behind().currentForDisconnectionA(INSTANTANEOUS_S);
        for (CurvePair.Range range : certain)
            if (range.fromA() <= atOnceA && atOnceA <= range.toA()) return range.toA();
        return 0;
    }

    /**
     * Fuse-links of one utilization category run alike and do not cross in between; they are selective if their bands lie
     * apart at both ends, at the conventional time and at 0.1 s. From 16 A on that is so for rated currents of 1.6 to 1.
     *
     * @see "IEC 60269-1, Tables 2 and 3; IEC 60269-2, selectivity of gG fuse-links"
     */
    private static SelectiveLimit ofFuses(TripCurve behind, TripCurve before, boolean byEnergy) {
        List<TripCurve.Point> latest = behind.points(Guarantee.WITHIN);
        List<TripCurve.Point> earliest = before.points(Guarantee.NOT_WITHIN);
        TripCurve.Point quickest = earliest.get(earliest.size() - 1);
        boolean apart = latest.get(0).currentA() <= earliest.get(0).currentA()
                && latest.get(latest.size() - 1).currentA() <= quickest.currentA();
        if (!apart) return new SelectiveLimit(0, Beyond.BOTH_OPEN);
        return new SelectiveLimit(byEnergy ? Double.POSITIVE_INFINITY : quickest.currentA(), Beyond.NOT_KNOWN);
    }

    /** Whether what the device behind lets through certainly does not melt the fuse before it. */
    private boolean holdsEnergy(OvercurrentDevice behind, OvercurrentDevice before, double prospectiveA) {
        Double letThroughA2s = letThrough.find(behind, prospectiveA).orElse(null);
        Double holdingA2s = letThrough.findHoldingA2s(before).orElse(null);
        return letThroughA2s != null && holdingA2s != null && letThroughA2s <= holdingA2s;
    }
}
