package tideover.reference.cells;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.rules.Digest;
import tideover.engine.site.Circuit;
import tideover.engine.site.Curve;
import tideover.engine.site.FactId;
import tideover.engine.site.LoadKind;
import tideover.engine.site.Site;
import tideover.engine.site.Status;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.files.Edit;
import tideover.files.EditResult;
import tideover.files.FieldTable;
import tideover.files.InputProblem;
import tideover.files.SiteEdits;
import tideover.files.SiteWriter;
import tideover.files.cells.CircuitCsv;
import tideover.files.cells.CircuitCsv.Listed;
import tideover.files.cells.CircuitCsvResult;
import tideover.papers.FactText;
import tideover.papers.Wording;
import tideover.reference.GeneratedSites;
import tideover.reference.Houses;

/** The circuit list as it goes through a spreadsheet and comes back. */
class CircuitCsvTest {

    private static final FieldTable TABLE = FieldTable.load();
    private static final Wording WORDING = Wording.of(Locale.ENGLISH, TABLE);
    private static final CircuitCsv LIST = new CircuitCsv(TABLE);
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
                  protection: {kind: MCB, curve: B, ratedCurrentA: 16, breakingCapacityA: 6000}
                - {id: garage, designation: Garage, fedFrom: board, conductors: [L2, N, PE]}
            plan:
              boards:
                - {id: grid-board, designation: Grid-side board, fedFrom: supply, conductors: [L1, L2, L3, N, PE]}
              circuits:
                - {id: oven, fedFrom: grid-board}
              removed: [garage]
            """;

    private static Site house() {
        return Houses.of(HOUSE);
    }

    private static CircuitCsvResult read(Site site, Listed listed, String csv) {
        return LIST.read(site, listed, "circuits.csv", csv.getBytes(StandardCharsets.UTF_8));
    }

    private static List<Edit> edits(Listed listed, String csv) {
        return edits(house(), listed, csv);
    }

    private static List<Edit> edits(Site site, Listed listed, String csv) {
        CircuitCsvResult result = read(site, listed, csv);
        assertThat(result).as(String.join("\n", sentences(result))).isInstanceOf(CircuitCsvResult.Read.class);
        return ((CircuitCsvResult.Read) result).edits();
    }

    /** Each as "line:column sentence". */
    private static List<String> sentences(CircuitCsvResult result) {
        return result instanceof CircuitCsvResult.Refused refused
                ? refused.problems().stream().map(CircuitCsvTest::sentence).toList()
                : List.of();
    }

    private static String sentence(InputProblem problem) {
        assertThat(problem.file()).isEqualTo("circuits.csv");
        return problem.line() + ":" + problem.column() + " " + WORDING.of(problem.phrase());
    }

    private static Circuit circuit(List<Edit> edits, String id) {
        EditResult result = EDITS.apply(house(), edits);
        assertThat(result).isInstanceOf(EditResult.Edited.class);
        return (Circuit) ((EditResult.Edited) result).site().planned().get(new ThingId(id));
    }

    static Stream<Site> manySites() {
        return Stream.concat(Houses.all().stream().map(Houses::read), GeneratedSites.sites(10));
    }

    @ParameterizedTest
    @MethodSource("manySites")
    void whatIsWrittenReadsBackWithoutADifference(Site site) {
        for (Listed listed : Listed.values()) {
            String csv = LIST.write(site, listed);
            assertThat(edits(site, listed, csv)).isEmpty();
            assertThat(edits(site, listed, '\ufeff' + csv)).isEmpty();
            // A spreadsheet may part columns and lines otherwise; no cell of these sites holds a separator in quotes.
            if (csv.indexOf('"') < 0)
                for (String separator : List.of(";", "\t")) {
                    if (csv.contains(separator)) continue;
                    assertThat(edits(site, listed, csv.replace(",", separator).replace("\r\n", "\n")))
                            .isEmpty();
                }
        }
    }

    @ParameterizedTest
    @MethodSource("manySites")
    void everyFactKnownOfACircuitStandsInItsRow(Site site) {
        Map<String, NamedCsvRecord> rows = new HashMap<>();
        for (NamedCsvRecord row : CsvReader.builder().ofNamedCsvRecord(LIST.write(site, Listed.LAST)))
            rows.put(row.getField("id"), row);
        int facts = 0;
        for (Thing thing : site.planned().values()) {
            if (!(thing instanceof Circuit)) continue;
            for (FactId fact : FactText.known(thing)) {
                assertThat(rows.get(thing.id().text()).getField(fact.field()))
                        .as(fact.toString())
                        .isNotBlank();
                facts++;
            }
        }
        assertThat(facts).isGreaterThanOrEqualTo(8 * rows.size());
    }

    @Test
    void whatStandsAtAPathIsWhatAnEditMeetsThere() {
        for (Path house : List.of(Houses.TOWN_HOUSE, Houses.EXAMPLES.resolve("as-built.yaml"))) {
            Site site = Houses.read(house);
            SiteEdits.Facts facts = EDITS.facts(site);
            List<Edit> edits = new ArrayList<>();
            for (Thing thing : site.planned().values())
                for (FactId fact : FactText.known(thing))
                    for (String side : List.of("", "house.", "plan.")) {
                        String there = facts.find(side + fact).orElse(null);
                        if (!fact.field().contains("[")) edits.add(new Edit(side + fact, there, there));
                    }
            assertThat(edits).hasSizeGreaterThan(1000);
            // None of them conflicts: each meets what was told.
            EditResult result = EDITS.apply(
                    site, edits.stream().filter(edit -> edit.before() != null).toList());
            assertThat(result).isInstanceOf(EditResult.Edited.class);
        }
    }

    @Test
    void theExampleOnThePageIsASoundList() throws IOException {
        Matcher csv = Pattern.compile("```csv\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(Houses.EXAMPLES.resolve("../docs/circuits-csv.md")));
        assertThat(csv.find()).isTrue();
        Site site = Houses.of(
                HOUSE.replace("id: board,", "id: main-board,").replace("fedFrom: board", "fedFrom: main-board"));
        assertThat(read(site, Listed.PLANNED, csv.group(1)))
                .isInstanceOfSatisfying(
                        CircuitCsvResult.Read.class,
                        read -> assertThat(read.added()).isEqualTo(2));
    }

    @Test
    void aHouseOfCircuitsAloneIsBuiltFromItsListAgain() {
        Site site = Houses.of(HOUSE.substring(0, HOUSE.indexOf("plan:")));
        String list = LIST.write(site, Listed.FOUND);
        Site bare = Houses.of(HOUSE.substring(0, HOUSE.indexOf("  circuits:")));
        EditResult back = EDITS.apply(bare, edits(bare, Listed.FOUND, list));
        // Of what was filled in nobody says so any more; it counts as assumed all the same.
        assertThat(((EditResult.Edited) back).site().house()).isEqualTo(site.house());
    }

    @Test
    void theHeaderHasTheNamesOfTheSiteFileAndOneRowStandsForEachCircuit() {
        String[] lines = LIST.write(house(), Listed.FOUND).split("\r\n");
        assertThat(lines).hasSize(3);
        assertThat(lines[0])
                .startsWith("id,designation,fedFrom,neutralFrom,conductors,cable.lengthM,cable.crossSectionMm2,")
                .contains(
                        ",protection.kind,protection.curve,protection.ratedCurrentA,",
                        ",load.powerW,",
                        ",importance,stayOn,")
                .doesNotContain("circuits.");
        assertThat(lines[1]).startsWith("oven,Oven,board,,L1 N PE,12,2.5,").contains(",MCB,B,16,6000,");
    }

    @Test
    void asFoundAsPlannedAndAsStatedLastAreDifferentLists() {
        assertThat(LIST.write(house(), Listed.FOUND)).contains("oven,Oven,board,", "garage,Garage");
        assertThat(LIST.write(house(), Listed.PLANNED))
                .contains("oven,Oven,grid-board,")
                .doesNotContain("garage");
        assertThat(LIST.write(house(), Listed.LAST))
                .contains("oven,Oven,grid-board,")
                .doesNotContain("garage");
        assertThat(edits(Listed.FOUND, "id,cable.lengthM\noven,13\n"))
                .containsExactly(new Edit("house.oven.cable.lengthM", "12", "13"));
        assertThat(edits(Listed.PLANNED, "id,cable.lengthM\noven,13\n"))
                .containsExactly(new Edit("plan.oven.cable.lengthM", "12", "13"));
        assertThat(edits(Listed.LAST, "id,cable.lengthM\noven,13\n"))
                .containsExactly(new Edit("oven.cable.lengthM", "12", "13"));
    }

    @Test
    void aRowWithANewIdAddsACircuit() {
        String csv = """
                id,designation,fedFrom,conductors,cable,protection,rcd,load.kind,load.powerW
                sauna,Sauna,board,L1-L3 N PE,5×2.5 18 m,C16,30 mA A,sauna,6 kW
                """;
        List<Edit> edits = edits(Listed.PLANNED, csv);
        assertThat(edits)
                .singleElement()
                .satisfies(edit -> assertThat(edit.path()).isEqualTo("plan.circuits.sauna"));
        Circuit sauna = circuit(edits, "sauna");
        assertThat(sauna.cable().lengthM()).isEqualTo(18);
        assertThat(sauna.protection().curve()).isEqualTo(Curve.C);
        assertThat(sauna.rcd().ratedResidualCurrentA()).isEqualTo(0.03);
        assertThat(sauna.load().kind()).isEqualTo(LoadKind.SAUNA);
        assertThat(sauna.load().powerW()).isEqualTo(6000);
        Site site = ((EditResult.Edited) EDITS.apply(house(), edits)).site();
        assertThat(site.statuses().get(new ThingId("sauna"))).isEqualTo(Status.NEW);
        assertThat(read(house(), Listed.PLANNED, csv))
                .isInstanceOfSatisfying(
                        CircuitCsvResult.Read.class,
                        read -> assertThat(read.added()).isEqualTo(1));
    }

    @Test
    void whatTheListDoesNotNameStaysAndAnEmptyCellForgets() {
        List<Edit> edits = edits(Listed.FOUND, "id,cable.lengthM,protection.breakingCapacityA\noven,,6000\n");
        assertThat(edits).containsExactly(new Edit("house.oven.cable.lengthM", "12", null));
        // The row ends early: of what would stand behind nothing is said.
        assertThat(edits(Listed.FOUND, "id,designation,cable.lengthM\noven,Oven\n"))
                .isEmpty();
        assertThat(edits(Listed.FOUND, "id,designation\n\n  ,\noven,Oven\n")).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "id;cable.lengthM;designation\noven;12,5;Oven\n",
                "id\tcable.lengthM\noven\t12,5\n",
                "ID;Cable.LengthM\r\noven;12,5 m\r\n",
                "\ufeffid;cable.lengthM\noven;12.5\n",
                "id,cable.lengthM\noven,\"12,5\"\n",
                "id;cable.lengthM;\noven;1250 cm;\n"
            })
    void separatorsDecimalCommasAndUnitsAreUnderstood(String csv) {
        assertThat(edits(Listed.FOUND, csv)).containsExactly(new Edit("house.oven.cable.lengthM", "12", "12.5"));
    }

    @Test
    void aPointBesideDecimalCommasMayPartThousands() {
        String csv = "id;cable.lengthM;load.powerW\noven;12,5;\ngarage;;1.500\n";
        assertThat(sentences(read(house(), Listed.FOUND, csv)))
                .containsExactly("3:3 power of load: 1.500 can be read as 1500 and as 1,500. Write one of them.");
        assertThat(edits(Listed.FOUND, "id;load.powerW\ngarage;1.500\n"))
                .containsExactly(new Edit("house.garage.load.powerW", null, "1.5"));
    }

    @Test
    void allThatIsWrongIsToldAtOnceWithRowAndColumn() {
        String csv = """
                id,designation,fedFrm,conductors,cable.lengthM,protection,protection.kind,designation
                oven,Oven,,L1 N PE,long,B16,MCB,x
                Oven 2,,,,,,,
                ,Garden lights,,,,,,
                board,,,,,,,
                oven,,,,,,,
                garage,,,,,,,,more
                """;
        assertThat(sentences(read(house(), Listed.PLANNED, csv)))
                .satisfiesExactly(
                        // The whole list of columns stands behind each.
                        text -> assertThat(text).startsWith("1:3 There is no column fedFrm. Did you mean fedFrom?"),
                        text -> assertThat(text)
                                .startsWith("1:7 The column protection holds what the column protection.kind"),
                        text -> assertThat(text).isEqualTo("1:8 The column designation is there twice. Keep one."),
                        text -> assertThat(text)
                                .isEqualTo("2:5 length of cable: found long. Write a number, such as 2.5 m."),
                        text -> assertThat(text).startsWith("3:1 The id Oven 2 has other signs than small letters"),
                        text -> assertThat(text).contains("4:1 The row has no id", "such as garden-lights"),
                        text -> assertThat(text).startsWith("5:1 board is no circuit."),
                        text -> assertThat(text)
                                .isEqualTo("6:1 The circuit oven has a row already, in line 2. Keep one."),
                        text -> assertThat(text).startsWith("7:1 The circuit garage is not in this list"),
                        text -> assertThat(text).startsWith("7:9 The row has 9 cells, but there are 8 columns."));
    }

    @Test
    void whatASiteFileWouldRefuseIsRefusedAtItsCell() {
        String csv = """
                id,fedFrom,conductors,cable.lengthM,cable.crossSectionMm2,sharedNeutralWith
                oven,bord,L1 N PE,5000,2.5,
                garage,board,N PE,4,5x2.5,oven cellar
                sauna,nowhere,L1 N PE,0,1.5,
                """;
        assertThat(sentences(read(house(), Listed.FOUND, csv.replace("5x2.5", "2.5"))))
                .satisfiesExactlyInAnyOrder(
                        text -> assertThat(text).startsWith("2:2 ").contains("bord", "board"),
                        text -> assertThat(text).startsWith("2:4 length of cable: 5000 is outside 0.1 to 2000 m."),
                        text -> assertThat(text).startsWith("3:3 "),
                        text -> assertThat(text).startsWith("3:6 ").contains("cellar"),
                        text -> assertThat(text).startsWith("4:2 ").contains("nowhere"),
                        text -> assertThat(text).startsWith("4:4 length of cable: 0 is outside"));
        assertThat(sentences(read(house(), Listed.FOUND, csv)))
                .anySatisfy(text -> assertThat(text).contains("3:5 ", "5x2.5 has 5 conductors; stated are N PE"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "''                       | The list is empty",
                "designation,fedFrom      | There is no column id",
                "'id,designation\noven,\"Oven\noven,x' | 2:1 A quotation mark is opened in this row and never closed",
                "'id,designation\noven,\"Ov\"en' | 2:1 A quotation mark is opened",
            })
    void aTextThatIsNoListIsRefused(String csv, String says) {
        assertThat(sentences(read(house(), Listed.FOUND, csv)))
                .singleElement()
                .asString()
                .contains(says);
    }

    @Test
    @Timeout(20)
    void hostileListsAreRefusedInTime() {
        String blanks = " ".repeat(1_000_000);
        assertThat(sentences(read(
                        house(),
                        Listed.FOUND,
                        "id;cable.lengthM;rcd;protection;conductors\n" + "oven;1,1" + blanks + "x,;3" + blanks + "L;B"
                                + blanks + "?;3" + blanks + "x\n")))
                .hasSize(4)
                .allMatch(text -> text.contains("longer than anything that stands here"));
        assertThat(sentences(read(house(), Listed.FOUND, "id\n" + "a\n".repeat(1_000_000))))
                .containsExactly(
                        "0:0 The list has 1000000 rows; a house takes 1000 at most. Look whether it is the right file.");
        StringBuilder thousand = new StringBuilder("id,fedFrom,cable\n");
        for (int i = 0; i < 1000; i++) thousand.append("c").append(i).append(",board,3×1.5 12 m\n");
        assertThat(read(house(), Listed.PLANNED, thousand.toString())).isInstanceOf(CircuitCsvResult.Read.class);
    }

    @Test
    void otherEncodingsAndHugeFilesAreRefused() {
        for (Charset charset : List.of(StandardCharsets.UTF_16, StandardCharsets.UTF_16LE, StandardCharsets.ISO_8859_1))
            assertThat(sentences(LIST.read(
                            house(), Listed.FOUND, "circuits.csv", "id,designation\noven,Küche\n".getBytes(charset))))
                    .containsExactly("0:0 The list is not written in UTF-8. Save it as CSV in UTF-8.");
        byte[] huge = new byte[5_000_000];
        Arrays.fill(huge, (byte) 'a');
        assertThat(sentences(LIST.read(house(), Listed.FOUND, "circuits.csv", huge)))
                .singleElement()
                .asString()
                .contains("larger than 4 MiB");
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "=1+1",
                "+49 170 1",
                "-2+3",
                "@sum",
                "\t=1",
                "=cmd|' /C calc'!A0",
                "'=1",
                "''=1",
                "'-5",
                " =1",
                "-5",
                "'n",
                "＝1",
                "a,b",
                "a;b",
                "\"quoted\"",
                "two\nlines",
                "  spaced  ",
                "'",
                "=",
                "- list"
            })
    void noTextBecomesAFormulaAndEveryTextComesBack(String text) {
        Site site = ((EditResult.Edited)
                        EDITS.apply(house(), List.of(new Edit("house.oven.designation", "Oven", text))))
                .site();
        String csv = LIST.write(site, Listed.FOUND);
        String cell = csv.lines().skip(1).collect(Collectors.joining("\n")).substring("oven,".length());
        String shown = cell.startsWith("\"") ? cell.substring(1) : cell;
        assertThat(shown).doesNotMatch("(?s)[\\s]*[=@\\t\\r＝＋－＠].*");
        if (!text.equals("-5")) assertThat(shown).doesNotMatch("(?s)[\\s]*[+-].*");
        assertThat(edits(site, Listed.FOUND, csv)).isEmpty();
        // Whoever reads it into the house as it was gets the text as it was.
        assertThat(edits(Listed.FOUND, csv)).containsExactly(new Edit("house.oven.designation", "Oven", text));
    }

    @Test
    void theDigestIsThatOfTheSameSiteOnceAListIsPutIn() {
        Site site = Houses.read(Houses.TOWN_HOUSE);
        String csv = LIST.write(site, Listed.LAST);
        EditResult result = EDITS.apply(site, edits(site, Listed.LAST, csv));
        Digest digest = ((EditResult.Edited) result).digest();
        assertThat(digest).isEqualTo(new SiteWriter(TABLE).digest(site));
    }
}
