package tideover.reference.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.assessment.FindingChange;
import tideover.engine.installation.Installation;
import tideover.engine.installation.control.ControlNet;
import tideover.engine.rules.Outcome;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.Site;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.colour.Colour;
import tideover.engine.wiring.colour.ConductorUse;
import tideover.engine.wiring.schedule.AsBuilt;
import tideover.engine.wiring.schedule.ControlSchedule;
import tideover.engine.wiring.schedule.CoreKind;
import tideover.engine.wiring.schedule.CoreRow;
import tideover.engine.wiring.schedule.Cut;
import tideover.engine.wiring.schedule.CuttingList;
import tideover.engine.wiring.schedule.Laying;
import tideover.engine.wiring.schedule.PartsList;
import tideover.engine.wiring.schedule.PowerRow;
import tideover.engine.wiring.schedule.PowerSchedule;
import tideover.engine.wiring.schedule.Schedules;
import tideover.engine.wiring.schedule.WiringTables;
import tideover.files.tables.TableFiles;
import tideover.reference.Houses;

/** Schedules and lists against what was read off the site files by hand. */
class ScheduleByHandTest {

    private static final WiringTables TABLES = TableFiles.wiring();

    private static Schedules schedules(Site site) {
        Installation installation = Installation.of(site);
        return Schedules.of(installation, ControlNet.of(installation), TABLES, 0.3);
    }

    private static PowerSchedule power(Site site) {
        return schedules(site).power();
    }

    private static PowerRow row(Site site, String thing, Conductor conductor) {
        return power(site).rows().stream()
                .filter(row -> row.thing().text().equals(thing) && row.conductor() == conductor)
                .findFirst()
                .orElseThrow();
    }

    private static String ends(PowerRow row) {
        return row.from().text() + " to " + row.to().text();
    }

    @Test
    void bothSidesOfTheSwitchBearItsOwnTerminalNames() {
        Site site = Houses.read(Houses.TOWN_HOUSE);
        assertThat(ends(row(site, "islanding-switch", Conductor.L2))).isEqualTo("FC1:L2 to QA1:3L2");
        assertThat(ends(row(site, "islanding-switch", Conductor.N))).isEqualTo("FC1:N to QA1:7N");
        assertThat(ends(row(site, "main-board", Conductor.L3))).isEqualTo("QA1:6T3 to UC2:L3");
        assertThat(ends(row(site, "main-board", Conductor.N))).isEqualTo("QA1:8N to UC2:N");
    }

    @Test
    void circuitThatIsMovedSaysWhereItBeganAndKeepsItsCable() {
        PowerRow hob = row(Houses.read(Houses.TOWN_HOUSE), "hob", Conductor.N);
        assertThat(ends(hob)).isEqualTo("FB3:N to Hob:N");
        assertThat(Objects.requireNonNull(hob.before()).text()).isEqualTo("FB1:N");
        assertThat(hob.laying()).isEqualTo(Laying.EXISTING);
        assertThat(hob.ferruleTo()).isNull();
    }

    @Test
    void circuitNobodyTouchesIsNotListed() {
        assertThat(power(Houses.read(Houses.TOWN_HOUSE)).rows())
                .noneMatch(row -> row.thing().text().equals("kitchen-sockets"))
                .noneMatch(row -> row.thing().text().equals("upper-board"));
    }

    @Test
    void neutralThatWasLeftOnAnotherBarIsListedFromThere() {
        Site site = Houses.with(Houses.TOWN_HOUSE, List.of("hob.neutralFrom: rcd-ground"));
        assertThat(ends(row(site, "hob", Conductor.L1))).isEqualTo("FB3:L1 to Hob:L1");
        assertThat(ends(row(site, "hob", Conductor.N))).isEqualTo("FB1:N to Hob:N");
    }

    @Test
    void linkRunsFromTheNeutralBarOverItsSwitchToTheMainEarthingTerminal() {
        List<String> link = power(Houses.read(Houses.TOWN_HOUSE)).rows().stream()
                .filter(row -> row.thing().text().equals("neutral-earth-switch"))
                .map(row -> ends(row) + ", " + row.conductor())
                .toList();
        assertThat(link).containsExactly("UC2:N to QC1:1, N", "QC1:2 to MET:PE, PE");
    }

    @Test
    void measuringNeutralEndsAtTheSecondNeutralTerminalBehindItsFuse() {
        Site site = Houses.with(Houses.TOWN_HOUSE, List.of("system-meter-in.secondNeutral: '11'"));
        List<PowerRow> neutrals = power(site).at(new ThingId("system-meter")).stream()
                .filter(row -> row.thing().text().equals("system-meter") && row.conductor() == Conductor.N)
                .toList();
        assertThat(neutrals).extracting(ScheduleByHandTest::ends).containsExactly("PG1:N to PG2:7", "UC4:N to PG2:11");
        assertThat(neutrals.get(1).via()).hasSize(1);
    }

