package tideover.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.engine.site.Board;
import tideover.engine.site.Circuit;
import tideover.engine.site.ControlCable;
import tideover.engine.site.Core;
import tideover.engine.site.Evidence;
import tideover.engine.site.Inverter;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.Isolator;
import tideover.engine.site.NeutralEarthLink;
import tideover.engine.site.Site;
import tideover.engine.site.TerminalId;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/** A variant says what differs from its base, and its mistakes are reported at its own lines. */
class VariantTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void writeBase() throws IOException {
        Files.writeString(folder.resolve("cottage.yaml"), TestSites.cottage());
    }

    private SiteFileResult read(String edits) throws IOException {
        Path file = folder.resolve("variant.yaml");
        Files.writeString(file, "format: 1\nvariantOf: cottage.yaml\nstory: a test\n" + edits);
        return TestSites.FILES.read(file);
    }

    private Site site(String edits) throws IOException {
        SiteFileResult result = read(edits);
        assertThat(TestSites.problems(result)).isEmpty();
        return ((SiteFileResult.Readable) result).site();
    }

    private List<String> problems(String edits) throws IOException {
        return TestSites.problems(read(edits));
    }

    private static <T extends Thing> T thing(List<Thing> things, String id, Class<T> type) {
        return things.stream()
                .filter(thing -> thing.id().text().equals(id))
                .map(type::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aFactIsChangedWhereItIsStated() throws IOException {
        Site site = site("set: {switch.poles: 1, lights.cable.lengthM: 80, supply.loopImpedanceOhm: 0.9}");
        assertThat(thing(site.plan().things(), "switch", IslandingSwitch.class).poles())
                .isEqualTo(1);
        Circuit lights = thing(site.house().things(), "lights", Circuit.class);
        assertThat(lights.cable().lengthM()).isEqualTo(80);
        assertThat(lights.cable().crossSectionMm2()).isEqualTo(1.5);
        assertThat(site.house().supply().loopImpedanceOhm()).isEqualTo(0.9);
    }

    @Test
    void aThingInHouseAndPlanIsChangedInThePlan() throws IOException {
        Site site = site("set: {main-board.fedFrom: meter}");
        assertThat(thing(site.plan().things(), "main-board", Board.class).fedFrom())
                .isEqualTo(new ThingId("meter"));
    }

    @Test
    void aFactWithoutAValueIsForgottenInHouseAndPlanAndSoIsItsEvidence() throws IOException {
        Site site = site("set: {supply.loopImpedanceOhm: null, main-board.cable.lengthM: }");
        assertThat(site.house().supply().loopImpedanceOhm()).isNull();
        assertThat(site.evidence()).extracting(Evidence::about).doesNotContain("supply.loopImpedanceOhm");
        Board board = (Board) site.planned().get(new ThingId("main-board"));
        assertThat(board.cable().lengthM()).isNull();
        assertThat(board.cable().crossSectionMm2()).isEqualTo(10);
    }

    @Test
    void aWholeGroupIsMadeOrReplaced() throws IOException {
        Site site = site("set: {oven.cable.lengthM: 7, lights.protection: {kind: FUSE}}");
        assertThat(thing(site.house().things(), "oven", Circuit.class).cable().lengthM())
                .isEqualTo(7);
        assertThat(thing(site.house().things(), "lights", Circuit.class)
                        .protection()
                        .ratedCurrentA())
                .isNull();
    }

    @Test
    void thingsAreAddedToThePlan() throws IOException {
        Site site = site("add: {neutralEarthLinks: [{id: second-link, neutralAt: main-board, earthAt: rod}],"
                + " inverters: [{id: second, fedFrom: main-board}]}");
        assertThat(thing(site.plan().things(), "second-link", NeutralEarthLink.class)
                        .earthAt())
                .isEqualTo(new ThingId("rod"));
        assertThat(site.plan().things()).filteredOn(Inverter.class::isInstance).hasSize(2);
    }

    @Test
    void whatWasBuiltOtherwiseIsLaidOverThePlan() throws IOException {
        Site site = site("built: {islandingSwitches: [{id: switch, poles: 1}]}\nset: {isolator.lockable: true}");
        IslandingSwitch built = (IslandingSwitch) site.planned().get(new ThingId("switch"));
        assertThat(built.poles()).isEqualTo(1);
        assertThat(built.ratedCurrentA()).isEqualTo(40);
        assertThat(((IslandingSwitch) site.asPlanned().planned().get(new ThingId("switch"))).poles())
                .isEqualTo(2);
        assertThat(thing(site.built().things(), "isolator", Isolator.class).lockable())
                .isTrue();
    }

    @Test
    void anotherDeviceWithOtherTerminalsIsWiredAnew() throws IOException {
        String ports = "built:\n  controlPorts: [{id: coil, terminals: [B1, B2]}]\n";
        assertThat(problems(ports))
                .singleElement()
                .asString()
                .endsWith("wires.cores[1].to terminalUnknown | end of core | A1 | coil | B1, B2");
        assertThat(problems(ports + "  controlCables: [{id: wires, cores: [{from: request/J1:5, to: coil/B1}]}]"))
                .isEmpty();
    }

    @Test
    void aGroupInAListIsNamedByItsNumber() throws IOException {
        Site site = site("set: {wires.cores.1.to: coil/A2, wires.cores.2: {mark: RD}}");
        ControlCable wires = (ControlCable) site.planned().get(new ThingId("wires"));
        assertThat(wires.cores())
                .containsExactly(
                        new Core("BU", TerminalId.of("request/J1:5"), TerminalId.of("coil/A2")),
                        new Core("RD", null, null));
        assertThat(problems("set: {wires.cores.3.to: coil/A2}"))
                .containsExactly("4:7 set.wires.cores.3.to factForm | wires.cores.3.to");
    }

    @Test
    void whatIsAtARemovedThingGoesWithItAndItsCoresAreSpare() throws IOException {
        Site site = site("remove: [switch, earth-switch]\nset: {main-board.fedFrom: meter}");
        assertThat(site.planned().keySet().stream().map(ThingId::text))
                .doesNotContain("switch", "switch-below", "coil")
                .contains("request");
        ControlCable wires = (ControlCable) site.planned().get(new ThingId("wires"));
        assertThat(wires.cores()).containsExactly(new Core("BU", null, null), new Core("2", null, null));
    }

    @Test
    void aThingIsTakenOutWithAllThatIsSaidOfIt() throws IOException {
        Site site = site("remove: [oven, earth-switch]");
        assertThat(site.house().things()).extracting(thing -> thing.id().text()).doesNotContain("oven");
        assertThat(site.plan().things()).extracting(thing -> thing.id().text()).doesNotContain("earth-switch");
        assertThat(site.plan().removed()).isEmpty();
    }

    @Test
    void mistakesAreReportedAtTheVariantsLine() throws IOException {
        assertThat(problems("set:\n  switch.poles: 7\n  swich.poles: 2\n  nonsense: 1\n  lights.colour: red\n"))
                .containsExactly(
                        "5:17 switch.poles numberRange | poles of islanding switch | 7 | 1 | 4",
                        "6:3 set.swich.poles thingUnknownNear | set.swich.poles | swich | switch",
                        "7:3 set.nonsense factForm | nonsense",
                        "8:3 lights.colour keyUnknown | colour | "
                                + String.join(
                                        ", ", TestSites.TABLE.form("circuits").names()));
        assertThat(problems("remove: [oven, garden-shed]\nadd: {boards: 1, rods: []}\nsets: 1"))
                .containsExactly(
                        "4:16 remove thingUnknown | remove | garden-shed",
                        "5:15 add.boards listExpected | add.boards | 1",
                        "5:18 add.rods keyUnknown | rods | " + String.join(", ", SiteKeys.PLAN_PARTS),
                        "6:1 sets keyUnknownNear | sets | set | format, variantOf, story, set, add, built, remove");
    }

    @Test
    void whatStillNamesARemovedThingIsReportedInTheBase() throws IOException {
        SiteFileResult.Refused refused = (SiteFileResult.Refused) read("remove: [meter]");
        assertThat(refused.problems()).extracting(InputProblem::file).allMatch(file -> file.endsWith("cottage.yaml"));
        assertThat(TestSites.problems(refused))
                .extracting(problem -> problem.split(" ")[2])
                .containsOnly("thingUnknown");
    }

    @Test
    void variantsStandOnOneAnother() throws IOException {
        Files.writeString(folder.resolve("one.yaml"), "format: 1\nvariantOf: cottage.yaml\nset: {switch.poles: 1}");
        Files.writeString(folder.resolve("two.yaml"), "format: 1\nvariantOf: one.yaml\nset: {lights.year: 2001}");
        SiteFileResult result = TestSites.FILES.read(folder.resolve("two.yaml"));
        Site site = ((SiteFileResult.Readable) result).site();
        assertThat(thing(site.plan().things(), "switch", IslandingSwitch.class).poles())
                .isEqualTo(1);
        assertThat(thing(site.house().things(), "lights", Circuit.class).year()).isEqualTo(2001);
    }

    @Test
    void aCircleOfVariantsIsRefused() throws IOException {
        Files.writeString(folder.resolve("one.yaml"), "format: 1\nvariantOf: two.yaml");
        Files.writeString(folder.resolve("two.yaml"), "format: 1\nvariantOf: one.yaml");
        assertThat(TestSites.problems(TestSites.FILES.read(folder.resolve("one.yaml"))))
                .containsExactly("2:12 variantOf variantOfItself | " + folder.resolve("one.yaml"));
    }

    @Test
    void aChainOfVariantsHasAnEnd() throws IOException {
        String base = "cottage.yaml";
        for (int i = 1; i <= 9; i++) {
            Files.writeString(folder.resolve(i + ".yaml"), "format: 1\nvariantOf: " + base);
            base = i + ".yaml";
        }
        assertThat(TestSites.problems(TestSites.FILES.read(folder.resolve("8.yaml"))))
                .isEmpty();
        assertThat(TestSites.problems(TestSites.FILES.read(folder.resolve("9.yaml"))))
                .containsExactly("2:12 variantOf variantChain | 8");
    }

    @Test
    void aMissingBaseIsReportedWhereItIsNamed() throws IOException {
        Path file = folder.resolve("orphan.yaml");
        Files.writeString(file, "format: 1\nvariantOf: nowhere.yaml");
        SiteFileResult.Refused refused = (SiteFileResult.Refused) TestSites.FILES.read(file);
        assertThat(refused.problems()).hasSize(1);
        assertThat(refused.problems().get(0).file()).isEqualTo(file.toString());
        assertThat(refused.problems().get(0).phrase().key()).isEqualTo(ProblemKind.FILE_MISSING.key());
        assertThat(refused.problems().get(0).line()).isEqualTo(2);
    }

    @Test
    void bytesWithoutAFolderCannotBeAVariant() {
        assertThat(TestSites.problems("format: 1\nvariantOf: cottage.yaml"))
                .containsExactly("2:12 variantOf variantWithoutFolder");
    }
}
