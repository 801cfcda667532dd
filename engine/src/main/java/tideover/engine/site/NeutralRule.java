package tideover.engine.site;

/** What is demanded of the neutral when the house is separated. */
public enum NeutralRule {
    /** It must be separated. */
    MUST,
    /** It may be separated. */
    MAY,
    /** It must stay through. */
    MUST_NOT
}
