package tideover.web.sites;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tideover.store.site.SiteRow;
import tideover.store.site.SiteSearch;
import tideover.store.site.VariantId;
import tideover.store.site.VariantRow;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.Screen;

/** Variants, copies and the shelf, in a real browser over a real store. */
@Tag("slow")
class FolderTest extends BrowserTest {
    private String site = "";

    @BeforeEach
    void terrace() {
        site = desk.importExample("terrace.yaml");
    }

    @Test
    void aVariantGoesItsOwnWay() {
        Page page = open(page(), site + "/folder");
        page.getByLabel("Name of a further variant").fill("With a smaller switch");
        press(page, "Make the variant");
        assertThat(page).hasURL(Pattern.compile("/circuits$"));
        assertThat(page.locator(".td-head__site")).containsText("With a smaller switch");
        String variant = page.url().replaceAll(".*(/sites/[0-9a-f]+)/.*", "$1");
        desk.visitor()
                .post(variant + "/edits", "base", "1", "path", "house.oven.cable.lengthM", "was", "14", "typed", "20");
        assertThat(desk.store().sites().head(id(variant)).revision().number()).isEqualTo(2);
        assertThat(desk.store().sites().head(id(site)).revision().number()).isEqualTo(1);
        assertThat(row().variants())
                .extracting(VariantRow::name)
                .containsExactly("As planned", "With a smaller switch");
        open(page, "/");
        assertThat(page.locator(".td-site", new Page.LocatorOptions().setHasText("8 Weaver Row"))
                        .first()
                        .locator(".td-variant"))
                .hasCount(2);
    }

    @Test
    void aVariantIsRenamedButNotToNothing() {
        Page page = open(pageWithoutScript(Screen.PHONE), site + "/folder");
        page.getByLabel("Name of this variant").fill("  ");
        press(page, "Rename");
        assertThat(page.locator("#name-problem")).containsText("write one");
        page.getByLabel("Name of this variant").fill("As ordered");
        press(page, "Rename");
        assertThat(page.locator(".td-head__site")).containsText("As ordered");
    }

    @Test
    void aCopyIsASiteOfItsOwn() {
        Page page = open(page(), site + "/folder");
        page.getByLabel("What the copy is called").fill("8 Weaver Row");
        press(page, "Make the copy");
        assertThat(page.locator("#designation-problem")).containsText("another name");
        page.getByLabel("What the copy is called").fill("10 Weaver Row");
        press(page, "Make the copy");
        assertThat(page.locator(".td-head__site")).containsText("10 Weaver Row");
        List<SiteRow> found = desk.store().sites().list(SiteSearch.of("10 Weaver"));
        assertThat(found).hasSize(1);
        assertThat(found.get(0).id()).isNotEqualTo(row().id());
    }

    @Test
    void aSiteThatIsDoneGoesOnTheShelfAndComesBack() {
        Page page = open(page(), site + "/folder");
        press(page, "Archive the site");
        assertThat(page.locator("a[href^='" + site + "']")).hasCount(0);
        page.getByText("Archived sites").click();
        assertThat(page.locator("a[href='" + site + "/folder']")).hasCount(1);
        assertOpenToAll(page);
        open(page, site + "/folder");
        assertThat(page.locator(".td-said")).containsText("Archived");
        press(page, "Take it out again");
        open(page, "/");
        assertThat(page.locator("a[href='" + site + "/folder']")).hasCount(1);
    }

    @ParameterizedTest
    @EnumSource(Screen.class)
    void nothingKeepsAnybodyOutOfTheFolder(Screen screen) {
        Page page = open(page(screen), site + "/folder");
        assertOpenToAll(page);
        assertFitsItsScreen(page);
    }

    private SiteRow row() {
        VariantRow variant = desk.store().sites().find(id(site)).orElseThrow();
        return desk.store().sites().find(variant.site()).orElseThrow();
    }

    private static VariantId id(String address) {
        return new VariantId(address.substring("/sites/".length()));
    }

    private static void press(Page page, String button) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button))
                .click();
    }
}
