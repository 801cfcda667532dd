package tideover.web.guard;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.Screen;

class DoorTest extends BrowserTest {

    @ParameterizedTest
    @EnumSource
    void whoeverHasNoTokenIsToldWhereTheStartAddressIs(Screen screen) {
        expectTrouble("status of 401");
        Page page = open(strangersPage(options(screen)), "/sites/0123456789abcdef/circuits");
        assertThat(page.locator("h1")).hasText("This workbench opens with its start address");
        assertThat(page.locator("main")).containsText("tideover serve");
        assertOpenToAll(page);
    }

    @Test
    void theClosedDoorIsReadInTheDarkToo() {
        expectTrouble("status of 401");
        assertOpenToAll(open(strangersPage(options(Screen.PHONE).setColorScheme(ColorScheme.DARK)), "/enter"));
    }

    @Test
    void theStartAddressLetsInAndLeavesNothingInTheAddressBar() {
        Page page = strangersPage(options(Screen.DESKTOP));
        page.navigate(desk.startAddress());
        // Without any site the first page is the first visit.
        assertThat(page.url()).isEqualTo(desk.at("/sites/new"));
        assertThat(page.context().cookies()).singleElement().satisfies(cookie -> {
            assertThat(cookie.httpOnly).isTrue();
            assertThat(cookie.expires).as("gone with the browser").isEqualTo(-1.0);
        });
        assertThat(page.evaluate("document.cookie")).isEqualTo("");
    }
}
