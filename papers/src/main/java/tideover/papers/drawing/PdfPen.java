package tideover.papers.drawing;

import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.util.Matrix;

/** Paints a sheet into a page of a PDF document: real text in the embedded typeface, lines as lines. */
public final class PdfPen implements Pen, AutoCloseable {

    private static final float POINTS_PER_MM = 72 / 25.4f;

    /** Ends of lines; square ones close the corners where one conductor is drawn on from another. */
    private static final int BUTT = 0;

    private static final int SQUARE = 2;

    private final PDPageContentStream content;
    private final Map<Face, PDFont> fonts = new EnumMap<>(Face.class);

    /** Begins behind what is on the page already; its upper left corner is that of the page. */
    public PdfPen(PDDocument document, PDPage page) {
        this(document, page, 0);
    }

    /** The same for a drawing that begins further right, by this [mm]. */
    public PdfPen(PDDocument document, PDPage page, double right) {
        try {
            for (Face face : Face.values())
                try (InputStream bytes = Type.open(face)) {
                    fonts.put(face, PDType0Font.load(document, bytes, true));
                }
            content = new PDPageContentStream(document, page, AppendMode.APPEND, true, true);
            content.transform(new Matrix(
                    POINTS_PER_MM,
                    0,
                    0,
                    -POINTS_PER_MM,
                    (float) right * POINTS_PER_MM,
                    page.getMediaBox().getHeight()));
        } catch (IOException e) {
            throw failed(e);
        }
    }

    private static UncheckedIOException failed(IOException e) {
        return new UncheckedIOException("cannot draw into the PDF page", e);
    }

    @Override
    public void begin(String id, String title) {
        // A PDF page knows no groups.
    }

    @Override
    public void end() {
        // See begin.
    }

    @Override
    public void line(Ink ink, Weight weight, double... xy) {
        try {
            stroke(ink, weight);
            content.moveTo((float) xy[0], (float) xy[1]);
            for (int i = 2; i < xy.length; i += 2) content.lineTo((float) xy[i], (float) xy[i + 1]);
            content.stroke();
        } catch (IOException e) {
            throw failed(e);
        }
    }

    @Override
    public void area(Ink ink, double... xy) {
        try {
            content.setNonStrokingColor(new Color(ink.rgb()));
            content.moveTo((float) xy[0], (float) xy[1]);
            for (int i = 2; i < xy.length; i += 2) content.lineTo((float) xy[i], (float) xy[i + 1]);
            content.fill();
        } catch (IOException e) {
            throw failed(e);
        }
    }

    @Override
    public void wash(Ink ink, double... xy) {
        try {
            content.saveGraphicsState();
            PDExtendedGraphicsState light = new PDExtendedGraphicsState();
            light.setNonStrokingAlphaConstant(SvgPen.WASH);
            content.setGraphicsStateParameters(light);
            area(ink, xy);
            content.restoreGraphicsState();
        } catch (IOException e) {
            throw failed(e);
        }
    }

    @Override
    public void curve(Ink ink, Weight weight, double... xy) {
        try {
            stroke(ink, weight);
            content.moveTo((float) xy[0], (float) xy[1]);
            for (int i = 2; i < xy.length; i += 6)
                content.curveTo(
                        (float) xy[i],
                        (float) xy[i + 1],
                        (float) xy[i + 2],
                        (float) xy[i + 3],
                        (float) xy[i + 4],
                        (float) xy[i + 5]);
            content.stroke();
        } catch (IOException e) {
            throw failed(e);
        }
    }

    private void stroke(Ink ink, Weight weight) throws IOException {
        content.setStrokingColor(new Color(ink.rgb()));
        content.setLineWidth((float) weight.width());
        content.setLineDashPattern(weight.isDashed() ? new float[] {(float) Weight.DASH} : new float[0], 0);
        content.setLineCapStyle(weight.isDashed() ? BUTT : SQUARE);
    }

    @Override
    public void text(Ink ink, Face face, double size, Anchor anchor, double x, double y, String text) {
        if (text.isEmpty()) return;
        double width = Type.width(face, size, text);
        double left = anchor == Anchor.START ? x : anchor == Anchor.END ? x - width : x - width / 2;
        try {
            content.beginText();
            content.setNonStrokingColor(new Color(ink.rgb()));
            content.setFont(fonts.get(face), (float) size);
            // The page is turned upside down by the transformation; the text is turned back.
            content.setTextMatrix(new Matrix(1, 0, 0, -1, (float) left, (float) y));
            content.showText(shown(face, text));
            content.endText();
        } catch (IOException e) {
            throw failed(e);
        }
    }

    /** Signs the typeface does not have are shown as a question mark rather than as an error. */
    private static String shown(Face face, String text) {
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints().forEach(c -> shown.appendCodePoint(c == '\u00a0' ? ' ' : Type.has(face, c) ? c : '?'));
        return shown.toString();
    }

    @Override
    public void close() {
        try {
            content.close();
        } catch (IOException e) {
            throw failed(e);
        }
    }
}
