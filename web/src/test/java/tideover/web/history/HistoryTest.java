package tideover.web.history;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.LoadState;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tideover.engine.site.Site;
import tideover.engine.site.ThingId;
import tideover.store.site.VariantId;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.Screen;

/** Revisions and the ways between them, in a real browser over a real store. */
@Tag("slow")
class HistoryTest extends BrowserTest {
    private String site = "";

    /** A house in which the oven's cable was measured anew and the sauna is taken out. */
    @BeforeEach
    void changedTwice() {
        site = desk.importExample("town-house.yaml");
        change("house.oven.cable.lengthM", "13", "17");
        change("plan.removed.sauna", "", "true");
    }

    @Test
    void eachRevisionSaysWhatItChangedInWords() {
        Page page = open(page(), site + "/history");
        assertThat(page.locator("#revision-2"))
                .containsText(Pattern.compile("Oven: length of cable: 13 m →\\s*becomes 17 m"));
        assertThat(page.locator("#revision-3"))
                .containsText(Pattern.compile("Sauna: stays →\\s*becomes taken out by the plan"));
        assertThat(page.locator("#revision-1")).containsText("brought in as a file");
        assertOpenToAll(page);
    }

    @Test
    void undoWorksAcrossARestartAndRedoAfterIt() {
        desk.restart();
        Page page = open(page(), site + "/history");
        press(page, "Undo");
        assertThat(page.locator("#revision-4")).containsText("taken back to revision 2");
        assertThat(head().planned()).containsKey(new ThingId("sauna"));
        // What a window has not loaded by then, it would ask a closed port for.
        page.waitForLoadState(LoadState.NETWORKIDLE);
        desk.restart();
        Page later = open(page(), site + "/history");
        press(later, "Redo");
        assertThat(later.locator("#revision-5")).containsText("made anew as in revision 3");
        assertThat(head().planned()).doesNotContainKey(new ThingId("sauna"));
    }

    @Test
    void anEarlierRevisionIsMadeAgainAndThatCanBeUndoneToo() {
        Page page = open(pageWithoutScript(Screen.PHONE), site + "/history");
        page.getByLabel("Make it again what it was in revision 1").click();
        assertThat(page.locator("#revision-4")).containsText("made again what it was in revision 1");
        assertThat(lengthM()).isEqualTo(13.0);
        press(page, "Undo");
        assertThat(page.locator("#revision-5")).isVisible();
        assertThat(lengthM()).isEqualTo(17.0);
    }

    @Test
    void theDifferenceOfAnyTwoIsReadable() {
        Page page = open(page(Screen.PHONE), site + "/history");
        page.locator("select[name=from]").selectOption("3");
        page.locator("select[name=to]").selectOption("1");
        press(page, "Show");
        Locator oven = page.locator("tr", new Page.LocatorOptions().setHasText("Oven: length of cable"));
        assertThat(oven.locator("td").first()).hasText("17 m");
        assertThat(oven.locator("td").last()).hasText("13 m");
        assertThat(page.locator("tbody tr")).hasCount(2);
        assertOpenToAll(page);
    }

    @Test
    void anEarlierRevisionIsLookedAtWithItsFindings() {
        change("house.hob.protection.ratedCurrentA", "16", "63");
        change("house.hob.protection.ratedCurrentA", "63", "16");
        Page page = open(page(Screen.TABLET), site + "/revisions/4");
        assertThat(page.locator(".td-verdict")).containsText("✕ Not met");
        assertThat(page.locator(".td-finding").first()).containsText("✕ Not met");
        assertThat(page.locator("h2").last()).containsText("What is different today");
        assertOpenToAll(page);
    }

    @Test
    void undoInAWindowThatIsBehindTakesNothingBack() {
        Page page = open(page(), site + "/history");
        change("house.oven.cable.lengthM", "17", "19");
        press(page, "Undo");
        assertThat(page.locator(".td-problems")).containsText("changed in another window");
        assertThat(lengthM()).isEqualTo(19.0);
        assertThat(page.locator("#revision-4")).isVisible();
    }

    @Test
    void aRevisionThatNeverWasIsNotFound() {
        assertThat(desk.visitor().read(site + "/revisions/99").statusCode()).isEqualTo(404);
        assertThat(desk.visitor().read(site + "/revisions/0").statusCode()).isEqualTo(404);
        assertThat(desk.visitor()
                        .read(site + "/history/difference?from=1&to=99")
                        .statusCode())
                .isEqualTo(404);
        assertThat(desk.visitor()
                        .post(site + "/history/restore", "base", "3", "number", "99")
                        .statusCode())
                .isEqualTo(404);
    }

    private void change(String path, String was, String typed) {
        long base = desk.store().sites().head(variant()).revision().number();
        String answer = desk.visitor()
                .post(site + "/edits", "base", Long.toString(base), "path", path, "was", was, "typed", typed)
                .headers()
                .firstValue("Location")
                .orElse("");
        assertThat(answer).as(path).matches(Pattern.compile("/sites/.*"));
    }

    private static void press(Page page, String button) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(button).setExact(true))
                .click();
    }

    private Object lengthM() {
        Object length = head().planned().get(new ThingId("oven")).value("cable.lengthM");
        return length == null ? "nothing" : length;
    }

    private Site head() {
        return desk.store().sites().head(variant()).site();
    }

    private VariantId variant() {
        return new VariantId(site.substring("/sites/".length()));
    }
}
