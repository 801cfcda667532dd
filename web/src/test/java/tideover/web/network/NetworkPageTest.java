package tideover.web.network;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.Screen;

@Tag("slow")
class NetworkPageTest extends BrowserTest {
    private static final String L2 = "L2 of TB1 Hybrid inverter falls from 23 A to";

    private static Locator load(Page page, String name) {
        return page.locator(".td-turned__load").filter(new Locator.FilterOptions().setHasText(name));
    }

    @Test
    void turningTheOvenOffShowsWhatFlowsThen() {
        String site = desk.importExample("town-house.yaml");
        Page page = open(page(), site + "/network");
        Locator sentences = page.locator("#flow > .td-sentences");
        assertThat(sentences).containsText("L3 27.6 A of 14.5 A");
        String drawn =
                page.locator("svg.td-diagram [data-thing='oven']").first().innerHTML();
        assertThat(drawn).contains("L2 12 A");

        load(page, "Oven").locator("input").uncheck();
        assertThat(page.locator("#flow .td-said")).containsText("Turned off: Oven.");
        assertThat(page.locator("#flow .td-said")).containsText(L2);
        assertThat(page.locator("svg.td-diagram [data-thing='oven']").first()).containsText("L2 0 A");
        assertThat(page.locator("svg.td-diagram")).hasCount(1);
        assertThat(page.locator("[data-zoom='in']")).isVisible();

        // The address tells it: whoever opens it sees the same.
        assertThat(page).hasURL(desk.at(site + "/network?state=island-grid-dead&off=oven"));
        Page other = open(page(), page.url().substring(desk.origin().length()));
        assertThat(other.locator("#flow .td-said")).containsText("Turned off: Oven.");
        assertThat(load(other, "Oven").locator("input")).not().isChecked();

        other.locator(".td-states a")
                .filter(new Locator.FilterOptions().setHasText("Connected"))
                .click();
        assertThat(other.locator("#flow .td-said")).containsText("Turned off: Oven.");
    }

    @Test
    void loadsAreTurnedOffWithoutScriptToo() {
        String site = desk.importExample("town-house.yaml");
        Page page = open(pageWithoutScript(Screen.PHONE), site + "/network");
        load(page, "Oven").locator("input").uncheck();
        page.locator(".td-network button.td-button", new Page.LocatorOptions().setHasText("See what flows then"))
                .click();
        assertThat(page.locator("#flow .td-said")).containsText(L2);
    }

    @Test
    void everyCircuitOffLeavesNothingToFlow() {
        String site = desk.importExample("town-house.yaml");
        Matcher offered = Pattern.compile("name=\"offered\" value=\"([^\"]+)\"")
                .matcher(desk.visitor().read(site + "/network").body());
        assertThat(offered.find()).isTrue();
        assertThat(desk.visitor()
                        .read(site + "/network?offered=" + offered.group(1))
                        .body())
                .contains("Turned off: Kitchen sockets", "TB1 Hybrid inverter gives nothing.");
    }

    @Test
    void aPlaceTellsItsFaultsInEachStateAndShowsItsTimeCurrentSheet() {
        String site = desk.importExample("town-house.yaml");
        Page page = open(page(), site + "/network");
        page.locator(".td-list--numbers a")
                .filter(new Locator.FilterOptions().setHasText("Oven"))
                .click();
        assertThat(page.locator("h1")).hasText("Oven");
        assertThat(page.locator("main"))
                .containsText(
                        "L2 to PE at Oven, smallest current: 24 A flow, which is all that TB1 Hybrid inverter gives");
        assertThat(page.locator(".td-curves svg")).hasAttribute("aria-label", Pattern.compile(".*Oven"));
        page.locator(".td-states a")
                .filter(new Locator.FilterOptions().setHasText("Connected"))
                .click();
        assertThat(page.locator("main")).containsText("from House connection box");

        byte[] sheet =
                desk.visitor().download(site + "/network/oven/curves.svg").body();
        assertThat(new String(sheet, StandardCharsets.UTF_8))
                .startsWith("<?xml")
                .contains("Oven");
        assertThat(desk.visitor().read(site + "/network/nothing").statusCode()).isEqualTo(404);
    }

    @Test
    void aFaultMayHaveAResistanceOfItsOwn() {
        String site = desk.importExample("town-house.yaml");
        Page page = open(pageWithoutScript(Screen.PHONE), site + "/network/oven?state=connected");
        String bolted = page.locator(".td-sentences").innerText();
        page.locator("#faultOhm").fill("2,5");
        page.locator(".td-asked button").click();
        assertThat(page).hasURL(desk.at(site + "/network/oven?state=connected&faultOhm=2%2C5"));
        assertThat(page.locator(".td-sentences")).not().hasText(bolted);
        page.locator("#faultOhm").fill("-1");
        page.locator(".td-asked button").click();
        assertThat(page.locator("#faultOhm-problem")).containsText("A fault cannot have a resistance of -1.");
    }

    @Test
    void allOfItIsSavedForOtherPrograms() {
        String site = desk.importExample("terrace.yaml");
        assertThat(desk.visitor().read(site + "/network.json").body()).contains("\"format\" : 1", "ISLAND_GRID_DEAD");
        for (String table : new String[] {"nodes", "branches", "faults"})
            assertThat(desk.visitor().read(site + "/network/" + table + ".csv").body())
                    .as(table)
                    .startsWith("state,")
                    .contains("ISLAND_GRID_DEAD");
        assertThat(desk.visitor().read(site + "/network/others.csv").statusCode())
                .isEqualTo(404);
        assertThat(desk.visitor().read(site + "/wiring.json").body()).contains("\"part\" : \"steps\"");
    }

    @Test
    void inTheDarkNothingFlows() {
        String site = desk.importExample("terrace.yaml");
        assertThat(desk.visitor().read(site + "/network?state=dark").body())
                .contains("No source forms a voltage: nothing flows.");
    }

    @ParameterizedTest
    @EnumSource
    void nothingSeriousIsInTheWayOfReading(Screen screen) {
        String site = desk.importExample("town-house.yaml");
        Page page = open(page(screen), site + "/network");
        assertOpenToAll(page);
        assertFitsItsScreen(page);
        assertOpenToAll(open(page(options(screen).setColorScheme(ColorScheme.DARK)), site + "/network/oven"));
    }
}
