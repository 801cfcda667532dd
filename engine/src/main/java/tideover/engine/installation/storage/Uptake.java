package tideover.engine.installation.storage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.site.Battery;
import tideover.engine.site.FactId;
import tideover.engine.site.Inverter;
import tideover.engine.site.ThingId;

/**
 * What an island takes up in which nothing is switched on.
 *
 * @param chargeW  largest charging power of the batteries at forming inverters [W]; +infinity if one is not known
 * @param formingW largest power of other generators that the forming inverters bear [W]; +infinity if one is not known
 * @param facts    facts it rests on
 * @param missing  those of them nobody has stated
 */
record Uptake(double chargeW, double formingW, List<FactId> facts, List<FactId> missing) {

    static Uptake of(Installation installation) {
        List<FactId> facts = new ArrayList<>();
        List<FactId> missing = new ArrayList<>();
        double formingW = 0;
        List<ThingId> forming = new ArrayList<>();
        for (Inverter inverter : installation.formingInverters()) {
            forming.add(inverter.id());
            formingW += take(inverter.largestCoupledPowerW(), inverter.fact("largestCoupledPowerW"), facts, missing);
        }
        double chargeW = 0;
        for (Battery battery : installation.all(Battery.class)) {
            List<ThingId> inverters = battery.inverters();
            if (inverters == null) missing.add(battery.fact("inverters"));
            else if (Collections.disjoint(inverters, forming)) continue;
            chargeW += take(battery.chargePowerW(), battery.fact("chargePowerW"), facts, missing);
        }
        return new Uptake(chargeW, formingW, facts, missing);
    }

    private static double take(@Nullable Double powerW, FactId fact, List<FactId> facts, List<FactId> missing) {
        facts.add(fact);
        if (powerW != null) return powerW;
        missing.add(fact);
        return Double.POSITIVE_INFINITY;
    }

    /** The smaller of both [W]. */
    double smallestW() {
        return Math.min(chargeW, formingW);
    }
}
