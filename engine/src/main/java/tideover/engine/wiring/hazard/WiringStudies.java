package tideover.engine.wiring.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.site.ControlPort;
import tideover.engine.site.FactId;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.PortKind;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.mistake.Mistake;
import tideover.engine.wiring.mistake.Mistakes;
import tideover.engine.wiring.model.Defect;
import tideover.engine.wiring.model.HazardSearch;
import tideover.engine.wiring.model.HazardSearch.Happening;
import tideover.engine.wiring.model.HazardSearch.Reached;
import tideover.engine.wiring.model.HazardSearch.When;
import tideover.engine.wiring.model.HouseModel;

/** What the checks of wiring ask of: the model of one house and what it can reach. Computed when asked, once. */
public final class WiringStudies {

    private final Installation installation;
    private @Nullable HouseModel model;
    private @Nullable Reached healthy;
    private @Nullable Reached ideal;

    public WiringStudies(Installation installation) {
        this.installation = installation;
    }

    /** The netlist. */
    public Installation installation() {
        return installation;
    }

    /** The model of the house. */
    public HouseModel model() {
        HouseModel known = model;
        if (known == null) model = known = HouseModel.of(installation);
        return known;
    }

    /**
     * All that could be reached if every switching device did at once what it should: what happens even then is a matter of
     * lines, neutrals and links, which other checks judge.
     */
    Reached withIdealControl() {
        Reached known = ideal;
        if (known == null)
            ideal = known = HazardSearch.search(HouseModel.withIdealControl(installation), Defect.NONE, When.ANY_TIME);
        return known;
    }

    /** All that the healthy house can reach. */
    public Reached healthy() {
        Reached known = healthy;
        if (known == null) healthy = known = HazardSearch.search(model(), Defect.NONE, When.ANY_TIME);
        return known;
    }

    /** Failures of switching devices and control supply, one by one. */
    List<Mistake> failures() {
        return Mistakes.failures(model());
    }

    /** All that can be reached with one failure. */
    Reached with(Mistake failure) {
        return HazardSearch.search(model(), failure.defect(), When.AT_REST, Happening.BY_ITSELF);
    }

    /** Whether there is an island and every switching device of it is moved by something that is stated. */
    boolean isModelled() {
        if (model().findLeader().isEmpty() || installation.islandingSwitches().isEmpty()) return false;
        for (IslandingSwitch device : installation.islandingSwitches())
            if (device.builtInto() == null && !isDriven(device.id())) return false;
        for (NeutralEarthSwitch device : installation.neutralEarthSwitches())
            if (device.builtInto() == null && !isDriven(device.id())) return false;
        return true;
    }

    private boolean isDriven(ThingId device) {
        return model().wiring().controlPorts().stream()
                .anyMatch(port -> Objects.equals(port.at(), device)
                        && (port.kind() == PortKind.COIL || port.kind() == PortKind.INPUT));
    }

    /** Facts about switching devices and ports without which it is not known what they do. */
    List<FactId> missing() {
        List<FactId> missing = new ArrayList<>();
        for (IslandingSwitch device : installation.islandingSwitches()) {
            if (device.feedbackContact() == null) missing.add(device.fact("feedbackContact"));
            if (device.restPosition() == null) missing.add(device.fact("restPosition"));
        }
        for (NeutralEarthSwitch device : installation.neutralEarthSwitches()) {
            if (device.feedbackContact() == null) missing.add(device.fact("feedbackContact"));
            if (device.restPosition() == null) missing.add(device.fact("restPosition"));
        }
        for (ControlPort port : model().wiring().controlPorts()) {
            if (port.at() == null) missing.add(port.fact("at"));
            if (port.kind() == null) missing.add(port.fact("kind"));
            if (port.terminals() == null) missing.add(port.fact("terminals"));
            boolean isSignal = port.kind() == PortKind.INPUT || port.kind() == PortKind.OUTPUT;
            if (isSignal && port.form() == null) missing.add(port.fact("form"));
            if ((isSignal || port.kind() == PortKind.COIL) && port.onMeans() == null) missing.add(port.fact("onMeans"));
            if (port.kind() == PortKind.AUXILIARY_CONTACT && port.closedWhen() == null)
                missing.add(port.fact("closedWhen"));
        }
        return missing;
    }
}
