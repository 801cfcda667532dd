package tideover.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.assessment.Assessment;
import tideover.engine.installation.Installation;
import tideover.engine.network.house.FlowStudy;
import tideover.engine.network.house.HouseFlow;
import tideover.engine.network.house.Regime;
import tideover.engine.rules.Digest;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Outcome;
import tideover.engine.rules.Phrase;
import tideover.engine.site.Circuit;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Site;
import tideover.files.FieldTable;
import tideover.papers.NetworkWording;
import tideover.papers.Stamp;
import tideover.papers.Wording;
import tideover.papers.handover.Handover;
import tideover.papers.handover.OperatorLetter;
import tideover.reference.GeneratedSites;
import tideover.reference.Houses;

/** The papers as they lie on the table of an inspector. */
class HandoverTest {

    private static final Wording WORDING = Wording.of(Locale.ENGLISH, FieldTable.load());
    private static final Stamp STAMP = new Stamp(Digest.of("revision"), LocalDate.of(2026, 11, 25));
    private static final Path NOT_ASKED = Houses.EXAMPLES.resolve("arrangements/operator-not-asked.yaml");
    private static final Path ALL_STAYS_ON = Houses.EXAMPLES.resolve("troubled/everything-stays-on.yaml");
    private static final Map<Path, PrintedPaper> PRINTED = new ConcurrentHashMap<>();

    /** Three sound houses, one with much open, one with much not met. */
    static Stream<Path> houses() {
        return Stream.of(Houses.TOWN_HOUSE, Houses.FARMHOUSE, Houses.TERRACE, NOT_ASKED, ALL_STAYS_ON);
    }

    private static Assessment assessment(Path house) {
        return Houses.explain(Houses.read(house));
    }

    private static PrintedPaper printed(Path house) {
        return PRINTED.computeIfAbsent(house, path -> printed(assessment(path)));
    }

    private static PrintedPaper printed(Assessment assessment) {
        return new PrintedPaper(Handover.of(assessment, WORDING, STAMP).pdf());
    }

    private static PrintedPaper letter(Path house) {
        return new PrintedPaper(
                OperatorLetter.of(assessment(house), WORDING, STAMP).pdf());
    }

    private static Wording wording(Assessment assessment) {
        return WORDING.with(assessment.installation());
    }

    @ParameterizedTest
    @MethodSource("houses")
    void theVerdictAndTheCautionsStandOnTheFirstPage(Path house) {
        assertThat(printed(house).pages().get(0).text())
                .contains(wording(assessment(house)).of(assessment(house).verdict()))
                .contains("More than one source feeds this installation")
                .contains("the licensed person who signs");
    }

    @ParameterizedTest
    @MethodSource("houses")
    void everyCircuitStandsOnItsSideOfTheDoubleLine(Path house) {
        Assessment assessment = assessment(house);
        Installation installation = assessment.installation();
        String list = printed(house).circuits();
        int line = list.indexOf("below this line nothing runs when the grid is gone");
        for (Circuit circuit : installation.circuits()) {
            int at = list.indexOf(wording(assessment).name(circuit.id()));
            assertThat(at).as(circuit.id().text()).isNotNegative();
            if (installation.staysOn(circuit))
                assertThat(at).as(circuit.id().text()).isLessThan(line);
            else
                assertThat(list.lastIndexOf(wording(assessment).name(circuit.id())))
                        .isGreaterThan(line);
        }
    }

    @ParameterizedTest
    @MethodSource("houses")
    void whatSourcesGiveIsSaidInTheSentencesOfTheCommandLine(Path house) {
        Assessment assessment = assessment(house);
        String paper = printed(house).text().replaceAll("\\s+", " ");
        FlowStudy study = assessment.studies().flow();
        if (study == null) {
            assertThat(paper).contains("says nothing of coincidence");
            return;
        }
        NetworkWording flows = new NetworkWording(WORDING, assessment.installation());
        for (OperatingState mode : List.of(OperatingState.CONNECTED, OperatingState.ISLAND_GRID_DEAD))
            assertThat(flows.sources((HouseFlow) study.flow(mode, Regime.DRAWING)))
                    .isNotEmpty()
                    .allSatisfy(sentence -> assertThat(paper).contains(sentence));
    }

