package tideover.engine.protection;

import static tideover.engine.rules.PhraseArg.name;

import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.EquipmentClass;

/** Class I equipment has a protective conductor (IEC 60364-4-41, 411.3.1.1); a two-wire circuit has none to offer. */
final class ProtectiveConductorCheck implements Check<ProtectionStudies> {

    @Override
    public String id() {
        return "fault.protectiveConductor";
    }

    @Override
    public void judge(ProtectionStudies studies, Judging judging) {
        Installation installation = studies.installation();
        Optional<Limit> limit = judging.limit("fault.protectiveConductor");
        for (Circuit circuit : installation.circuits()) {
            if (!installation.isTouched(circuit)) continue;
            Judging.Draft draft = judging.at(circuit.id()).on(circuit.fact("conductors"));
            if (limit.isEmpty()) draft.openForLimit("fault.protectiveConductor");
            else judge(circuit, draft.by(limit.get()));
        }
    }

    private static void judge(Circuit circuit, Judging.Draft draft) {
        EquipmentClass equipment =
                circuit.load() == null ? null : circuit.load().equipmentClass();
        if (circuit.conductors() == null) draft.openFor(circuit.fact("conductors"));
        else if (circuit.has(Conductor.PE) || circuit.has(Conductor.PEN))
            draft.met("fault.protectiveConductor.met", name(circuit.id()));
        else if (equipment == EquipmentClass.II)
            draft.on(circuit.fact("load.equipmentClass"))
                    .notApplicable("fault.protectiveConductor.classTwo", name(circuit.id()));
        else draft.notMet("fault.protectiveConductor.none", name(circuit.id()));
    }
}
