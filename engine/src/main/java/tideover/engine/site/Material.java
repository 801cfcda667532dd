package tideover.engine.site;

/** What a conductor is made of. */
public enum Material {
    COPPER,
    ALUMINIUM
}
