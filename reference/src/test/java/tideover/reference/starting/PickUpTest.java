package tideover.reference.starting;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.engine.assessment.Assessor;
import tideover.engine.site.Site;
import tideover.engine.site.ThingId;
import tideover.engine.starting.PickUp;
import tideover.engine.starting.Starts;
import tideover.files.tables.TableFiles;
import tideover.reference.Houses;

/**
 * What comes back at once: a small inverter of 14.5 A a line, 1.25 times that for 10 s and 1.5 times for 0.5 s. On L1 hang two
 * motors; all else is made so small that it does not count.
 */
class PickUpTest {

    private static final Path HOUSE = Path.of("src/test/resources/tideover/reference/checks/house.yaml");
    private static final List<String> QUIET =
            List.of("heat-pump.load.powerW: 30", "oven.load.powerW: 1", "lights.load.powerW: 1");

    /** 4.35 A and 2.17 A, three times: 13.0 A + 6.5 A = 19.6 A of 21.75 A. */
    @Test
    void smallStartsComeAtOnce() {
        assertThat(pickUp(motor("kitchen", 1000, 3, 0.5), motor("workshop", 500, 3, 0.5)))
                .isInstanceOf(PickUp.AllAtOnce.class);
    }

    /** 4.35 A and 2.17 A, four times: 26.1 A at once; 8.7 A + 4.35 A or 17.4 A + 2.17 A one after the other. */
    @Test
    void startsThatAreTooMuchTogetherComeOneAfterTheOther() {
        PickUp pickUp = pickUp(motor("kitchen", 1000, 4, 0.5), motor("workshop", 500, 4, 0.5));
        assertThat(pickUp).isInstanceOf(PickUp.InSequence.class);
        List<PickUp.Step> steps = ((PickUp.InSequence) pickUp).steps();
        assertThat(steps).extracting(PickUp.Step::atS).containsExactly(0.0, 0.5, 1.0);
        assertThat(steps.get(0).circuits()).containsExactly(new ThingId("kitchen"));
        assertThat(steps.get(1).circuits()).containsExactly(new ThingId("workshop"));
    }

    /**
     * 5.22 A, 3 times for 10 s: 15.7 A of 18.1 A; and 2.17 A, 6 times for 0.5 s: 13.0 A of 21.75 A. The small one after the
     * large one leaves 5.2 A + 13.0 A = 18.3 A of 21.75 A; the large one after the small one 2.2 A + 15.7 A = 17.8 A of
     * 18.1 A: both go, and the one that leaves less room comes first.
     */
    @Test
    void startThatLeavesLeastRoomComesFirst() {
        PickUp pickUp = pickUp(motor("kitchen", 500, 6, 0.5), motor("workshop", 1200, 3, 10));
        assertThat(((PickUp.InSequence) pickUp).steps().get(0).circuits()).containsExactly(new ThingId("workshop"));
    }

    /** 8.7 A in service, three times: 26.1 A is more than 21.75 A, alone and first. */
    @Test
    void startThatIsTooMuchAloneIsHeldBack() {
        PickUp pickUp = pickUp(motor("kitchen", 2000, 3, 0.5), motor("workshop", 500, 3, 0.5));
        assertThat(pickUp).isInstanceOf(PickUp.NotPossible.class);
        assertThat(((PickUp.NotPossible) pickUp).heldBack()).containsExactly(new ThingId("kitchen"));
    }

    /** 8.7 A and 8.7 A run together with more than 14.5 A: what can wait is held back, what must run is not. */
    @Test
    void whatTheCustomerWantsLeastIsHeldBack() {
        for (String waits : List.of("kitchen", "workshop")) {
            String runs = waits.equals("kitchen") ? "workshop" : "kitchen";
            PickUp pickUp = pickUp(
                    motor("kitchen", 2000, 1.5, 0.5),
                    motor("workshop", 2000, 1.5, 0.5),
                    List.of(waits + ".importance: CAN_WAIT", runs + ".importance: MUST_RUN"));
            assertThat(((PickUp.NotPossible) pickUp).heldBack()).containsExactly(new ThingId(waits));
        }
    }

    /** Sockets in full would be 39 A on L1: people see to that before, so it is not what the sources fail on. */
    @Test
    void whatPeopleSwitchOnCountsAsFarAsItIsSupplied() {
        assertThat(pickUp(List.of("kitchen.load.powerW: 9000"), List.of("workshop.load.powerW: 9000")))
                .isInstanceOf(PickUp.AllAtOnce.class);
    }

    /** The same current by heaters that switch on by themselves is. */
    @Test
    void heatersThatSwitchThemselvesOnCountInFull() {
        PickUp pickUp = pickUp(
                List.of("kitchen.load.kind: WATER_HEATER", "kitchen.load.powerW: 2500"),
                List.of("workshop.load.kind: WATER_HEATER", "workshop.load.powerW: 2500"));
        assertThat(((PickUp.NotPossible) pickUp).heldBack()).hasSize(1);
    }

    private static List<String> motor(String circuit, double powerW, double ratio, double timeS) {
        return List.of(
                circuit + ".load.kind: MOTOR",
                circuit + ".load.powerW: " + powerW,
                circuit + ".load.powerFactorRatio: 1",
                circuit + ".load.start: DIRECT",
                circuit + ".load.startCurrentRatio: " + ratio,
                circuit + ".load.startTimeS: " + timeS);
    }

    @SafeVarargs
    private static PickUp pickUp(List<String>... edits) {
        List<String> all = new ArrayList<>(QUIET);
        for (List<String> some : edits) all.addAll(some);
        Site site = Houses.with(HOUSE, all);
        Starts starts = new Assessor(TableFiles.load())
                .studies(site, Houses.rules(site))
                .starts();
        assertThat(starts.islands()).hasSize(1);
        return starts.pickUp(starts.islands().get(0));
    }
}
