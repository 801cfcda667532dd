package tideover.engine.installation.control;

import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.word;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.ByPass;
import tideover.engine.site.ByPassKind;
import tideover.engine.site.ControlPort;
import tideover.engine.site.FactId;
import tideover.engine.site.Inverter;
import tideover.engine.site.PortKind;
import tideover.engine.site.SignalMeaning;

/**
 * While a by-pass is closed the inverter may not run: a contact of it, closed while it is open, lies before the input that
 * lets the inverter run. A changeover switch cannot parallel the sources and needs none.
 */
final class StoppedCheck implements Check<ControlWiring> {

    private static final String LIMIT = "control.stopped";

    @Override
    public String id() {
        return LIMIT;
    }

    @Override
    public void judge(ControlWiring wiring, Judging judging) {
        Inverter leader = wiring.findLeader().orElse(null);
        if (leader == null || wiring.net().controlPorts().isEmpty()) return;
        Optional<Limit> limit = judging.limit(LIMIT);
        for (ByPass byPass : wiring.installation().byPasses()) {
            Judging.Draft draft = judging.at(byPass.id()).on(byPass.fact("kind"));
            if (limit.isEmpty()) draft.openForLimit(LIMIT);
            else judge(wiring, leader, byPass, draft.by(limit.get()));
        }
    }

    private static void judge(ControlWiring wiring, Inverter leader, ByPass byPass, Judging.Draft draft) {
        List<ControlPort> contacts = wiring.portsAt(byPass.id(), PortKind.AUXILIARY_CONTACT).stream()
                .filter(contact -> wiring.findReport(contact).orElse(null) == SignalMeaning.MAY_RUN)
                .toList();
        for (ControlPort input : wiring.inputs(Set.of(SignalMeaning.MAY_RUN))) {
            Drive drive = wiring.findDrive(input).orElse(null);
            if (drive == null || contacts.stream().noneMatch(contact -> drive.needs(contact.id()))) continue;
            draft.on(input.fact("onMeans")).met("control.stopped.met", name(leader.id()), name(byPass.id()));
            return;
        }
        List<FactId> gaps = wiring.gaps();
        if (byPass.kind() == null) draft.openFor(byPass.fact("kind"));
        else if (byPass.kind() == ByPassKind.CHANGEOVER)
            draft.met("control.stopped.changeover", name(byPass.id()), word(byPass.kind()));
        else if (!gaps.isEmpty()) draft.openFor(gaps);
        else draft.notMet("control.stopped.runs", name(leader.id()), name(byPass.id()));
    }
}
