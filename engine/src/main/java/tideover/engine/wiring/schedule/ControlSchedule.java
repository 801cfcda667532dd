package tideover.engine.wiring.schedule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.installation.control.ControlNet;
import tideover.engine.site.ControlCable;
import tideover.engine.site.Core;
import tideover.engine.site.Port;
import tideover.engine.site.Screen;
import tideover.engine.site.TerminalId;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.colour.Colour;
import tideover.engine.wiring.colour.ConductorColours;
import tideover.engine.wiring.colour.ConductorUse;

/**
 * The control wiring core by core, spare ones and screens too.
 *
 * @param rows cable by cable, in the order in which the cores lie
 */
public record ControlSchedule(List<CoreRow> rows) {

    private static final int OF_A_PAIR = 2;

    public ControlSchedule {
        rows = List.copyOf(rows);
    }

    /** The schedule of a site as planned and built. */
    public static ControlSchedule of(Installation installation, ControlNet net, WiringTables tables) {
        Tags tags = new Tags(installation);
        List<CoreRow> rows = new ArrayList<>();
        for (ControlCable cable : installation.all(ControlCable.class)) {
            List<Core> cores = cable.cores() == null ? List.of() : cable.cores();
            for (int place = 0; place < cores.size(); place++)
                rows.add(row(cable, cores.get(place), place + 1, net, tags, tables, country(installation)));
            if (cable.screen() != null && cable.screen() != Screen.NONE)
                rows.add(new CoreRow(
                        cable.id(),
                        Tags.of(cable),
                        0,
                        CoreKind.SCREEN,
                        null,
                        null,
                        0,
                        null,
                        null,
                        null,
                        cable.lengthM(),
                        null));
        }
        return new ControlSchedule(rows);
    }

    private static @Nullable String country(Installation installation) {
        return installation.site().house().place().country();
    }

    private static CoreRow row(
            ControlCable cable,
            Core core,
            int place,
            ControlNet net,
            Tags tags,
            WiringTables tables,
            @Nullable String country) {
        ControlEnd from = end(core.from(), net, tags);
        ControlEnd to = end(core.to(), net, tags);
        CoreKind kind = kind(core, from, to);
        Double crossSectionMm2 = cable.crossSectionMm2();
        boolean ends = from != null && to != null && crossSectionMm2 != null;
        return new CoreRow(
                cable.id(),
                Tags.of(cable),
                place,
                kind,
                core.mark(),
                colour(core, tables, country),
                Boolean.TRUE.equals(cable.twistedPairs()) ? (place - 1) / OF_A_PAIR + 1 : 0,
                from,
                to,
                crossSectionMm2,
                cable.lengthM(),
                ends && crossSectionMm2 != null
                        ? tables.ferrules().find(crossSectionMm2, null).orElse(null)
                        : null);
    }

    private static CoreKind kind(Core core, @Nullable ControlEnd from, @Nullable ControlEnd to) {
        if (core.from() == null && core.to() == null) return CoreKind.SPARE;
        if (from == null || to == null) return CoreKind.LOOSE;
        return from.device().equals(to.device()) ? CoreKind.BRIDGE : CoreKind.CORE;
    }

    private static @Nullable ControlEnd end(@Nullable TerminalId terminal, ControlNet net, Tags tags) {
        if (terminal == null) return null;
        Port port = net.findPort(terminal.port()).orElse(null);
        if (port == null) return null;
        ThingId device = port.at() == null ? port.id() : port.at();
        return new ControlEnd(terminal, device, tags.of(device));
    }

    /** As its mark says; where nobody has marked it, as control wires are coloured. */
    private static @Nullable Colour colour(Core core, WiringTables tables, @Nullable String country) {
        String mark = core.mark();
        if (mark != null) return Colour.find(mark).orElse(null);
        return tables.colours()
                .find(country, ConductorUse.CONTROL_DC)
                .map(ConductorColours.Row::colour)
                .orElse(null);
    }

    /** The row of one core; its place in the cable is counted from 0 as in the netlist. */
    public Optional<CoreRow> find(ThingId cable, int place) {
        return rows.stream()
                .filter(row -> row.cable().equals(cable) && row.position() == place + 1)
                .findFirst();
    }

    /** The rows of each cable or bundle. */
    public List<List<CoreRow>> cables() {
        Map<ThingId, List<CoreRow>> cables = new LinkedHashMap<>();
        for (CoreRow row : rows)
            cables.computeIfAbsent(row.cable(), cable -> new ArrayList<>()).add(row);
        return List.copyOf(cables.values());
    }

    /** Rows that begin or end at a device. */
    public List<CoreRow> at(ThingId device) {
        return rows.stream()
                .filter(row -> row.from() != null && row.from().device().equals(device)
                        || row.to() != null && row.to().device().equals(device))
                .toList();
    }
}
