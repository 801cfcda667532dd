package tideover.engine.site;

/** What a conductor is for. Names are those of IEC 60445. */
public enum Conductor {
    L1,
    L2,
    L3,
    /** Neutral. */
    N,
    /** Protective conductor. */
    PE,
    /** Protective conductor and neutral in one; never switched. */
    PEN;

    /** Whether this is a line conductor. */
    public boolean isLine() {
        return this == L1 || this == L2 || this == L3;
    }

    /** Whether operating current returns over it: N and PEN. */
    public boolean isNeutral() {
        return this == N || this == PEN;
    }

    /** Whether exposed parts are connected to it: PE and PEN. */
    public boolean isProtective() {
        return this == PE || this == PEN;
    }
}