    @Test
    void byPassStandsBesideTheSwitchWithItsOwnTerminals() {
        List<String> lines = power(Houses.read(Houses.TOWN_HOUSE)).rows().stream()
                .filter(row -> row.thing().text().equals("by-pass") && row.conductor() == Conductor.L2)
                .map(ScheduleByHandTest::ends)
                .toList();
        assertThat(lines).containsExactly("FC1:L2 to SF1:3", "SF1:4 to QA1:4T2");
    }

    @Test
    void inverterWithItsOwnChangeoverIsNotWiredToItself() {
        Site site = Houses.read(Houses.EXAMPLES.resolve("arrangements/backup-output.yaml"));
        assertThat(power(site).rows())
                .noneMatch(row -> row.thing().text().equals("inverter"))
                .anyMatch(row -> row.thing().text().equals("islanding-switch"));
    }

    /** Last column: standard, clause or note of {@code reference/electrical/designations-conductors.csv}. */
    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({
        "DE, L1, BN, IEC 60445:2021 6.2/7.3",
        "DE, L2, BK, IEC 60445:2021",
        "DE, L3, GY, IEC 60445:2021",
        "FR, N, BU, IEC 60445:2021",
        "GB, PE, GNYE, IEC 60445:2021",
        "AT, PEN, GNYE, IEC 60445:2021 with light-blue marks",
        "AU, L1, RD, AS/NZS 3000 3.8: red/white/blue",
        "AU, L2, WH, AS/NZS 3000 3.8",
        "AU, L3, BU, AS/NZS 3000 3.8",
        "NZ, N, BK, AS/NZS 3000 3.8: black or light blue",
        "AU, PE, GNYE, AS/NZS 3000 3.8",
    })
    void coloursOfToday(String country, ConductorUse use, String code, String source) {
        assertThat(TABLES.colours().find(country, use).orElseThrow().colour().code())
                .as(source)
                .isEqualTo(code);
    }

    /** Source: BS 7671:2001 A2 (red/yellow/blue lines, black neutral until March 2006), as in the same file. */
    @ParameterizedTest(name = "GB {0} in {1}: {2}")
    @CsvSource({"L1, 1995, RD", "L2, 1995, YE", "L3, 1995, BU", "N, 1995, BK", "L1, 2006, BN", "N, 2006, BU"})
    void coloursOfTheirYear(ConductorUse use, int year, String code) {
        assertThat(TABLES.colours().find("GB", use, year).orElseThrow().colour().code())
                .isEqualTo(code);
    }

    @Test
    void penBearsBlueMarksAtItsEnds() {
        assertThat(TABLES.colours().find("DE", ConductorUse.PEN).orElseThrow().endMark())
                .isEqualTo(Colour.find("BU").orElseThrow());
    }

    /** HD 308 S2: a cable with one line has a brown core; nobody makes one with a grey or black core alone. */
    @Test
    void cableForOneLineHasTheBrownCoreWhicheverLineItIsOn() {
        PowerRow dryer = row(Houses.read(Houses.TOWN_HOUSE), "dryer", Conductor.L3);
        assertThat(Objects.requireNonNull(dryer.colour()).code()).isEqualTo("BN");
        PowerRow sauna = row(Houses.read(Houses.TOWN_HOUSE), "sauna", Conductor.L3);
        assertThat(Objects.requireNonNull(sauna.colour()).code()).isEqualTo("GY");
    }

    @Test
    void marksThatAreNumbersAreNoColours() {
        assertThat(Colour.find("7")).isEmpty();
        assertThat(Colour.find("12")).isEmpty();
        assertThat(Colour.find("BUX")).isEmpty();
        assertThat(Colour.find("WH/BN").orElseThrow().code()).isEqualTo("WHBN");
    }

    /** Sleeves of DIN 46228-4 for 2.5 mm²: 8, 12 and 18 mm. */
    @ParameterizedTest(name = "stripped {0} m: {1} m")
    @CsvSource({"0.008, 0.008", "0.011, 0.008", "0.012, 0.012", "0.017, 0.012", "0.03, 0.018", "0.005, 0.008"})
    void ferruleIsTheLongestThatIsStrippedFor(double strippedLengthM, double sleeveLengthM) {
        assertThat(TABLES.ferrules().find(2.5, strippedLengthM).orElseThrow().sleeveLengthM())
                .isEqualTo(sleeveLengthM);
    }

