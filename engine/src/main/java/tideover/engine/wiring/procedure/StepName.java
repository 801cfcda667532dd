package tideover.engine.wiring.procedure;

/** What a step is for. */
public enum StepName {
    /** Settings of ports and bus against the plan. */
    SETTINGS(StepKind.INSPECTION),
    /** No link between neutral and earth but those planned. */
    LINKS_SEEN(StepKind.INSPECTION),
    /** Continuity of the protective conductor. */
    PROTECTIVE_CONTINUITY(StepKind.DEAD),
    /** Between conductors and to earth. */
    INSULATION(StepKind.DEAD),
    /** Each conductor of a circuit is the one it is called. */
    POLARITY(StepKind.DEAD),
    /** Grid-side neutral to island-side neutral, switch open, link lifted: no continuity. */
    NEUTRALS_APART(StepKind.DEAD),
    /** Each pole of the islanding switch, moved by hand. */
    POLES(StepKind.DEAD),
    /** The neutral–earth switch, moved by hand. */
    LINK(StepKind.DEAD),
    /** End resistors of the bus. */
    BUS_LINE(StepKind.DEAD),
    /** First connected: voltages, sequence, indicators. */
    CONNECTED(StepKind.SWITCHING),
    /** Loss of the grid: the changeover and its feedbacks. */
    LOSS(StepKind.SWITCHING),
    /** No voltage on the grid-side terminals. */
    GRID_SIDE_DEAD(StepKind.SWITCHING),
    /** Voltages and sequence of the island. */
    ISLAND_VOLTAGES(StepKind.SWITCHING),
    /** Grid live and waiting. */
    WAITING(StepKind.SWITCHING),
    /** Return to the grid. */
    RETURN(StepKind.SWITCHING),
    /** Battery empty. */
    DARK(StepKind.SWITCHING),
    /** By-pass by hand. */
    BY_PASS(StepKind.SWITCHING),
    /** A circuit while connected: voltages, RCD, a load. */
    CIRCUIT_CONNECTED(StepKind.LIVE),
    /** A circuit in the island. */
    CIRCUIT_ISLAND(StepKind.LIVE),
    /** A circuit while the grid is live and waiting: current over earth. */
    CIRCUIT_WAITING(StepKind.LIVE),
    /** Dead: a control core from end to end. */
    CORE(StepKind.DEAD),
    /** Control terminals under voltage. */
    TERMINALS(StepKind.SWITCHING),
    /** A control core lifted dead, then the loss of the grid. */
    LIFTED_CORE(StepKind.SWITCHING);

    private final StepKind kind;

    StepName(StepKind kind) {
        this.kind = kind;
    }

    /** Of what kind it is. */
    public StepKind kind() {
        return kind;
    }

    /** Whether standard, maker or grid operator demands it; the rest is what may be added. */
    public boolean isDemanded() {
        return this != CORE && this != TERMINALS && this != LIFTED_CORE;
    }
}
