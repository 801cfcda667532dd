package tideover.engine.installation.control;

import static tideover.engine.rules.PhraseArg.name;

import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.ControlPort;
import tideover.engine.site.FactId;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.SignalMeaning;
import tideover.engine.site.Thing;

/** Islanding switch and neutral–earth switch each close only while a contact of the other says that it is open. */
final class WiredInterlockCheck implements Check<ControlWiring> {

    private static final String LIMIT = "control.interlock";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(ControlWiring wiring, Judging judging) {
        List<Thing> devices = wiring.devices();
        if (devices.stream().noneMatch(IslandingSwitch.class::isInstance)
                || devices.stream().noneMatch(NeutralEarthSwitch.class::isInstance)) return;
        Optional<Limit> limit = judging.limit(LIMIT);
        for (Thing device : devices)
            for (ControlPort command : wiring.commandsOf(device.id())) {
                boolean closes = command.onMeans() == SignalMeaning.SWITCH_CLOSED
                        || command.onMeans() == SignalMeaning.LINK_CLOSED;
                Drive drive = wiring.findDrive(command).orElse(null);
                // A command nothing reaches, or of unknown meaning, is the matter of the request.
                if (!closes || drive == null) continue;
                Judging.Draft draft = judging.at(command.id());
                if (limit.isEmpty()) draft.openForLimit(LIMIT);
                else judge(wiring, device, drive, draft.by(limit.get()));
            }
    }

    private static void judge(ControlWiring wiring, Thing device, Drive drive, Judging.Draft draft) {
        SignalMeaning wanted = device instanceof IslandingSwitch ? SignalMeaning.LINK_OPEN : SignalMeaning.SWITCH_OPEN;
        for (ControlPort contact : drive.needed())
            if (wiring.findReport(contact).orElse(null) == wanted) {
                draft.on(contact.fact("closedWhen"));
                draft.met(
                        "control.interlock.met",
                        name(device.id()),
                        Meanings.terminals(contact),
                        Meanings.device(contact));
                return;
            }
        List<FactId> gaps = wiring.gaps();
        if (!gaps.isEmpty()) draft.openFor(gaps);
        else draft.notMet("control.interlock.none", Meanings.terminals(drive.port()), name(device.id()));
    }
}
