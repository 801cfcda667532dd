package tideover.web.facts;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.FactId;
import tideover.engine.site.Origin;
import tideover.engine.site.Site;
import tideover.store.site.SiteRow;
import tideover.store.site.SiteSearch;
import tideover.store.site.VariantId;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.Screen;

/** The survey on a phone, in a real browser over a real store. */
@Tag("slow")
class SurveyTest extends BrowserTest {
    private String site = "";

    /** A site as the five questions leave it, with the earthing system open. */
    @BeforeEach
    void firstVisit() {
        desk.visitor()
                .post(
                        "/sites",
                        "designation",
                        "Probeweg 3",
                        "country",
                        "DE",
                        "origin",
                        "READ",
                        "lines",
                        "THREE",
                        "mainFuse",
                        "63",
                        "inverter",
                        "10",
                        "battery",
                        "10",
                        "source",
                        "TO_BE_PLANNED",
                        "forms",
                        "THREE",
                        "there",
                        "lights",
                        "there",
                        "oven",
                        "there",
                        "heat-pump",
                        "staysOn",
                        "lights",
                        "staysOn",
                        "heat-pump");
        SiteRow row = desk.store().sites().list(SiteSearch.of("Probeweg")).get(0);
        site = "/sites/" + row.latest().id();
    }

    @Test
    void whatSetsThePriceStandsFirstAndNoMoreThanTwentyOfIt() {
        Page page = open(page(Screen.PHONE), site + "/survey");
        Locator facts = page.locator(".td-survey > .td-survey__list > li");
        assertThat(facts.first()).containsText("Earthing system of the supply");
        assertThat(facts.nth(1)).containsText("Operator's answer about the neutral");
        List<String> ids =
                facts.all().stream().map(one -> one.getAttribute("id")).toList();
        assertThat(ids).hasSize(20).doesNotHaveDuplicates().contains("supply_penSplitAt", "main-board_spareWays");
        assertThat(page.locator(".td-survey__known")).containsText("Known already");
        assertOpenToAll(page);
    }

    @Test
    void aFactIsSavedInItsPlaceAndSaysWhoSaysIt() {
        Page page = open(page(Screen.PHONE), site + "/survey");
        Locator earthing = page.locator("#supply_earthingSystem");
        earthing.locator("[name=typed]").selectOption("TT");
        save(earthing);
        assertThat(earthing).containsText("✓ saved");
        assertThat(earthing).containsText("declared by the grid operator");
        assertThat(page.locator("#saved")).containsText("Revision 2");
        assertThat(head().house().supply().earthingSystem()).isEqualTo(EarthingSystem.TT);
        assertThat(head().origins().of(FactId.of("supply.earthingSystem"))).isEqualTo(Origin.DECLARED_BY_OPERATOR);
        // The rest of the list still stands on the revision before and is saved all the same.
        Locator ways = page.locator("#main-board_spareWays");
        ways.locator("[name=typed]").fill("5");
        ways.getByLabel("Who says so").selectOption("DECLARED_BY_CUSTOMER");
        save(ways);
        assertThat(ways).containsText("declared by the customer");
        assertThat(head().origins().of(FactId.of("main-board.spareWays"))).isEqualTo(Origin.DECLARED_BY_CUSTOMER);
    }

    @Test
    void aFactThatIsAsAssumedIsSavedAsSeenWithoutTypingItAgain() {
        Page page = open(pageWithoutScript(Screen.PHONE), site + "/survey");
        Locator type = page.locator("#rcd-1_rcd_type");
        assertThat(type).containsText("assumed");
        save(type);
        assertThat(head().origins().of(FactId.of("rcd-1.rcd.type"))).isEqualTo(Origin.READ);
        // Known now, it has left the list of what is to be got.
        assertThat(page.locator(".td-survey > .td-survey__list > #rcd-1_rcd_type"))
                .hasCount(0);
        assertThat(page.locator(".td-survey__known #rcd-1_rcd_type")).hasCount(1);
    }

    @Test
    void whatCannotBeIsToldAtTheFactWithScriptAndWithout() {
        for (Page page : List.of(page(Screen.PHONE), pageWithoutScript(Screen.PHONE))) {
            open(page, site + "/survey");
            Locator ways = page.locator("#main-board_spareWays");
            ways.locator("[name=typed]").fill("many");
            save(ways);
            assertThat(page.locator("#main-board_spareWays .td-field__problem")).containsText("many");
            assertThat(page.locator("#main-board_spareWays").locator("[name=typed]"))
                    .hasValue("many");
        }
        assertThat(desk.store().sites().head(variant()).revision().number()).isEqualTo(1);
    }

    @Test
    void whatIsKnownIsNotAskedAndAllElseStandsThingByThing() {
        String finished = desk.importExample("town-house.yaml");
        Page page = open(page(Screen.TABLET), finished + "/survey");
        assertThat(page.locator(".td-survey__lead")).containsText("All that sets the price is known");
        page.getByRole(
                        AriaRole.LINK,
                        new Page.GetByRoleOptions().setName("UC2 Main board").setExact(true))
                .click();
        assertThat(page.locator("h1")).containsText("UC2 Main board");
    }

    private static void save(Locator fact) {
        fact.getByRole(AriaRole.BUTTON).click();
    }

    private Site head() {
        return desk.store().sites().head(variant()).site();
    }

    private VariantId variant() {
        return new VariantId(site.substring("/sites/".length()));
    }
}
