package tideover.engine.site;

/** Whose meter it is. */
public enum MeterRole {
    /** The grid operator's, for billing. */
    OPERATOR,
    /** The inverter system's own, at the connection point. */
    SYSTEM
}
