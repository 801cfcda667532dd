package tideover.engine.wiring.schedule;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import tideover.engine.installation.Installation;
import tideover.engine.site.Battery;
import tideover.engine.site.ByPass;
import tideover.engine.site.Electrode;
import tideover.engine.site.Fed;
import tideover.engine.site.Isolator;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.Notice;
import tideover.engine.site.PvArray;
import tideover.engine.site.Status;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/**
 * What to print and stick: notices, devices, terminals, both ends of cables and wires.
 *
 * @param labels in the order of printing: kind by kind, of each kind thing by thing
 */
public record LabelList(List<Label> labels) {

    private static final List<Class<? extends Thing>> DEVICES = List.of(
            Fed.class,
            NeutralEarthSwitch.class,
            ByPass.class,
            Isolator.class,
            Battery.class,
            PvArray.class,
            Electrode.class);

    public LabelList {
        labels = List.copyOf(labels);
    }

    /** Labels of what is new or touched. */
    public static LabelList of(Installation installation, PowerSchedule power, ControlSchedule control) {
        Touched touched = new Touched(installation);
        Collection<Label> labels = new ArrayList<>();
        for (Thing thing : installation.things()) {
            String printed =
                    Objects.requireNonNullElse(thing.designation(), thing.id().text());
            if (thing instanceof Notice notice && installation.status(thing.id()) == Status.NEW)
                labels.add(new Label(Label.Kind.NOTICE, notice.at() == null ? notice.id() : notice.at(), printed));
            boolean isDevice = DEVICES.stream().anyMatch(type -> type.isInstance(thing));
            if (isDevice && touched.touches(thing)) labels.add(new Label(Label.Kind.DEVICE, thing.id(), printed));
        }
        labels.addAll(terminals(power, control));
        for (String run : power.runs()) ends(run, power.run(run), labels);
        for (List<CoreRow> rows : control.cables()) ends(rows, labels);
        Map<ThingId, Integer> order = new HashMap<>();
        installation.things().forEach(thing -> order.put(thing.id(), order.size()));
        return new LabelList(labels.stream()
                .sorted(Comparator.comparing(Label::kind).thenComparingInt(label -> order.getOrDefault(label.at(), -1)))
                .toList());
    }

    /** Terminals that bear a name of their own; bars are told apart by what they are. */
    private static Set<Label> terminals(PowerSchedule power, ControlSchedule control) {
        Set<Label> terminals = new LinkedHashSet<>();
        for (PowerRow row : power.rows())
            for (PowerEnd end : List.of(row.from(), row.to()))
                if (end.side() != null && !end.terminal().equals(row.conductor().name()))
                    terminals.add(new Label(Label.Kind.TERMINAL, end.thing(), end.text()));
        for (CoreRow row : control.rows()) {
            if (row.from() != null)
                terminals.add(new Label(
                        Label.Kind.TERMINAL, row.from().device(), row.from().text()));
            if (row.to() != null)
                terminals.add(new Label(
                        Label.Kind.TERMINAL, row.to().device(), row.to().text()));
        }
        return terminals;
    }

    private static void ends(String run, List<PowerRow> rows, Collection<Label> labels) {
        PowerRow first = rows.get(0);
        if (first.laying() == Laying.CABLE || first.laying() == Laying.EXISTING) {
            String text =
                    "%s %s – %s".formatted(run, first.from().tag(), first.to().tag());
            labels.add(new Label(Label.Kind.CABLE, first.from().thing(), text));
            labels.add(new Label(Label.Kind.CABLE, first.to().thing(), text));
        }
        for (PowerRow row : rows) {
            if (!row.laying().isNew()) continue;
            labels.add(new Label(Label.Kind.WIRE_END, row.from().thing(), row.labelFrom()));
            labels.add(new Label(Label.Kind.WIRE_END, row.to().thing(), row.labelTo()));
        }
    }

    private static void ends(List<CoreRow> rows, Collection<Label> labels) {
        if (CuttingList.isCable(rows)) {
            Set<ThingId> at = new LinkedHashSet<>();
            for (CoreRow row : rows) {
                if (row.from() != null) at.add(row.from().device());
                if (row.to() != null) at.add(row.to().device());
            }
            at.forEach(device ->
                    labels.add(new Label(Label.Kind.CABLE, device, rows.get(0).run())));
        }
        for (CoreRow row : rows) {
            if (row.from() != null)
                labels.add(new Label(Label.Kind.WIRE_END, row.from().device(), row.labelFrom()));
            if (row.to() != null)
                labels.add(new Label(Label.Kind.WIRE_END, row.to().device(), row.labelTo()));
        }
    }
}
