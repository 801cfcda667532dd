package tideover.engine.wiring.colour;

import tideover.engine.site.Conductor;

/** What a conductor is for, as far as its colour goes. */
public enum ConductorUse {
    L1,
    L2,
    L3,
    N,
    PE,
    PEN,
    /** Control circuits with direct voltage. */
    CONTROL_DC,
    /** Control circuits with alternating voltage. */
    CONTROL_AC;

    public static ConductorUse of(Conductor conductor) {
        return valueOf(conductor.name());
    }
}
