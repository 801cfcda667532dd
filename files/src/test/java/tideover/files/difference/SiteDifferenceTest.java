package tideover.files.difference;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.engine.site.Site;
import tideover.files.Edit;
import tideover.files.EditResult;
import tideover.files.FieldTable;
import tideover.files.SiteEdits;
import tideover.files.SiteFileResult;
import tideover.files.SiteFiles;

/** What is told of two houses; the expected lists are written by hand. */
class SiteDifferenceTest {
    private static final FieldTable TABLE = FieldTable.load();
    private static final SiteDifference DIFFERENCE = new SiteDifference(TABLE);

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
            """;

    @Test
    void aSiteDoesNotDifferFromItself() {
        assertThat(DIFFERENCE.between(site(HOUSE), site(HOUSE))).isEmpty();
    }

    @Test
    void factsThatDifferAreToldOneByOne() {
        String other = HOUSE.replace("lengthM: 12, ", "")
                .replace("[L1, N, PE]", "[L2, N, PE]")
                .replace("Larch lane 4", "Larch lane 6")
                .replace("ratedCurrentA: 35", "ratedCurrentA: 50");
        assertThat(DIFFERENCE.between(site(HOUSE), site(other)))
                .containsExactly(
                        new Edit("house.place.designation", "Larch lane 4", "Larch lane 6"),
                        new Edit("house.supply.mainFuse.ratedCurrentA", "35", "50"),
                        new Edit("house.oven.conductors", "[\"L1\",\"N\",\"PE\"]", "[\"L2\",\"N\",\"PE\"]"),
                        new Edit("house.oven.cable.lengthM", "12", null));
    }

    @Test
    void aThingThatOnlyOneHasIsToldAsAWhole() {
        String other = HOUSE.replace("    - {id: grid-board", "    - {id: other-board");
        assertThat(DIFFERENCE.between(site(HOUSE), site(other)))
                .extracting(Edit::path)
                .containsExactly("plan.boards.grid-board", "plan.boards.other-board");
        Edit gone = DIFFERENCE.between(site(HOUSE), site(other)).get(0);
        assertThat(gone.before()).startsWith("{\"designation\":\"Grid-side board\"");
        assertThat(gone.after()).isNull();
    }

    @Test
    void aPlannedChangeIsToldAsTheStepFromWhatWasFound() {
        Site planned = edited(site(HOUSE), new Edit("plan.oven.fedFrom", "board", "grid-board"));
        assertThat(DIFFERENCE.between(site(HOUSE), planned))
                .containsExactly(new Edit("plan.oven.fedFrom", "board", "grid-board"));
        assertThat(DIFFERENCE.between(planned, site(HOUSE)))
                .containsExactly(new Edit("plan.oven.fedFrom", "grid-board", "board"));
    }

    @Test
    void removalsAcceptedAdviceAndEvidenceAreTold() {
        Site other = edited(
                site(HOUSE),
                new Edit("plan.removed.oven", null, "true"),
                new Edit("accepted.board.load.share", null, "The owner wants it so."),
                new Edit("evidence.board", null, "{origin: MEASURED, by: eye}"));
        assertThat(DIFFERENCE.between(site(HOUSE), other))
                .containsExactly(
                        new Edit("plan.removed.oven", null, "true"),
                        new Edit("accepted.board.load.share", null, "The owner wants it so."),
                        new Edit("evidence.board", null, "{\"origin\":\"MEASURED\",\"by\":\"eye\"}"));
    }

    @Test
    void makingTheDifferenceGivesTheOtherSite() {
        Site from = site(HOUSE);
        Site to = edited(
                from,
                new Edit("oven.cable.lengthM", "12", "13.5"),
                new Edit("plan.oven.fedFrom", "board", "grid-board"),
                new Edit("grid-board.designation", "Grid-side board", "Lower board"),
                new Edit("place.latitudeDeg", null, "48.1"));
        assertThat(edited(from, DIFFERENCE.between(from, to).toArray(Edit[]::new)))
                .isEqualTo(to);
        assertThat(edited(to, DIFFERENCE.between(to, from).toArray(Edit[]::new)))
                .isEqualTo(from);
    }

    private static Site site(String text) {
        SiteFileResult result = new SiteFiles(TABLE).read("house.yaml", text.getBytes(StandardCharsets.UTF_8));
        if (result instanceof SiteFileResult.Readable readable) return readable.site();
        throw new AssertionError(result);
    }

    private static Site edited(Site site, Edit... edits) {
        EditResult result = new SiteEdits(TABLE).apply(site, List.of(edits));
        if (result instanceof EditResult.Edited edited) return edited.site();
        throw new AssertionError(result);
    }
}
