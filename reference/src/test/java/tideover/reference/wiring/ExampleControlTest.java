package tideover.reference.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.installation.Installation;
import tideover.engine.wiring.model.Defect;
import tideover.engine.wiring.model.HazardSearch;
import tideover.engine.wiring.model.HazardSearch.When;
import tideover.engine.wiring.model.HouseModel;
import tideover.engine.wiring.model.Machine;
import tideover.engine.wiring.model.Machine.Until;
import tideover.engine.wiring.model.Phase;
import tideover.engine.wiring.model.Surroundings;
import tideover.reference.Houses;

/** The control wiring of every sound example house does what it is there for. Source: domain.md of the project, sections 2 and 3. */
class ExampleControlTest {

    /**
     * While somebody by-passes an island by hand the link is still falling off beside the network's own earth. No device of the
     * examples takes longer to fall off.
     */
    private static final double FALLING_OFF_S = 0.05;

    static List<Path> soundHouses() {
        return Houses.all().stream()
                .filter(path -> !path.getParent().endsWith("troubled"))
                .toList();
    }

    private static HouseModel model(Path house) {
        return HouseModel.of(Installation.of(Houses.read(house)));
    }

    @ParameterizedTest
    @MethodSource("soundHouses")
    void theHouseGoesThroughLossReturnDarknessAndByPass(Path house) {
        Surroundings live = Surroundings.IN_SERVICE;
        Surroundings lost = live.withoutGrid();
        Machine machine = model(house).machine(Defect.NONE);
        assertThat(after(machine, live)).isEqualTo(Phase.FOLLOWING);
        assertThat(after(machine, lost)).isEqualTo(Phase.FORMING);
        assertThat(after(machine, live)).isEqualTo(Phase.FOLLOWING);
        assertThat(after(machine, lost)).isEqualTo(Phase.FORMING);
        assertThat(after(machine, lost.withoutEnergy())).isEqualTo(Phase.DARK);
        assertThat(after(machine, lost)).as("black start").isEqualTo(Phase.FORMING);
        assertThat(after(machine, live.withByPass())).isEqualTo(Phase.STOPPED);
        assertThat(after(machine, live)).isEqualTo(Phase.FOLLOWING);
        assertThat(after(machine, live.withoutEnergy())).isEqualTo(Phase.DARK);
        assertThat(after(machine, live)).isEqualTo(Phase.FOLLOWING);
    }

    private static Phase after(Machine machine, Surroundings changed) {
        machine.run(changed, Until.AT_REST);
        assertThat(machine.isUnsettled()).isFalse();
        assertThat(machine.isSupplyShorted()).isFalse();
        return machine.phase();
    }

    @ParameterizedTest
    @MethodSource("soundHouses")
    void whateverHappensWheneverNoHazardLasts(Path house) {
        HazardSearch.Reached reached = HazardSearch.search(model(house), Defect.NONE, When.ANY_TIME);
        assertThat(reached.isWhole()).isTrue();
        assertThat(reached.exposures().values())
                .allSatisfy(exposure -> assertThat(exposure.longestS()).isLessThanOrEqualTo(FALLING_OFF_S));
    }
}
