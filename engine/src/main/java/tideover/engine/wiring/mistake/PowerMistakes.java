package tideover.engine.wiring.mistake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Edge.Part;
import tideover.engine.installation.Installation;
import tideover.engine.site.Board;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.Meter;
import tideover.engine.site.RcdGroup;
import tideover.engine.site.Terminals;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.model.Defect;
import tideover.engine.wiring.model.HouseModel;
import tideover.engine.wiring.net.Edit;
import tideover.engine.wiring.net.Edit.End;
import tideover.engine.wiring.net.Joints;

/** Mistakes in lines, neutrals and protective conductors: cable by cable, then the links. */
final class PowerMistakes {

    /** A neutral bar, or one side of the switch. */
    private record Bar(ThingId thing, String side, int node) {}

    private final Installation installation;
    private final Joints joints;
    private final Mistakes mistakes;
    private final List<Bar> bars = new ArrayList<>();

    PowerMistakes(HouseModel model, Mistakes mistakes) {
        this.installation = model.installation();
        this.joints = model.power().joints();
        this.mistakes = mistakes;
    }

    void list() {
        bars();
        Map<ThingId, List<Edge>> cables = new LinkedHashMap<>();
        for (Edge edge : installation.edges())
            if (edge.part() == Part.FEED)
                cables.computeIfAbsent(edge.thing().id(), thing -> new ArrayList<>(5))
                        .add(edge);
        cables.forEach(this::cable);
        for (Edge edge : installation.edges())
            if (edge.part() == Part.LINK || edge.part() == Part.LINK_SWITCH)
                mistakes.add(
                        MistakeKind.LINK_MISSING,
                        edge.thing().id(),
                        List.of(),
                        Defect.power(Edit.opened(edge.index())));
        secondLinks();
        measuringNeutrals();
    }

    private void bars() {
        for (Fed fed : installation.all(Fed.class)) {
            if (fed instanceof Board || fed instanceof RcdGroup) bar(fed.id(), "", Terminals.OUTGOING);
            if (fed instanceof IslandingSwitch) {
                bar(fed.id(), "grid side", Terminals.INCOMING);
                bar(fed.id(), "island side", Terminals.OUTGOING);
            }
        }
    }

    private void bar(ThingId thing, String side, Terminals terminals) {
        int node = installation.node(thing, terminals, Conductor.N);
        if (installation.edgesAt(node).length > 0) bars.add(new Bar(thing, side, node));
    }

    private void cable(ThingId thing, List<Edge> cores) {
        for (int a = 0; a < cores.size(); a++) {
            Edge one = cores.get(a);
            String name = one.conductor().name();
            mistakes.add(MistakeKind.OPEN, thing, List.of(name), Defect.power(Edit.opened(one.index())));
            for (int b = a + 1; b < cores.size(); b++) {
                Edge other = cores.get(b);
                List<String> names = List.of(name, other.conductor().name());
                mistakes.add(MistakeKind.TOUCHING, thing, names, Defect.power(Edit.joined(one.to(), other.to())));
                mistakes.add(
                        MistakeKind.EXCHANGED,
                        thing,
                        names,
                        Defect.power(Edit.exchanged(joints, one.index(), End.TO, other.index(), End.TO)));
            }
            if (one.conductor() == Conductor.N) wrongBars(thing, one);
        }
        List<Edge> lines =
                cores.stream().filter(core -> core.conductor().isLine()).toList();
        if (lines.size() == 3) {
            rotated(thing, lines, 1);
            rotated(thing, lines, 2);
        }
    }

    private void rotated(ThingId thing, List<Edge> lines, int by) {
        List<Edit.Change> changes = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (int line = 0; line < 3; line++) {
            Edge to = lines.get((line + by) % 3);
            changes.add(new Edit.Moved(lines.get(line).index(), End.TO, to.to()));
            names.add(to.conductor().name());
        }
        mistakes.add(MistakeKind.ROTATED, thing, names, Defect.power(new Edit(changes)));
    }

    private void wrongBars(ThingId thing, Edge neutral) {
        for (Bar bar : bars) {
            if (bar.node() == neutral.from() || bar.thing().equals(thing)) continue;
            List<String> side = bar.side().isEmpty() ? List.of() : List.of(bar.side());
            mistakes.add(
                    MistakeKind.WRONG_NEUTRAL_BAR,
                    thing,
                    side,
                    bar.thing(),
                    Defect.power(Edit.moved(neutral.index(), End.FROM, bar.node())));
        }
    }

    private void secondLinks() {
        Set<ThingId> places = new LinkedHashSet<>();
        for (Bar bar : bars) if (bar.side().isEmpty()) places.add(bar.thing());
        for (ThingId place : places) {
            int neutral = installation.node(place, Terminals.OUTGOING, Conductor.N);
            int protective = installation.node(place, Terminals.OUTGOING, Conductor.PE);
            if (installation.edgesAt(protective).length == 0) continue;
            mistakes.add(MistakeKind.SECOND_LINK, place, List.of(), Defect.power(Edit.joined(neutral, protective)));
        }
    }

    private void measuringNeutrals() {
        int joint = installation.edges().size();
        for (Meter meter : installation.meters()) {
            ThingId at = meter.measuringNeutralFrom();
            if (at == null
                    || !at.equals(ThingId.SUPPLY) && installation.findFed(at).isEmpty()) continue;
            int index = joint++;
            mistakes.add(MistakeKind.MEASURING_NEUTRAL_OPEN, meter.id(), List.of(), Defect.power(Edit.opened(index)));
            for (Bar bar : bars)
                if (bar.node() != joints.node(index, End.FROM))
                    mistakes.add(
                            MistakeKind.MEASURING_NEUTRAL_MOVED,
                            meter.id(),
                            bar.side().isEmpty() ? List.of() : List.of(bar.side()),
                            bar.thing(),
                            Defect.power(Edit.moved(index, End.FROM, bar.node())));
        }
    }
}
