package tideover.web.facts;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.net.http.HttpResponse;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.site.Board;
import tideover.engine.site.FactId;
import tideover.engine.site.Origin;
import tideover.engine.site.Site;
import tideover.engine.site.Status;
import tideover.engine.site.ThingId;
import tideover.store.site.VariantId;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.Screen;

/** Facts read and changed one by one, in a real browser over a real store; what is kept is looked at past the pages. */
@Tag("slow")
class FactsTest extends BrowserTest {
    private String site = "";

    @BeforeEach
    void townHouse() {
        site = desk.importExample("town-house.yaml");
    }

    @Test
    void aFactIsReadAndChangedWithoutScriptAndSaysWhoSaysIt() {
        Page page = open(pageWithoutScript(Screen.PHONE), site + "/things/supply");
        Locator loop = page.getByLabel("Loop impedance of the supply (Ω), as found");
        assertThat(loop).hasValue("0.28");
        loop.fill("0.31");
        page.getByLabel("Who says so").selectOption("MEASURED");
        page.getByText("by whom, when, where it is written").click();
        page.getByLabel("Person or instrument").fill("loop tester 2");
        press(page, "Save");
        assertThat(page).hasURL(Pattern.compile("/things/supply$"));
        assertThat(page.getByLabel("Loop impedance of the supply (Ω), as found"))
                .hasValue("0.31");
        assertThat(page.locator("tr[id='loopImpedanceOhm']")).containsText("measured · loop tester 2");
        assertThat(head().house().supply().loopImpedanceOhm()).isEqualTo(0.31);
        assertThat(head().origins().find(FactId.of("supply.loopImpedanceOhm")))
                .hasValueSatisfying(evidence -> assertThat(evidence.by()).isEqualTo("loop tester 2"));
    }

    @Test
    void numbersAreReadAndTypedWithTheReadersDecimalSign() {
        Page page = open(page(options(Screen.PHONE).setLocale("de-DE")), site + "/things/supply");
        Locator loop = page.locator("#house-loopImpedanceOhm");
        assertThat(loop).hasValue("0,28");
        loop.fill("310 mΩ");
        press(page, "Save");
        assertThat(page.locator("#house-loopImpedanceOhm")).hasValue("0,31");
        assertThat(head().house().supply().loopImpedanceOhm()).isEqualTo(0.31);
    }

    @Test
    void whatIsPlannedIsWrittenBesideWhatWasFoundAndAnEmptyFieldLeavesItAsFound() {
        Page page = open(page(), site + "/things/main-board");
        Locator planned = page.getByLabel("Spare ways, planned");
        assertThat(planned).hasAttribute("placeholder", "9");
        planned.fill("2");
        press(page, "Save");
        assertThat(page.getByLabel("Spare ways, as found")).hasValue("9");
        assertThat(page.getByLabel("Spare ways, planned")).hasValue("2");
        assertThat(((Board) planned("main-board")).spareWays()).isEqualTo(2);
        page.getByLabel("Spare ways, planned").fill("");
        press(page, "Save");
        assertThat(page.getByLabel("Spare ways, planned")).hasValue("");
        assertThat(((Board) planned("main-board")).spareWays()).isEqualTo(9);
    }

    @Test
    void whatWasOnlyAssumedIsConfirmedByATick() {
        String first = desk.importSite("""
                format: 1
                house:
                  place: {designation: Tick lane 1, country: DE}
                  supply: {earthingSystem: TT, lines: ONE}
                """);
        Page page = open(page(Screen.PHONE), first + "/things/supply");
        assertThat(page.locator("tr[id='earthingSystem']")).containsText("assumed");
        page.getByLabel("Earthing system of the supply: it is so").check();
        page.getByLabel("Who says so").selectOption("DECLARED_BY_OPERATOR");
        press(page, "Save");
        assertThat(page.locator("tr[id='earthingSystem']")).containsText("declared by the grid operator");
        assertThat(page.locator("tr[id='lines']")).containsText("assumed");
        Site kept = head(first);
        assertThat(kept.origins().of(FactId.of("supply.earthingSystem"))).isEqualTo(Origin.DECLARED_BY_OPERATOR);
        assertThat(kept.origins().of(FactId.of("supply.lines"))).isEqualTo(Origin.ASSUMED);
    }

    @Test
    void whatCannotBeIsToldOnTopAndAtTheFieldAndWhatWasTypedStays() {
        Page page = open(pageWithoutScript(Screen.DESKTOP), site + "/things/oven");
        page.getByLabel("Length of cable (m), as found").fill("far");
        page.getByLabel("Cross-section of cable (mm²), as found").fill("4");
        press(page, "Save");
        assertThat(page.locator(".td-problems a")).containsText("far");
        assertThat(page.locator("#house-cable\\.lengthM-problem")).containsText("far");
        assertThat(page.getByLabel("Length of cable (m), as found")).hasValue("far");
        assertThat(page.getByLabel("Cross-section of cable (mm²), as found")).hasValue("4");
        assertThat(desk.store().sites().head(variant(site)).revision().number()).isEqualTo(1);
        page.getByLabel("Length of cable (m), as found").fill("13");
        press(page, "Save");
        assertThat(page.locator(".td-problems")).hasCount(0);
        assertThat(planned("oven").value("cable.crossSectionMm2")).isEqualTo(4.0);
    }

