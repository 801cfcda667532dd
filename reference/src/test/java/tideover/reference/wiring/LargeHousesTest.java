package tideover.reference.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import org.junit.jupiter.api.Test;
import tideover.engine.installation.Installation;
import tideover.engine.site.ControlPort;
import tideover.engine.site.Isolator;
import tideover.engine.site.IsolatorKind;
import tideover.engine.site.PortKind;
import tideover.engine.site.SignalForm;
import tideover.engine.site.Site;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.model.HouseModel;
import tideover.engine.wiring.procedure.StateTable;
import tideover.reference.Houses;

/** Houses with more devices than the examples have. */
class LargeHousesTest {

    /** Contacts of many isolators once took the places of the inverter's outputs. */
    @Test
    void isolatorsMoreOrLessChangeNothingThatIsRead() {
        Site site = Houses.read(Houses.TOWN_HOUSE);
        StateTable before = table(site);
        for (int i = 0; i < 16; i++)
            site = site.withPlanned(new Isolator(
                    new ThingId("further-isolator-" + i),
                    null,
                    ThingId.SUPPLY,
                    IsolatorKind.SWITCH_DISCONNECTOR,
                    true,
                    null));
        StateTable after = table(site);
        assertThat(after.rows()).hasSameSizeAs(before.rows());
        for (int i = 0; i < before.rows().size(); i++)
            assertThat(after.rows().get(i).shown())
                    .as(before.rows().get(i).reading().id())
                    .isEqualTo(before.rows().get(i).shown());
    }

    @Test
    void whatIsTooLargeForTheModelIsNotModelledRatherThanWrongly() {
        Site site = Houses.read(Houses.TOWN_HOUSE);
        for (int i = 0; i < 70; i++)
            site = site.withPlanned(new ControlPort(
                    new ThingId("further-output-" + i),
                    null,
                    new ThingId("inverter"),
                    PortKind.OUTPUT,
                    java.util.List.of("Y" + i),
                    100 + i,
                    SignalForm.PLUS,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null));
        Site large = site;
        assertThat(HouseModel.of(Installation.of(large)).findLeader()).isEmpty();
        assertThatCode(() -> Houses.assess(large)).doesNotThrowAnyException();
        assertThat(table(large).rows()).isEmpty();
    }

    private static StateTable table(Site site) {
        return StateTable.of(HouseModel.of(Installation.of(site)));
    }
}
