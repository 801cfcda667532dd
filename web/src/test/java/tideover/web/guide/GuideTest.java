package tideover.web.guide;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.ScreenshotOptions;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.Screen;

/**
 * A tour of all stops on every screen: no page is wider than its screen. With {@code -Dtideover.write=true} the pictures of
 * docs/guide are taken on the way.
 */
@Tag("slow")
class GuideTest extends BrowserTest {
    private static final boolean WRITE = Boolean.getBoolean("tideover.write");
    private static final Path PICTURES = Path.of("..", "docs", "guide", "pictures");
    /** A sheet and its notes want more room than a laptop's first glance. */
    private static final int TALL = 1100;

    @ParameterizedTest
    @EnumSource(Screen.class)
    void noPageIsWiderThanItsScreen(Screen screen) {
        String site = desk.importExample("town-house.yaml");
        Page page = page(screen);
        makeMistakes(site);
        Map<String, String> stops = new LinkedHashMap<>();
        stops.put("sites", "/");
        stops.put("first-visit", "/sites/new");
        for (String stop :
                List.of("survey", "circuits", "findings", "diagram", "network", "wiring", "handover", "history"))
            stops.put(stop, site + "/" + stop);
        stops.put(
                "diagnosis",
                site
                        + "/wiring/diagnosis?call=lockout&answer=no&seen=island-unloaded/position:islanding-switch%3Dclosed");
        stops.put("limits", site + "/limits");
        stops.put("facts", site + "/things/oven");
        stops.put("calculation", site + "/findings/overload.design/dishwasher");
        List<String> wide = new ArrayList<>();
        stops.forEach((name, path) -> {
            open(page, path);
            page.waitForTimeout(400);
            wide.addAll(widerThings(page, name));
            if (WRITE)
                take(page, "%s-%s.png".formatted(name, screen.name().toLowerCase(java.util.Locale.ROOT)), screen);
        });
        assertThat(wide).as("wider than a " + screen).isEmpty();
    }

    /** Something to note: two devices too large for their cables, and an unknown length. */
    private static void makeMistakes(String site) {
        for (String[] edit : new String[][] {
            {"plan.dishwasher.protection.ratedCurrentA", "16", "40"},
            {"plan.shutters.protection.ratedCurrentA", "10", "32"},
            {"house.cellar-sockets.cable.lengthM", "15", ""}
        }) desk.visitor().post(site + "/circuits", "base", "1", "path", edit[0], "was", edit[1], "typed", edit[2]);
    }

    /** What stands out to the right, unless a box of its own scrolls it. */
    private static List<String> widerThings(Page page, String name) {
        Object found = page.evaluate("""
                () => {
                  const wide = document.documentElement.clientWidth + 1;
                  if (document.documentElement.scrollWidth <= wide) return [];
                  return [...document.querySelectorAll('body *')]
                    .filter(part => part.getBoundingClientRect().right > wide)
                    .filter(part => {
                      for (let box = part.parentElement; box && box !== document.body; box = box.parentElement)
                        if (getComputedStyle(box).overflowX !== 'visible') return false;
                      return true;
                    })
                    .map(part => part.outerHTML.slice(0, 160));
                }""");
        return ((List<?>) found).stream().map(part -> name + ": " + part).toList();
    }

    private static void take(Page page, String name, Screen screen) {
        if (screen == Screen.DESKTOP) page.setViewportSize(1440, TALL);
        page.screenshot(new ScreenshotOptions().setPath(PICTURES.resolve(name)));
    }
}
