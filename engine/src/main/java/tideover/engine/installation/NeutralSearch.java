package tideover.engine.installation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tideover.engine.installation.Edge.Part;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.Terminals;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/** Finds the separate neutrals of one view: labels each node with the neutral it belongs to. */
final class NeutralSearch {

    private final Installation installation;
    private final View view;
    private final int[] labels;
    private final List<NeutralGroup> groups = new ArrayList<>();
    private int count;

    NeutralSearch(Installation installation, View view) {
        this.installation = installation;
        this.view = view;
        labels = new int[installation.nodeCount()];
        Arrays.fill(labels, -1);
        label(installation.neutralTerminal(ThingId.SUPPLY));
        for (Inverter inverter : installation.inverters()) label(installation.neutralTerminal(inverter.id()));
        for (Circuit circuit : installation.circuits()) {
            int neutral = neutralNode(circuit.id());
            if (neutral >= 0) label(neutral);
        }
        for (int label = 0; label < count; label++) groups.add(group(label));
    }

    private void label(int start) {
        if (labels[start] >= 0) return;
        int label = count++;
        int[] stack = new int[labels.length];
        int top = 0;
        labels[start] = label;
        stack[top++] = start;
        while (top > 0) {
            int node = stack[--top];
            for (int index : installation.edgesAt(node)) {
                Edge edge = installation.edges().get(index);
                if (!edge.carriesNeutral() || !view.isClosed(edge)) continue;
                int next = edge.other(node);
                if (labels[next] >= 0) continue;
                labels[next] = label;
                stack[top++] = next;
            }
        }
    }

    private int neutralNode(ThingId thing) {
        for (Conductor neutral : new Conductor[] {Conductor.N, Conductor.PEN}) {
            int node = installation.node(thing, Terminals.OUTGOING, neutral);
            if (installation.edgesAt(node).length > 0) return node;
        }
        return -1;
    }

    List<NeutralGroup> groups() {
        return List.copyOf(groups);
    }

    Optional<NeutralGroup> findGroup(ThingId thing) {
        int node = neutralNode(thing);
        return node < 0 || labels[node] < 0 ? Optional.empty() : Optional.of(groups.get(labels[node]));
    }

    private NeutralGroup group(int label) {
        List<ThingId> sources = new ArrayList<>();
        boolean network = labels[installation.neutralTerminal(ThingId.SUPPLY)] == label;
        boolean live = false;
        if (network) sources.add(ThingId.SUPPLY);
        for (Inverter inverter : installation.inverters())
            if (labels[installation.neutralTerminal(inverter.id())] == label) sources.add(inverter.id());
        // Not the order in which things are written says after which source a neutral is named.
        sources.sort(Comparator.comparing((ThingId source) -> !source.equals(ThingId.SUPPLY))
                .thenComparing(source -> !view.sources().contains(source))
                .thenComparing(Comparator.naturalOrder()));
        for (ThingId source : sources) live |= view.sources().contains(source);
        for (Circuit circuit : installation.circuits()) {
            int neutral = neutralNode(circuit.id());
            if (!live && neutral >= 0 && labels[neutral] == label)
                live = !view.liveLines((Fed) circuit).isEmpty();
        }
        Set<Thing> earthed = new LinkedHashSet<>();
        if (network) earthed.add(installation.supply());
        Thing split = null;
        for (Edge edge : installation.edges()) {
            if (!edge.part().isNeutralToEarth() || !view.isClosed(edge)) continue;
            if (labels[edge.from()] != label) continue;
            // The splits of a PEN belong to the network's own connection; a PEN cut off from it is one connection.
            if (edge.part() != Part.SPLIT_EARTH) earthed.add(edge.thing());
            else if (!network && split == null) split = edge.thing();
        }
        if (split != null) earthed.add(split);
        return new NeutralGroup(sources, live, new ArrayList<>(earthed));
    }
}
