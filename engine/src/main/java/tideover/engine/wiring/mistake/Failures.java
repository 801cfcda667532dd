package tideover.engine.wiring.mistake;

import java.util.List;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Edge.Part;
import tideover.engine.installation.Installation;
import tideover.engine.site.ControlPort;
import tideover.engine.site.PortKind;
import tideover.engine.site.Thing;
import tideover.engine.wiring.model.Defect;
import tideover.engine.wiring.model.Failure;
import tideover.engine.wiring.model.HouseModel;

/** Failures of the switching devices and of the control supply. */
final class Failures {

    private final HouseModel model;
    private final Mistakes mistakes;

    Failures(HouseModel model, Mistakes mistakes) {
        this.model = model;
        this.mistakes = mistakes;
    }

    void list() {
        Installation installation = model.installation();
        for (Thing device : installation.islandingSwitches()) device(device);
        for (Thing device : installation.neutralEarthSwitches()) device(device);
        for (ControlPort supply : model.wiring().controlPorts(PortKind.SUPPLY))
            if (supply.terminals() != null && supply.terminals().size() >= 2)
                mistakes.add(
                        MistakeKind.SUPPLY_LOST,
                        supply.id(),
                        List.of(),
                        Defect.failure(new Failure.SupplyLost(supply.id())));
    }

    private void device(Thing device) {
        mistakes.add(MistakeKind.UNMOVED, device.id(), List.of(), Defect.failure(new Failure.Unmoved(device.id())));
        int pole = 0;
        for (Edge edge : model.installation().edges()) {
            boolean isPole = edge.part() == Part.CONTACT || edge.part() == Part.LINK_SWITCH;
            if (!isPole || !edge.thing().id().equals(device.id())) continue;
            List<String> name = List.of(edge.conductor().name());
            mistakes.add(MistakeKind.WELDED, device.id(), name, Defect.failure(new Failure.Welded(device.id(), pole)));
            mistakes.add(
                    MistakeKind.INTERRUPTED,
                    device.id(),
                    name,
                    Defect.failure(new Failure.Interrupted(device.id(), pole)));
            pole++;
        }
    }
}
