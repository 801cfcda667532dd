package tideover.web.guard;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.NodeList;
import tideover.store.attachment.Privacy;
import tideover.store.customer.Contact;
import tideover.store.customer.CustomerFacts;
import tideover.store.database.LogEntry;
import tideover.store.site.SiteId;
import tideover.store.site.VariantId;
import tideover.web.guard.Crawl.Found;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.Visitor;

/** What people type is text on every page, in every drawing, paper and list, and never anything else. */
@Tag("slow")
class HostileTextTest extends BrowserTest {
    private static final byte[] PICTURE = java.util.Base64.getDecoder()
            .decode("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==");
    /** A number that a spreadsheet may take for one. */
    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]+([.,][0-9]+)?([eE][+-]?[0-9]+)?");

    private static final Pattern PDF_LINK = Pattern.compile("href=\"([^\"]+\\.pdf)\"");

    private static final String LOOK_FOR_MARKUP = """
            () => {
              const found = window.hacked ? ['script ran'] : [];
              for (const element of document.querySelectorAll('*')) {
                const shown = element.outerHTML.slice(0, 160);
                for (const attribute of element.attributes) {
                  if (attribute.name.startsWith('on')) found.push(attribute.name + ': ' + shown);
                  if (/^(href|src|action|formaction|xlink:href)$/.test(attribute.name) && /^\\s*(javascript|data:text|vbscript)/i.test(attribute.value))
                    found.push(attribute.name + ': ' + shown);
                }
                const name = element.tagName.toLowerCase();
                if (['hacked', 'iframe', 'object', 'embed', 'base'].includes(name) || element.id === 'hacked') found.push(shown);
                if (name === 'script' && !element.src.startsWith(location.origin + '/assets/')) found.push(shown);
                if (name === 'img' && !element.src.startsWith(location.origin + '/')) found.push(shown);
              }
              return found;
            }
            """;

    private static String site;
    private static Visitor visitor;
    private static List<Found> everything = List.of();

    @BeforeAll
    static void keepHostileHouse() {
        site = desk.importSite(HostileTexts.house("town-house.yaml"));
        visitor = desk.visitor();
        VariantId variant = new VariantId(site.substring(site.lastIndexOf('/') + 1));
        SiteId id = desk.store().sites().find(variant).orElseThrow().site();
        List<String> texts = HostileTexts.ALL;
        for (int i = 0; i < 3; i++) {
            String text = texts.get(i);
            var customer = desk.store()
                    .customers()
                    .create(new CustomerFacts(
                            text,
                            text,
                            text,
                            text,
                            text,
                            text,
                            text,
                            text,
                            List.of(new Contact(text, text, text, text))));
            desk.store().customers().link(id, customer.id());
            LogEntry entry = new LogEntry(text, java.time.Instant.now(), text);
            desk.store().attachments().add(id, "oven", text + ".png", PICTURE, Privacy.ORDINARY, entry);
            desk.store()
                    .sites()
                    .rename(
                            desk.store()
                                    .sites()
                                    .newVariant(variant, text, entry)
                                    .revision()
                                    .id()
                                    .variant(),
                            text);
        }
        visitor.post(
                site + "/circuits", "base", "1", "path", "plan.oven.designation", "was", "", "typed", texts.get(1));
    }

    /** Crawled once. */
    private static synchronized List<Found> everything() {
        if (everything.isEmpty())
            everything = Crawl.from(
                    desk, visitor, List.of(site + "/circuits", "/", site + "/history", site + "/folder", "/customers"));
        return everything;
    }

    @Test
    void noPageTakesTextForMarkup() {
        List<Found> pages =
                everything().stream().filter(found -> found.is("text/html")).toList();
        assertThat(pages).hasSizeGreaterThan(20);
        Page page = page();
        List<String> dialogs = new ArrayList<>();
        page.onDialog(dialog -> {
            dialogs.add(dialog.message());
            dialog.dismiss();
        });
        int shown = 0;
        for (Found found : pages) {
            open(page, found.path());
            assertThat((List<?>) page.evaluate(LOOK_FOR_MARKUP))
                    .as(found.path())
                    .isEmpty();
            if (page.locator("body").innerText().contains("window.hacked=1")) shown++;
        }
        assertThat(dialogs).isEmpty();
        assertThat(shown)
                .as("pages on which the texts stand as they were typed")
                .isGreaterThan(10);
    }

    @Test
    void whatIsTypedWronglyComesBackAsText() {
        Page page = page();
        String bad =
                "format: 1\nhouse:\n  boards:\n    - {id: '<img src=x onerror=window.hacked=1>', desination: '<b id=hacked>'}\n";
        open(page, "/?q=" + URLEncoder.encode(HostileTexts.ALL.get(1), StandardCharsets.UTF_8));
        assertThat((List<?>) page.evaluate(LOOK_FOR_MARKUP)).isEmpty();
        page.locator("input[type=file]")
                .first()
                .setInputFiles(new com.microsoft.playwright.options.FilePayload(
                        "<img src=x onerror=window.hacked=1>.yaml", "application/yaml", HostileTexts.bytes(bad)));
        page.locator("form:has(input[type=file]) button").first().click();
        page.locator("[role=alert]").first().waitFor();
        assertThat(page.locator("body").innerText()).contains("onerror=window.hacked=1");
        assertThat((List<?>) page.evaluate(LOOK_FOR_MARKUP)).isEmpty();

        for (String text : HostileTexts.ALL) {
            HttpResponse<String> answer = visitor.post(
                    site + "/circuits", "base", "1", "path", "plan.oven.cable.lengthM", "was", "", "typed", text);
            assertThat(answer.statusCode()).as(text).isEqualTo(422);
            assertThat(answer.body()).doesNotContain("<script>window", "<img src=x", "<svg onload", "<b id=hacked");
        }
    }

    @Test
    void drawingsHoldTextsAndNoScript() throws Exception {
        List<Found> drawings =
                everything().stream().filter(found -> found.is("image/svg")).toList();
        assertThat(drawings).isNotEmpty();
        DocumentBuilderFactory reader = DocumentBuilderFactory.newInstance();
        reader.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        int shown = 0;
        for (Found drawing : drawings) {
            var document = reader.newDocumentBuilder().parse(new ByteArrayInputStream(drawing.bytes()));
            NodeList all = document.getElementsByTagName("*");
            for (int i = 0; i < all.getLength(); i++) {
                Element element = (Element) all.item(i);
                assertThat(element.getTagName())
                        .as(drawing.path())
                        .isNotIn("script", "foreignObject", "hacked", "img", "b", "a", "image", "use");
                NamedNodeMap attributes = element.getAttributes();
                for (int j = 0; j < attributes.getLength(); j++)
                    assertThat(attributes.item(j).getNodeName())
                            .as(drawing.path())
                            .doesNotStartWith("on")
                            .isNotEqualTo("href");
            }
            if (document.getDocumentElement().getTextContent().contains("window.hacked=1")) shown++;
        }
        assertThat(shown).isPositive();
    }

    @Test
    void listsHoldNoFormulas() {
        List<Found> lists =
                everything().stream().filter(found -> found.is("text/csv")).toList();
        assertThat(lists).isNotEmpty();
        int texts = 0;
        for (Found list : lists)
            for (var row : CsvReader.builder().ofCsvRecord(list.text().replace("\uFEFF", "")))
                for (String cell : row.getFields()) {
                    if (!cell.isEmpty() && !NUMBER.matcher(cell).matches())
                        assertThat(cell.substring(0, 1))
                                .as(list.path() + ": " + cell)
                                .isNotIn("=", "+", "-", "@", "\t", "\r");
                    if (cell.contains("cmd|")) texts++;
                }
        assertThat(texts).as("cells that would have been formulas").isPositive();
    }

    @Test
    void papersShowTheTextsAsTheyWereTyped() throws IOException, InterruptedException {
        visitor.post(site + "/handover/papers");
        List<String> papers = new ArrayList<>();
        for (int i = 0; papers.isEmpty() && i < 600; i++) {
            Thread.sleep(100);
            Matcher link = PDF_LINK.matcher(visitor.read(site + "/handover").body());
            while (link.find()) papers.add(link.group(1));
        }
        assertThat(papers).isNotEmpty();
        Path folder = Files.createTempDirectory("tideover-papers");
        StringBuilder all = new StringBuilder();
        for (String paper : papers) {
            Path file = Files.write(
                    folder.resolve("paper.pdf"), visitor.download(paper).body());
            assertThat(printed("pdfinfo", file.toString())).containsPattern("JavaScript: +no");
            all.append(printed("pdftotext", "-raw", file.toString(), "-"));
            Files.delete(file);
        }
        Files.delete(folder);
        assertThat(all.toString().replaceAll("\\s+", ""))
                .contains(
                        "<script>window.hacked=1</script>",
                        "\"><imgsrc=xonerror=window.hacked=1>",
                        "{{7*7}}${7*7}#{7*7}",
                        "]]><hacked/>",
                        "&lt;bid=hacked&gt;");
    }

    private static String printed(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isZero();
        return text;
    }
}
