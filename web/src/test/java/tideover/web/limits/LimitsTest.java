package tideover.web.limits;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tideover.engine.rules.Limit;
import tideover.engine.rules.RuleBook;
import tideover.files.rules.RuleBookResult;
import tideover.files.rules.RuleBooks;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.Screen;
import tideover.web.trial.Visitor;

@Tag("slow")
class LimitsTest extends BrowserTest {
    private static final Pattern LIMIT_LINK = Pattern.compile("href=\"(/sites/[0-9a-f]+/limits)#([^\"]+)\"");

    private static RuleBook book(String country) {
        if (RuleBooks.read(country, List.of()) instanceof RuleBookResult.Readable readable) return readable.rules();
        throw new AssertionError("the rule book " + country + " cannot be read");
    }

    private static Locator row(Page page, String limit) {
        return page.locator("[id='" + limit + "']");
    }

    @ParameterizedTest
    @CsvSource({"town-house.yaml, DE", "terrace.yaml, GB"})
    void everyLimitOfTheRuleBookStandsThereOnce(String house, String country) {
        String site = desk.importExample(house);
        Page page = open(pageWithoutScript(Screen.DESKTOP), site + "/limits");
        List<String> ids = book(country).limits().stream().map(Limit::id).toList();
        assertThat(ids).hasSizeGreaterThan(100);
        assertThat(page.locator(".td-limits__limit th").allInnerTexts()).containsExactlyInAnyOrderElementsOf(ids);
        assertThat(page.locator("main")).containsText("It has %d limits".formatted(ids.size()));
    }

    @Test
    void aLimitBearsUnitForceClauseAndHowFarItWasCompared() {
        Page page = open(page(), desk.importExample("town-house.yaml") + "/limits");
        Locator touch = row(page, "rcd.touchVoltageV");
        assertThat(touch).containsText("50 V");
        assertThat(touch).containsText("required");
        assertThat(touch).containsText("IEC 60364-4-41:2005+A1:2017");
        assertThat(touch).containsText("411.5.3");
        assertThat(touch).containsText("from memory");
        assertThat(row(page, "rcd.typeAc")).containsText("NOT_ALLOWED");
        assertThat(row(page, "fault.measuredLoopFactor")).containsText("0.666667");
        assertThat(page.locator("section[aria-labelledby='topic-neutral'] > p").first())
                .containsText("As IEC");
    }

    @Test
    void numbersHaveTheReadersDecimalSign() {
        Page page = page(options(Screen.DESKTOP).setLocale("de-DE"));
        open(page, desk.importExample("town-house.yaml") + "/limits");
        assertThat(row(page, "overload.tripping.ratio")).containsText("1,45");
    }

    @Test
    void aFindingLeadsToTheLimitItWasJudgedBy() {
        String site = desk.importExample("town-house.yaml");
        Page page = open(pageWithoutScript(Screen.PHONE), site + "/findings?show=met&topic=poles");
        Locator finding = page.locator(".td-finding").first();
        String clause = finding.locator(".td-note__small a").first().innerText();
        finding.locator(".td-note__small a").first().click();
        Locator limit = page.locator(".td-limits__limit:target");
        assertThat(limit).hasCount(1);
        assertThat(limit).isInViewport();
        assertThat(clause).contains(limit.locator("td").nth(2).innerText());
        assertThat(clause).contains(limit.locator("td").nth(4).innerText());
        page.locator("section:has(> h2#topic-poles) > p a").click();
        assertThat(page).hasURL(desk.at(site + "/findings?topic=poles"));
    }

    @Test
    void everyFindingLeadsToALimitThatIsThere() {
        Visitor visitor = desk.visitor();
        for (String house : List.of("town-house.yaml", "farmhouse.yaml", "terrace.yaml")) {
            String site = desk.importExample(house);
            String limits = visitor.read(site + "/limits").body();
            int links = 0;
            for (String show : List.of("met", "not-met", "advice", "accepted", "not-applicable")) {
                Matcher link = LIMIT_LINK.matcher(
                        visitor.read(site + "/findings?show=" + show).body());
                while (link.find()) {
                    assertThat(link.group(1)).isEqualTo(site + "/limits");
                    assertThat(limits).contains("<tr id=\"" + link.group(2) + "\"");
                    links++;
                }
            }
            assertThat(links).as(house).isGreaterThan(100);
        }
    }

    @Test
    void whereNoRuleBookKnowsTheCountryEveryTopicSaysSo() {
        String site = desk.importSite("format: 1\nhouse: {place: {country: FR}, circuits: [{id: lamp}]}\n");
        Page page = open(page(), site + "/limits");
        assertThat(page.locator(".td-limits__limit")).hasCount(0);
        assertThat(page.locator("main")).containsText("The rule book has no limit here: what asks for one stays open.");
        assertThat(page.locator("main")).containsText("Nothing known.");
    }

    @ParameterizedTest
    @EnumSource
    void nothingSeriousIsInTheWayOfReading(Screen screen) {
        String site = desk.importExample("town-house.yaml");
        Page page = open(page(screen), site + "/limits");
        assertOpenToAll(page);
        assertFitsItsScreen(page);
        assertOpenToAll(open(page(options(screen).setColorScheme(ColorScheme.DARK)), site + "/limits"));
    }
}