    @Test
    void eachCircuitOfTheTownHouseIsToldWhatEndsAFaultThere() {
        // The site file: the inverter gives 24 A into a fault and shuts down within 0.15 s; RCDs act within 0.04 s.
        assertThat(printed(Houses.TOWN_HOUSE).text())
                .contains("Line to N, island, grid dead", "24 A · 0.15 s", "24 A · 0.04 s", "RCD FB1 Ground floor");
    }

    @ParameterizedTest
    @MethodSource("houses")
    void bothModesAreDrawnOnSheetsOfTheirOwn(Path house) {
        List<String> sheets = printed(house).pages().stream()
                .filter(PrintedPaper.Page::isSheet)
                .map(PrintedPaper.Page::text)
                .toList();
        assertThat(sheets).hasSize(2);
        assertThat(sheets.get(0)).contains("State: " + WORDING.word(OperatingState.CONNECTED));
        assertThat(sheets.get(1)).contains("State: " + WORDING.word(OperatingState.ISLAND_GRID_DEAD));
        for (Circuit circuit : assessment(house).installation().circuits())
            assertThat(sheets.get(0)).contains(wording(assessment(house)).name(circuit.id()));
    }

    @ParameterizedTest
    @MethodSource("houses")
    void everyFindingThatIsNotMetIsToldWithItsCalculation(Path house) {
        Assessment assessment = assessment(house);
        String text = printed(house).text();
        for (Finding finding : assessment.findings()) {
            if (finding.outcome() != Outcome.NOT_MET && finding.outcome() != Outcome.NOT_CERTAIN) continue;
            assertThat(text).contains(wording(assessment).of(finding));
            for (Phrase step : assessment.calculations().getOrDefault(finding.key(), List.of()))
                assertThat(text).contains(wording(assessment).of(step));
        }
    }

    @ParameterizedTest
    @MethodSource("houses")
    void everySourceIsNamedWithHowFarItWasCompared(Path house) {
        Assessment assessment = assessment(house);
        PrintedPaper paper = printed(house);
        int first = paper.bookmarks().stream()
                .filter(bookmark -> bookmark.name().equals("Sources"))
                .findFirst()
                .orElseThrow()
                .page();
        String sources = String.join(
                " ",
                paper.pages().subList(first - 1, paper.pages().size()).stream()
                        .map(PrintedPaper.Page::text)
                        .toList());
        for (Finding finding : assessment.findings())
            if (finding.source() != null && finding.outcome() != Outcome.NOT_APPLICABLE)
                assertThat(sources).contains(WORDING.word(finding.source().verification()));
        assertThat(sources).contains("Name and signature of the licensed person");
    }

    @ParameterizedTest
    @MethodSource("houses")
    void bookmarksLeadToTheirChapters(Path house) {
        PrintedPaper paper = printed(house);
        assertThat(paper.bookmarks())
                .extracting(PrintedPaper.Bookmark::name)
                .contains("Circuit list", "Findings", "Facts");
        for (PrintedPaper.Bookmark bookmark : paper.bookmarks())
            if (List.of(
                            "Open questions",
                            "One-line diagram",
                            "Circuit list",
                            "Findings",
                            "Facts",
                            "Assumptions",
                            "Sources")
                    .contains(bookmark.name()))
                assertThat(paper.pages().get(bookmark.page() - 1).text()).contains(bookmark.name());
    }

