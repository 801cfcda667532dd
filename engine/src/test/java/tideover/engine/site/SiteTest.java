package tideover.engine.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plan over the house, single edits, and who says so. */
class SiteTest {

    private static final ThingId OVEN = new ThingId("oven");
    private static final ThingId LIGHTS = new ThingId("lights");
    private static final ThingId CHARGER = new ThingId("charger");

    @Test
    void plannedFactReplacesTheFoundOneAndLeavesTheOthers() {
        Site site = site(
                List.of(circuit("oven", "Oven", "old-board", 14.0, 2.5)),
                List.of(circuit("oven", null, "new-board", null, 4.0)));
        Circuit oven = (Circuit) site.planned().get(OVEN);
        assertThat(oven.designation()).isEqualTo("Oven");
        assertThat(oven.fedFrom()).isEqualTo(new ThingId("new-board"));
        assertThat(oven.cable()).isEqualTo(cable(14.0, 4.0));
    }

    @Test
    void statusFollowsFromWhereAThingIsStated() {
        Site site = site(
                List.of(circuit("oven", "Oven", null, null, null), circuit("lights", "Lights", null, null, null)),
                List.of(
                        circuit("oven", null, "new-board", null, null),
                        circuit("charger", "Charger", null, null, null)));
        assertThat(site.statuses())
                .containsExactly(
                        entry(OVEN, Status.ALTERED), entry(LIGHTS, Status.EXISTING), entry(CHARGER, Status.NEW));
        assertThat(site.without(Set.of(LIGHTS)).statuses()).containsEntry(LIGHTS, Status.REMOVED);
    }

    @Test
    void plannedThingsStandInTheOrderInWhichTheyAreWrittenAndRemovedOnesAreGone() {
        Site site = site(
                List.of(circuit("oven", null, null, null, null), circuit("lights", null, null, null, null)),
                List.of(circuit("charger", null, null, null, null), circuit("oven", "Oven", null, null, null)));
        assertThat(site.planned()).containsOnlyKeys(OVEN, LIGHTS, CHARGER);
        assertThat(site.without(Set.of(OVEN)).planned()).containsOnlyKeys(LIGHTS, CHARGER);
    }

    @Test
    void thingCannotBecomeAnotherKindOfThing() {
        Site site =
                site(List.of(circuit("oven", null, null, null, null)), List.of(new Notice(OVEN, null, ThingId.SUPPLY)));
        assertThatIllegalArgumentException().isThrownBy(site::planned).withMessage("Circuit cannot become Notice");
    }

    @Test
    void oneFactIsChangedWhereItIsStatedAndTheOldSiteStaysAsItWas() {
        Site site = site(
                List.of(circuit("oven", "Oven", null, 14.0, 2.5), circuit("lights", null, null, 20.0, 1.5)),
                List.of(circuit("oven", null, "new-board", null, null)));
        Site longer = site.with(FactId.of("lights.cable.lengthM"), 35.0);
        assertThat(longer.planned().get(LIGHTS).value("cable.lengthM")).isEqualTo(35.0);
        assertThat(longer.plan()).isEqualTo(site.plan());
        assertThat(site.planned().get(LIGHTS).value("cable.lengthM")).isEqualTo(20.0);

        Site altered = site.with(FactId.of("oven.cable.lengthM"), 9.0);
        assertThat(altered.house()).isEqualTo(site.house());
        assertThat(altered.planned().get(OVEN).value("cable.lengthM")).isEqualTo(9.0);
        assertThat(altered.planned().get(OVEN).value("cable.crossSectionMm2")).isEqualTo(2.5);
    }

    @Test
    void groupOfFactsIsMadeWhereThereWasNone() {
        Site site = site(List.of(circuit("oven", null, null, null, null)), List.of());
        assertThat(site.planned().get(OVEN).value("rcd.type")).isNull();
        Site with = site.with(FactId.of("oven.rcd.type"), RcdType.B);
        assertThat(with.planned().get(OVEN).value("rcd.type")).isEqualTo(RcdType.B);
        assertThat(with.planned().get(OVEN).value("rcd.delay")).isNull();
    }

    @Test
    void supplyPlaceAndOperatorAreChangedLikeAnyThing() {
        Site site = site(List.of(), List.of())
                .with(FactId.of("supply.mainFuse.ratedCurrentA"), 50.0)
                .with(FactId.of("place.country"), "AT")
                .with(FactId.of("grid-operator.neutralSeparation"), NeutralRule.MAY);
        assertThat(site.house().supply().value("mainFuse.ratedCurrentA")).isEqualTo(50.0);
        assertThat(site.house().place().country()).isEqualTo("AT");
        assertThat(site.house().gridOperator().neutralSeparation()).isEqualTo(NeutralRule.MAY);
    }

