package tideover.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.engine.site.Board;
import tideover.engine.site.Circuit;
import tideover.engine.site.Evidence;
import tideover.engine.site.FactId;
import tideover.engine.site.Insulation;
import tideover.engine.site.Material;
import tideover.engine.site.Meter;
import tideover.engine.site.Origin;
import tideover.engine.site.Site;
import tideover.engine.site.Status;
import tideover.engine.site.ThingId;

/** Whole files: what is no readable file, what a sound one yields, and what is filled in. */
class SiteFilesTest {
    @TempDir
    private Path folder;

    @Test
    void whatIsNoReadableFileIsTold() {
        Path missing = folder.resolve("missing.yaml");
        assertThat(TestSites.problems(TestSites.FILES.read(missing)))
                .containsExactly("0:0 - fileMissing | " + ValueReader.shortened(missing.toString()));
        assertThat(TestSites.problems(TestSites.FILES.read(folder)))
                .containsExactly("0:0 - fileIsFolder | " + ValueReader.shortened(folder.toString()));
        Path device = Path.of("/dev/null");
        Assumptions.assumeTrue(Files.exists(device));
        assertThat(TestSites.problems(TestSites.FILES.read(device))).containsExactly("0:0 - fileIsSpecial | /dev/null");
    }

    @Test
    void readingWritesNothing() throws IOException {
        Path file = folder.resolve("cottage.yaml");
        Files.writeString(file, TestSites.cottageWith("poles: 2", "poles: 9"));
        TestSites.FILES.read(file);
        try (var left = Files.list(folder)) {
            assertThat(left).containsExactly(file);
        }
    }

    @Test
    void theCottageIsReadAsWritten() {
        Site site = TestSites.site(TestSites.cottage());
        assertThat(site.house().place().designation()).isEqualTo("Weaver's cottage");
        assertThat(site.house().things().get(0)).isInstanceOf(Meter.class);
        Circuit lights = (Circuit) site.planned().get(new ThingId("lights"));
        assertThat(lights.cable().crossSectionMm2()).isEqualTo(1.5);
        assertThat(lights.edition()).isEqualTo("1983");
        assertThat(site.statuses())
                .containsEntry(new ThingId("main-board"), Status.ALTERED)
                .containsEntry(new ThingId("oven"), Status.REMOVED)
                .containsEntry(new ThingId("inverter"), Status.NEW);
        assertThat(site.origins().of(FactId.of("supply.loopImpedanceOhm"))).isEqualTo(Origin.MEASURED);
    }

    @Test
    void everyFactFilledInIsAnAssumptionAndListed() {
        Site site = TestSites.site(TestSites.cottage());
        List<String> assumed = new ArrayList<>();
        for (Evidence evidence : site.evidence())
            if (evidence.origin() == Origin.ASSUMED) assumed.add(evidence.about());
        assertThat(assumed)
                .containsExactly(
                        "supply.nominalVoltageV",
                        "main-board.cable.material",
                        "main-board.cable.insulation",
                        "main-board.cable.groupedCircuits",
                        "main-board.cable.ambientDegC",
                        "lights.cable.material",
                        "lights.cable.insulation",
                        "lights.cable.groupedCircuits",
                        "lights.load.powerFactorRatio",
                        "inverter.islandVoltageV",
                        "inverter.islandFrequencyHz");
        Circuit lights = (Circuit) site.planned().get(new ThingId("lights"));
        assertThat(lights.cable().material()).isEqualTo(Material.COPPER);
        assertThat(lights.cable().insulation()).isEqualTo(Insulation.PVC);
        assertThat(lights.cable().ambientDegC()).isEqualTo(25);
        // 'house' was read by a survey, but nobody read what was not written down.
        assertThat(site.origins().of(FactId.of("lights.cable.material"))).isEqualTo(Origin.ASSUMED);
        assertThat(site.origins().of(FactId.of("lights.cable.lengthM"))).isEqualTo(Origin.READ);
    }

    @Test
    void aPlannedChangeOfAFoundThingIsNotFilledUp() {
        Site site = TestSites.site(TestSites.cottage());
        Board planned = (Board) site.plan().things().stream()
                .filter(Board.class::isInstance)
                .findFirst()
                .orElseThrow();
        assertThat(planned.cable().lengthM()).isEqualTo(6);
        assertThat(planned.cable().material()).isNull();
    }

    @Test
    void evidenceForAValueNobodyStatedGivesWayToTheAssumption() {
        Site site = TestSites.site(
                TestSites.cottageWith("about: supply.loopImpedanceOhm", "about: supply.nominalVoltageV"));
        assertThat(site.evidence().stream().filter(e -> e.about().equals("supply.nominalVoltageV")))
                .containsExactly(Evidence.assumed(FactId.of("supply.nominalVoltageV")));
    }

    @Test
    void aFieldLeftEmptyIsAFactNotYetSurveyed() {
        Site site = TestSites.site(TestSites.cottageWith("year: 1998", "year:"));
        assertThat(((Circuit) site.planned().get(new ThingId("lights"))).year()).isNull();
    }

    @Test
    void aliasesAreReadAsIfWrittenOut() {
        String text = TestSites.cottageWith(
                        "cable: {lengthM: 5, crossSectionMm2: 10, method: C}", "cable: &c {lengthM: 5}")
                .replace("sharedNeutralWith: [lights]", "cable: *c");
        Site site = TestSites.site(text);
        Circuit oven = (Circuit) site.house().things().stream()
                .filter(thing -> thing.id().text().equals("oven"))
                .findFirst()
                .orElseThrow();
        assertThat(oven.cable().lengthM()).isEqualTo(5);
    }

    @Test
    void aByteOrderMarkIsNoMistake() {
        assertThat(TestSites.problems("\uFEFF" + TestSites.cottage())).isEmpty();
    }

    @Test
    void twoSpellingsOfOneSiteHaveOneDigest() {
        String other = TestSites.cottage()
                .replace("ratedCurrentA: 35", "ratedCurrentA: 3.5e1")
                .replace("resistanceOhm: 22.5", "resistanceOhm: 22.50")
                .replace("# A cottage for tests", "# The same cottage");
        SiteFileResult.Readable one = (SiteFileResult.Readable)
                TestSites.FILES.read("one", TestSites.cottage().getBytes(StandardCharsets.UTF_8));
        SiteFileResult.Readable two =
                (SiteFileResult.Readable) TestSites.FILES.read("two", other.getBytes(StandardCharsets.UTF_8));
        assertThat(two.digest()).isEqualTo(one.digest());
        assertThat(two.site()).isEqualTo(one.site());
    }

    @Test
    void everyExampleIsSound() {
        for (Path example : TestSites.examples())
            assertThat(TestSites.problems(TestSites.FILES.read(example)))
                    .as(example.toString())
                    .isEmpty();
    }
}
