package tideover.engine.wiring.schedule;

/** Where the section of a conductor comes from. */
public enum SectionBasis {
    STATED,
    /** Not stated: as thick as the conductor of the path it stands beside. */
    LIKE_THE_PATH,
    UNKNOWN
}
