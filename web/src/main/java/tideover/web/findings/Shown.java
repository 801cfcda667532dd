package tideover.web.findings;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Force;
import tideover.engine.rules.Outcome;

/** Groups of findings, in the order in which they ask for something. */
enum Shown {
    NOT_MET(Outcome.NOT_MET),
    NOT_CERTAIN(Outcome.NOT_CERTAIN),
    OPEN(Outcome.OPEN),
    /** Not followed and not accepted. */
    ADVICE(Outcome.NOT_MET),
    /** Advice that the planner leaves, with a reason. */
    ACCEPTED(Outcome.NOT_MET),
    MET(Outcome.MET),
    NOT_APPLICABLE(Outcome.NOT_APPLICABLE);

    private final Outcome outcome;

    Shown(Outcome outcome) {
        this.outcome = outcome;
    }

    /** The group a finding belongs to. */
    static Shown of(Finding finding) {
        if (finding.accepted() != null) return ACCEPTED;
        if (finding.outcome() == Outcome.MET) return MET;
        if (finding.outcome() == Outcome.NOT_APPLICABLE) return NOT_APPLICABLE;
        if (finding.outcome() == Outcome.OPEN) return OPEN;
        if (finding.force() == Force.ADVISED) return ADVICE;
        return finding.outcome() == Outcome.NOT_CERTAIN ? NOT_CERTAIN : NOT_MET;
    }

    /** Whether its findings ask for nothing: they are listed on request only. */
    boolean isSettled() {
        return outcome.isSettled();
    }

    Outcome outcome() {
        return outcome;
    }

    /** End of the style of its heading. */
    String look() {
        return this == ADVICE || this == ACCEPTED
                ? "advice"
                : outcome.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Whether it is told by its outcome; else it has a word of its own. */
    boolean isOutcome() {
        return this != ADVICE && this != ACCEPTED;
    }

    /** As it is written in addresses. */
    String path() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<Shown> find(String path) {
        return Arrays.stream(values())
                .filter(shown -> shown.path().equals(path))
                .findFirst();
    }
}
