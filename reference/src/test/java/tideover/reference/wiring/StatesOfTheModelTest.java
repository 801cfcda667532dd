package tideover.reference.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.installation.Installation;
import tideover.engine.installation.NeutralGroup;
import tideover.engine.installation.View;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Terminals;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.model.Defect;
import tideover.engine.wiring.model.HouseModel;
import tideover.engine.wiring.model.Machine;
import tideover.engine.wiring.model.Machine.Until;
import tideover.engine.wiring.model.Surroundings;
import tideover.engine.wiring.net.Potential.System;
import tideover.reference.Houses;

/**
 * The wiring model, run through loss and return of the grid, comes to rest in the very states that the netlist knows by
 * their definition: the same terminals live from the same sources, the same neutrals earthed as often.
 */
class StatesOfTheModelTest {

    static List<Path> sound() {
        List<Path> sound = new ArrayList<>(List.of(Houses.TOWN_HOUSE, Houses.FARMHOUSE, Houses.TERRACE));
        sound.addAll(Houses.yamlBelow(Houses.EXAMPLES.resolve("arrangements")));
        return sound;
    }

    private static Map<OperatingState, Machine> states(HouseModel model) {
        Map<OperatingState, Machine> states = new EnumMap<>(OperatingState.class);
        Machine machine = model.machine(Defect.NONE);
        Surroundings live = Surroundings.IN_SERVICE;
        machine.run(live, Until.AT_REST);
        states.put(OperatingState.CONNECTED, machine.fork());
        machine.run(live.withoutGrid(), Until.AT_REST);
        states.put(OperatingState.ISLAND_GRID_DEAD, machine.fork());
        machine.run(live, Until.OBSERVING);
        states.put(OperatingState.ISLAND_GRID_WAITING, machine.fork());
        machine.run(live, Until.AT_REST);
        machine.run(live.withoutGrid(), Until.AT_REST);
        machine.run(live.withoutGrid().withoutEnergy(), Until.AT_REST);
        states.put(OperatingState.DARK, machine.fork());
        if (!model.installation().byPasses().isEmpty()) {
            machine.run(live.withoutInverters().withByPass(), Until.AT_REST);
            states.put(OperatingState.BY_PASSED, machine.fork());
        }
        return states;
    }

    @ParameterizedTest
    @MethodSource("sound")
    void terminalsAreLiveFromTheSourcesThatTheNetlistNames(Path house) {
        HouseModel model = HouseModel.of(Installation.of(Houses.read(house)));
        states(model).forEach((state, machine) -> {
            View view = model.installation().in(state);
            for (Fed fed : model.installation().all(Fed.class)) {
                // By-passed, the model has the isolators of the inverters open, of which the netlist knows nothing.
                if (fed instanceof Inverter && state == OperatingState.BY_PASSED) continue;
                for (Conductor line : model.installation().lines(fed.id())) {
                    int node = model.installation().node(fed.id(), Terminals.OUTGOING, line);
                    List<ThingId> sources = view.sourcesAt(fed.id(), line);
                    boolean isGrid = (machine.nets().potentials(node) & System.GRID.lines()) != 0;
                    boolean isIsland = (machine.nets().potentials(node) & System.ISLAND.lines()) != 0;
                    assertThat(isGrid)
                            .as("grid at %s %s, %s", fed.id(), line, state)
                            .isEqualTo(sources.contains(ThingId.SUPPLY));
                    assertThat(isIsland)
                            .as("island source at %s %s, %s", fed.id(), line, state)
                            .isEqualTo(sources.stream().anyMatch(source -> !source.equals(ThingId.SUPPLY)));
                }
            }
        });
    }

    @ParameterizedTest
    @MethodSource("sound")
    void neutralsAreEarthedAsOftenAsTheNetlistCounts(Path house) {
        HouseModel model = HouseModel.of(Installation.of(Houses.read(house)));
        ThingId leader = model.findLeader().orElseThrow().id();
        states(model).forEach((state, machine) -> {
            Optional<NeutralGroup> grid = model.installation().in(state).findNeutralGroup(ThingId.SUPPLY);
            if (state.isGridLive() && grid.isPresent())
                assertThat(machine.nets().links(System.GRID))
                        .as("grid, %s", state)
                        .isEqualTo(grid.get().earthed().size());
            if (!state.isIsland()) return;
            NeutralGroup island =
                    model.installation().in(state).findNeutralGroup(leader).orElseThrow();
            assertThat(machine.nets().links(System.ISLAND))
                    .as("island, %s", state)
                    .isEqualTo(island.earthed().size());
        });
    }
}
