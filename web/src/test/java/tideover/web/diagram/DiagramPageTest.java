package tideover.web.diagram;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Mouse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.Screen;

@Tag("slow")
class DiagramPageTest extends BrowserTest {
    private static double widthOf(Page page) {
        return page.locator("[data-view] > svg").boundingBox().width;
    }

    @Test
    void aThingInTheDrawingLeadsToItsFacts() {
        String site = desk.importExample("town-house.yaml");
        Page page = open(page(), site + "/diagram");
        Locator oven = page.locator("svg.td-diagram a[data-thing='oven']");
        assertThat(oven).hasAttribute("href", site + "/things/oven");
        oven.click();
        assertThat(page).hasURL(desk.at(site + "/things/oven"));
        assertThat(page.locator("h1")).containsText("Oven");
    }

    @Test
    void theStateChosenIsTheStateDrawn() {
        String site = desk.importExample("town-house.yaml");
        Page page = open(pageWithoutScript(Screen.DESKTOP), site + "/diagram");
        assertThat(page.locator(".td-states [aria-current]")).hasText("Island, grid dead");
        assertThat(page.locator("main")).containsText("6 circuits have none: Garden sockets");
        assertThat(page.locator("svg.td-diagram"))
                .hasAttribute("aria-label", "Amselweg 11 · One-line diagram · State: island, grid dead");
        int dark = page.locator("svg.td-diagram .ld").count();
        page.locator(".td-states a")
                .filter(new Locator.FilterOptions().setHasText("Connected"))
                .click();
        assertThat(page).hasURL(desk.at(site + "/diagram?state=connected"));
        assertThat(page.locator("main")).containsText("28 circuits have voltage");
        assertThat(page.locator("svg.td-diagram .ld").count()).isNotEqualTo(dark);
    }

    @Test
    void keysButtonsAndWheelMakeItLargerAndADragIsNoClick() {
        String site = desk.importExample("town-house.yaml");
        Page page = open(page(), site + "/diagram");
        Locator view = page.locator("[data-view]");
        double first = widthOf(page);
        page.locator("[data-zoom='in']").click();
        assertThat(widthOf(page)).isCloseTo(first * 1.25, within(3.0));
        view.focus();
        page.keyboard().press("+");
        page.keyboard().press("+");
        double larger = widthOf(page);
        assertThat(larger).isGreaterThan(first * 1.8);
        page.keyboard().press("-");
        assertThat(widthOf(page)).isLessThan(larger);
        view.hover();
        page.mouse().wheel(0, -300);
        page.waitForFunction(
                "before => document.querySelector('[data-view] > svg').getBoundingClientRect().width > before", larger);

        String here = page.url();
        Locator oven = page.locator("svg.td-diagram a[data-thing='oven']");
        oven.scrollIntoViewIfNeeded();
        double before = ((Number) view.evaluate("view => view.scrollLeft")).doubleValue();
        var box = oven.boundingBox();
        page.mouse().move(box.x + box.width / 2, box.y + box.height / 2);
        page.mouse().down();
        page.mouse().move(box.x + box.width / 2 + 120, box.y + box.height / 2, new Mouse.MoveOptions().setSteps(5));
        page.mouse().up();
        assertThat(((Number) view.evaluate("view => view.scrollLeft")).doubleValue())
                .isLessThan(before);
        assertThat(page.url()).isEqualTo(here);

        view.focus();
        page.keyboard().press("0");
        assertThat(widthOf(page)).isLessThan(first * 1.05);
    }

    @Test
    void everyThingCanBeReachedByKeyboard() {
        String site = desk.importExample("terrace.yaml");
        Page page = open(page(), site + "/diagram");
        page.locator("svg.td-diagram a").first().focus();
        assertThat(page.evaluate("document.activeElement.closest('svg.td-diagram') !== null"))
                .isEqualTo(true);
        page.keyboard().press("Tab");
        assertThat(page.evaluate("document.activeElement.dataset.thing")).isNotNull();
    }

    @Test
    void theDrawingCanBeSaved() {
        String site = desk.importExample("terrace.yaml");
        var answer = desk.visitor().download(site + "/diagram.svg?state=dark");
        assertThat(answer.headers().firstValue("Content-Disposition"))
                .hasValue("attachment; filename=\"diagram-dark.svg\"");
        assertThat(new String(answer.body(), StandardCharsets.UTF_8)).contains("8 Weaver Row", "dark");
    }

    @ParameterizedTest
    @EnumSource
    void nothingSeriousIsInTheWayOfReading(Screen screen) {
        String site = desk.importExample("town-house.yaml");
        Page page = open(page(screen), site + "/diagram");
        assertOpenToAll(page);
        assertThat(page.evaluate("document.documentElement.scrollWidth <= innerWidth"))
                .isEqualTo(true);
        assertOpenToAll(open(page(options(screen).setColorScheme(ColorScheme.DARK)), site + "/diagram?state=dark"));
    }
}
