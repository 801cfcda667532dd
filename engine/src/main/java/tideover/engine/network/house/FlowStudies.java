package tideover.engine.network.house;

import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;

/**
 * What the checks of voltages and loading ask of.
 *
 * @param installation the netlist
 * @param flows        what flows; nothing where the rule book says nothing of coincidence
 */
public record FlowStudies(
        Installation installation, @Nullable FlowStudy flows) {}
