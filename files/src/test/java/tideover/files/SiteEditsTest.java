package tideover.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tideover.engine.site.FactId;
import tideover.engine.site.Origin;
import tideover.engine.site.Site;
import tideover.engine.site.Status;
import tideover.engine.site.ThingId;

/** Edits of one small house; the expected sites are what a person editing the file would have written. */
class SiteEditsTest {
    private static final FieldTable TABLE = FieldTable.load();
    private static final SiteEdits EDITS = new SiteEdits(TABLE);

    private static final String HOUSE = """
            format: 1
            house:
              place: {designation: Larch lane 4, country: DE}
              supply: {earthingSystem: TN_S, lines: THREE, mainFuse: {kind: FUSE, ratedCurrentA: 35}}
              boards:
                - {id: board, designation: Board, fedFrom: supply, conductors: [L1, L2, L3, N, PE]}
              circuits:
                - id: oven
                  designation: Oven
                  fedFrom: board
                  conductors: [L1, N, PE]
                  cable: {lengthM: 12, crossSectionMm2: 2.5}
            plan:
              boards:
                - {id: grid-board, designation: Grid-side board, fedFrom: supply, conductors: [L1, L2, L3, N, PE]}
            evidence:
              - {about: house, origin: READ}
              - {about: oven.cable.lengthM, origin: MEASURED, by: tape measure}
            """;

    @Test
    void aFactFoundIsChangedInTheHouseAndWhatWasSaidOfTheOldValueGoes() {
        Site edited = edited(site(), new Edit("oven.cable.lengthM", "12", "13.5"));
        assertThat(value(edited, "house.oven.cable.lengthM")).isEqualTo("13.5");
        assertThat(edited.origins().of(FactId.of("oven.cable.lengthM"))).isEqualTo(Origin.READ);
        assertThat(site().origins().of(FactId.of("oven.cable.lengthM"))).isEqualTo(Origin.MEASURED);
    }

    @Test
    void aPlannedChangeLeavesWhatWasFound() {
        Site edited = edited(site(), new Edit("plan.oven.fedFrom", "board", "grid-board"));
        assertThat(value(edited, "house.oven.fedFrom")).isEqualTo("board");
        assertThat(value(edited, "oven.fedFrom")).isEqualTo("grid-board");
        assertThat(edited.statuses().get(new ThingId("oven"))).isEqualTo(Status.ALTERED);
    }

    @Test
    void aPlannedValueEqualToTheFoundOneIsNoChangeAnyMore() {
        Site there = edited(site(), new Edit("plan.oven.fedFrom", "board", "grid-board"));
        Site back = edited(there, new Edit("plan.oven.fedFrom", "grid-board", "board"));
        assertThat(new SiteWriter(TABLE).digest(back)).isEqualTo(new SiteWriter(TABLE).digest(site()));
    }

    @Test
    void aThingIsAddedToThePlanAndTakenOutAgain() {
        Site added = edited(
                site(),
                new Edit(
                        "plan.circuits.sauna",
                        null,
                        "{designation: Sauna, fedFrom: grid-board, conductors: [L1, L2, L3, N, PE]}"));
        assertThat(added.statuses().get(new ThingId("sauna"))).isEqualTo(Status.NEW);
        String whole = value(added, "plan.circuits.sauna");
        Site back = edited(added, new Edit("plan.circuits.sauna", whole, null));
        assertThat(back).isEqualTo(site());
    }

    @Test
    void thePlanTakesAFoundThingOutAndLetsItStayAgain() {
        Site removed = edited(site(), new Edit("plan.removed.oven", null, "true"));
        assertThat(removed.statuses().get(new ThingId("oven"))).isEqualTo(Status.REMOVED);
        assertThat(edited(removed, new Edit("plan.removed.oven", "true", null))).isEqualTo(site());
    }

