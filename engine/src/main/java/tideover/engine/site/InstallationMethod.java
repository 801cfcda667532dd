package tideover.engine.site;

/** Reference method of installation (IEC 60364-5-52, Table B.52.1). */
public enum InstallationMethod {
    /** Single cores in conduit in an insulated wall. */
    A1,
    /** Multi-core cable in conduit in an insulated wall. */
    A2,
    /** Single cores in conduit on a wall. */
    B1,
    /** Multi-core cable in conduit on a wall. */
    B2,
    /** Cable on a wall. */
    C,
    /** Multi-core cable in a duct in the ground. */
    D1,
    /** Cable direct in the ground. */
    D2,
    /** Multi-core cable in free air. */
    E
}
