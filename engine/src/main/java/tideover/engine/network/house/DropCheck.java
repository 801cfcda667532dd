package tideover.engine.network.house;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tideover.engine.installation.Installation;
import tideover.engine.installation.Path;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Circuit;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.LoadKind;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Status;
import tideover.engine.site.ThingId;

/**
 * The voltage drop from the origin, or from the island source, to the end of a new or altered circuit that draws its design
 * current is within what IEC 60364-5-52, Annex G advises; the island is a private source.
 */
final class DropCheck implements Check<FlowStudies> {

    @Override
    public String id() {
        return "voltage.drop";
    }

    @Override
    public void judge(FlowStudies studies, Judging judging) {
        Installation installation = studies.installation();
        for (Circuit circuit : installation.circuits()) {
            if (circuit.cable() == null || installation.status(circuit.id()) == Status.EXISTING) continue;
            judge(studies, circuit, OperatingState.CONNECTED, "voltage.drop", judging);
            if (installation.staysOn(circuit))
                judge(studies, circuit, OperatingState.ISLAND_GRID_DEAD, "voltage.islandDrop", judging);
        }
    }

    private static void judge(
            FlowStudies studies, Circuit circuit, OperatingState state, String limits, Judging judging) {
        boolean lighting = circuit.load() != null && circuit.load().kind() == LoadKind.LIGHTING;
        String id = limits + (lighting ? "LightingRatio" : "OtherRatio");
        Optional<Limit> limit = judging.limit(id);
        FlowStudy flows = studies.flows();
        Judging.Draft draft = judging.at(circuit.id(), state);
        if (limit.isEmpty() || flows == null) {
            draft.openForLimit(id);
            return;
        }
        Optional<ThingId> source = studies.installation().in(state).findSource(circuit);
        if (source.isEmpty()) return;
        draft.by(limit.get()).on(flows.demand().facts(circuit));
        List<FactId> missing = new ArrayList<>(flows.demand().missing(circuit));
        addCables(studies, circuit, state, source.get(), draft, missing);
        if (!missing.isEmpty()) {
            draft.openFor(missing);
            return;
        }
        HouseFlowResult result = flows.flowWithFull(circuit, state);
        if (result instanceof Unsolved unsolved) {
            draft.notMet("voltage.unsolved", name(circuit.id()), name(unsolved.worst()));
        } else if (result instanceof HouseFlow flow) {
            OptionalDouble drop = flow.findDropRatio(circuit.id(), source.get());
            if (drop.isPresent())
                conclude(flow, circuit, source.get(), drop.getAsDouble(), limit.get(), draft, judging);
        }
    }

    private static void addCables(
            FlowStudies studies,
            Circuit circuit,
            OperatingState state,
            ThingId source,
            Judging.Draft draft,
            List<FactId> missing) {
        Installation installation = studies.installation();
        Path path = installation
                .in(state)
                .findLinePath(
                        source,
                        circuit.id(),
                        installation.in(state).liveLines(circuit).get(0))
                .orElseThrow();
        for (Fed fed : path.feeds()) {
            if (fed.cable() == null) continue;
            FactId length = fed.fact("cable.lengthM");
            FactId section = fed.fact("cable.crossSectionMm2");
            draft.on(length).on(section);
            if (fed.cable().lengthM() == null) missing.add(length);
            if (fed.cable().crossSectionMm2() == null) missing.add(section);
        }
    }

    private static void conclude(
            HouseFlow flow,
            Circuit circuit,
            ThingId source,
            double dropRatio,
            Limit limit,
            Judging.Draft draft,
            Judging judging) {
        double limitRatio = limit.requireNumber();
        if (judging.trace().isOn())
            judging.trace()
                    .line(
                            "calculation.voltage.drop",
                            name(circuit.id()),
                            amount(flow.lineCurrentsA(circuit).largest(), Unit.A),
                            name(source),
                            amount(dropRatio, Unit.PERCENT),
                            amount(limitRatio, Unit.PERCENT));
        draft.measure(dropRatio, limitRatio, Unit.PERCENT);
        PhraseArg[] said = {
            name(circuit.id()), amount(dropRatio, Unit.PERCENT), amount(limitRatio, Unit.PERCENT), name(source)
        };
        if (dropRatio > limitRatio) draft.notMet("voltage.drop.above", said);
        else draft.met("voltage.drop.met", said);
    }
}
