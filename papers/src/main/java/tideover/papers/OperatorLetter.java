package tideover.papers;

import tideover.engine.assessment.Assessment;

/** The letter with the questions that only the grid operator can answer. */
public final class OperatorLetter {

    private OperatorLetter() {}

    /** The letter for an assessment. */
    public static OperatorLetter of(Assessment assessment, Wording wording, Stamp stamp) {
        return new OperatorLetter();
    }

    /** The paper as PDF; the same assessment and stamp give the same bytes. */
    public byte[] pdf() {
        return new byte[0];
    }
}