    @Test
    void evidenceAndAcceptedAdviceAreEditedLikeFacts() {
        Site said = edited(
                site(),
                new Edit("evidence.oven.cable.lengthM", "{origin: MEASURED, by: tape measure}", "{origin: ASSUMED}"),
                new Edit("accepted.oven.loading.line", null, "The oven is held back in an outage"));
        assertThat(said.origins().of(FactId.of("oven.cable.lengthM"))).isEqualTo(Origin.ASSUMED);
        assertThat(said.plan().accepted())
                .singleElement()
                .satisfies(advice -> assertThat(advice.reason()).isEqualTo("The oven is held back in an outage"));
        Site back = edited(said, new Edit("accepted.oven.loading.line", "The oven is held back in an outage", null));
        assertThat(back.plan().accepted()).isEmpty();
    }

    @Test
    void numbersAndListsAreTheSameHoweverTheyAreWritten() {
        Site edited = edited(
                site(),
                new Edit("oven.cable.lengthM", "12.0", "14"),
                new Edit("oven.conductors", "[L1,N,PE]", "[\"L2\", N, PE]"));
        assertThat(value(edited, "oven.conductors")).isEqualTo("[\"L2\",\"N\",\"PE\"]");
    }

    @Test
    void anotherValueThanTheOneSeenIsAConflictUnlessBothWantTheSame() {
        EditResult other = EDITS.apply(site(), List.of(new Edit("oven.cable.lengthM", "11", "14")));
        assertThat(other)
                .isInstanceOfSatisfying(
                        EditResult.Conflicting.class,
                        conflicting -> assertThat(conflicting.conflicts())
                                .singleElement()
                                .satisfies(
                                        conflict -> assertThat(conflict.now()).isEqualTo("12")));
        assertThat(edited(site(), new Edit("oven.cable.lengthM", "11", "12"))).isEqualTo(site());
    }

    @Test
    void editsComeTogetherOrNotAtAllAndEveryProblemIsTold() {
        EditResult result = EDITS.apply(
                site(),
                List.of(
                        new Edit("oven.cable.lengthM", "12", "14"),
                        new Edit("oven.cable.crossSectionMm2", "2.5", "9999"),
                        new Edit("oven.fedFrom", "board", "bord"),
                        new Edit("stove.fedFrom", null, "board"),
                        new Edit("oven.colour", null, "red")));
        assertThat(result).isInstanceOf(EditResult.Refused.class);
        List<String> wrongPaths = ((EditResult.Refused) result)
                .problems().stream().map(InputProblem::field).toList();
        assertThat(wrongPaths).containsExactlyInAnyOrder("stove.fedFrom", "oven.colour");
        EditResult values = EDITS.apply(
                site(),
                List.of(
                        new Edit("oven.cable.crossSectionMm2", "2.5", "9999"),
                        new Edit("oven.fedFrom", "board", "bord")));
        assertThat(((EditResult.Refused) values).problems())
                .extracting(InputProblem::field)
                .containsExactlyInAnyOrder("oven.cable.crossSectionMm2", "oven.fedFrom");
    }

    @Test
    void whatOthersHangFromCannotBeTakenOut() {
        EditResult result = EDITS.apply(site(), List.of(new Edit("plan.removed.board", null, "true")));
        assertThat(result).isInstanceOf(EditResult.Refused.class);
    }

    @Test
    void aFactIsForgotten() {
        Site edited = edited(site(), new Edit("oven.cable.lengthM", "12", null));
        assertThat(EDITS.find(edited, "oven.cable.lengthM")).isEmpty();
        assertThat(EDITS.find(edited, "oven.cable.crossSectionMm2")).contains("2.5");
    }

    private static Site site() {
        SiteFileResult result = new SiteFiles(TABLE).read("house.yaml", HOUSE.getBytes(StandardCharsets.UTF_8));
        return ((SiteFileResult.Readable) result).site();
    }

    private static Site edited(Site site, Edit... edits) {
        EditResult result = EDITS.apply(site, List.of(edits));
        assertThat(result).isInstanceOf(EditResult.Edited.class);
        return ((EditResult.Edited) result).site();
    }

    private static @Nullable String value(Site site, String path) {
        return EDITS.find(site, path).orElse(null);
    }
}