    @Test
    void theProgramNotesAtTheThingWhatItFindsThere() {
        Page page = open(page(), site + "/things/oven");
        page.getByLabel("Rated current of overcurrent device (A), planned").fill("63");
        press(page, "Save");
        assertThat(page.locator(".td-thing__notes .td-outcome--not-met").first())
                .hasText("✕ Not met");
        assertOpenToAll(page);
    }

    @Test
    void aThingOfAnyKindIsAddedAndTakenOutAgain() {
        Page page = open(page(Screen.PHONE), site + "/survey");
        page.getByLabel("Kind", new Page.GetByLabelOptions().setExact(true)).selectOption("boards");
        page.getByLabel("it is planned").check();
        press(page, "Go on");
        page.getByLabel("Designation").first().fill("UC9 Garage board");
        page.getByLabel("Supplied from").selectOption("grid-board");
        page.getByLabel("Spare ways").fill("6");
        press(page, "Add");
        assertThat(page).hasURL(Pattern.compile("/things/uc9-garage-board$"));
        Board added = (Board) planned("uc9-garage-board");
        assertThat(added.fedFrom()).isEqualTo(new ThingId("grid-board"));
        assertThat(added.spareWays()).isEqualTo(6);
        press(page, "Leave it out of the plan");
        assertThat(page).hasURL(Pattern.compile("/survey$"));
        assertThat(head().planned()).doesNotContainKey(new ThingId("uc9-garage-board"));
    }

    @Test
    void aNewThingThatCannotBeIsRefusedWithItsTextKept() {
        Page page = open(page(), site + "/things/new?kind=electrodes&side=house");
        page.getByLabel("Designation").fill("Rod");
        page.getByLabel("Resistance of electrode (Ω)").fill("low");
        press(page, "Add");
        assertThat(page.locator(".td-problems")).containsText("low");
        assertThat(page.getByLabel("Resistance of electrode (Ω)")).hasValue("low");
        assertThat(page.getByLabel("Designation")).hasValue("Rod");
        assertOpenToAll(page);
    }

    @Test
    void thePlanTakesAFoundThingOutAndLetsItStayAgain() {
        Page page = open(page(), site + "/things/sauna");
        press(page, "The plan takes it out");
        assertThat(page.locator("h1")).containsText("removed");
        assertThat(head().statuses()).containsEntry(new ThingId("sauna"), Status.REMOVED);
        press(page, "Let it stay");
        assertThat(page.locator("h1")).not().containsText("removed");
        assertThat(head().planned()).containsKey(new ThingId("sauna"));
    }

    @Test
    void twoWindowsThatChangeOneFactSeeBothValuesAndNothingIsOverwritten() {
        Page one = open(page(), site + "/things/oven");
        Page other = open(page(), site + "/things/oven");
        one.getByLabel("Length of cable (m), as found").fill("20");
        press(one, "Save");
        other.getByLabel("Length of cable (m), as found").fill("25");
        press(other, "Save");
        assertThat(other.locator(".td-problems")).containsText("20");
        assertThat(other.locator(".td-problems")).containsText("25");
        assertThat(planned("oven").value("cable.lengthM")).isEqualTo(20.0);
        assertOpenToAll(other);
        press(other, "Write what I wanted");
        assertThat(other.getByLabel("Length of cable (m), as found")).hasValue("25");
        assertThat(planned("oven").value("cable.lengthM")).isEqualTo(25.0);
    }

    @Test
    void adviceIsAcceptedWithAReasonAndLeadsBackToWhereItWasDone() {
        HttpResponse<String> answer = desk.visitor()
                .post(
                        site + "/edits",
                        "base",
                        "1",
                        "back",
                        site + "/findings?show=advice",
                        "path",
                        "accepted.main-board.surge.protection",
                        "was",
                        "",
                        "typed",
                        "The board before it has one.");
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(answer.headers().firstValue("Location")).hasValue(site + "/findings?show=advice");
        assertThat(head().plan().accepted())
                .anySatisfy(advice -> assertThat(advice.reason()).isEqualTo("The board before it has one."));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"https://example.org/", "//example.org/sites", "/sites/0000000000000000/survey", "/", "\\\\evil"
            })
    void anEditLeadsBackToPagesOfItsOwnSiteOnly(String back) {
        HttpResponse<String> answer = desk.visitor()
                .post(
                        site + "/edits",
                        "base",
                        "1",
                        "back",
                        back,
                        "path",
                        "house.oven.year",
                        "was",
                        "2008",
                        "typed",
                        "2009");
        assertThat(answer.headers().firstValue("Location").orElse("")).startsWith(site + "/");
    }

    @ParameterizedTest
    @EnumSource(Screen.class)
    void nothingKeepsAnybodyOutOfFactsAndNothingHangsOverTheEdge(Screen screen) {
        Page page = page(screen);
        for (String path :
                new String[] {"/things/main-board", "/things/new?kind=inverters", "/survey", "/things/main-earth"}) {
            open(page, site + path);
            assertOpenToAll(page);
            assertFitsItsScreen(page);
        }
    }

    private static void press(Page page, String button) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(button).setExact(true))
                .first()
                .click();
    }

    private tideover.engine.site.@Nullable Thing planned(String id) {
        return head().planned().get(new ThingId(id));
    }

    private Site head() {
        return head(site);
    }

    private static Site head(String address) {
        return desk.store().sites().head(variant(address)).site();
    }

    private static VariantId variant(String address) {
        return new VariantId(address.substring("/sites/".length()));
    }
}
