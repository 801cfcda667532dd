package tideover.engine.network.house;

import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;

/**
 * The voltages at which every load gets what it draws were not found: the house draws more than can arrive.
 *
 * @param state      in which
 * @param regime     and which extreme
 * @param iterations rounds tried
 * @param residualA  largest difference left [A]
 * @param worst      thing it is at
 */
public record Unsolved(OperatingState state, Regime regime, int iterations, double residualA, ThingId worst)
        implements HouseFlowResult {}
