package tideover.web.findings;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.Screen;

@Tag("slow")
class FindingsPageTest extends BrowserTest {
    private static final String COMPUTING = "Wiring is still being tried out";

    @Test
    void findingsOnWiringArriveByThemselvesAndNobodyAsksOn() {
        String site = desk.importExample("terrace.yaml");
        String first = desk.visitor().read(site + "/findings").body();
        assertThat(first).contains(COMPUTING).doesNotContain("Wiring as a whole");

        Page page = page();
        List<String> asked = new ArrayList<>();
        page.onRequest(request -> asked.add(request.url()));
        open(page, site + "/circuits");
        assertThat(page.locator(".td-margin__pending")).hasCount(0);
        int soFar = asked.size();
        page.waitForTimeout(1_500);
        assertThat(asked).as("asked again although all is there").hasSize(soFar);

        open(page, site + "/findings?show=met&topic=wiring");
        assertThat(page.locator(".td-finding").first()).containsText("Met");
        assertThat(page.locator(".td-margin__pending")).hasCount(0);
    }

    @Test
    void whatIsOpenStandsUnderTheFactThatIsMissing() {
        String site = desk.importExample("terrace.yaml");
        desk.visitor()
                .post(site + "/circuits", "base", "1", "path", "house.oven.cable.lengthM", "was", "14", "typed", "");
        Page page = open(pageWithoutScript(Screen.PHONE), site + "/findings?show=open");
        Locator fact = page.locator(".td-errand > li")
                .filter(new Locator.FilterOptions().setHasText("Length of cable of Oven"));
        assertThat(fact).hasCount(1);
        assertThat(fact.locator("> a")).hasAttribute("href", site + "/things/oven#cable.lengthM");
        fact.locator("> details > summary").click();
        assertThat(fact.locator(".td-finding").first()).containsText("? Open");
    }

    @Test
    void linksAskForLessWithoutScript() {
        String site = desk.importExample("town-house.yaml");
        Page page = open(pageWithoutScript(Screen.DESKTOP), site + "/findings");
        assertThat(page.locator(".td-verdict")).containsText("Met: every finding that binds is met.");
        page.locator(".td-filters__filter").nth(2).locator("summary").click();
        page.locator(".td-filters a")
                .filter(new Locator.FilterOptions().setHasText("Poles of the islanding switch"))
                .click();
        assertThat(page).hasURL(desk.at(site + "/findings?topic=poles"));
        page.locator(".td-filters a")
                .filter(new Locator.FilterOptions().setHasText("✓ Met"))
                .click();
        assertThat(page).hasURL(desk.at(site + "/findings?show=met&topic=poles"));
        assertThat(page.locator(".td-finding").first()).containsText("poles of the islanding switch");
        page.locator(".td-findings__asked a").click();
        assertThat(page).hasURL(desk.at(site + "/findings"));
    }

    @Test
    void aFindingShowsItsCalculationItsClauseAndWhoSaysItsFacts() {
        String site = desk.importExample("town-house.yaml");
        Page page = open(page(), site + "/findings");
        Locator finding = page.locator(".td-finding[data-check='loading.line']");
        assertThat(finding).containsText("27.6 A against 14.5 A");
        finding.locator(".td-note__small").getByText("calculation").click();
        assertThat(page.locator("h1")).hasText("Loading and unbalance: TB1 Hybrid inverter");
        assertThat(page.locator(".td-lines-of li").first()).containsText("Kitchen sockets, L1: 8.7 A");
        assertThat(page.locator(".td-finding").first()).containsText("from memory");
        Locator fact = page.locator(".td-list tbody tr").first();
        assertThat(fact).containsText("14.5 A");
        assertThat(fact).containsText("planned");
        assertThat(fact.locator("a")).hasAttribute("href", site + "/things/inverter#lineCurrentA");
    }

    @Test
    void adviceIsLeftWithAReasonAndFollowedAgainWithoutScript() {
        String site = desk.importExample("town-house.yaml");
        Page page = open(pageWithoutScript(Screen.TABLET), site + "/findings?show=accepted");
        Locator finding = page.locator(".td-finding[data-check='loading.line']");
        finding.locator(".td-note__more").last().locator("summary").click();
        finding.locator("input[name=typed]").fill("");
        finding.locator("button").click();
        assertThat(page).hasURL(desk.at(site + "/findings?show=accepted"));
        assertThat(finding).hasCount(0);

        open(page, site + "/findings?show=advice");
        assertThat(finding).hasCount(1);
        finding.locator(".td-note__more").last().locator("summary").click();
        finding.locator("input[name=typed]").fill("the oven is <b>held back</b>");
        finding.locator("button").click();
        open(page, site + "/findings?show=accepted");
        assertThat(finding).containsText("Left as it is: the oven is <b>held back</b>");
    }

    @Test
    void anAddressOfNoFindingIsNoPage() {
        String site = desk.importExample("terrace.yaml");
        assertThat(desk.visitor().read(site + "/findings/loading.line/nothing").statusCode())
                .isEqualTo(404);
        assertThat(desk.visitor()
                        .read(site + "/findings?show=%3Cb%3E&place=%22%3E")
                        .statusCode())
                .isEqualTo(200);
    }

    @ParameterizedTest
    @EnumSource
    void nothingSeriousIsInTheWayOfReading(Screen screen) {
        String site = desk.importExample("town-house.yaml");
        assertOpenToAll(open(page(screen), site + "/findings"));
        Page dark = page(options(screen).setColorScheme(ColorScheme.DARK));
        assertOpenToAll(open(dark, site + "/findings?show=met&topic=fault"));
        assertOpenToAll(open(dark, site + "/findings/loading.line/inverter"));
    }
}
