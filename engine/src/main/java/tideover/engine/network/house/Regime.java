package tideover.engine.network.house;

/** Which of the two extremes of a house is looked at. */
public enum Regime {
    /** Worst credible coincidence of what is drawn; followers feed nothing. */
    DRAWING,
    /** All inverters that follow feed at most; nothing is drawn. */
    FEEDING
}
