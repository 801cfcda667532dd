package tideover.engine.installation.control;

import static tideover.engine.rules.PhraseArg.count;
import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.ControlPort;
import tideover.engine.site.FactId;
import tideover.engine.site.PortKind;
import tideover.engine.site.ThingId;

/** No number of an input or output of one device is used twice. */
final class PortNumberCheck implements Check<ControlWiring> {

    private static final String LIMIT = "control.inputNumber";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(ControlWiring wiring, Judging judging) {
        Set<ThingId> devices = new LinkedHashSet<>();
        for (ControlPort port : wiring.net().controlPorts()) if (port.at() != null) devices.add(port.at());
        Optional<Limit> limit = judging.limit(LIMIT);
        for (ThingId device : devices) {
            List<ControlPort> inputs = wiring.portsAt(device, PortKind.INPUT);
            List<ControlPort> outputs = wiring.portsAt(device, PortKind.OUTPUT);
            if (!hasNumbers(inputs) && !hasNumbers(outputs)) continue;
            Judging.Draft draft = judging.at(device);
            if (limit.isEmpty()) draft.openForLimit(LIMIT);
            else judge(device, inputs, outputs, draft.by(limit.get()));
        }
    }

    private static void judge(
            ThingId device, List<ControlPort> inputs, List<ControlPort> outputs, Judging.Draft draft) {
        for (List<ControlPort> alike : List.of(inputs, outputs))
            for (ControlPort one : alike) {
                if (one.number() != null) draft.on(one.fact("number"));
                ControlPort other = findTwin(one, alike).orElse(null);
                if (other == null || one.number() == null) continue;
                draft.notMet(
                        "control.inputNumber." + (alike == inputs ? "twice" : "outputTwice"),
                        name(device),
                        count(one.number()),
                        Meanings.terminals(one),
                        Meanings.terminals(other));
                return;
            }
        List<FactId> missing = new ArrayList<>(missing(inputs));
        missing.addAll(missing(outputs));
        if (!missing.isEmpty()) draft.openFor(missing);
        else draft.met("control.inputNumber.met", name(device));
    }

    private static boolean hasNumbers(List<ControlPort> ports) {
        return ports.size() > 1 && ports.stream().anyMatch(port -> port.number() != null);
    }

    private static Optional<ControlPort> findTwin(ControlPort one, List<ControlPort> alike) {
        return alike.stream()
                .filter(other -> !other.id().equals(one.id())
                        && one.number() != null
                        && one.number().equals(other.number()))
                .findFirst();
    }

    /** Where a device numbers some and others not; one that numbers none goes by its terminals alone. */
    private static List<FactId> missing(List<ControlPort> ports) {
        if (ports.stream().allMatch(port -> port.number() == null)) return List.of();
        return ports.stream()
                .filter(port -> port.number() == null)
                .map(port -> port.fact("number"))
                .toList();
    }
}
