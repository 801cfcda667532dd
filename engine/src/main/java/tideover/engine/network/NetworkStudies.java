package tideover.engine.network;

import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;

/**
 * What the checks of currents ask of.
 *
 * @param installation the netlist
 * @param demand       what flows; nothing where the rule book says nothing of coincidence
 */
public record NetworkStudies(
        Installation installation, @Nullable Demand demand) {}
