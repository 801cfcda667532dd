package tideover.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import tideover.engine.site.Site;
import tideover.files.Edit;
import tideover.files.SiteWriter;
import tideover.store.site.ChangeResult;
import tideover.store.site.ChangeResult.Conflicting;
import tideover.store.site.ChangeResult.Saved;
import tideover.store.site.ChangeResult.Unchanged;
import tideover.store.site.ImportResult;
import tideover.store.site.Revision;
import tideover.store.site.RevisionId;
import tideover.store.site.RevisionKind;
import tideover.store.site.SiteRow;
import tideover.store.site.SiteSearch;
import tideover.store.site.Sites;
import tideover.store.site.Steps;
import tideover.store.site.StoredSite;
import tideover.store.site.VariantId;

/** What is kept of sites. */
class SitesTest extends OnEveryMake {
    private static final String LENGTH = "oven.cable.lengthM";
    private static final SiteWriter WRITER = new SiteWriter(TestSites.TABLE);

    private Sites sites() {
        return store().sites();
    }

    @Test
    void aKeptSiteIsTheSameAfterARestart() {
        StoredSite created = sites().create(TestSites.house(), "As planned", TestSites.at(0));
        StoredSite again = reopened().sites().head(created.revision().id().variant());
        assertThat(again).isEqualTo(created);
        assertThat(again.site()).isEqualTo(TestSites.house());
        assertThat(again.revision().digest()).isEqualTo(WRITER.digest(TestSites.house()));
        assertThat(again.revision().kind()).isEqualTo(RevisionKind.CREATED);
        assertThat(again.revision().entry()).isEqualTo(TestSites.at(0));
    }

    @Test
    void everyChangeIsARevisionThatCanBeReadAgain() {
        VariantId variant = variant();
        Revision second = saved(change(variant, 1, "12", "13.5", 1));
        saved(change(variant, 2, "13.5", "14", 2));
        assertThat(second.number()).isEqualTo(2);
        assertThat(second.kind()).isEqualTo(RevisionKind.EDITED);
        assertThat(second.edits()).containsExactly(new Edit(LENGTH, "12", "13.5"));
        assertThat(length(sites().at(new RevisionId(variant, 1)).site())).isEqualTo("12");
        assertThat(length(sites().at(new RevisionId(variant, 2)).site())).isEqualTo("13.5");
        assertThat(length(sites().head(variant).site())).isEqualTo("14");
        assertThat(sites().revisions(variant)).extracting(Revision::number).containsExactly(1L, 2L, 3L);
    }

    @Test
    void aChangeToWhatIsThereAlreadyMakesNoRevision() {
        VariantId variant = variant();
        assertThat(change(variant, 1, "12", "12", 1)).isInstanceOf(Unchanged.class);
        assertThat(sites().revisions(variant)).hasSize(1);
    }

    @Test
    void aChangeThatCannotBeIsRefusedAndNothingIsKept() {
        VariantId variant = variant();
        ChangeResult result = sites().change(
                        variant,
                        1,
                        List.of(new Edit(LENGTH, "12", "13"), new Edit("lights.cable.lengthM", "20", "long")),
                        TestSites.at(1));
        assertThat(result)
                .isInstanceOfSatisfying(
                        ChangeResult.Refused.class,
                        refused -> assertThat(refused.problems())
                                .extracting(problem -> problem.field())
                                .containsExactly("lights.cable.lengthM"));
        assertThat(length(sites().head(variant).site())).isEqualTo("12");
    }

    @Test
    void twoWindowsThatEditDifferentFactsBothKeepTheirs() {
        VariantId variant = variant();
        saved(change(variant, 1, "12", "13", 1));
        ChangeResult other = sites().change(
                        variant, 1, List.of(new Edit("lights.cable.lengthM", "20", "22")), TestSites.by("Sam", 2));
        saved(other);
        Site site = sites().head(variant).site();
        assertThat(length(site)).isEqualTo("13");
        assertThat(TestSites.value(site, "lights.cable.lengthM")).isEqualTo("22");
    }

