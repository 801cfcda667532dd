package tideover.engine.network.flow;

/** What solving a network came to. */
public sealed interface FlowResult permits Flow, NotConverged {

    /** Rounds of correcting the loads. */
    int iterations();

    /** Largest difference left between what a load draws at its voltage and what was taken, r.m.s. [A]. */
    double residualA();
}
