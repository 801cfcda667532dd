package tideover.engine.network.flow;

/**
 * No state was found in which all loads get what they draw.
 *
 * @param iterations rounds tried
 * @param residualA  largest difference left, r.m.s. [A]
 * @param worstLoad  number of the load it is at
 */
public record NotConverged(int iterations, double residualA, int worstLoad) implements FlowResult {}