    @Test
    void whoChangedTheSameFactMeanwhileIsNamed() {
        VariantId variant = variant();
        saved(change(variant, 1, "12", "13", 1));
        saved(sites().change(
                        variant, 2, List.of(new Edit("lights.cable.lengthM", "20", "22")), TestSites.by("Lou", 2)));
        ChangeResult late = sites().change(variant, 1, List.of(new Edit(LENGTH, "12", "11")), TestSites.by("Sam", 3));
        assertThat(late).isInstanceOfSatisfying(Conflicting.class, conflict -> {
            assertThat(conflict.conflicts()).extracting(found -> found.now()).containsExactly("13");
            assertThat(conflict.since())
                    .extracting(revision -> revision.entry())
                    .containsExactly(TestSites.by("Kim", 1));
            assertThat(conflict.head().revision().number()).isEqualTo(3);
        });
        assertThat(sites().revisions(variant)).hasSize(3);
    }

    @Test
    void undoAndRedoGoToAndFroAndSurviveARestart() {
        VariantId variant = variant();
        saved(change(variant, 1, "12", "13", 1));
        saved(change(variant, 2, "13", "14", 2));
        Sites sites = reopened().sites();
        assertThat(saved(sites.undo(variant, 3, TestSites.at(3))).kind()).isEqualTo(RevisionKind.UNDONE);
        assertThat(length(sites.head(variant).site())).isEqualTo("13");
        saved(sites.undo(variant, 4, TestSites.at(4)));
        assertThat(length(sites.head(variant).site())).isEqualTo("12");
        assertThat(sites.undo(variant, 5, TestSites.at(5))).isInstanceOf(Unchanged.class);
        saved(sites.redo(variant, 5, TestSites.at(6)));
        assertThat(length(sites.head(variant).site())).isEqualTo("13");
        saved(sites.redo(variant, 6, TestSites.at(7)));
        assertThat(length(sites.head(variant).site())).isEqualTo("14");
        assertThat(sites.redo(variant, 7, TestSites.at(8))).isInstanceOf(Unchanged.class);
        assertThat(sites.revisions(variant)).hasSize(7);
    }

    @Test
    void aChangeAfterUndoIsTheOneThatRedoBringsBack() {
        VariantId variant = variant();
        saved(change(variant, 1, "12", "13", 1));
        saved(sites().undo(variant, 2, TestSites.at(2)));
        Revision other = saved(change(variant, 3, "12", "15", 3));
        assertThat(sites().redo(variant, 4, TestSites.at(4))).isInstanceOf(Unchanged.class);
        saved(sites().undo(variant, 4, TestSites.at(5)));
        assertThat(sites().steps(variant).redo()).isEqualTo(other);
        saved(sites().redo(variant, 5, TestSites.at(6)));
        assertThat(length(sites().head(variant).site())).isEqualTo("15");
    }

    @Test
    void stepsTellWhatUndoAndRedoWouldDo() {
        VariantId variant = variant();
        assertThat(sites().steps(variant))
                .isEqualTo(new Steps(sites().head(variant).revision(), null, null));
        Revision edited = saved(change(variant, 1, "12", "13", 1));
        assertThat(sites().steps(variant).undo()).isEqualTo(edited);
        saved(sites().undo(variant, 2, TestSites.at(2)));
        assertThat(sites().steps(variant).undo()).isNull();
        assertThat(sites().steps(variant).redo()).isEqualTo(edited);
    }

    @Test
    void undoDoesNotTouchWhatAnotherWindowDidMeanwhile() {
        VariantId variant = variant();
        saved(change(variant, 1, "12", "13", 1));
        saved(sites().change(variant, 2, List.of(new Edit(LENGTH, "13", "14")), TestSites.by("Sam", 2)));
        assertThat(sites().undo(variant, 2, TestSites.at(3)))
                .isInstanceOfSatisfying(
                        Conflicting.class,
                        conflict -> assertThat(conflict.since())
                                .extracting(revision -> revision.entry().who())
                                .containsExactly("Sam"));
        assertThat(length(sites().head(variant).site())).isEqualTo("14");
    }

    @Test
    void anOldRevisionIsRestoredAsAChangeThatCanBeUndone() {
        VariantId variant = variant();
        saved(change(variant, 1, "12", "13", 1));
        saved(change(variant, 2, "13", "14", 2));
        Revision restored = saved(sites().restore(new RevisionId(variant, 1), 3, TestSites.at(3)));
        assertThat(restored.contentOf()).isEqualTo(1);
        assertThat(length(sites().head(variant).site())).isEqualTo("12");
        saved(sites().undo(variant, 4, TestSites.at(4)));
        assertThat(length(sites().head(variant).site())).isEqualTo("14");
        saved(sites().redo(variant, 5, TestSites.at(5)));
        assertThat(length(sites().head(variant).site())).isEqualTo("12");
    }