    @ParameterizedTest
    @CsvSource({"kettle.cable.lengthM, no thing has the id kettle", "oven.cable.colour, Cable has no field colour"})
    void editOfWhatIsNotThereIsRefusedByName(String fact, String message) {
        Site site = site(List.of(circuit("oven", null, null, 14.0, 2.5)), List.of());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> site.with(FactId.of(fact), 1.0))
                .withMessage(message);
    }

    @Test
    void valueOfAnotherTypeIsRefused() {
        Site site = site(List.of(circuit("oven", null, null, 14.0, 2.5)), List.of());
        assertThatIllegalArgumentException().isThrownBy(() -> site.with(FactId.of("oven.cable.lengthM"), "long"));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "oven.cable.lengthM, MEASURED",
        "oven.cable.method, READ",
        "oven.designation, DECLARED_BY_CUSTOMER",
        "lights.cable.lengthM, DECLARED_BY_OPERATOR",
        "charger.designation, PLANNED",
        "supply.loopImpedanceOhm, DECLARED_BY_OPERATOR"
    })
    void narrowestEvidenceWins(String fact, Origin expected) {
        Site site = site(
                List.of(circuit("oven", "Oven", null, 14.0, 2.5), circuit("lights", "Lights", null, 20.0, 1.5)),
                List.of(circuit("charger", "Charger", null, null, null)),
                said("house", Origin.DECLARED_BY_OPERATOR),
                said("plan", Origin.PLANNED),
                said("oven", Origin.DECLARED_BY_CUSTOMER),
                said("oven.cable", Origin.READ),
                said("oven.cable.lengthM", Origin.MEASURED));
        assertThat(site.origins().of(FactId.of(fact))).isEqualTo(expected);
    }

    @Test
    void withoutEvidenceAFoundFactIsAssumedAndAPlannedOneIsPlanned() {
        Site site = site(
                List.of(circuit("oven", "Oven", "old-board", 14.0, 2.5)),
                List.of(
                        circuit("oven", null, "new-board", null, null),
                        circuit("charger", "Charger", null, null, null)));
        Origins origins = site.origins();
        assertThat(origins.of(FactId.of("oven.cable.lengthM"))).isEqualTo(Origin.ASSUMED);
        assertThat(origins.of(FactId.of("oven.fedFrom"))).isEqualTo(Origin.PLANNED);
        assertThat(origins.of(FactId.of("charger.designation"))).isEqualTo(Origin.PLANNED);
        assertThat(origins.find(FactId.of("oven.fedFrom"))).isEmpty();
    }

    /** What the plan states is the plan's, what it leaves is the house's: of one thing, both. */
    @Test
    void evidenceOfTheHouseDoesNotVouchForThePlan() {
        Site site = site(
                List.of(circuit("oven", "Oven", "old-board", 14.0, 2.5)),
                List.of(circuit("oven", null, "new-board", null, null)),
                said("house", Origin.READ),
                said("plan", Origin.ASSUMED));
        assertThat(site.origins().of(FactId.of("oven.cable.lengthM"))).isEqualTo(Origin.READ);
        assertThat(site.origins().of(FactId.of("oven.fedFrom"))).isEqualTo(Origin.ASSUMED);
    }

    /** One thing's id may begin like another's. */
    @Test
    void evidenceOfOneThingIsNotThatOfAnother() {
        Site site = site(
                List.of(circuit("oven", null, null, 14.0, 2.5), circuit("oven-2", null, null, 9.0, 2.5)),
                List.of(),
                said("oven", Origin.MEASURED));
        assertThat(site.origins().of(FactId.of("oven-2.cable.lengthM"))).isEqualTo(Origin.ASSUMED);
    }

    private static Evidence said(String about, Origin origin) {
        return new Evidence(about, origin, "electrician", LocalDate.of(2026, 11, 2), null);
    }

    private static Site site(List<Thing> found, List<Thing> planned, Evidence... evidence) {
        Supply supply = new Supply(null, EarthingSystem.TT, SupplyLines.THREE, 230.0, null, 0.4, null, null, null);
        House house = new House(
                new Place(null, "DE", null, null, null, null), new GridOperator(null, null, null), supply, found);
        return new Site(house, new Plan(planned, List.of(), List.of()), List.of(evidence));
    }

    private static Circuit circuit(
            String id,
            @Nullable String designation,
            @Nullable String fedFrom,
            @Nullable Double lengthM,
            @Nullable Double crossSectionMm2) {
        Cable cable = lengthM == null && crossSectionMm2 == null ? null : cable(lengthM, crossSectionMm2);
        return new Circuit(
                new ThingId(id),
                designation,
                fedFrom == null ? null : new ThingId(fedFrom),
                null,
                null,
                cable,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null);
    }

    private static Cable cable(@Nullable Double lengthM, @Nullable Double crossSectionMm2) {
        return new Cable(lengthM, crossSectionMm2, null, null, null, null, null, null, null);
    }
}
