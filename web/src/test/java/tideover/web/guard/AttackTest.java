package tideover.web.guard;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.WaitForFunctionOptions;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.store.site.VariantId;
import tideover.web.trial.BrowserTest;

/** A page of somebody else, in the very browser that is let in: it can neither read nor change anything. */
@Tag("slow")
class AttackTest extends BrowserTest {
    private static String site;
    private static AttackPage attack;

    @BeforeAll
    static void openAttackPage() {
        site = desk.importExample("town-house.yaml");
        attack = new AttackPage(desk.origin(), site);
    }

    @AfterAll
    static void closeAttackPage() {
        attack.close();
    }

    @BeforeEach
    void theBrowserReportsAllThatWasRefused() {
        expectTrouble("asked elsewhere: http://(127.0.0.1|localhost):");
        expectTrouble("console: ");
    }

    @AfterEach
    void nothingWasReadAndNothingChanged() {
        assertThat(attack.loot()).isEmpty();
        VariantId variant = new VariantId(site.substring(site.lastIndexOf('/') + 1));
        assertThat(desk.store().sites().revisions(variant)).hasSize(1);
    }

    /** A window in which the workbench stands open. */
    private Page victim() {
        Page page = open(page(), site + "/circuits");
        assertThat(page.locator(".td-grid__row").count())
                .as("the person is let in")
                .isPositive();
        return page;
    }

    private static String address(String from, String path) {
        return from.equals("same site") ? attack.sameSite(path) : attack.crossSite(path);
    }

    @ParameterizedTest
    @ValueSource(strings = {"same site", "cross site"})
    void aForeignPageReadsAndChangesNothing(String from) {
        Page page = victim();
        page.navigate(address(from, "/"));
        page.waitForFunction("window.tried", null, new WaitForFunctionOptions().setTimeout(30_000));
        List<?> tried = (List<?>) page.evaluate("window.tried");
        assertThat(tried)
                .asString()
                .contains("read refused", "read opaque refused", "read api refused", "change refused")
                .contains("change with header refused", "change api refused", "erase api refused")
                .contains("picture refused", "picture of ours refused", "script refused", "script of ours refused")
                .contains("style refused", "frame refused")
                .doesNotContain("loaded");
        open(page, site + "/circuits");
        assertThat(page.locator(".td-grid__row").count())
                .as("the person still is let in")
                .isPositive();
    }

    @ParameterizedTest
    @ValueSource(strings = {"same site", "cross site"})
    void aForeignFormIsRefusedWithAPage(String from) {
        Page page = victim();
        page.navigate(address(from, "/form"));
        page.waitForURL(desk.at(site + "/circuits"));
        assertThat(page.locator("h1").textContent()).contains("not come from a page of the workbench");
    }

    @Test
    void aWindowThatAForeignPageOpensIsNotInItsHands() {
        Page page = victim();
        page.navigate(attack.sameSite("/"));
        page.waitForFunction("window.tried", null, new WaitForFunctionOptions().setTimeout(30_000));
        assertThat(page.evaluate("window.openWorkbench()")).isEqualTo("refused");
    }

    @Test
    void aLinkElsewhereTellsNothingOfWhereItCameFrom() {
        Page page = victim();
        page.evaluate(
                "address => { const link = document.createElement('a'); link.href = address; link.textContent = 'x';"
                        + " document.querySelector('main').prepend(link); link.click(); }",
                attack.crossSite("/nothing"));
        page.waitForURL("**/nothing");
    }
}
