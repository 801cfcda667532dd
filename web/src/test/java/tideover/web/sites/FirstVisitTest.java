package tideover.web.sites;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.Origin;
import tideover.engine.site.Site;
import tideover.engine.site.ThingId;
import tideover.store.site.SiteRow;
import tideover.store.site.SiteSearch;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.Screen;

/** From nothing to a judged plan, in a real browser over a real store. */
@Tag("slow")
class FirstVisitTest extends BrowserTest {

    /** What a hand does: opens, types, chooses, ticks, presses. */
    private int actions;

    @Test
    void aJudgedPlanIsThereAfterFewerThanTwelveActions() {
        Page page = page();
        act(() -> open(page, "/"));
        act(() -> page.getByLabel("What the site is called").fill("Probeweg 3"));
        act(() -> page.getByLabel("Country").selectOption("DE"));
        act(() -> page.getByLabel(Pattern.compile("^TN-C-S")).check());
        act(() -> page.locator("#lines-THREE").check());
        act(() -> page.getByLabel("Main fuse (A)").fill("63"));
        act(() -> page.getByLabel("Battery (kWh usable)").fill("10"));
        act(() -> page.getByLabel("Inverter (kVA)").fill("10"));
        act(() -> page.getByLabel("Heat pump is there").check());
        act(() -> press(page, "Make the plan"));

        assertThat(page).hasURL(Pattern.compile("/sites/[0-9a-f]{16}/circuits$"));
        assertThat(page.locator("#margin .td-margin__verdict")).containsText("Open");
        assertThat(page.locator("tr[data-circuit='lights']")).containsText("stays on");
        assertThat(page.locator("tr[data-circuit='oven']")).containsText("grid-only");
        assertThat(actions).isLessThan(12);
        Site site = newest();
        assertThat(site.house().supply().earthingSystem()).isEqualTo(EarthingSystem.TN_C_S);
        assertThat(site.planned().get(new ThingId("battery")).value("usableEnergyWh"))
                .isEqualTo(10_000.0);
        assertThat(origin(site, ThingId.SUPPLY, "earthingSystem")).isEqualTo(Origin.DECLARED_BY_CUSTOMER);
        assertThat(origin(site, new ThingId("oven"), "cable.crossSectionMm2")).isEqualTo(Origin.ASSUMED);
        assertThat(origin(site, new ThingId("islanding-switch"), "poles")).isEqualTo(Origin.ASSUMED);
    }

    @Test
    void whoKnowsNothingButTheNameStillGetsAPlanAndIsAskedForTheRest() {
        Page page = open(page(Screen.PHONE), "/sites/new");
        page.getByLabel("What the site is called").fill("Am Teich 1");
        page.getByLabel("Country").selectOption("GB");
        press(page, "Make the plan");
        assertThat(page.locator("#margin .td-margin__verdict")).containsText("Open");
        assertThat(newest().house().supply().earthingSystem()).isNull();
        assertThat(newest().house().supply().mainFuse()).isNotNull();
    }

    @Test
    void whatCannotStandIsToldAtOnceAndTheAnswersAreKept() {
        Page page = open(page(), "/sites/new");
        page.getByLabel("Main fuse (A)").fill("some");
        page.getByLabel("Sauna is there").check();
        press(page, "Make the plan");
        assertThat(page.locator(".td-problems li")).hasCount(3);
        assertThat(page.locator("#mainFuse-problem")).containsText("some");
        assertThat(page.getByLabel("Main fuse (A)")).hasValue("some");
        assertThat(page.getByLabel("Sauna is there")).isChecked();
        assertOpenToAll(page);
        page.locator(".td-problems a[href='#designation']").click();
        assertThat(page.getByLabel("What the site is called")).isFocused();
    }

    @Test
    void theQuestionsAreAnsweredWithoutScriptToo() {
        Page page = open(pageWithoutScript(Screen.PHONE), "/sites/new");
        page.getByLabel("What the site is called").fill("Ohne Skript 5");
        page.getByLabel("Country").selectOption("AT");
        press(page, "Make the plan");
        assertThat(page.locator("#margin .td-margin__verdict")).isVisible();
    }

    @Test
    void nothingKeepsAnybodyOutOfTheQuestions() {
        assertOpenToAll(open(page(), "/sites/new"));
    }

    private void act(Runnable action) {
        action.run();
        actions++;
    }

    private static void press(Page page, String button) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button))
                .click();
    }

    private static Origin origin(Site site, ThingId thing, String field) {
        return site.origins().of(new tideover.engine.site.FactId(thing, field));
    }

    private static Site newest() {
        SiteRow row = desk.store().sites().list(SiteSearch.of("")).get(0);
        return desk.store().sites().head(row.latest().id()).site();
    }
}
