package tideover.web.diagram;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
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
    void twoFingersMakeItLargerOnAPhone() {
        String site = desk.importExample("terrace.yaml");
        Page page = open(page(Screen.PHONE), site + "/diagram");
        Locator view = page.locator("[data-view]");
        view.scrollIntoViewIfNeeded();
        double before = widthOf(page);
        var box = view.boundingBox();
        double x = box.x + box.width / 2;
        double y = Math.max(box.y, 0) + 100;
        CDPSession fingers = page.context().newCDPSession(page);
        touch(fingers, "touchStart", x, y, 40);
        for (int apart = 50; apart <= 120; apart += 10) touch(fingers, "touchMove", x, y, apart);
        JsonObject end = new JsonObject();
        end.addProperty("type", "touchEnd");
        end.add("touchPoints", new JsonArray());
        fingers.send("Input.dispatchTouchEvent", end);
        assertThat(widthOf(page)).isGreaterThan(before * 1.5);
        assertThat(page.url()).endsWith("/diagram");
    }

    /** Two fingers on one line, each so far from its middle. */
    private static void touch(CDPSession fingers, String type, double x, double y, int apart) {
        JsonArray points = new JsonArray();
        for (int side : new int[] {-1, 1}) {
            JsonObject point = new JsonObject();
            point.addProperty("x", x + side * apart);
            point.addProperty("y", y);
            point.addProperty("id", side + 1);
            points.add(point);
        }
        JsonObject event = new JsonObject();
        event.addProperty("type", type);
        event.add("touchPoints", points);
        fingers.send("Input.dispatchTouchEvent", event);
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
        assertFitsItsScreen(page);
        assertOpenToAll(open(page(options(screen).setColorScheme(ColorScheme.DARK)), site + "/diagram?state=dark"));
    }
}
