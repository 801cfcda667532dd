package tideover.papers.handover;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.function.Consumer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import tideover.engine.rules.Digest;
import tideover.papers.Stamp;

/** Prints filled templates as PDF: typeface embedded, bookmarks, the same bytes for the same input. */
final class Press {

    /** A line of the table of contents that viewers show beside the pages; {@code id} is that of an element. */
    record Bookmark(String name, String id) {}

    private final Locale locale;
    private final String title;
    private final Stamp stamp;

    /** @param title of the document, for viewers and archives */
    Press(Locale locale, String title, Stamp stamp) {
        this.locale = locale;
        this.title = title;
        this.stamp = stamp;
    }

    /**
     * Prints a body.
     *
     * @param finish what is drawn into the laid out document before it is closed
     */
    byte[] print(String body, List<Bookmark> bookmarks, Consumer<PDDocument> finish) {
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFont(() -> font("400.ttf"), "Atkinson", 400, FontStyle.NORMAL, true);
        builder.useFont(() -> font("600.ttf"), "Atkinson", 600, FontStyle.NORMAL, true);
        builder.useFont(() -> font("signs.ttf"), "Signs", 400, FontStyle.NORMAL, true);
        builder.withHtmlContent(document(body, bookmarks), null);
        // Built to be archived. It also keeps the renderer from searching the machine for typefaces, which takes a
        // second.
        builder.usePdfAConformance(PdfAConformance.PDFA_2_U);
        builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
        builder.withProducer("Tideover");
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.createPDFWithoutClosing();
            PDDocument pdf = renderer.getPdfDocument();
            finish.accept(pdf);
            date(pdf);
            pdf.save(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot make the PDF " + title, e);
        }
        return bytes.toByteArray();
    }

    private String document(String body, List<Bookmark> bookmarks) {
        StringBuilder document = new StringBuilder(body.length() + (1 << 14));
        document.append("<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"")
                .append(locale.toLanguageTag())
                .append("\"><head><title>")
                .append(Template.escaped(title))
                .append("</title><meta name=\"description\" content=\"")
                .append(Template.escaped(title))
                .append("\"/><style>")
                .append(Template.resource("papers.css"))
                .append("</style><bookmarks>");
        for (Bookmark bookmark : bookmarks)
            document.append("<bookmark name=\"")
                    .append(Template.escaped(bookmark.name()))
                    .append("\" href=\"#")
                    .append(bookmark.id())
                    .append("\"/>");
        return document.append("</bookmarks></head><body>")
                .append(body)
                .append("</body></html>")
                .toString();
    }

    private static InputStream font(String file) {
        InputStream bytes = Press.class.getResourceAsStream("/tideover/papers/fonts/" + file);
        if (bytes == null) throw new IllegalStateException("the typeface " + file + " is not on the class path");
        return bytes;
    }

    /** The day of the stamp in place of the clock, and an identity that follows from what the paper was made of. */
    private void date(PDDocument pdf) throws IOException {
        PDDocumentInformation information = pdf.getDocumentInformation();
        Calendar day = day(stamp.date());
        information.setCreationDate(day);
        information.setModificationDate(day);
        // The same in the metadata that archives read; the renderer writes the time of the clock there.
        PDMetadata metadata = pdf.getDocumentCatalog().getMetadata();
        String dates = "<xmp:CreateDate>%1$sT00:00:00Z</xmp:CreateDate><xmp:ModifyDate>%1$sT00:00:00Z</xmp:ModifyDate>"
                .formatted(stamp.date());
        String dated = new String(metadata.toByteArray(), StandardCharsets.UTF_8)
                .replaceFirst("<xmp:CreateDate>[^<]*</xmp:CreateDate>", dates);
        metadata.importXMPMetadata(dated.getBytes(StandardCharsets.UTF_8));
        String made = title + stamp.date() + stamp.revision().hex();
        pdf.setDocumentId(Long.parseUnsignedLong(Digest.of(made).hex().substring(0, 16), 16));
    }

    private static Calendar day(LocalDate date) {
        Calendar day = new GregorianCalendar(TimeZone.getTimeZone(ZoneOffset.UTC), Locale.ROOT);
        day.setTimeInMillis(date.atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli());
        return day;
    }
}
