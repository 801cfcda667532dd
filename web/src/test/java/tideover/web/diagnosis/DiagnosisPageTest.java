package tideover.web.diagnosis;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tideover.papers.diagnosis.CallTrees;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.Screen;
import tideover.web.trial.Visitor;

@Tag("slow")
class DiagnosisPageTest extends BrowserTest {
    private static final String SWITCH_CLOSED = "seen=island-unloaded/position:islanding-switch%3Dclosed";
    private static final Pattern WAY = Pattern.compile("<a class=\"td-button\" href=\"([^\"#]+)#call\">");
    private static final Pattern THING = Pattern.compile("href=\"(/sites/[0-9a-f]+/things/[^\"#]+)\"");

    private static String page(String site) {
        return site + "/wiring/diagnosis";
    }

    private static Locator named(Page page, String part, String words) {
        return page.locator(part + " a").getByText(words, new Locator.GetByTextOptions().setExact(true));
    }

    @Test
    void theCallersTroubleIsWalkedOneQuestionAtATimeAndAnAnswerIsTakenBack() {
        String site = desk.importExample("town-house.yaml");
        Page page = open(pageWithoutScript(Screen.PHONE), site + "/wiring");
        page.locator("main a[href$='/wiring/diagnosis']").click();
        assertThat(page.locator(".td-diagnosis__troubles li")).hasCount(7);
        page.locator(".td-diagnosis__troubles a").first().click();
        assertThat(page.locator(".td-diagnosis__now"))
                .hasText("Has TB1 Hybrid inverter started again, and does it show island now?");
        named(page, ".td-buttons", "Yes").click();
        assertThat(page.locator(".td-diagnosis__now")).containsText("when something large was switched on?");
        named(page, ".td-buttons", "Yes").click();
        assertThat(page.locator(".td-diagnosis__now")).containsText("more than a line can give");
        assertThat(page.locator(".td-diagnosis__answers li")).hasCount(2);
        assertThat(page.locator("#call")).containsText("14.5 A on each line, 10 kVA in all; 18.1 A for 10 s");
        assertThat(page.locator("#call .td-buttons")).hasCount(0);
        named(page, "#call", "Oven").first().click();
        assertThat(page).hasURL(desk.at(site + "/things/oven"));
        page.goBack();
        named(page, ".td-diagnosis__answers li:nth-child(2)", "take back").click();
        assertThat(page.locator(".td-diagnosis__answers li")).hasCount(1);
        named(page, ".td-buttons", "No").click();
        assertThat(page.locator(".td-diagnosis__now")).containsText("Too much stays on for too long.");
        named(page, "#call", "Another trouble").click();
        assertThat(page.locator(".td-diagnosis__troubles li")).hasCount(7);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "call=bus&answer=yes&answer=no&answer=yes | Dead work: isolate the grid, the inverter and the battery",
                "call=bus&answer=no | Under voltage: for people trained for it only",
                "call=rcd&answer=yes&answer=yes | prove dead at all of them first"
            })
    void whereTheHandGoesACautionStandsBeforeTheStep(String query, String caution) {
        Page page = open(page(), page(desk.importExample("town-house.yaml")) + "?" + query);
        assertThat(page.locator(".td-care").first()).containsText("is for a licensed person");
        assertThat(page.locator("#call .td-care")).containsText(caution);
        assertThat(page.locator("#call .td-care + .td-diagnosis__now")).isVisible();
    }

    @ParameterizedTest
    @CsvSource({"town-house.yaml", "farmhouse.yaml", "terrace.yaml"})
    void everyWayThroughEveryTreeEnds(String house) {
        Visitor visitor = desk.visitor();
        String page = page(desk.importExample(house));
        int ends = 0;
        Deque<String> todo = new ArrayDeque<>();
        for (String trouble : CallTrees.load().troubles()) todo.add(page + "?call=" + trouble);
        while (!todo.isEmpty()) {
            String address = todo.poll();
            String text = visitor.read(address).body();
            assertThat(text).as(address).contains("td-diagnosis__now").doesNotContain("NaN", "null", "{0}");
            Matcher way = WAY.matcher(text);
            int ways = 0;
            for (; way.find(); ways++) todo.add(way.group(1).replace("&amp;", "&"));
            assertThat(ways).as(address).isIn(0, 2);
            if (ways == 0) ends++;
        }
        // A tree with two ways at each of its questions has one end more than it has questions.
        assertThat(ends).isEqualTo(27);
    }

    @Test
    void whatWasSeenNamesTheMistakesThatFitAndTheReadingWorthTaking() {
        String site = desk.importExample("town-house.yaml");
        Page page = open(pageWithoutScript(Screen.TABLET), page(site) + "?" + SWITCH_CLOSED);
        Locator seen = page.locator("#seen");
        assertThat(seen).containsText("19 single mistakes and failures show exactly this.");
        assertThat(seen).containsText("Core 3 of WG1 (TB1:X4:4–QC1:31) touches plus of the control supply");
        assertThat(seen).containsText("TB1 output 1 is set to the opposite sense");
        assertThat(page.locator("#seen .td-sentences li")).hasCount(19);
        assertThat(page.locator("#seen .td-diagnosis__now"))
                .hasText("Connected, circuits off: TB1 Hybrid inverter, mode it shows");
        named(page, "#seen .td-list", "locked out").click();
        assertThat(seen).containsText("One single mistake or failure shows exactly this.");
        assertThat(seen).containsText("Look there, everything isolated and proved dead.");
        assertThat(page.locator("#seen .td-list").first().locator("tbody tr")).hasCount(2);
    }

    @Test
    void everyMistakeThatFitsLeadsToAThingOfTheHouse() {
        Visitor visitor = desk.visitor();
        String site = desk.importExample("farmhouse.yaml");
        String query = "?seen=island-unloaded/mode:%s%%3Disland&full=yes";
        String inverter = visitor.read(site + "/wiring.json").body().replaceAll("(?s).*\"mode:([^\"]+)\".*", "$1");
        Page page = open(page(), page(site) + query.formatted(inverter));
        Locator mistakes = page.locator("#seen .td-sentences li");
        assertThat(mistakes.count()).isGreaterThan(200);
        assertThat(mistakes.filter(new Locator.FilterOptions().setHasNot(page.locator("a"))))
                .hasCount(0);
        TreeSet<String> things = new TreeSet<>();
        Matcher thing = THING.matcher(page.content());
        while (thing.find()) things.add(thing.group(1));
        assertThat(things).hasSizeGreaterThan(40);
        for (String address : things)
            assertThat(visitor.read(address).statusCode()).as(address).isEqualTo(200);
    }

    @Test
    void readingsAreChosenOneAfterTheOtherAndTakenAwayWithoutScript() {
        String site = desk.importExample("town-house.yaml");
        Page page = open(pageWithoutScript(Screen.PHONE), page(site) + "?call=lockout&answer=no");
        assertThat(page.locator("#readings")).containsText("1,295 things can be read in this house.");
        page.locator("#situation").selectOption("island-unloaded");
        page.locator("#word").fill("qa1 position");
        page.locator(".td-diagnosis__find button").click();
        assertThat(page.locator("#readings tbody th").first())
                .hasText("Island, circuits off: QA1 Islanding switch, position indicator");
        named(page, "#readings", "closed").first().click();
        assertThat(page.locator("#seen .td-list").first()).containsText("closed");
        assertThat(page.locator("#word")).hasValue("qa1 position");
        assertThat(page.locator(".td-diagnosis__answers li")).hasCount(1);
        page.locator("#word").fill("mode");
        page.locator(".td-diagnosis__find button").click();
        named(page, "#readings", "locked out").first().click();
        assertThat(page.locator("#seen .td-list").first().locator("tbody tr")).hasCount(2);
        named(page, "#seen", "take away").first().click();
        assertThat(page.locator("#seen .td-list").first().locator("tbody tr")).hasCount(1);
        assertThat(page.locator("#seen .td-list").first()).containsText("locked out");
        named(page, "#readings", "island").first().click();
        assertThat(page.locator("#seen .td-list").first().locator("tbody tr")).hasCount(1);
        assertThat(page.locator("#seen")).containsText("The house as planned shows exactly this");
    }

    @Test
    void readingsComeAsTheirWordsAreTyped() {
        Page page = open(page(), page(desk.importExample("town-house.yaml")) + "?" + SWITCH_CLOSED);
        page.locator("#situation").selectOption("connected-unloaded");
        assertThat(page.locator("#readings")).containsText("of which the first 40 stand here");
        page.locator("#word").pressSequentially("qa1 position");
        assertThat(page.locator("#readings")).containsText("One reading. Choose what it showed.");
        named(page, "#readings", "open").click();
        assertThat(page.locator("#seen .td-list").first().locator("tbody tr")).hasCount(2);
    }

    @Test
    void whatNoSingleMistakeExplainsNamesTheReadingToTakeAgain() {
        Page page = open(
                page(),
                page(desk.importExample("town-house.yaml")) + "?seen=island-unloaded/mode:inverter%3Disland&"
                        + SWITCH_CLOSED + "&seen=connected-unloaded/mode:inverter%3Dconnected");
        assertThat(page.locator("#seen")).containsText("No single mistake or failure shows this.");
        assertThat(page.locator("#seen")).containsText("the house would be as planned: take that reading again first.");
        assertThat(page.locator("#seen .td-diagnosis__now")).hasCount(0);
    }

    @Test
    void whatCannotBeReadInThisHouseIsLeftOutAndToldSo() {
        Page page = open(
                page(),
                page(desk.importExample("town-house.yaml")) + "?" + SWITCH_CLOSED
                        + "&seen=island/position:%3Cb%3Eold%3C/b%3E%3Dopen&seen=island-unloaded/mode:inverter%3Dpurple");
        Locator problems = page.locator(".td-problems li");
        assertThat(problems).hasCount(2);
        assertThat(problems.first()).containsText("Nothing in this house is called island/position:<b>old</b>");
        assertThat(problems.last()).containsText("cannot show purple. Write one of connected, island");
        assertThat(page.locator("#seen")).containsText("19 single mistakes and failures show exactly this.");
    }

    @Test
    void aHouseThatCanFormNoIslandHasNothingToDiagnose() {
        String site = desk.importSite("format: 1\nhouse: {place: {country: DE}, circuits: [{id: lamp}]}\n");
        Page page = open(page(), page(site));
        assertThat(page.locator("main")).containsText("Nothing in this house can form an island");
        assertThat(page.locator("#call")).hasCount(0);
    }

    @Test
    void anAddressThatLeadsNowhereIsNoPage() {
        Visitor visitor = desk.visitor();
        String page = page(desk.importExample("terrace.yaml"));
        for (String query : List.of("?call=flood", "?call=rcd&answer=maybe", "?call=rcd&answer=no&answer=no"))
            assertThat(visitor.read(page + query).statusCode()).as(query).isEqualTo(404);
    }

    @ParameterizedTest
    @EnumSource
    void nothingSeriousIsInTheWayOfReading(Screen screen) {
        String page = page(desk.importExample("town-house.yaml"));
        Page light = page(screen);
        Page dark = page(options(screen).setColorScheme(ColorScheme.DARK));
        for (String query : List.of("", "?call=bus&answer=yes&answer=no&answer=yes&word=qa1&" + SWITCH_CLOSED)) {
            assertOpenToAll(open(light, page + query));
            assertFitsItsScreen(light);
            assertOpenToAll(open(dark, page + query));
        }
    }
}
