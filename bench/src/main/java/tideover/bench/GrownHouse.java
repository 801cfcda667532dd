package tideover.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Board;
import tideover.engine.site.Cable;
import tideover.engine.site.Circuit;
import tideover.engine.site.Fed;
import tideover.engine.site.InstallationMethod;
import tideover.engine.site.Insulation;
import tideover.engine.site.Material;
import tideover.engine.site.Site;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/**
 * A house made larger: behind each board or RCD group that feeds circuits comes a further board with copies of those
 * circuits, each time a little farther away, until there are as many places as wanted.
 */
final class GrownHouse {

    private final Site original;
    private final List<Thing> added = new ArrayList<>();
    private final int wanted;
    private int places;

    private GrownHouse(Site site, int places) {
        original = site;
        wanted = places;
    }

    /**
     * A site with so many places: the connection point, meters, switches, fuses, boards, groups, circuits, inverters.
     *
     * @param places a larger site stays as it is
     * @throws IllegalArgumentException if the site has no circuits to copy
     */
    static Site of(Site site, int places) {
        return new GrownHouse(site, places).grow();
    }

    /** How many places a site has. */
    static int places(Site site) {
        return 1
                + (int) site.planned().values().stream()
                        .filter(Fed.class::isInstance)
                        .count();
    }

    private Site grow() {
        Map<ThingId, List<Circuit>> byFeeder = new LinkedHashMap<>();
        for (Thing thing : original.planned().values())
            if (thing instanceof Circuit circuit && circuit.fedFrom() != null)
                byFeeder.computeIfAbsent(circuit.fedFrom(), f -> new ArrayList<>())
                        .add(circuit);
        if (byFeeder.isEmpty()) throw new IllegalArgumentException("the site has no circuits that could be copied");
        places = places(original);
        for (int round = 1; places < wanted; round++)
            for (Map.Entry<ThingId, List<Circuit>> entry : byFeeder.entrySet())
                extend(entry.getKey(), entry.getValue(), round);
        Site grown = original;
        for (Thing thing : added) grown = grown.withPlanned(thing);
        return grown;
    }

    private void extend(ThingId feeder, List<Circuit> circuits, int round) {
        ThingId board = newId();
        add(board(board, feeder, round));
        for (Circuit circuit : circuits) add(copy(circuit, newId(), board));
    }

    private ThingId newId() {
        return new ThingId("place-" + (places + 1));
    }

    private void add(Thing thing) {
        if (places == wanted) return;
        added.add(thing);
        places++;
    }

    private static Board board(ThingId id, ThingId feeder, int round) {
        Cable cable = new Cable(
                8.0 + round, 6.0, null, null, Material.COPPER, Insulation.PVC, InstallationMethod.B2, 1, 25.0);
        return new Board(id, null, feeder, null, null, cable, null, null, null, null, null, null, null, null);
    }

    /** A circuit like another one, elsewhere. */
    static Circuit copy(Circuit model, ThingId id, @Nullable ThingId feeder) {
        return new Circuit(
                id,
                model.designation(),
                feeder,
                null,
                model.conductors(),
                model.cable(),
                model.protection(),
                model.rcd(),
                model.load(),
                null,
                model.importance(),
                model.stayOn(),
                null,
                model.year(),
                model.edition());
    }
}
