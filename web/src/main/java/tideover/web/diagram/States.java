package tideover.web.diagram;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import tideover.engine.installation.Installation;
import tideover.engine.site.OperatingState;
import tideover.papers.Wording;

/** Operating states in addresses: {@code island-grid-dead}. */
public final class States {
    private States() {}

    /** As it is written in an address. */
    public static String path(OperatingState state) {
        return state.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The state of this name, if the installation has it. */
    public static Optional<OperatingState> find(Installation installation, String path) {
        return installation.states().stream()
                .filter(state -> path(state).equals(path))
                .findFirst();
    }

    /** The state an address names; else that for which the house is planned. */
    public static OperatingState shown(Installation installation, String path) {
        return find(installation, path)
                .orElse(
                        installation.states().contains(OperatingState.ISLAND_GRID_DEAD)
                                ? OperatingState.ISLAND_GRID_DEAD
                                : OperatingState.CONNECTED);
    }

    /**
     * All states of an installation as links.
     *
     * @param address of the page that shows a state
     */
    public static List<StateLink> links(
            Installation installation, OperatingState here, Wording words, Function<OperatingState, String> address) {
        return installation.states().stream()
                .map(state -> new StateLink(words.heading(state), address.apply(state), state == here ? "here" : ""))
                .toList();
    }
}
