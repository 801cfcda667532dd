package tideover.papers.handover;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Unit;
import tideover.engine.site.Board;
import tideover.engine.site.Cable;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Material;
import tideover.engine.site.ResidualDevice;
import tideover.engine.site.ThingId;
import tideover.papers.DeviceText;
import tideover.papers.Wording;

/** Board legend, labels and test sheet in one: circuits by board and RCD, those that stay on above the double line. */
final class CircuitList {

    /** What lies on one side; {@code before} is what stands above it, empty at the top. */
    record Part(String before, List<Group> groups) {}

    /** Circuits at one board behind one RCD. */
    record Group(String title, List<Row> rows) {}

    /** @param notes what the columns have no room for, such as a neutral from elsewhere */
    record Row(
            String name,
            String side,
            String sideWord,
            String conductors,
            String device,
            String rcd,
            String cable,
            String length,
            String load,
            String importance,
            String loop,
            String notes) {}

    /** Where a circuit lies. */
    enum Where {
        STAYS_ON("island", "diagram.legend.island"),
        GRID_ONLY("grid", "diagram.legend.grid"),
        /** A fact is missing to say. */
        UNKNOWN("unknown", "handover.side.unknown");

        private final String look;
        private final String words;

        Where(String look, String words) {
            this.look = look;
            this.words = words;
        }
    }

    private final Installation installation;
    private final Wording wording;
    private final DeviceText devices;

    CircuitList(Installation installation, Wording wording) {
        this.devices = new DeviceText(wording);
        this.installation = installation;
        this.wording = wording;
    }

    /** Names of the circuits that lie there. */
    List<String> names(Where where) {
        return circuits(where).stream()
                .map(circuit -> wording.name(circuit.id()))
                .toList();
    }

    /** The whole list: what stays on, the line, what is grid-only, and what nobody can say yet. */
    List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        parts.add(new Part("", groups(Where.STAYS_ON)));
        parts.add(new Part(wording.text("handover.cut"), groups(Where.GRID_ONLY)));
        List<Group> unknown = groups(Where.UNKNOWN);
        if (!unknown.isEmpty()) parts.add(new Part(wording.text("handover.side.unknown.long"), unknown));
        return parts;
    }

    /** The circuits that lie there, grouped in the order in which they are written. */
    private List<Group> groups(Where where) {
        Map<String, List<Row>> rows = new LinkedHashMap<>();
        for (Circuit circuit : circuits(where))
            rows.computeIfAbsent(title(circuit), title -> new ArrayList<>()).add(row(circuit, where));
        List<Group> groups = new ArrayList<>();
        rows.forEach((title, of) -> groups.add(new Group(title, of)));
        return groups;
    }

    private List<Circuit> circuits(Where where) {
        return installation.circuits().stream()
                .filter(circuit -> where(circuit) == where)
                .toList();
    }

    private Where where(Circuit circuit) {
        if (installation.staysOn(circuit)) return Where.STAYS_ON;
        return installation.gaps(circuit).isEmpty() ? Where.GRID_ONLY : Where.UNKNOWN;
    }

    private String title(Circuit circuit) {
        List<String> parts = new ArrayList<>();
        for (ThingId id : installation.wayFromSupply(circuit.id())) {
            Fed before = installation.findFed(id).orElse(null);
            if (before == null || before == circuit) continue;
            if (before.rcd() != null) parts.add(0, devices.of(before.rcd()));
            if (before.rcd() != null && !(before instanceof Board)) parts.add(0, wording.name(id));
            if (before instanceof Board) {
                parts.add(0, wording.name(id));
                break;
            }
        }
        return parts.isEmpty() ? wording.text("handover.group.unknown") : String.join(" · ", parts);
    }

    private Row row(Circuit circuit, Where where) {
        Cable cable = circuit.cable();
        List<Conductor> conductors = circuit.conductors();
        Double powerW = circuit.load() == null ? null : circuit.load().powerW();
        return new Row(
                wording.name(circuit.id()),
                where.look,
                wording.text(where.words),
                conductors == null
                        ? "?"
                        : String.join(
                                " ", conductors.stream().map(wording::word).toList()),
                devices.of(circuit.protection()),
                residual(circuit),
                cable == null ? "?" : cable(cable, conductors),
                amount(cable == null ? null : cable.lengthM(), Unit.M),
                amount(powerW, Unit.W),
                circuit.importance() == null ? "" : wording.word(circuit.importance()),
                circuit.loopImpedanceOhm() == null ? "" : wording.amount(circuit.loopImpedanceOhm(), Unit.OHM),
                notes(circuit));
    }

    private String notes(Circuit circuit) {
        List<String> notes = new ArrayList<>();
        if (circuit.neutralFrom() != null && !circuit.neutralFrom().equals(circuit.fedFrom()))
            notes.add(wording.text("diagram.neutralFrom", wording.name(circuit.neutralFrom())));
        if (circuit.sharedNeutralWith() != null && !circuit.sharedNeutralWith().isEmpty())
            notes.add(wording.text("diagram.neutralShared", wording.names(circuit.sharedNeutralWith())));
        return String.join(" · ", notes);
    }

    private String amount(@Nullable Double value, Unit unit) {
        return value == null ? "?" : wording.amount(value, unit);
    }

    /** The nearest RCD on the way, its own first. */
    private String residual(Circuit circuit) {
        Optional<ResidualDevice> nearest = installation.wayFromSupply(circuit.id()).stream()
                .flatMap(id -> installation.findFed(id).stream())
                .map(Fed::rcd)
                .filter(Objects::nonNull)
                .findFirst();
        return nearest.map(devices::of).orElse(wording.text("handover.none"));
    }

    private String cable(Cable cable, @Nullable List<Conductor> conductors) {
        String section = cable.crossSectionMm2() == null ? "?" : wording.amount(cable.crossSectionMm2(), Unit.RATIO);
        String cores = (conductors == null ? "?" : conductors.size()) + "×" + section;
        String metal = cable.material() == Material.ALUMINIUM ? " Al" : "";
        return cores + metal + (cable.method() == null ? "" : ", " + wording.word(cable.method()));
    }
}