    @ParameterizedTest
    @MethodSource("houses")
    void nothingRunsOverTheEdgeOfItsPage(Path house) {
        for (PrintedPaper.Page page : printed(house).pages())
            assertThat(page.beyond()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("houses")
    void noPageIsEmpty(Path house) {
        // Head, foot and page number alone come to some eighty letters.
        for (PrintedPaper.Page page : printed(house).pages())
            assertThat(page.text()).hasSizeGreaterThan(200);
    }

    @ParameterizedTest
    @MethodSource("houses")
    void theTypefaceIsInTheFileAndHasEverySign(Path house) {
        assertThat(printed(house).looseFonts()).isEmpty();
        // The renderer prints a sign that no typeface has as a number sign, which no text of ours contains.
        assertThat(printed(house).text()).doesNotContain("#");
    }

    @ParameterizedTest
    @MethodSource("houses")
    void noKeyIsPrintedInPlaceOfItsText(Path house) {
        assertThat(printed(house).text())
                .doesNotContainPattern(Pattern.compile("\\b(check|handover|letter|report)\\.[a-z]"));
    }

    @Test
    void theSamePaperHasTheSameBytes() {
        Assessment assessment = assessment(Houses.TERRACE);
        byte[] first = Handover.of(assessment, WORDING, STAMP).pdf();
        assertThat(Handover.of(assessment, WORDING, STAMP).pdf()).isEqualTo(first);
        Stamp later = new Stamp(STAMP.revision(), STAMP.date().plusDays(1));
        assertThat(Handover.of(assessment, WORDING, later).pdf()).isNotEqualTo(first);
    }

    @Test
    void whatIsOnlyAssumedIsMarkedAmongTheFacts() {
        Site read = Houses.read(Houses.TERRACE);
        Site unsaid = new Site(read.house(), read.plan(), List.of());
        PrintedPaper paper = printed(Houses.explain(unsaid));
        assertThat(paper.text()).contains("Only assumed, so this stays open");
        List<String> chapters = new ArrayList<>();
        for (PrintedPaper.Page page : paper.pages()) if (page.text().contains(" assumed")) chapters.add(page.text());
        assertThat(chapters).hasSizeGreaterThan(2);
    }

    @Test
    void aNameIsPrintedAsItIsWritten() {
        Site site = Houses.with(Houses.TERRACE, List.of("oven.designation: '<b>Ofen & \"Herd\"</b> Духовка Φ1'"));
        assertThat(printed(Houses.explain(site)).circuits()).contains("<b>Ofen & \"Herd\"</b> Духовка Φ1");
    }

    @Test
    void theGridOperatorIsAskedWhatBecomesOfTheNeutral() {
        assertThat(letter(NOT_ASKED).text())
                .contains("what becomes of the neutral?")
                .contains("number of poles")
                .contains("Valley network");
        assertThat(printed(NOT_ASKED).text()).contains("what becomes of the neutral?");
    }

    @Test
    void anOperatorThatHasAnsweredIsAskedNothing() {
        assertThat(letter(Houses.TOWN_HOUSE).text())
                .contains("Nothing is open that only you can answer")
                .doesNotContain("what becomes of the neutral?");
        assertThat(printed(Houses.TOWN_HOUSE).text()).doesNotContain("To the grid operator");
    }

    /** Houses of many shapes, half surveyed too, and one of which nothing is known. */
    static Stream<Site> manySites() {
        Site bare = Houses.of("format: 1\nhouse:\n  place: {country: DE}\n  supply: {}\n");
        return Stream.concat(Stream.of(bare), GeneratedSites.sites(12));
    }

    @Tag("slow")
    @ParameterizedTest
    @MethodSource("manySites")
    void anyHouseGivesAPaperThatKeepsToItsPages(Site site) {
        PrintedPaper paper = printed(Houses.explain(site));
        for (PrintedPaper.Page page : paper.pages()) assertThat(page.beyond()).isEmpty();
        assertThat(paper.text()).doesNotContain("#");
        assertThat(paper.pages().stream().filter(PrintedPaper.Page::isSheet)).isNotEmpty();
    }
}
