package tideover.engine.network;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.FactId;
import tideover.engine.site.IslandingSwitch;

/** The overcurrent device before the islanding switch is not above the largest its maker allows. */
final class BackupFuseCheck implements Check<NetworkStudies> {

    @Override
    public String id() {
        return "switch.backupFuse";
    }

    @Override
    public void judge(NetworkStudies studies, Judging judging) {
        Optional<Limit> limit = judging.limit("switch.backupFuse");
        for (IslandingSwitch device : studies.installation().islandingSwitches()) {
            Judging.Draft draft = judging.at(device.id());
            if (limit.isEmpty()) draft.openForLimit("switch.backupFuse");
            else judge(studies, device, draft.by(limit.get()));
        }
    }

    private static void judge(NetworkStudies studies, IslandingSwitch device, Judging.Draft draft) {
        Optional<Upstream> before = Upstream.find(studies.installation(), device.id());
        draft.on(device.fact("largestBackupFuseA"));
        if (before.isEmpty()) {
            // Every supply has a main fuse, and nobody has seen it; or nobody knows what lies before the switch.
            List<FactId> gaps = studies.installation().gaps(device);
            draft.openFor(
                    gaps.isEmpty() ? List.of(studies.installation().supply().fact("mainFuse.ratedCurrentA")) : gaps);
            return;
        }
        draft.on(before.get().ratedCurrent());
        Double largestA = device.largestBackupFuseA();
        Double ratedA = before.get().device().ratedCurrentA();
        if (largestA == null || ratedA == null) {
            List<FactId> missing = new ArrayList<>(2);
            if (largestA == null) missing.add(device.fact("largestBackupFuseA"));
            if (ratedA == null) missing.add(before.get().ratedCurrent());
            draft.openFor(missing);
            return;
        }
        draft.measure(ratedA, largestA, Unit.A);
        PhraseArg[] said = {
            name(before.get().holder()), amount(ratedA, Unit.A), name(device.id()), amount(largestA, Unit.A)
        };
        if (ratedA > largestA) draft.notMet("switch.backupFuse.above", said);
        else draft.met("switch.backupFuse.met", said);
    }
}
