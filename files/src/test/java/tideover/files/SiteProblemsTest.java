package tideover.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One wrong thing in the cottage each, and the exact problem it must give: place, field, kind, what is filled in. */
class SiteProblemsTest {
    /** Marks in a case where the problem must be reported. */
    private static final String PLACE = "‸";

    /** What is changed, into what, and what is said of it. */
    record Case(String name, String old, String replacement, String expected) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Case> cases() {
        return Stream.of(
                new Case("file without a format", "format: 1\nhouse", "‸house", "format formatMissing | 1"),
                new Case("format of another day", "format: 1\n", "format: ‸2\n", "format formatOther | 2 | 1"),
                new Case("format in quotes", "format: 1\n", "format: ‸\"1\"\n", "format formatOther | \"1\" | 1"),
                new Case(
                        "unknown part of the file",
                        "evidence:",
                        "‸evidences:",
                        "evidences keyUnknownNear | evidences | evidence | format, house, plan, built, evidence"),
                new Case(
                        "unknown section of the house",
                        "  electrodes:",
                        "  ‸rods:",
                        "house.rods keyUnknown | rods | " + String.join(", ", SiteKeys.HOUSE_PARTS)),
                new Case(
                        "the supply cannot be replanned",
                        "  removed: [oven]",
                        "  removed: [oven]\n  ‸supply: {lines: THREE}",
                        "plan.supply keyUnknown | supply | " + String.join(", ", SiteKeys.PLAN_PARTS)),
                new Case(
                        "unknown field of a cable",
                        "{lengthM: 6}",
                        "{‸lenghtM: 6}",
                        "main-board.cable.lenghtM keyUnknownNear | lenghtM | lengthM | lengthM, crossSectionMm2,"
                                + " neutralCrossSectionMm2, protectiveCrossSectionMm2, material, insulation, method,"
                                + " groupedCircuits, ambientDegC"),
                new Case(
                        "unknown key far from every field",
                        "{lengthM: 6}",
                        "{‸colour: 6}",
                        "main-board.cable.colour keyUnknown | colour | lengthM, crossSectionMm2,"
                                + " neutralCrossSectionMm2, protectiveCrossSectionMm2, material, insulation, method,"
                                + " groupedCircuits, ambientDegC"),
                new Case(
                        "thing without an id",
                        "{id: rod, earth: MAIN_EARTH",
                        "‸{earth: MAIN_EARTH",
                        "electrodes[1].id keyMissing | id | id"),
                new Case(
                        "evidence without an origin",
                        "{about: supply.loopImpedanceOhm, origin: MEASURED, ",
                        "‸{about: supply.loopImpedanceOhm, ",
                        "evidence[2].origin keyMissing | origin | origin"),
                new Case(
                        "cable that is a number", "{lengthM: 6}", "‸6", "main-board.cable mappingExpected | cable | 6"),
                new Case(
                        "thing that is a word",
                        "    - {id: rod, earth: MAIN_EARTH, resistanceOhm: 22.5}",
                        "    - ‸rod",
                        "electrodes[1] mappingExpected | electrodes[1] | rod"),
                new Case(
                        "conductors that are no list",
                        "terminals: [\"1\", \"3\"]",
                        "conductors: ‸L1",
                        "switch.conductors listExpected | conductors | L1"),
                new Case(
                        "section that is no list",
                        "  electrodes:\n    - {",
                        "  electrodes:\n    ‸{",
                        "electrodes listExpected | electrodes | {…}"),
                new Case(
                        "list where one number belongs",
                        "year: 1998",
                        "year: ‸[1998]",
                        "lights.year valueExpected | year of installation"),
                new Case(
                        "number with its unit",
                        "{lengthM: 6}",
                        "{lengthM: ‸6 m}",
                        "main-board.cable.lengthM numberExpectedIn | length of cable | 6 m | m"),
                new Case(
                        "word where a plain number belongs",
                        "year: 1998",
                        "year: ‸long ago",
                        "lights.year numberExpected | year of installation | long ago"),
                new Case(
                        "number in quotes",
                        "{lengthM: 6}",
                        "{lengthM: ‸\"6\"}",
                        "main-board.cable.lengthM numberQuoted | length of cable | 6"),
                new Case(
                        "decimal comma",
                        "      cable: {lengthM: 6}",
                        "      cable:\n        lengthM: ‸6,5",
                        "main-board.cable.lengthM numberComma | length of cable | 6,5 | 6.5"),
                new Case(
                        "number that is none",
                        "{lengthM: 6}",
                        "{lengthM: ‸.nan}",
                        "main-board.cable.lengthM numberNotFinite | length of cable | .nan"),
                new Case(
                        "infinite number",
                        "{lengthM: 6}",
                        "{lengthM: ‸-.inf}",
                        "main-board.cable.lengthM numberNotFinite | length of cable | -.inf"),
                new Case(
                        "number too large for any machine",
                        "{lengthM: 6}",
                        "{lengthM: ‸1e999}",
                        "main-board.cable.lengthM numberNotFinite | length of cable | 1e999"),
                new Case(
                        "residual current in milliampere",
                        "      stayOn: MUST",
                        "      rcd: {ratedResidualCurrentA: ‸30}",
                        "lights.rcd.ratedResidualCurrentA numberRangeIn | rated residual current | 30 | 0.006 | 3"
                                + " | A"),
                new Case(
                        "negative length",
                        "{lengthM: 6}",
                        "{lengthM: ‸-6}",
                        "main-board.cable.lengthM numberRangeIn | length of cable | -6 | 0.1 | 2000 | m"),
                new Case(
                        "switch with five poles",
                        "poles: 2",
                        "poles: ‸5",
                        "switch.poles numberRange | poles of islanding switch | 5 | 1 | 4"),
                new Case(
                        "half a pole",
                        "poles: 2",
                        "poles: ‸2.5",
                        "switch.poles wholeExpected | poles of islanding switch | 2.5"),
                new Case(
                        "yes instead of true",
                        "lockable: true",
                        "lockable: ‸yes",
                        "isolator.lockable yesNoExpected | lockable | yes"),
                new Case(
                        "number as a text",
                        "edition: \"1983\"",
                        "edition: ‸1983",
                        "lights.edition textExpected | rules it was installed to | 1983"),
                new Case(
                        "text of blanks",
                        "edition: \"1983\"",
                        "edition: ‸\"  \"",
                        "lights.edition textEmpty | rules it was installed to"),
                new Case(
                        "text with a bell",
                        "edition: \"1983\"",
                        "edition: ‸\"19\\u000783\"",
                        "lights.edition textCharacter | rules it was installed to | U+0007"),
                new Case(
                        "text with half a character",
                        "edition: \"1983\"",
                        "edition: ‸\"19\\ud83d83\"",
                        "lights.edition textCharacter | rules it was installed to | U+D83D"),
                new Case(
                        "text of a page",
                        "edition: \"1983\"",
                        "edition: ‸" + "x".repeat(501),
                        "lights.edition textTooLong | rules it was installed to | 501 | 500"),
                new Case(
                        "enum word in small letters",
                        "kind: LIGHTING",
                        "kind: ‸lighting",
                        "lights.load.kind wordUnknownNear | kind of load | lighting | LIGHTING | SOCKETS, LIGHTING,"
                                + " FIXED, COOKING, HEAT_PUMP, WATER_HEATER, CAR_CHARGER, SAUNA, PUMP, MOTOR,"
                                + " VENTILATION, CONTROL, MEDICAL, SUB_SUPPLY"),
                new Case(
                        "enum word nobody knows",
                        "stayOn: MUST",
                        "stayOn: ‸PERHAPS",
                        "lights.stayOn wordUnknown | wish to stay on | PERHAPS | MUST, MAY, NEVER"),
                new Case(
                        "day that is none",
                        "on: 2026-10-12",
                        "on: ‸2026-02-30",
                        "evidence[1].on dateExpected | day | 2026-02-30"),
                new Case(
                        "day in another order",
                        "on: 2026-10-12",
                        "on: ‸12.10.2026",
                        "evidence[1].on dateExpected | day | 12.10.2026"),
                new Case(
                        "country by name",
                        "country: DE",
                        "country: ‸Germany",
                        "place.country countryUnknown | Germany"),
                new Case(
                        "country by habit",
                        "country: DE",
                        "country: ‸UK",
                        "place.country countryUnknownNear | UK | GB"),
                new Case(
                        "time zone without a place",
                        "timeZone: Europe/Berlin",
                        "timeZone: ‸CET+1",
                        "place.timeZone timeZoneUnknown | CET+1"),
                new Case(
                        "conductor twice",
                        "fedFrom: supply, conductors: [L1, N, PE]",
                        "fedFrom: supply, conductors: [L1, N, PE, ‸N]",
                        "meter.conductors listTwice | conductors | N"),
                new Case(
                        "cable without a line",
                        "fedFrom: supply, conductors: [L1, N, PE]",
                        "fedFrom: supply, conductors: ‸[N, PE]",
                        "meter.conductors noLine"),
                new Case(
                        "N beside PEN",
                        "fedFrom: supply, conductors: [L1, N, PE]",
                        "fedFrom: supply, conductors: ‸[L1, N, PEN]",
                        "meter.conductors nAndPen"),
                new Case(
                        "PE beside PEN",
                        "fedFrom: supply, conductors: [L1, N, PE]",
                        "fedFrom: supply, conductors: ‸[L1, PE, PEN]",
                        "meter.conductors peAndPen"),
                new Case("id with capitals", "{id: rod,", "{id: ‸Rod,", "electrodes[1].id idForm | Rod"),
                new Case(
                        "id of something every house has",
                        "{id: rod,",
                        "{id: ‸main-earth,",
                        "main-earth.id idReserved | main-earth"),
                new Case("one id for two things", "{id: rod,", "{id: ‸meter,", "meter.id idTwice | meter | 12"),
                new Case(
                        "thing of another kind in the plan",
                        "{id: earth-switch,",
                        "{id: ‸rod,",
                        "rod.id kindChanged | rod | electrodes | neutralEarthSwitches"),
                new Case(
                        "fed from nothing",
                        "      fedFrom: switch",
                        "      fedFrom: ‸transformer-station",
                        "main-board.fedFrom thingUnknown | supplied from | transformer-station"),
                new Case(
                        "fed from a misspelt thing",
                        "      fedFrom: switch",
                        "      fedFrom: ‸swich",
                        "main-board.fedFrom thingUnknownNear | supplied from | swich | switch"),
                new Case(
                        "fed from an electrode",
                        "      fedFrom: switch",
                        "      fedFrom: ‸rod",
                        "main-board.fedFrom thingOfOtherKind | supplied from | rod | electrodes | supply, meters,"
                                + " protectiveDevices, islandingSwitches, boards, rcdGroups, circuits, inverters"),
                new Case(
                        "fed from the earth",
                        "      fedFrom: switch",
                        "      fedFrom: ‸main-earth",
                        "main-board.fedFrom thingNotHere | supplied from | main-earth | supply,"
                                + " meters, protectiveDevices, islandingSwitches, boards, rcdGroups, circuits,"
                                + " inverters"),
                new Case(
                        "link to the supply's earth",
                        "earthAt: main-earth",
                        "earthAt: ‸supply",
                        "earth-switch.earthAt thingNotHere | earth end of the neutral–earth switch | supply |"
                                + " main-earth, meters, protectiveDevices, islandingSwitches, electrodes,"
                                + " boards, rcdGroups, circuits, inverters"),
                new Case(
                        "neutral at what the plan takes out",
                        "neutralAt: switch",
                        "neutralAt: ‸oven",
                        "earth-switch.neutralAt thingRemoved | neutral end of the neutral–earth switch | oven"),
                new Case(
                        "neutral shared with itself",
                        "sharedNeutralWith: [lights]",
                        "sharedNeutralWith: [‸oven]",
                        "oven.sharedNeutralWith thingItself | circuits on the same neutral | oven"),
                new Case(
                        "removed thing that was never there",
                        "removed: [oven]",
                        "removed: [‸garage]",
                        "plan.removed thingUnknown | removed things | garage"),
                new Case(
                        "advice accepted nowhere",
                        "place: main-board,",
                        "place: ‸mainboard,",
                        "plan.accepted[1].place thingUnknownNear | place of the finding | mainboard | main-board"),
                new Case(
                        "advice of no check",
                        "check: rcd.selectivity",
                        "check: ‸selectivity",
                        "plan.accepted[1].check checkForm | selectivity"),
                new Case(
                        "lines in a circle by the plan",
                        "      fedFrom: switch",
                        "      fedFrom: ‸lights",
                        "main-board.fedFrom loopOfLines | main-board ← lights ← main-board"),
                new Case(
                        "neutrals in a circle",
                        "      fedFrom: switch",
                        "      fedFrom: switch\n      neutralFrom: ‸lights",
                        "main-board.neutralFrom loopOfNeutrals | main-board ← lights ← main-board"),
                new Case(
                        "evidence about nothing",
                        "about: house,",
                        "about: ‸garage,",
                        "evidence[1].about thingUnknown | what the evidence is about | garage"),
                new Case(
                        "evidence about a field that is none",
                        "about: supply.loopImpedanceOhm",
                        "about: ‸supply.loopImpedance",
                        "evidence[2].about factUnknownNear | supply.loopImpedance | supply.loopImpedanceOhm | "
                                + String.join(
                                        ", ", TestSites.TABLE.form("supply").fieldPaths())),
                new Case(
                        "evidence about a field far from all",
                        "about: supply.loopImpedanceOhm",
                        "about: ‸supply.smell",
                        "evidence[2].about factUnknown | supply.smell | "
                                + String.join(
                                        ", ", TestSites.TABLE.form("supply").fieldPaths())),
                new Case(
                        "evidence twice",
                        "about: supply.loopImpedanceOhm",
                        "about: ‸house",
                        "evidence[2] evidenceTwice | house | 77"),
                new Case(
                        "terminal without its port",
                        "from: request/J1:5",
                        "from: ‸J1:5",
                        "wires.cores[1].from terminalForm | beginning of core | J1:5"),
                new Case(
                        "terminal that the port has not",
                        "from: request/J1:5",
                        "from: ‸bus/D2",
                        "wires.cores[1].from terminalUnknown | beginning of core | D2 | bus | D1, D0, D1/2, D0/2"),
                new Case(
                        "terminal of what is no port",
                        "to: coil/A1",
                        "to: ‸switch/A1",
                        "wires.cores[1].to thingOfOtherKind | end of core | switch | islandingSwitches |"
                                + " controlPorts, busPorts"),
                new Case(
                        "one terminal for the cable and for the cable onwards",
                        "passThrough: [D1/2, D0/2]",
                        "passThrough: ‸[D1, D0/2]",
                        "bus.passThrough terminalTwice | D1"),
                new Case(
                        "terminal twice in one port",
                        "terminals: [A1, A2]",
                        "terminals: [A1, ‸A1]",
                        "coil.terminals listTwice | control terminals | A1"),
                new Case(
                        "grid meter that was never built",
                        "gridMeter: meter",
                        "gridMeter: ‸spare-meter",
                        "settings.gridMeter thingLeftOut | meter that sees the grid | spare-meter"),
                new Case(
                        "cable that became a board",
                        "built:",
                        "built:\n  boards: [{id: ‸wires}]",
                        "wires.id kindChanged | wires | controlCables | boards"),
                new Case(
                        "swapped thing that was never there",
                        "swapped: [inverter]",
                        "swapped: [‸garage]",
                        "built.swapped thingUnknown | swapped devices | garage"),
                new Case(
                        "lines in a circle as built",
                        "built:",
                        "built:\n  boards: [{id: main-board, fedFrom: ‸lights}]",
                        "main-board.fedFrom loopOfLines | main-board ← lights ← main-board"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void aMistakeIsToldWithItsPlaceAndHowToMendIt(Case mistake) {
        String marked = TestSites.cottageWith(mistake.old(), mistake.replacement());
        int at = marked.indexOf(PLACE);
        int line = (int) marked.substring(0, at).chars().filter(c -> c == '\n').count() + 1;
        int column = at - marked.lastIndexOf('\n', at);
        assertThat(TestSites.problems(marked.replace(PLACE, "")))
                .containsExactly("%d:%d %s".formatted(line, column, mistake.expected()));
    }

    @Test
    void theCottageItselfIsSound() {
        assertThat(TestSites.problems(TestSites.cottage())).isEmpty();
    }

    @Test
    void severalMistakesAreToldInOneGoInTheOrderOfTheFile() {
        String text = TestSites.cottageWith("year: 1998", "year: 98")
                .replace("lines: ONE", "lines: TWO")
                .replace("fedFrom: switch", "fedFrom: swich")
                .replace("lockable: true", "lockable: 1");
        assertThat(TestSites.problems(text))
                .extracting(problem -> problem.split(" ")[2])
                .containsExactly("wordUnknown", "numberRange", "thingUnknownNear", "yesNoExpected");
    }

    @Test
    void everyKindOfProblemHasACase() {
        Set<String> seen = new TreeSet<>();
        cases().forEach(mistake -> seen.add(mistake.expected().split(" ")[1]));
        List<String> without = new ArrayList<>();
        for (ProblemKind kind : ProblemKind.values()) {
            String name = kind.key().substring(ProblemKind.PREFIX.length());
            // Those of files and variants stand in SiteFilesTest and VariantTest.
            if (!seen.contains(name) && !name.startsWith("file") && !name.startsWith("variant")) without.add(name);
        }
        // No site file can have these: of variants, and of edits (SiteEditsTest).
        assertThat(without).containsExactly("factForm", "editPath");
    }
}
