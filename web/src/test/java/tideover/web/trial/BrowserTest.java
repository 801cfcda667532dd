package tideover.web.trial;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.RequestOptions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;

/**
 * A test of pages: one workbench for its class, a browser window of its own for each that asks for a page. After each test
 * nothing may have gone wrong in any window.
 */
public abstract class BrowserTest {
    /** The workbench of this class. */
    protected static Desk desk;

    private final List<BrowserContext> windows = new ArrayList<>();
    private final Watch watch = new Watch(desk);

    @BeforeAll
    static void openDesk() {
        desk = Desk.open();
    }

    @AfterAll
    static void closeDesk() {
        desk.close();
    }

    /** A window on a desk, let in already, in which nothing is shown yet. */
    protected final Page page() {
        return page(Screen.DESKTOP);
    }

    protected final Page page(Screen screen) {
        return page(options(screen));
    }

    /** A window in which no script runs. */
    protected final Page pageWithoutScript(Screen screen) {
        return page(options(screen).setJavaScriptEnabled(false));
    }

    /** A window as its options say, let in already. */
    protected final Page page(NewContextOptions options) {
        Page page = strangersPage(options);
        int status = page.context()
                .request()
                .get(desk.startAddress(), RequestOptions.create().setMaxRedirects(0))
                .status();
        assertThat(status).as("the start address answers").isEqualTo(303);
        return page;
    }

    /** A window of somebody who was not let in. */
    protected final Page strangersPage(NewContextOptions options) {
        BrowserContext window = Chromium.window(options);
        watch.over(window);
        windows.add(window);
        return window.newPage();
    }

    /** What a window of this size is made with; dark, touch and language may be added. */
    protected static NewContextOptions options(Screen screen) {
        return new NewContextOptions()
                .setViewportSize(screen.width, screen.height)
                .setHasTouch(screen != Screen.DESKTOP)
                .setLocale("en-GB")
                .setColorScheme(ColorScheme.LIGHT);
    }

    /** Shows a page of the workbench, in a window that is let in. */
    protected final Page open(Page page, String path) {
        page.navigate(desk.at(path));
        return page;
    }

    /** Nothing serious keeps anybody out of this page. */
    protected static void assertOpenToAll(Page page) {
        assertThat(Axe.serious(page))
                .as("seriously in the way on " + page.url())
                .isEmpty();
    }

    /** Nothing of the page hangs over the edge of its screen. */
    protected static void assertFitsItsScreen(Page page) {
        assertThat(page.evaluate("Math.max(0, document.documentElement.scrollWidth - innerWidth)"))
                .as("what %s is wider than its screen", page.url())
                .isEqualTo(0);
    }

    /** Says that a window will report this, as that is what the test is about. */
    protected final void expectTrouble(String pattern) {
        watch.expect(pattern);
    }

    @AfterEach
    void nothingWentWrong() {
        windows.forEach(BrowserContext::close);
        assertThat(watch.unexpected()).as("what windows reported").isEmpty();
    }
}
