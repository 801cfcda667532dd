package tideover.engine.wiring.model;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.installation.Installation;
import tideover.engine.site.Board;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.RcdGroup;
import tideover.engine.site.Terminals;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.net.Nets;
import tideover.engine.wiring.net.Potential;
import tideover.engine.wiring.net.Potential.System;

/** Where hazards are looked for: the terminals of boards, groups and circuits, and those of the grid side. */
final class Places {

    /** Outgoing terminals of a thing; -1 for a conductor it does not have. */
    private record Place(ThingId thing, Row lines, int neutral, int protective) {}

    private static final class Row {
        private final int[] nodes;

        private Row(int[] nodes) {
            this.nodes = nodes;
        }
    }

    private final List<Place> places = new ArrayList<>();
    private final int[] gridSide;

    Places(Installation installation) {
        for (Fed fed : installation.all(Fed.class)) {
            if (!(fed instanceof Board) && !(fed instanceof RcdGroup) && !(fed instanceof Circuit)) continue;
            int[] lines = installation.lines(fed.id()).stream()
                    .mapToInt(line -> installation.node(fed.id(), Terminals.OUTGOING, line))
                    .toArray();
            int neutral = node(installation, fed.id(), Conductor.N);
            if (neutral < 0) neutral = node(installation, fed.id(), Conductor.PEN);
            places.add(new Place(fed.id(), new Row(lines), neutral, node(installation, fed.id(), Conductor.PE)));
        }
        List<Integer> grid = new ArrayList<>();
        for (Conductor line : new Conductor[] {Conductor.L1, Conductor.L2, Conductor.L3}) {
            grid.add(installation.node(ThingId.SUPPLY, Terminals.OUTGOING, line));
            for (IslandingSwitch device : installation.islandingSwitches())
                grid.add(installation.node(device.id(), Terminals.INCOMING, line));
        }
        gridSide = grid.stream().mapToInt(i -> i).toArray();
    }

    private static int node(Installation installation, ThingId thing, Conductor conductor) {
        int node = installation.node(thing, Terminals.OUTGOING, conductor);
        return installation.edgesAt(node).length > 0 ? node : -1;
    }

    /** Hazards in one position of the contacts, one bit each. */
    int hazards(Nets nets, int live) {
        int found = 0;
        boolean isIsland = (live & Potential.ISLAND_LINES) != 0;
        boolean isGrid = (live & Potential.GRID_LINES) != 0;
        if (isIsland) {
            for (int node : gridSide)
                if ((nets.potentials(node) & Potential.ISLAND_LINES) != 0) found |= Hazard.BACKFEED.bit();
            if (isGrid && (nets.clashes() & Nets.Clash.PARALLEL) != 0) found |= Hazard.OUT_OF_STEP.bit();
            int links = nets.links(System.ISLAND);
            if (links == 0) found |= Hazard.NO_LINK.bit();
            if (links > 1) found |= Hazard.SEVERAL_LINKS.bit();
        }
        if (isGrid && nets.links(System.GRID) > 1) found |= Hazard.SEVERAL_LINKS.bit();
        for (Place place : places) found |= hazards(place, nets);
        return found;
    }

    private static int hazards(Place place, Nets nets) {
        int found = 0;
        int lines = 0;
        for (int node : place.lines().nodes) lines |= nets.potentials(node) & Potential.LINES;
        int protective = place.protective() < 0 ? Potential.EARTH : nets.potentials(place.protective());
        if ((protective & Potential.LINES) != 0) found |= Hazard.PROTECTIVE_LIVE.bit();
        if (lines == 0) return found;
        if ((protective & Potential.EARTH) == 0) found |= Hazard.PROTECTIVE_OPEN.bit();
        if (place.neutral() < 0) return found;
        int neutral = nets.potentials(place.neutral());
        for (System system : System.values()) {
            if ((lines & system.lines()) == 0 || (neutral & system.neutral()) != 0) continue;
            boolean isElsewhere = (neutral & (Potential.NEUTRALS | Potential.EARTH)) != 0;
            found |= isElsewhere ? Hazard.NEUTRAL_CROSSED.bit() : Hazard.NEUTRAL_OPEN.bit();
        }
        return found;
    }
}
