package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.word;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.FeedbackContact;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.SwitchKind;
import tideover.engine.site.Thing;

/**
 * The position of the main contacts is reported by a mirror contact (contactor) or a positively driven indication (motor
 * switch): an ordinary auxiliary contact proves nothing (IEC 60947-4-1, Annex F).
 */
final class FeedbackCheck implements Check<Installation> {

    @Override
    public String id() {
        return "feedback.kind";
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        for (IslandingSwitch device : installation.islandingSwitches())
            judge(device, device.feedbackContact(), device.kind(), judging);
        for (NeutralEarthSwitch device : installation.neutralEarthSwitches())
            judge(device, device.feedbackContact(), null, judging);
    }

    private static void judge(
            Thing device, @Nullable FeedbackContact contact, @Nullable SwitchKind kind, Judging judging) {
        Optional<Limit> limit = judging.limit("feedback.kind");
        Judging.Draft draft = judging.at(device.id()).on(device.fact("feedbackContact"));
        if (kind != null) draft.on(device.fact("kind"));
        if (limit.isEmpty()) draft.openForLimit("feedback.kind");
        else if (contact == null) draft.by(limit.get()).openFor(device.fact("feedbackContact"));
        else if (proves(contact, kind))
            draft.by(limit.get()).met("feedback.kind.met", name(device.id()), word(contact));
        else draft.by(limit.get()).notMet("feedback.kind.provesNothing", name(device.id()), word(contact));
    }

    private static boolean proves(FeedbackContact contact, @Nullable SwitchKind kind) {
        return switch (contact) {
            case MIRROR -> kind != SwitchKind.MOTOR_SWITCH;
            case POSITIVELY_DRIVEN -> kind != SwitchKind.CONTACTOR;
            case ORDINARY, NONE -> false;
        };
    }
}
