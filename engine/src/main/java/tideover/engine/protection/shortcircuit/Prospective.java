package tideover.engine.protection.shortcircuit;

import static tideover.engine.rules.PhraseArg.amount;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import tideover.engine.installation.Installation;
import tideover.engine.protection.FaultCourses;
import tideover.engine.rules.Trace;
import tideover.engine.rules.Unit;
import tideover.engine.site.Cable;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Supply;
import tideover.engine.site.ThingId;

/**
 * The largest current of a short circuit at a place. By-passed by hand it is none larger: the way is the same and no
 * inverter adds. While islanded the source gives little: that counts only where the grid does not reach.
 *
 * @param currentA r.m.s. [A]; 0 where there is no voltage, or facts are missing
 * @param addedA   what inverters add to it at most [A]
 * @param facts    facts it rests on
 * @param missing  facts without which it is not known
 */
record Prospective(double currentA, double addedA, List<FactId> facts, List<FactId> missing) {
    Prospective {
        facts = List.copyOf(facts);
        missing = List.copyOf(missing);
    }

    /**
     * At a thing's outgoing terminals. What flows at the origin is no less than what flows anywhere behind it, so that is
     * taken where it will do.
     *
     * @param enoughA no closer look is wanted where no more than this can flow [A]
     */
    static Prospective at(Installation installation, FaultCourses faults, ThingId place, double enoughA) {
        if (!isGridFed(installation, place)) return islanded(installation, faults, place);
        Supply supply = installation.supply();
        List<FactId> facts = new ArrayList<>(8);
        List<FactId> missing = new ArrayList<>(0);
        facts.add(supply.fact("prospectiveCurrentA"));
        addInverters(installation, facts, missing);
        Double gridA = supply.prospectiveCurrentA();
        OptionalDouble originA = faults.findLargestA(ThingId.SUPPLY, OperatingState.CONNECTED);
        if (gridA == null || originA.isEmpty()) missing.add(supply.fact("prospectiveCurrentA"));
        if (gridA == null || originA.isEmpty() || !missing.isEmpty()) return new Prospective(0, 0, facts, missing);
        double addedA = originA.getAsDouble() - gridA;
        if (originA.getAsDouble() <= enoughA || place.equals(ThingId.SUPPLY))
            return new Prospective(originA.getAsDouble(), addedA, facts, missing);
        addCables(installation, place, facts, missing);
        if (!missing.isEmpty()) return new Prospective(0, addedA, facts, missing);
        double currentA = faults.findLargestA(place, OperatingState.CONNECTED).orElse(0);
        return new Prospective(currentA, addedA, facts, missing);
    }

    private static boolean isGridFed(Installation installation, ThingId place) {
        if (place.equals(ThingId.SUPPLY)) return true;
        return installation
                .findFed(place)
                .flatMap(installation.in(OperatingState.CONNECTED)::findSource)
                .isPresent();
    }

    private static Prospective islanded(Installation installation, FaultCourses faults, ThingId place) {
        List<FactId> facts = new ArrayList<>(2);
        List<FactId> missing = new ArrayList<>(0);
        if (!installation.states().contains(OperatingState.ISLAND_GRID_DEAD))
            return new Prospective(0, 0, facts, missing);
        addInverters(installation, facts, missing);
        double currentA =
                faults.findLargestA(place, OperatingState.ISLAND_GRID_DEAD).orElse(0);
        return new Prospective(currentA, currentA, facts, missing);
    }

    private static void addInverters(Installation installation, List<FactId> facts, List<FactId> missing) {
        for (Inverter inverter : installation.inverters()) {
            FactId fact = inverter.fact(
                    inverter.faultCurrentA() != null || inverter.lineCurrentA() == null
                            ? "faultCurrentA"
                            : "lineCurrentA");
            facts.add(fact);
            if (inverter.faultCurrentA() == null && inverter.lineCurrentA() == null) missing.add(fact);
        }
    }

    private static void addCables(Installation installation, ThingId place, List<FactId> facts, List<FactId> missing) {
        for (ThingId id : installation.wayFromSupply(place)) {
            Fed fed = installation.findFed(id).orElse(null);
            Cable cable = fed == null ? null : fed.cable();
            if (fed == null || cable == null) continue;
            facts.add(fed.fact("cable.lengthM"));
            facts.add(fed.fact("cable.crossSectionMm2"));
            if (cable.lengthM() == null) missing.add(fed.fact("cable.lengthM"));
            if (cable.crossSectionMm2() == null) missing.add(fed.fact("cable.crossSectionMm2"));
        }
    }

    /** Takes down what may flow. */
    void explain(Trace trace) {
        if (trace.isOn())
            trace.line("calculation.shortCircuit.largest", amount(currentA, Unit.A), amount(addedA, Unit.A));
    }
}
