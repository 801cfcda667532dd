package tideover.engine.site;

/** Who or what says that a fact is so. */
public enum Origin {
    /** Measured on site with an instrument. */
    MEASURED,
    /** Read off the thing, its nameplate or its data sheet. */
    READ,
    /** Said or written by the grid operator. */
    DECLARED_BY_OPERATOR,
    /** Said by the customer. */
    DECLARED_BY_CUSTOMER,
    /** Decided in this plan: true once built, to be proved at commissioning. */
    PLANNED,
    /** Nobody has said so yet: a prefilled or defaulted value, or one without evidence. */
    ASSUMED
}