    @Test
    void everyCoreIsListedSparesBridgesAndScreensToo() {
        ControlSchedule control = schedules(Houses.read(Houses.TOWN_HOUSE)).control();
        assertThat(kinds(control, "WG1"))
                .containsOnly(CoreKind.CORE, CoreKind.SPARE)
                .hasSize(12);
        assertThat(kinds(control, "WF1"))
                .containsExactly(CoreKind.CORE, CoreKind.CORE, CoreKind.CORE, CoreKind.SPARE, CoreKind.SCREEN);
        assertThat(kinds(control, "WG3")).containsOnly(CoreKind.BRIDGE);
        CoreRow supply = control.rows().get(1);
        assertThat(Objects.requireNonNull(supply.from()).text()).isEqualTo("TB1:X4:2");
        assertThat(Objects.requireNonNull(supply.to()).text()).isEqualTo("QA1:A2");
        assertThat(supply.labelFrom()).isEqualTo("WG1.2 QA1:A2");
    }

    private static List<CoreKind> kinds(ControlSchedule control, String run) {
        return control.rows().stream()
                .filter(row -> row.run().equals(run))
                .map(CoreRow::kind)
                .toList();
    }

    /** WD: 2 m of 16 mm², 1.5 m and 3 m of 10 mm², 18 m and 6 m of 4 mm², each 0.3 m longer. */
    @Test
    void cablesOfTheTownHouseAreCutAsAWhole() {
        CuttingList cutting = schedules(Houses.read(Houses.TOWN_HOUSE)).cutting();
        List<Cut> cables = cutting.cuts().stream()
                .filter(cut -> cut.stock().kind() == Cut.Kind.POWER_CABLE)
                .toList();
        assertThat(cables).extracting(cut -> cut.stock().crossSectionMm2()).containsExactly(16.0, 10.0, 4.0);
        assertThat(cables).allSatisfy(cut -> assertThat(cut.stock().cores()).isEqualTo(5));
        assertThat(cables.stream().map(cut -> "%.1f".formatted(cut.sumM()))).containsExactly("2.3", "5.1", "24.6");
    }

    @Test
    void partsAreWhatTheWorkPutsIn() {
        PartsList parts = schedules(Houses.read(Houses.TOWN_HOUSE)).parts();
        assertThat(parts.devices())
                .extracting(device -> device.id().text())
                .contains("islanding-switch", "neutral-earth-switch", "by-pass", "grid-board", "inverter", "battery")
                .doesNotContain("meter", "main-board", "upper-board");
        // Type B for heat pump and car charger, alike: two of one sort.
        assertThat(parts.protections())
                .anyMatch(alike -> alike.overcurrent() == null && alike.things().size() == 2);
        assertThat(parts.measuring())
                .singleElement()
                .satisfies(fuse -> assertThat(fuse.ratedCurrentA()).isEqualTo(1));
    }

    private static Site built(String lines) {
        try {
            return Houses.of(Files.readString(Path.of(Houses.TOWN_HOUSE.toString())) + "built:\n" + lines.indent(2));
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void whatIsBuiltAsPlannedHasNothingToTell() {
        assertThat(AsBuilt.of(Houses.read(Houses.TOWN_HOUSE)).isEmpty()).isTrue();
    }

    @Test
    void switchDeliveredInsteadOfAnotherIsUnknownButForWhatIsStatedAnew() {
        Site site = built("""
                swapped: [islanding-switch]
                islandingSwitches: [{id: islanding-switch, kind: CONTACTOR, poles: 4, ratedCurrentA: 63}]
                nameplates: [{id: plate, at: islanding-switch, serialNumber: A 17, firmware: "2.1"}]
                """);
        AsBuilt built = AsBuilt.of(site);
        assertThat(built.differences())
                .contains(
                        difference("islanding-switch.ratedCurrentA", AsBuilt.Kind.CHANGED),
                        difference("islanding-switch.largestBackupFuseA", AsBuilt.Kind.UNKNOWN_AGAIN))
                .doesNotContain(difference("islanding-switch.poles", AsBuilt.Kind.CHANGED))
                .noneMatch(each -> each.fact().field().equals("fedFrom"));
        assertThat(built.nameplates())
                .singleElement()
                .satisfies(plate -> assertThat(plate.serialNumber()).isEqualTo("A 17"));
        List<FindingChange> changes = FindingChange.between(Houses.assess(site.asPlanned()), Houses.assess(site));
        assertThat(changes)
                .anyMatch(change -> change.before() != null
                        && change.after() != null
                        && change.before().outcome() == Outcome.MET
                        && change.after().outcome() == Outcome.OPEN);
        // Its terminals are wired anew, and so is what begins at them.
        assertThat(power(site).rows()).anyMatch(row -> row.thing().text().equals("main-board"));
    }

    @Test
    void deviceDeliveredInPlaceOfAFoundOneIsWiredAnewOnBothSides() {
        Site site = built("swapped: [rcd-ground]");
        assertThat(row(site, "rcd-ground", Conductor.L1).laying()).isEqualTo(Laying.DIRECT);
        assertThat(row(site, "kitchen-sockets", Conductor.L1).laying()).isEqualTo(Laying.EXISTING);
    }

    private static AsBuilt.Difference difference(String fact, AsBuilt.Kind kind) {
        return new AsBuilt.Difference(FactId.of(fact), kind);
    }
}
