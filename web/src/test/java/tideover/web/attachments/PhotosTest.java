package tideover.web.attachments;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tideover.store.attachment.Attachment;
import tideover.store.attachment.Privacy;
import tideover.store.site.SiteId;
import tideover.store.site.VariantId;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.Screen;

/** Photos and documents at places, in a real browser over a real store. */
@Tag("slow")
class PhotosTest extends BrowserTest {
    private String site = "";

    @BeforeEach
    void townHouse() {
        site = desk.importExample("town-house.yaml");
    }

    @Test
    void aPhotoIsAddedFromTheSheetOfAThingAndShownThere() {
        Page page = open(page(Screen.PHONE), site + "/things/main-board");
        page.getByText("Add a photo or document").click();
        assertThat(page.getByLabel("Where it belongs")).hasValue("main-board");
        add(page, "board open.JPG", picture("jpg"), "image/jpeg", "the board, open");
        Locator shown = page.locator(".td-photo__picture");
        assertThat(shown).hasAttribute("alt", "the board, open");
        shown.scrollIntoViewIfNeeded();
        assertThat(shown).hasJSProperty("naturalWidth", 40);
        assertOpenToAll(page);
        open(page, site + "/things/main-board");
        assertThat(page.locator(".td-photo")).containsText("board open.JPG");
        assertThat(kept()).hasSize(1).allSatisfy(one -> assertThat(one.place()).isEqualTo("main-board"));
    }

    @Test
    void aPhotoMayBelongToOneFact() {
        Page page = open(page(Screen.PHONE), site + "/survey");
        page.locator(".td-survey__known summary").first().click();
        page.getByLabel("Photo of Spare ways").first().click();
        add(page, "ways.png", picture("png"), "image/png", "nine ways are free");
        assertThat(kept()).extracting(Attachment::place).containsExactly("meter-panel.spareWays");
        assertThat(page.locator("h2")).containsText("UC1 Meter panel: spare ways");
    }

    @Test
    void whatIsHandedOutIsADownloadInASandbox() {
        Page page = open(page(), site + "/photos");
        page.getByLabel("personal: shows or names people").check();
        add(page, "letter.pdf", "%PDF-1.4\n%%EOF\n".getBytes(StandardCharsets.ISO_8859_1), "application/pdf", "");
        Attachment letter = kept().get(0);
        assertThat(letter.privacy()).isEqualTo(Privacy.PERSONAL);
        HttpResponse<byte[]> file = desk.visitor().download(site + "/photos/" + letter.id() + "/file");
        assertThat(file.headers().firstValue("Content-Disposition").orElse("")).startsWith("attachment;");
        assertThat(file.headers().firstValue("Content-Type")).hasValue("application/pdf");
        assertThat(file.headers().allValues("Content-Security-Policy")).containsExactly("default-src 'none'; sandbox");
        assertThat(file.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
        // A document is no picture.
        assertThat(desk.visitor()
                        .download(site + "/photos/" + letter.id() + "/picture")
                        .statusCode())
                .isEqualTo(404);
    }

    @Test
    void whatIsNoPhotoAndNoDocumentIsRefusedWithASentenceAndTheRestIsKept() {
        Page page = open(pageWithoutScript(Screen.DESKTOP), site + "/photos");
        page.locator("#file").setInputFiles(new FilePayload[] {
            new FilePayload(
                    "drawing.svg",
                    "image/svg+xml",
                    "<svg xmlns='http://www.w3.org/2000/svg'><script>alert(1)</script></svg>"
                            .getBytes(StandardCharsets.UTF_8)),
            new FilePayload(
                    "photo.jpg", "image/jpeg", "<html><script>alert(1)</script>".getBytes(StandardCharsets.UTF_8)),
            new FilePayload("good.png", "image/png", picture("png"))
        });
        press(page, "Add");
        assertThat(page.locator(".td-problems li")).hasCount(2);
        assertThat(page.locator(".td-problems")).containsText("drawing.svg");
        assertThat(kept()).extracting(Attachment::fileName).containsExactly("good.png");
    }

    @Test
    void anAttachmentOfAnotherSiteIsNotHere() {
        Page page = open(page(), site + "/photos");
        add(page, "one.png", picture("png"), "image/png", "");
        String other = desk.importExample("terrace.yaml");
        String id = kept().get(0).id().text();
        assertThat(desk.visitor().read(other + "/photos/" + id + "/file").statusCode())
                .isEqualTo(404);
        assertThat(desk.visitor().read(site + "/photos/0123456789abcdef/file").statusCode())
                .isEqualTo(404);
        assertThat(desk.visitor().post(other + "/photos/" + id + "/remove").statusCode())
                .isEqualTo(404);
        assertThat(kept()).hasSize(1);
        page.getByLabel("Take one.png away").click();
        press(page, "Take it away for good");
        assertThat(page.getByRole(AriaRole.STATUS)).containsText("None yet");
        assertThat(kept()).isEmpty();
    }

    private void add(Page page, String name, byte[] content, String type, String note) {
        page.locator("#file").setInputFiles(new FilePayload(name, type, content));
        page.getByLabel("What it shows").fill(note);
        press(page, "Add");
        assertThat(page.locator(".td-photo").first()).isVisible();
    }

    private List<Attachment> kept() {
        SiteId id = desk.store()
                .sites()
                .find(new VariantId(site.substring("/sites/".length())))
                .orElseThrow()
                .site();
        return desk.store().attachments().of(id);
    }

    private static byte[] picture(String format) {
        BufferedImage image = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(Color.ORANGE);
        pen.fillRect(5, 5, 20, 10);
        pen.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, format, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static void press(Page page, String button) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(button).setExact(true))
                .click();
    }
}
