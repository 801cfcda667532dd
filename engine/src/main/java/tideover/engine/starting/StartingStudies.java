package tideover.engine.starting;

import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.network.Demand;

/**
 * What the checks of starts ask of.
 *
 * @param installation the netlist
 * @param demand       what flows; nothing where the rule book says nothing of coincidence
 * @param starts       how motors start; nothing where there is no demand
 */
public record StartingStudies(
        Installation installation,
        @Nullable Demand demand,
        @Nullable Starts starts) {}
