package tideover.web.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.EmulateMediaOptions;
import com.microsoft.playwright.Page.PdfOptions;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.Screen;

@Tag("slow")
class PrintTest extends BrowserTest {
    @TempDir
    private Path folder;

    private static String run(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(command[0]).isZero();
        return text;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "survey",
                "circuits",
                "findings",
                "diagram",
                "network",
                "network/oven",
                "wiring",
                "handover",
                "limits",
                "wiring/diagnosis?call=bus&answer=no"
            })
    void eachPageIsPrintedOnA4WithoutWhatIsThereToBeClicked(String name) throws IOException, InterruptedException {
        String site = desk.importExample("town-house.yaml");
        Page page = open(page(options(Screen.PHONE).setColorScheme(ColorScheme.DARK)), site + "/" + name);
        Path paper = folder.resolve("page.pdf");
        page.pdf(new PdfOptions().setPath(paper).setPreferCSSPageSize(true));

        List<String> sizes = run("pdfinfo", "-f", "1", "-l", "99", paper.toString())
                .lines()
                .filter(line -> line.contains("size:") && line.startsWith("Page "))
                .toList();
        assertThat(sizes).isNotEmpty().allSatisfy(size -> assertThat(size).contains("A4"));
        String text = run("pdftotext", "-q", paper.toString(), "-");
        assertThat(text).contains("Amselweg 11").doesNotContain("All sites", "To the content", "Whole drawing", "Undo");
        page.emulateMedia(new EmulateMediaOptions().setMedia(Media.PRINT));
        assertThat(page.locator("#way")).isHidden();
        assertThat(page.evaluate("getComputedStyle(document.body).backgroundColor"))
                .isEqualTo("rgb(255, 255, 255)");
        assertThat(page.evaluate("getComputedStyle(document.body).color")).isEqualTo("rgb(0, 0, 0)");
    }

    @Test
    void theDoubleLineAndTheHatchArePrinted() {
        String site = desk.importExample("town-house.yaml");
        Page page = open(page(), site + "/circuits");
        page.emulateMedia(new EmulateMediaOptions().setMedia(Media.PRINT));
        String line = "getComputedStyle(document.querySelector('.td-grid__cut--grid th'))";
        assertThat(page.evaluate(line + ".borderBottomStyle")).isEqualTo("double");
        assertThat(page.evaluate(line + ".borderBottomColor")).isEqualTo("rgb(0, 0, 0)");
        String hatch = "getComputedStyle(document.querySelector('.td-side--grid'))";
        assertThat((String) page.evaluate(hatch + ".backgroundImage")).startsWith("repeating-linear-gradient");
        assertThat(page.evaluate(hatch + ".printColorAdjust")).isEqualTo("exact");
    }
}