    @Test
    void sitesAreFoundByAnyWordOfTheirDesignationWhateverCaseAndAccents() {
        sites().create(TestSites.house("Müllerstraße 7"), "As planned", TestSites.at(0));
        sites().create(TestSites.house("Amselweg 11"), "With battery", TestSites.at(1));
        assertThat(designations("")).containsExactly("Amselweg 11", "Müllerstraße 7");
        assertThat(designations("MULLERSTRASSE")).containsExactly("Müllerstraße 7");
        assertThat(designations("11 amsel")).containsExactly("Amselweg 11");
        assertThat(designations("battery")).containsExactly("Amselweg 11");
        assertThat(designations("amsel 7")).isEmpty();
        assertThat(designations("%")).isEmpty();
        assertThat(designations("_1")).isEmpty();
    }

    @Test
    void theListFollowsTheNewestRevision() {
        VariantId first = variant();
        sites().create(TestSites.house("Amselweg 11"), "As planned", TestSites.at(1));
        saved(sites().change(
                        first, 1, List.of(new Edit("place.designation", "Larch lane 4", "Pine 9")), TestSites.at(2)));
        assertThat(designations("")).containsExactly("Pine 9", "Amselweg 11");
        assertThat(designations("larch")).isEmpty();
        SiteRow row = sites().list(SiteSearch.of("pine")).get(0);
        assertThat(row.latest().head()).isEqualTo(2);
        assertThat(row.latest().changedAt()).isEqualTo(TestSites.at(2).when());
        assertThat(row.latest().country()).isEqualTo("DE");
        assertThat(sites().find(row.id())).contains(row);
    }

    @Test
    void aSiteFileIsKeptAsItReads() {
        byte[] bytes = TestSites.HOUSE.getBytes(StandardCharsets.UTF_8);
        assertThat(sites().importFile("house.yaml", bytes, "As planned", TestSites.at(0)))
                .isInstanceOfSatisfying(ImportResult.Imported.class, imported -> {
                    assertThat(imported.head().site()).isEqualTo(TestSites.house());
                    assertThat(imported.head().revision().kind()).isEqualTo(RevisionKind.IMPORTED);
                });
        assertThat(sites().importFile("house.yaml", new byte[] {'x'}, "As planned", TestSites.at(1)))
                .isInstanceOf(ImportResult.Refused.class);
        assertThat(designations("")).hasSize(1);
    }

    @Test
    void manyWindowsAtOnceLoseNothing() throws Exception {
        VariantId variant = variant();
        ExecutorService windows = Executors.newFixedThreadPool(4);
        List<Future<?>> done = new ArrayList<>();
        for (int window = 0; window < 4; window++) {
            String path = List.of(LENGTH, "lights.cable.lengthM", "oven.designation", "lights.designation")
                    .get(window);
            done.add(windows.submit(() -> {
                for (int i = 1; i <= 10; i++) {
                    StoredSite head = sites().head(variant);
                    Edit edit = new Edit(path, TestSites.value(head.site(), path), Integer.toString(100 + i));
                    saved(sites().change(variant, head.revision().number(), List.of(edit), TestSites.at(i)));
                }
            }));
        }
        for (Future<?> window : done) window.get();
        windows.shutdown();
        assertThat(sites().revisions(variant))
                .extracting(Revision::number)
                .containsExactlyElementsOf(LongStream.rangeClosed(1, 41).boxed().toList());
        Site site = sites().head(variant).site();
        for (String path : List.of(LENGTH, "lights.cable.lengthM", "oven.designation", "lights.designation"))
            assertThat(TestSites.value(site, path)).as(path).isEqualTo("110");
    }

    @Test
    void theDifferenceOfTwoRevisionsIsToldFactByFact() {
        VariantId variant = variant();
        saved(change(variant, 1, "12", "13", 1));
        saved(sites().change(
                        variant, 2, List.of(new Edit("place.designation", "Larch lane 4", "Pine 9")), TestSites.at(2)));
        assertThat(sites().difference(new RevisionId(variant, 1), new RevisionId(variant, 3)))
                .containsExactly(
                        new Edit("house.place.designation", "Larch lane 4", "Pine 9"),
                        new Edit("house.oven.cable.lengthM", "12", "13"));
        assertThat(sites().difference(new RevisionId(variant, 3), new RevisionId(variant, 2)))
                .containsExactly(new Edit("house.place.designation", "Pine 9", "Larch lane 4"));
    }

