package tideover.papers.terminals;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.installation.control.ControlNet;
import tideover.engine.site.Board;
import tideover.engine.site.Circuit;
import tideover.engine.site.Electrode;
import tideover.engine.site.Inverter;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.Meter;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.Port;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.schedule.ControlEnd;
import tideover.engine.wiring.schedule.ControlSchedule;
import tideover.engine.wiring.schedule.CoreRow;
import tideover.engine.wiring.schedule.PowerEnd;
import tideover.engine.wiring.schedule.PowerRow;
import tideover.engine.wiring.schedule.PowerSchedule;
import tideover.papers.Wording;
import tideover.papers.terminals.Device.Sides;

/** Gathers the devices at whose terminals somebody works; what hangs at the far end of a circuit is not in the cabinet. */
final class Devices {

    private static final int LAST_RANK = 5;

    private final Installation installation;
    private final Wording wording;
    private final PowerCards power;
    private final ControlCards control;
    private final Map<ThingId, String> tags = new HashMap<>();
    private final Set<ThingId> touched = new LinkedHashSet<>();

    Devices(
            Installation installation,
            ControlNet net,
            PowerSchedule powerRows,
            ControlSchedule controlRows,
            Wording wording) {
        this.installation = installation;
        this.wording = wording;
        LeadWords words = new LeadWords(installation, wording);
        this.power = new PowerCards(installation, powerRows, words);
        this.control = new ControlCards(net, controlRows, words, wording);
        for (PowerRow row : powerRows.rows()) for (PowerEnd end : List.of(row.from(), row.to())) touch(end);
        for (CoreRow row : controlRows.rows()) {
            touch(row.from());
            touch(row.to());
        }
        net.controlPorts().forEach(port -> touched.add(ControlCards.place(port)));
        net.busPorts().forEach((Port port) -> touched.add(ControlCards.place(port)));
    }

    private void touch(PowerEnd end) {
        touched.add(end.thing());
        tags.put(end.thing(), end.tag());
    }

    private void touch(@Nullable ControlEnd end) {
        if (end == null) return;
        touched.add(end.device());
        tags.put(end.device(), end.tag());
    }

    /** All of them: switch first, then what it works with, boards last. */
    List<Device> all() {
        List<Device> devices = new ArrayList<>();
        List<Thing> things = new ArrayList<>(installation.things());
        for (int rank = 0; rank <= LAST_RANK; rank++)
            for (Thing thing : things)
                if (rank(thing) == rank && touched.contains(thing.id())) add(thing.id(), devices);
        if (touched.contains(ThingId.SUPPLY)) add(ThingId.SUPPLY, devices);
        if (touched.contains(ThingId.MAIN_EARTH)) add(ThingId.MAIN_EARTH, devices);
        return devices;
    }

    private static int rank(Thing thing) {
        if (thing instanceof IslandingSwitch) return 0;
        if (thing instanceof NeutralEarthSwitch) return 1;
        if (thing instanceof Inverter) return 2;
        if (thing instanceof Board) return LAST_RANK;
        return thing instanceof Meter ? 3 : 4;
    }

    private void add(ThingId id, List<Device> devices) {
        Thing thing = installation.find(id).orElse(null);
        List<Row> controlRows = control.rows(id);
        // A circuit that feeds the control supply ends in the cabinet; all others end elsewhere in the house.
        boolean atTheFarEnd = thing instanceof Electrode || thing instanceof Circuit && controlRows.isEmpty();
        List<Row> powerRows = atTheFarEnd ? List.of() : power.rows(id);
        if (powerRows.isEmpty() && controlRows.isEmpty()) return;
        String name = wording.capitalised(wording.name(id));
        devices.add(new Device(id, tags.getOrDefault(id, name), name, powerRows, controlRows, sides(thing, powerRows)));
    }

    private static Sides sides(@Nullable Thing thing, List<Row> rows) {
        if (thing instanceof IslandingSwitch) return Sides.GRID_AND_ISLAND;
        boolean both = rows.stream().anyMatch(row -> row.left() != null)
                && rows.stream().anyMatch(row -> row.right() != null);
        return both && !(thing instanceof NeutralEarthSwitch) ? Sides.FED_AND_FEEDS : Sides.NONE;
    }
}
