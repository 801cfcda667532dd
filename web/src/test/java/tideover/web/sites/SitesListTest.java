package tideover.web.sites;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tideover.store.site.SiteSearch;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.Screen;

/** The list of sites and files that come and go, in a real browser over a real store. */
@Tag("slow")
class SitesListTest extends BrowserTest {
    private static final String BAD = """
            format: 1
            house:
              place: {designation: Bad lane 1, country: XX}
              supply: {lines: FOUR}
              bogus: 3
            """;

    private String site = "";

    @BeforeEach
    void town() {
        site = desk.importExample("town-house.yaml");
    }

    @Test
    void eachSiteStandsInTheListWithWhatStandsInItsWay() {
        desk.importExample("arrangements/operator-not-asked.yaml");
        Page page = open(page(), "/");
        assertThat(page.locator(".td-site").first()).containsText("? Open");
        assertThat(page.locator(".td-site").last()).containsText("✓ Met");
        assertThat(page.locator(".td-site").last()).containsText("Amselweg 11");
        assertOpenToAll(page);
    }

    @Test
    void aSearchFindsBySomeOfTheWords() {
        desk.importExample("terrace.yaml");
        Page page = open(page(Screen.PHONE), "/");
        page.getByLabel("Name, variant, customer or town").fill("weaver");
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Search"))
                .click();
        assertThat(page.locator(".td-site__name")).hasText(Pattern.compile("8 Weaver Row.*"));
        page.getByLabel("Name, variant, customer or town").fill("nowhere");
        page.keyboard().press("Enter");
        assertThat(page.getByRole(AriaRole.STATUS)).containsText("No site fits");
    }

    @Test
    void aBadFileIsRefusedWithAllThatIsWrongInItAndNothingIsKept() {
        int before = kept();
        Page page = open(page(), "/");
        bring(page, "bad.yaml", BAD);
        assertThat(page.locator(".td-problems li")).hasCount(3);
        assertThat(page.locator(".td-problems li").first()).containsText("bad.yaml, line 3, column 45");
        assertThat(page.locator(".td-problems li").first()).containsText("There is no country XX");
        assertThat(page.locator(".td-problems li").nth(1).locator("code")).hasText("supply: {lines: FOUR}");
        assertOpenToAll(page);
        assertThat(kept()).isEqualTo(before);
    }

    @Test
    void noFileAtAllIsNoSite() {
        Page page = open(pageWithoutScript(Screen.DESKTOP), "/");
        bring(page, "empty.yaml", "");
        assertThat(page.locator(".td-problems li")).hasText(Pattern.compile(".*empty.*"));
    }

    @Test
    void whatIsGivenOutComesBackAsTheSameSite() {
        for (String ending : new String[] {"yaml", "json"}) {
            HttpResponse<String> file = desk.visitor().read(site + "/site." + ending);
            assertThat(file.headers().firstValue("Content-Disposition"))
                    .hasValue("attachment; filename=\"amselweg-11.%s\"".formatted(ending));
            Page page = open(page(), "/");
            bring(page, "amselweg." + ending, file.body());
            assertThat(page).hasURL(Pattern.compile("/circuits$"));
            String again = page.url().replaceAll(".*(/sites/[0-9a-f]+)/.*", "$1");
            assertThat(desk.visitor().read(again + "/site.json").body())
                    .isEqualTo(desk.visitor().read(site + "/site.json").body());
        }
    }

    private static int kept() {
        return desk.store().sites().list(SiteSearch.of("")).size();
    }

    private static void bring(Page page, String name, String text) {
        page.getByLabel("Site file", new Page.GetByLabelOptions().setExact(true))
                .setInputFiles(new FilePayload(name, "application/yaml", text.getBytes(StandardCharsets.UTF_8)));
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Bring in"))
                .click();
    }
}
