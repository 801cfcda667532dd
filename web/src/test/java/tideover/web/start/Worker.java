package tideover.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Circuit;
import tideover.engine.site.ThingId;
import tideover.store.site.RevisionId;
import tideover.store.site.Sites;
import tideover.store.site.VariantId;
import tideover.web.start.Hand.Step;
import tideover.web.trial.NoAnswer;
import tideover.web.trial.Program;
import tideover.web.trial.ServedProcess;

/** Works on one site until there is no answer any more, and remembers what was answered. */
final class Worker {
    private final VariantId variant;
    private final Hand hand;
    private final Random random;
    /** What stood there, one after the other, as far as undo leads back and redo forth. */
    private final List<Integer> values = new ArrayList<>();

    private final Map<Long, Integer> answered = new HashMap<>();
    private final Set<Long> unseen = new HashSet<>();
    private int at;
    private long head = 1;
    private @Nullable Attempt unanswered;

    Worker(VariantId variant, Hand hand, Random random, int value) {
        this.variant = variant;
        this.hand = hand;
        this.random = random;
        values.add(value);
        note(1, value);
    }

    /** What was asked for and may have happened. */
    private record Attempt(Step step, int value) {}

    VariantId variant() {
        return variant;
    }

    /** How many changes were answered. */
    int answered() {
        return answered.size() - 1;
    }

    void workUntilKilled(ServedProcess workbench) {
        try {
            hand.open(workbench);
            while (true) take(next());
        } catch (NoAnswer killed) {
            assertThat(workbench.waited()).as("killed, and not ended by itself").isEqualTo(128 + 9);
        }
    }

    private Attempt next() {
        int chance = random.nextInt(10);
        if (chance < 2 && at > 0) return new Attempt(Step.UNDO, values.get(at - 1));
        if (chance < 4 && at < values.size() - 1) return new Attempt(Step.REDO, values.get(at + 1));
        return new Attempt(Step.EDIT, values.get(at) % 90 + 1);
    }

    private void take(Attempt attempt) {
        unanswered = attempt;
        long number = hand.take(attempt.step(), head, values.get(at), attempt.value());
        assertThat(number).isEqualTo(head + 1);
        happened(attempt);
        unanswered = null;
    }

    private void happened(Attempt attempt) {
        if (attempt.step() == Step.EDIT) {
            values.subList(at + 1, values.size()).clear();
            values.add(attempt.value());
        }
        at += attempt.step() == Step.UNDO ? -1 : 1;
        note(++head, attempt.value());
    }

    private void note(long number, int value) {
        answered.put(number, value);
        unseen.add(number);
    }

    /** Everything answered since the last time stands in the store as it was answered. */
    void compare(Sites sites) {
        for (long number : unseen) {
            Circuit oven = (Circuit)
                    sites.at(new RevisionId(variant, number)).site().planned().get(new ThingId("oven"));
            assertThat(oven.value("cable.lengthM"))
                    .as("revision %d of %s", number, variant)
                    .isEqualTo((double) answered.get(number));
        }
        unseen.clear();
    }

    /** The workbench started anew has what was answered, at most one change more, and takes the last one back. */
    void goOn(ServedProcess workbench) {
        Program program = workbench.program();
        if (hand.head(program) == head + 1 && unanswered != null) happened(unanswered);
        unanswered = null;
        assertThat(hand.head(program)).isEqualTo(head);
        assertThat(hand.value(program)).isEqualTo(values.get(at));
        hand.open(workbench);
        if (at > 0) take(new Attempt(Step.UNDO, values.get(at - 1)));
        assertThat(hand.value(program)).isEqualTo(values.get(at));
    }
}
