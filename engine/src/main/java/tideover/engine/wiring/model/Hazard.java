package tideover.engine.wiring.model;

/** What must never be, or not for longer than a transition allows. */
public enum Hazard {
    /** The island source has voltage on the grid side. */
    BACKFEED("wiring.backfeedS"),
    /** Switch closed while the island source forms a voltage out of step with the live grid. */
    OUT_OF_STEP("wiring.outOfStepS"),
    /** A live neutral has no connection to earth. */
    NO_LINK("wiring.noLinkS"),
    /** A live neutral has two connections to earth. */
    SEVERAL_LINKS("wiring.severalLinksS"),
    /** Lines are live while the neutral is interrupted. */
    NEUTRAL_OPEN("wiring.neutralOpenS"),
    /** A load is fed by one source and its neutral belongs to another, or is an earth. */
    NEUTRAL_CROSSED("wiring.neutralCrossedS"),
    /** Lines are live while the protective conductor is interrupted. */
    PROTECTIVE_OPEN("wiring.protectiveOpenS"),
    /** A protective conductor has the voltage of a line. */
    PROTECTIVE_LIVE("wiring.protectiveLiveS");

    private final String limit;

    Hazard(String limit) {
        this.limit = limit;
    }

    /** Id of the limit in the rule book: the longest time it may last in a transition [s]. */
    public String limit() {
        return limit;
    }

    int bit() {
        return 1 << ordinal();
    }
}
