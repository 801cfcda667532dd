package tideover.files.first;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tideover.engine.site.Circuit;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.Origin;
import tideover.engine.site.Site;
import tideover.engine.site.SupplyLines;
import tideover.engine.site.ThingId;
import tideover.files.FieldTable;
import tideover.files.SiteFileResult;
import tideover.files.first.FirstAnswers.SourceIs;
import tideover.files.tables.TypicalLoad;
import tideover.files.tables.TypicalLoad.Habit;
import tideover.files.tables.TypicalValues;

/** What comes of five answers. */
class FirstSiteTest {
    private static final TypicalValues TYPICAL = TypicalValues.load();
    private static final FirstSite FIRST = new FirstSite(FieldTable.load(), TYPICAL, id -> id);
    private static final List<String> USUAL = TYPICAL.loads().stream()
            .filter(l -> l.usual() == Habit.YES)
            .map(TypicalLoad::id)
            .toList();
    private static final List<String> STAYING = TYPICAL.loads().stream()
            .filter(l -> l.usual() == Habit.YES && l.staysOn() == Habit.YES)
            .map(TypicalLoad::id)
            .toList();

    @Test
    void whereMostCircuitsStayOnTheBoardGoesBehindTheSwitch() {
        Site site = site(EarthingSystem.TT, SupplyLines.THREE, STAYING, SourceIs.TO_BE_PLANNED, SupplyLines.THREE);
        assertThat(fed(site, "main-board")).isEqualTo("islanding-switch");
        assertThat(fed(site, "oven")).isEqualTo("rcd-grid");
        assertThat(fed(site, "lights")).isEqualTo("rcd-1");
    }

    @Test
    void whereFewStayOnTheyMoveToABoardOfTheirOwn() {
        Site site = site(
                EarthingSystem.TT,
                SupplyLines.THREE,
                List.of("lights", "network"),
                SourceIs.TO_BE_PLANNED,
                SupplyLines.THREE);
        assertThat(fed(site, "island-board")).isEqualTo("islanding-switch");
        assertThat(fed(site, "lights")).isEqualTo("rcd-island");
        assertThat(fed(site, "main-board")).isEqualTo("system-meter");
    }

    @Test
    void onAnIslandOfOneLineAllThatStaysOnLiesOnThatLine() {
        Site site = site(EarthingSystem.TT, SupplyLines.THREE, STAYING, SourceIs.THERE, SupplyLines.ONE);
        for (String id : STAYING)
            assertThat(((Circuit) site.planned().get(new ThingId(id))).conductors())
                    .as(id)
                    .asString()
                    .isEqualTo("[L1, N, PE]");
        assertThat(fed(site, "inverter")).isEqualTo("island-board");
    }

    @Test
    void aPenGetsNoPole() {
        Site site = site(EarthingSystem.TN_C, SupplyLines.THREE, STAYING, SourceIs.TO_BE_PLANNED, SupplyLines.THREE);
        assertThat(((IslandingSwitch) site.planned().get(new ThingId("islanding-switch"))).poles())
                .isEqualTo(3);
    }

    @Test
    void whatNobodyAnsweredIsLeftOutOrAssumed() {
        Site site = site(null, null, STAYING, SourceIs.TO_BE_PLANNED, SupplyLines.THREE);
        assertThat(site.house().supply().earthingSystem()).isNull();
        assertThat(site.house().supply().lines()).isNull();
        assertThat(site.planned().get(new ThingId("inverter")).value("faultCurrentA"))
                .isNull();
        // Every planned number and word that nobody said; what leads where is what the plan decides.
        for (String fact : List.of(
                "islanding-switch.poles",
                "islanding-switch.ratedCurrentA",
                "backup-fuse.protection.ratedCurrentA",
                "rcd-grid.rcd.type",
                "inverter.role"))
            assertThat(site.origins().of(FactId.of(fact))).as(fact).isEqualTo(Origin.ASSUMED);
        assertThat(site.origins().of(FactId.of("islanding-switch.fedFrom"))).isEqualTo(Origin.PLANNED);
    }

    @Test
    void whatWasAnsweredIsTheAnswerOfWhoeverSaidIt() {
        Site site = site(EarthingSystem.TN_S, SupplyLines.ONE, STAYING, SourceIs.THERE, SupplyLines.THREE);
        for (String fact : List.of(
                "supply.earthingSystem", "supply.lines", "supply.mainFuse.ratedCurrentA", "inverter.ratedPowerVa"))
            assertThat(site.origins().of(FactId.of(fact))).as(fact).isEqualTo(Origin.READ);
        assertThat(site.origins().of(FactId.of("supply.mainFuse.kind"))).isEqualTo(Origin.ASSUMED);
    }

    @Test
    void everyTypicalLoadMakesACircuitThatCanBeRead() {
        List<String> all = TYPICAL.loads().stream().map(TypicalLoad::id).toList();
        for (SupplyLines lines : SupplyLines.values()) {
            SiteFileResult result = FIRST.of(answers(EarthingSystem.TT, lines, all, all, SourceIs.THERE, lines, "x"));
            assertThat(result).isInstanceOf(SiteFileResult.Readable.class);
        }
    }

    @Test
    void aNameThatNoPaperCanBearIsRefused() {
        SiteFileResult result =
                FIRST.of(answers(null, null, USUAL, STAYING, SourceIs.TO_BE_PLANNED, SupplyLines.THREE, "bell\u0007"));
        assertThat(((SiteFileResult.Refused) result).problems())
                .anySatisfy(problem -> assertThat(problem.phrase().key()).startsWith("problem."));
    }

    private static Site site(
            @Nullable EarthingSystem earthing,
            @Nullable SupplyLines lines,
            List<String> staysOn,
            SourceIs source,
            SupplyLines forms) {
        SiteFileResult result = FIRST.of(answers(earthing, lines, USUAL, staysOn, source, forms, "Probeweg 3"));
        return ((SiteFileResult.Readable) result).site();
    }

    private static FirstAnswers answers(
            @Nullable EarthingSystem earthing,
            @Nullable SupplyLines lines,
            List<String> loads,
            List<String> staysOn,
            SourceIs source,
            SupplyLines forms,
            String designation) {
        return new FirstAnswers(
                designation,
                "DE",
                Origin.READ,
                earthing,
                lines,
                lines == null ? null : 63.0,
                loads,
                staysOn,
                8000.0,
                10_000.0,
                10_000.0,
                source,
                forms);
    }

    private static String fed(Site site, String thing) {
        return String.valueOf(((Fed) site.planned().get(new ThingId(thing))).fedFrom());
    }
}
