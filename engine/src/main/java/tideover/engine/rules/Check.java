package tideover.engine.rules;

/**
 * One rule. It judges and never computes physics: what it needs it asks of the subject's studies.
 *
 * @param <S> what it judges, for example an installation or its protection study
 */
public interface Check<S> {

    /** Such as {@code rcd.type}; begins with the word of its topic. */
    String id();

    /** Whether a finding of this check may be met although a fact under it is assumed. */
    default OnAssumption onAssumption() {
        return OnAssumption.MAY_BE_MET;
    }

    /** Judges the subject at every place the rule concerns. */
    void judge(S subject, Judging judging);

    /** What an assumed fact means for a check. */
    enum OnAssumption {
        /** The finding may be met and names the assumption. */
        MAY_BE_MET,
        /** Separation, neutral–earth link and RCD: the finding stays open until the fact is known. */
        STAYS_OPEN
    }
}
