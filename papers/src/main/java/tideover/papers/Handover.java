package tideover.papers;

import tideover.engine.assessment.Assessment;

/** The handover file of a site. */
public final class Handover {

    private Handover() {}

    /** The handover file of an assessment made with calculations. */
    public static Handover of(Assessment assessment, Wording wording, Stamp stamp) {
        return new Handover();
    }

    /** The paper as PDF; the same assessment and stamp give the same bytes. */
    public byte[] pdf() {
        return new byte[0];
    }
}
