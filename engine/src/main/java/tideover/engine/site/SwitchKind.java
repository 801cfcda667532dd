package tideover.engine.site;

/** How the islanding switch is made. */
public enum SwitchKind {
    /** Contactor or pair of contactors. */
    CONTACTOR,
    /** Motor-driven switch. */
    MOTOR_SWITCH
}
