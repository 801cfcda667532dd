package tideover.web.wiring;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions.ContainsTextOptions;
import com.microsoft.playwright.assertions.LocatorAssertions.IsVisibleOptions;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.LargeHouse;
import tideover.web.trial.Screen;

@Tag("slow")
class WiringPageTest extends BrowserTest {
    private static final double LONG_MS = 60_000;

    private static Locator part(Page page, String name) {
        return page.locator(".td-states a").getByText(name, new Locator.GetByTextOptions().setExact(true));
    }

    @Test
    void everyPartIsShownAndSavedWithoutScript() {
        String site = desk.importExample("town-house.yaml");
        Page page = open(pageWithoutScript(Screen.DESKTOP), site + "/wiring");
        assertThat(page.locator(".td-care")).containsText("prove dead before a terminal is touched");
        assertThat(page.locator(".td-list tbody").first()).containsText("WD1.L1");
        part(page, "What each state reads").click();
        assertThat(page.locator(".td-list thead")).containsText("Island, grid dead");
        part(page, "Steps").click();
        assertThat(page.locator(".td-list tbody tr").first()).isVisible();
        for (String list : new String[] {"power", "control", "cutting", "labels", "parts", "states", "steps"}) {
            String csv = new String(
                    desk.visitor().download(site + "/wiring/" + list + ".csv").body(), StandardCharsets.UTF_8);
            assertThat(csv).startsWith("group,");
            assertThat(csv.lines().count()).as(list).isGreaterThan(2);
        }
        assertThat(desk.visitor().read(site + "/wiring?part=nothing").statusCode())
                .isEqualTo(404);
    }

    @Test
    void noSpreadsheetComputesWhatATableSays() throws IOException {
        String house = Files.readString(Path.of("..", "examples", "terrace.yaml"));
        String site = desk.importSite(house.replace("designation: QA1 Islanding switch", "designation: \"=1+1\""));
        String csv = desk.visitor().read(site + "/wiring/labels.csv").body();
        assertThat(csv).contains("'=1+1").doesNotContain(",=1+1");
    }

    @Test
    void piecesAreCutAsMuchLongerAsOneAsks() {
        String site = desk.importExample("town-house.yaml");
        Page page = open(pageWithoutScript(Screen.DESKTOP), site + "/wiring?part=cutting");
        String usual = page.locator(".td-list").first().innerText();
        page.locator("#allowance").fill("1,5");
        page.locator(".td-asked button").click();
        assertThat(page.locator("main")).containsText("Each piece is 1.5 m longer than the way it lies");
        assertThat(page.locator(".td-list").first()).not().hasText(usual);
        assertThat(page.locator("a[download]").first())
                .hasAttribute("href", site + "/wiring/cutting.csv?allowance=1,5");
        page.locator("#allowance").fill("long");
        page.locator(".td-asked button").click();
        assertThat(page.locator("#allowance-problem")).containsText("The allowance long is no length");
        assertThat(page.locator("#allowance")).hasValue("long");
    }

    @Test
    void aDevicesTerminalsAreDrawnAlone() {
        String site = desk.importExample("town-house.yaml");
        Page page = open(page(), site + "/wiring?part=terminals");
        assertThat(page.locator("svg.td-diagram")).hasCount(2);
        part(page, "QA1 Islanding switch").click();
        assertThat(page.locator("svg.td-diagram")).hasCount(1);
        assertThat(page.locator("svg.td-diagram")).containsText("2.5 Nm");
        String file = page.locator("a[download]").first().getAttribute("href");
        assertThat(new String(desk.visitor().download(file).body(), StandardCharsets.UTF_8))
                .startsWith("<?xml")
                .contains("QA1 Islanding switch");
    }

    @Test
    void allMistakesAreTriedOutAndTheirListsArrive() {
        String site = desk.importExample("terrace.yaml");
        Page page = open(page(), site + "/wiring?part=coverage");
        page.locator("main button")
                .filter(new Locator.FilterOptions().setHasText("Try out all mistakes"))
                .click();
        assertThat(page.locator("#list-coverage")).isVisible(new IsVisibleOptions().setTimeout(LONG_MS));
        assertThat(page.locator(".td-job")).containsText("Done.");
        part(page, "All mistakes").click();
        assertThat(page.locator("#list-mistakes")).isVisible();
        String file = page.locator(".td-files a").last().getAttribute("href");
        assertThat(new String(desk.visitor().download(file).body(), StandardCharsets.UTF_8))
                .startsWith("group,mistake,text,steps");
    }

    @Test
    void longWorkIsStoppedAndReallyEnds() throws InterruptedException {
        String site = desk.importSite(LargeHouse.with(120));
        Page page = open(page(), site + "/wiring?part=coverage");
        page.locator("main button")
                .filter(new Locator.FilterOptions().setHasText("Try out all mistakes"))
                .click();
        assertThat(page.locator(".td-job"))
                .containsText("Mistakes are tried out one by one", new ContainsTextOptions().setTimeout(LONG_MS));
        assertThat(page.locator(".td-job progress")).isVisible();
        for (int i = 0; i < 200 && !isWorked(); i++) Thread.sleep(10);
        assertThat(isWorked()).isTrue();
        page.locator("#cancel-mistakes").click();
        assertThat(page.locator(".td-job"))
                .containsText("Stopped before it was done.", new ContainsTextOptions().setTimeout(LONG_MS));
        Thread.sleep(300);
        assertThat(isWorked()).isFalse();
        assertThat(page.locator("main button").filter(new Locator.FilterOptions().setHasText("Try them out again")))
                .isVisible();
    }

    /** Whether mistakes are tried out this very moment. */
    private static boolean isWorked() {
        return Thread.getAllStackTraces().keySet().stream().anyMatch(WiringPageTest::isAtWork);
    }

    private static boolean isAtWork(Thread thread) {
        return thread.getName().equals("mistakes")
                && thread.isAlive()
                && Arrays.stream(thread.getStackTrace())
                        .anyMatch(frame -> frame.getClassName().startsWith("tideover.engine"));
    }

    @Test
    void longWorkIsStoppedWithoutScriptToo() {
        String site = desk.importSite(LargeHouse.with(100));
        Page page = open(pageWithoutScript(Screen.PHONE), site + "/wiring?part=mistakes");
        page.locator("main button")
                .filter(new Locator.FilterOptions().setHasText("Try out all mistakes"))
                .click();
        page.locator("#cancel-mistakes").click();
        for (int i = 0; i < 60 && page.locator(".td-job").innerText().contains("being stopped"); i++) {
            page.waitForTimeout(500);
            page.locator(".td-job a").first().click();
        }
        assertThat(page.locator(".td-job")).containsText("Stopped before it was done.");
    }

    @ParameterizedTest
    @EnumSource
    void nothingSeriousIsInTheWayOfReading(Screen screen) {
        String site = desk.importExample("town-house.yaml");
        Page page = page(screen);
        for (String part : new String[] {"power", "states", "terminals", "coverage"}) {
            assertOpenToAll(open(page, site + "/wiring?part=" + part));
            assertFitsItsScreen(page);
        }
        assertOpenToAll(open(page(options(screen).setColorScheme(ColorScheme.DARK)), site + "/wiring"));
    }
}
