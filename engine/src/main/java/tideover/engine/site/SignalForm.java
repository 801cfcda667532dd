package tideover.engine.site;

/** How a control signal is given or wanted. */
public enum SignalForm {
    /** A potential-free contact; an input of this form wets the contact itself. */
    CONTACT,
    /** Electronic: plus of the control supply means on. */
    PLUS,
    /** Electronic: the reference (minus) of the control supply means on. */
    MINUS
}