    @Test
    void undoSaysWhatItChangedAndStandsInTheWayOfALateEdit() {
        VariantId variant = variant();
        saved(change(variant, 1, "12", "13", 1));
        Revision undone = saved(sites().undo(variant, 2, TestSites.by("Sam", 2)));
        assertThat(undone.edits()).containsExactly(new Edit("house.oven.cable.lengthM", "13", "12"));
        assertThat(change(variant, 2, "13", "14", 3))
                .isInstanceOfSatisfying(
                        Conflicting.class,
                        conflict -> assertThat(conflict.since()).containsExactly(undone));
    }

    @Test
    void aVariantBeginsAsACopyAndGoesItsOwnWay() {
        VariantId first = variant();
        saved(change(first, 1, "12", "13", 1));
        StoredSite copy = sites().newVariant(first, "Smaller inverter", TestSites.at(2));
        VariantId second = copy.revision().id().variant();
        saved(change(second, 1, "13", "20", 3));
        assertThat(length(sites().head(first).site())).isEqualTo("13");
        assertThat(length(sites().head(second).site())).isEqualTo("20");
        SiteRow row = sites().list(SiteSearch.of("smaller")).get(0);
        assertThat(row.variants()).extracting(variant -> variant.id()).containsExactly(first, second);
        assertThat(row.latest().id()).isEqualTo(second);
        assertThat(sites().difference(new RevisionId(first, 2), new RevisionId(second, 2)))
                .containsExactly(new Edit("house.oven.cable.lengthM", "13", "20"));
    }

    @Test
    void aDuplicateIsASiteOfItsOwn() {
        VariantId first = variant();
        StoredSite copy = sites().duplicate(first, TestSites.at(1));
        saved(change(copy.revision().id().variant(), 1, "12", "20", 2));
        assertThat(length(sites().head(first).site())).isEqualTo("12");
        assertThat(sites().list(SiteSearch.of("larch"))).hasSize(2);
    }

    @Test
    void aRenamedVariantIsFoundByItsNewName() {
        VariantId variant = variant();
        sites().rename(variant, "With heat pump");
        assertThat(designations("heat larch")).hasSize(1);
        assertThat(designations("planned")).isEmpty();
        saved(change(variant, 1, "12", "13", 1));
        assertThat(designations("heat larch")).hasSize(1);
    }

    @Test
    void anArchivedSiteIsOutOfTheWayAndStillThere() {
        VariantId variant = variant();
        SiteRow row = sites().list(SiteSearch.of("")).get(0);
        sites().archive(row.id(), TestSites.at(5).when());
        assertThat(sites().list(SiteSearch.of(""))).isEmpty();
        assertThat(sites().list(new SiteSearch("larch", SiteSearch.Shelf.ARCHIVED, 10)))
                .extracting(SiteRow::archivedAt)
                .containsExactly(TestSites.at(5).when());
        assertThat(length(sites().head(variant).site())).isEqualTo("12");
        sites().unarchive(row.id());
        assertThat(sites().list(SiteSearch.of(""))).containsExactly(row);
        assertThat(sites().list(new SiteSearch("", SiteSearch.Shelf.BOTH, 10))).containsExactly(row);
    }

    @Test
    void aVariantThatIsNotThereIsSaid() {
        VariantId nowhere = new VariantId("0123456789abcdef");
        assertThatThrownBy(() -> sites().head(nowhere)).isInstanceOf(NoSuchElementException.class);
        assertThatThrownBy(() -> sites().undo(nowhere, 1, TestSites.at(0))).isInstanceOf(NoSuchElementException.class);
        assertThat(sites().find(nowhere)).isEmpty();
    }

    private VariantId variant() {
        return sites().create(TestSites.house(), "As planned", TestSites.at(0))
                .revision()
                .id()
                .variant();
    }

    private ChangeResult change(VariantId variant, long base, String before, String after, int minute) {
        return sites().change(variant, base, List.of(new Edit(LENGTH, before, after)), TestSites.at(minute));
    }

    private static Revision saved(ChangeResult result) {
        assertThat(result).isInstanceOf(Saved.class);
        return ((Saved) result).head().revision();
    }

    private static String length(Site site) {
        return TestSites.value(site, LENGTH);
    }

    private List<String> designations(String text) {
        return sites().list(SiteSearch.of(text)).stream()
                .map(row -> row.latest().designation())
                .toList();
    }
}
