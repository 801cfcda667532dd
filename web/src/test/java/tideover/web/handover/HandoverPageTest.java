package tideover.web.handover;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions.ContainsTextOptions;
import com.microsoft.playwright.assertions.LocatorAssertions.HasCountOptions;
import com.microsoft.playwright.options.ColorScheme;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.LargeHouse;
import tideover.web.trial.Screen;

@Tag("slow")
class HandoverPageTest extends BrowserTest {
    private static final double LONG_MS = 90_000;

    private static Locator button(Page page, String words) {
        return page.locator("main button").filter(new Locator.FilterOptions().setHasText(words));
    }

    /** What another program reads in a paper. */
    private static String textOf(Path pdf) throws IOException, InterruptedException {
        Process reader = new ProcessBuilder("pdftotext", "-q", pdf.toString(), "-").start();
        String text = new String(reader.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(reader.waitFor()).as("pdftotext can read it").isZero();
        return text;
    }

    @Test
    void papersAreMadeWhileOneWatchesAndCanBeRead() throws IOException, InterruptedException {
        String site = desk.importExample("terrace.yaml");
        Page page = open(page(), site + "/handover");
        button(page, "Make the papers").click();
        assertThat(page.locator(".td-job a[download]")).hasCount(5, new HasCountOptions().setTimeout(LONG_MS));
        assertThat(page.locator(".td-job")).containsText("Done.");
        for (String name : List.of("handover.pdf", "letter.pdf", "wiring.pdf", "terminals.pdf")) {
            Download paper = page.waitForDownload(() -> page.locator(".td-job a")
                    .filter(new Locator.FilterOptions().setHasText(name))
                    .click());
            assertThat(paper.suggestedFilename()).isEqualTo(name);
            assertThat(textOf(paper.path())).as(name).contains("8 Weaver Row");
        }
        String all = page.locator(".td-job a").last().getAttribute("href");
        assertThat(namesIn(desk.visitor().download(all).body()))
                .contains("handover.pdf", "findings.json", "site.json", "diagram-dark.svg", "wiring-power.csv");
    }

    private static List<String> namesIn(byte[] zip) throws IOException {
        List<String> names = new ArrayList<>();
        try (ZipInputStream files = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = files.getNextEntry(); entry != null; entry = files.getNextEntry())
                names.add(entry.getName());
        }
        return names;
    }

    @Test
    void papersAreMadeWithoutScriptByLookingAgain() {
        String site = desk.importExample("terrace.yaml");
        Page page = open(pageWithoutScript(Screen.PHONE), site + "/handover");
        button(page, "Make the papers").click();
        for (int i = 0; i < 120 && page.locator(".td-job a[download]").count() == 0; i++) {
            page.waitForTimeout(500);
            if (page.locator(".td-job .td-buttons a").count() > 0)
                page.locator(".td-job .td-buttons a").click();
            else open(page, site + "/handover");
        }
        assertThat(page.locator(".td-job a[download]")).hasCount(5);
    }

    @Test
    void theMakingOfPapersIsStopped() {
        String site = desk.importSite(LargeHouse.with(150));
        Page page = open(page(), site + "/handover");
        button(page, "Make the papers").click();
        page.locator("#cancel-papers").click();
        assertThat(page.locator(".td-job"))
                .containsText("Stopped before it was done.", new ContainsTextOptions().setTimeout(LONG_MS));
        assertThat(page.locator(".td-job a[download]")).hasCount(0);
        assertThat(button(page, "Make them again")).isVisible();
    }

    /** The town house before anybody asked its grid operator. */
    private static String operatorNotAsked() throws IOException {
        String site = Files.readString(Path.of("..", "examples", "town-house.yaml"));
        String asked = site.replaceFirst("(?m)^ *neutralSeparation: .*\\R", "");
        assertThat(asked).as("the example says what the operator answered").isNotEqualTo(site);
        return asked;
    }

    @Test
    void whatIsOpenIsToldBeforeItIsHandedOver() throws IOException {
        String site = desk.importSite(operatorNotAsked());
        Page page = open(page(), site + "/handover");
        assertThat(page.locator("#handover-open .td-margin__pending")).hasCount(0);
        Locator open = page.locator("#handover-open .td-sentences");
        assertThat(open).containsText("for a fact or a limit.");
        assertThat(open).containsText("The grid operator has one question to answer; the letter asks.");
        open.locator("a").first().click();
        assertThat(page).hasURL(Pattern.compile(".*/findings\\?show=.*"));
        assertThat(page.locator(".td-findings__group")).hasCount(1);
    }

    @Test
    void papersOfAnEarlierRevisionSaySo() {
        String site = desk.importExample("terrace.yaml");
        Page page = open(page(), site + "/handover");
        button(page, "Make the papers").click();
        assertThat(page.locator(".td-job a[download]")).hasCount(5, new HasCountOptions().setTimeout(LONG_MS));
        desk.visitor()
                .post(site + "/circuits", "base", "1", "path", "house.oven.cable.lengthM", "was", "14", "typed", "15");
        open(page, site + "/handover");
        assertThat(page.locator(".td-job")).containsText("It was made of revision 1; the site has changed since.");
    }

    @Test
    void findingsAreSavedForOtherPrograms() {
        String site = desk.importExample("terrace.yaml");
        assertThat(desk.visitor().read(site + "/findings.json").body())
                .contains("\"format\" : 1", "\"calculation\"", "loading.line");
    }

    @ParameterizedTest
    @EnumSource
    void nothingSeriousIsInTheWayOfReading(Screen screen) throws IOException {
        String site = desk.importSite(operatorNotAsked());
        Page page = open(page(screen), site + "/handover");
        assertOpenToAll(page);
        assertFitsItsScreen(page);
        assertOpenToAll(open(page(options(screen).setColorScheme(ColorScheme.DARK)), site + "/handover"));
    }
}
