package tideover.engine.protection.residual;

import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.names;
import static tideover.engine.rules.PhraseArg.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.installation.View;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;

/**
 * An RCD acts in every state in which the circuits behind it have voltage: it lies on the way from the source of that
 * state, with a neutral–earth link before it. A device that does not is made up for by one at least as sensitive.
 */
final class PlaceCheck implements Check<ProtectionStudies> {

    @Override
    public String id() {
        return "rcd.place";
    }

    @Override
    public OnAssumption onAssumption() {
        return Rcds.ON_ASSUMPTION;
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Installation installation = studies.installation();
        Optional<Limit> limit = judging.limit("rcd.island.place");
        for (Fed holder : Rcds.all(installation)) {
            if (holder instanceof Inverter) continue;
            List<Circuit> staying = new ArrayList<>(Rcds.circuitsBehind(installation, holder));
            boolean placeKnown = installation.gaps(holder).isEmpty();
            // Behind a PEN no RCD can work at all: that is the fault of the circuit, not of the device's place.
            staying.removeIf(circuit -> placeKnown && !installation.staysOn(circuit) || circuit.has(Conductor.PEN));
            if (staying.isEmpty()) continue;
            if (limit.isEmpty()) judging.at(holder.id()).openForLimit("rcd.island.place");
            else if (!placeKnown) judging.at(holder.id()).by(limit.get()).openFor(installation.gaps(holder));
            else judge(installation, holder, staying, limit.get(), judging);
        }
    }

    private static void judge(
            Installation installation, Fed holder, List<Circuit> staying, Limit limit, Judging judging) {
        View before = null;
        for (OperatingState state : installation.states()) {
            View view = installation.in(state);
            // With all contacts in the same position and the same sources it is the same again.
            if (before != null && view.hasContactsOf(before) && isFedAlike(staying, view, before)) continue;
            before = view;
            List<ThingId> unprotected = new ArrayList<>(0);
            for (Circuit circuit : staying) {
                ThingId source = view.findSource(circuit).orElse(null);
                // Where the neutral has no earth at all no device acts: the law of the link says so, once.
                if (source != null && view.isEarthed(source) && !isActing(installation, view, circuit, source, holder))
                    unprotected.add(circuit.id());
            }
            if (unprotected.isEmpty()) continue;
            judging.at(holder.id(), state)
                    .by(limit)
                    .on(holder.fact("fedFrom"))
                    .notMet("rcd.place.blind", name(holder.id()), word(state), names(unprotected));
            return;
        }
        judging.at(holder.id()).by(limit).on(holder.fact("fedFrom")).met("rcd.place.met", name(holder.id()));
    }

    private static boolean isFedAlike(List<Circuit> circuits, View one, View other) {
        for (Circuit circuit : circuits) if (!one.findSource(circuit).equals(other.findSource(circuit))) return false;
        return true;
    }

    private static boolean isActing(Installation installation, View view, Circuit circuit, ThingId source, Fed holder) {
        Double wantedA = Rcds.device(holder).ratedResidualCurrentA();
        for (Fed other : Rcds.onWay(installation, circuit, view.state())) {
            if (view.isByPassedByNeutral(other.id(), source)) continue;
            Double ratedA = Rcds.device(other).ratedResidualCurrentA();
            if (other.id().equals(holder.id()) || wantedA != null && ratedA != null && ratedA <= wantedA) return true;
        }
        return false;
    }
}
