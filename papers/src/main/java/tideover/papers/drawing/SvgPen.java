package tideover.papers.drawing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.Set;
import java.util.TreeSet;
import org.apache.fontbox.ttf.TTFSubsetter;

/**
 * Writes SVG 1.1: real text, lengths in millimetres, the same bytes for the same sheet. The glyphs used are embedded, so
 * that the drawing looks alike everywhere.
 */
public sealed class SvgPen implements Pen permits PagePen {

    /** Share of colour in a wash. */
    static final float WASH = 0.13f;

    private final StringBuilder body = new StringBuilder(1 << 17);
    private final Set<Integer> regular = new TreeSet<>();
    private final Set<Integer> bold = new TreeSet<>();

    @Override
    public void begin(String id, String title) {
        body.append("<g id=\"")
                .append(escaped(id))
                .append("\"><title>")
                .append(escaped(title))
                .append("</title>\n");
    }

    @Override
    public void end() {
        body.append("</g>\n");
    }

    @Override
    public void line(Ink ink, Weight weight, double... xy) {
        path(ink, weight).append("M");
        for (int i = 0; i < xy.length; i += 2) point(i == 0 ? "" : "L", xy, i);
        body.append("\"/>\n");
    }

    @Override
    public void area(Ink ink, double... xy) {
        polygon("t" + ink.letter(), xy);
    }

    @Override
    public void wash(Ink ink, double... xy) {
        polygon("t" + ink.letter() + " a", xy);
    }

    private void polygon(String look, double... xy) {
        body.append("<path class=\"").append(look).append("\" d=\"M");
        for (int i = 0; i < xy.length; i += 2) point(i == 0 ? "" : "L", xy, i);
        body.append("Z\"/>\n");
    }

    @Override
    public void curve(Ink ink, Weight weight, double... xy) {
        path(ink, weight).append("M");
        for (int i = 0; i < xy.length; i += 2) point(i == 0 ? "" : i % 6 == 2 ? "C" : " ", xy, i);
        body.append("\"/>\n");
    }

    private StringBuilder path(Ink ink, Weight weight) {
        return body.append("<path class=\"l")
                .append(ink.letter())
                .append(' ')
                .append(weight.letter())
                .append("\" d=\"");
    }

    private void point(String command, double[] xy, int at) {
        body.append(command).append(number(xy[at])).append(' ').append(number(xy[at + 1]));
    }

    @Override
    public void text(Ink ink, Face face, double size, Anchor anchor, double x, double y, String text) {
        if (text.isEmpty()) return;
        text.chars().filter(c -> c != '\u00a0').forEach(face == Face.BOLD ? bold::add : regular::add);
        body.append("<text class=\"t").append(ink.letter());
        if (face == Face.BOLD) body.append(" w");
        body.append("\" x=\"")
                .append(number(x))
                .append("\" y=\"")
                .append(number(y))
                .append('"');
        if (size != Type.SIZE) body.append(" font-size=\"").append(number(size)).append('"');
        if (anchor != Anchor.START)
            body.append(" text-anchor=\"")
                    .append(anchor == Anchor.END ? "end" : "middle")
                    .append('"');
        body.append('>').append(escaped(text.replace('\u00a0', ' '))).append("</text>\n");
    }

    /** What has been drawn. */
    StringBuilder body() {
        return body;
    }

    /** The whole file. */
    public String finished(double width, double height, String language, String title, String description) {
        StringBuilder svg = new StringBuilder(body.length() + (1 << 16));
        svg.append(
                        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\"")
                .append(" class=\"td-diagram\" role=\"img\" xml:lang=\"")
                .append(escaped(language))
                .append("\" width=\"")
                .append(number(width))
                .append("mm\" height=\"")
                .append(number(height))
                .append("mm\" viewBox=\"0 0 ")
                .append(number(width))
                .append(' ')
                .append(number(height))
                .append("\">\n")
                .append("<title>")
                .append(escaped(title))
                .append("</title>\n<desc>")
                .append(escaped(description))
                .append("</desc>\n<style>\n");
        font(svg, Face.REGULAR, 400, regular);
        font(svg, Face.BOLD, 600, bold);
        DrawingStyle.rules(svg, ink -> "#%06x".formatted(ink.rgb()));
        return svg.append("</style>\n<g font-size=\"")
                .append(number(Type.SIZE))
                .append("\">\n")
                .append(body)
                .append("</g>\n</svg>\n")
                .toString();
    }

    private static void font(StringBuilder svg, Face face, int weight, Set<Integer> characters) {
        if (characters.isEmpty()) return;
        try {
            TTFSubsetter subset = new TTFSubsetter(Type.of(face).font());
            characters.forEach(subset::add);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            subset.writeToStream(bytes);
            svg.append("@font-face{font-family:\"Atkinson Hyperlegible Next\";font-weight:")
                    .append(weight)
                    .append(";src:url(data:font/ttf;base64,")
                    .append(Base64.getEncoder().encodeToString(bytes.toByteArray()))
                    .append(")}\n");
        } catch (IOException e) {
            throw new UncheckedIOException("cannot embed the typeface", e);
        }
    }

    /** Hundredths of a millimetre are finer than any printer; no exponent, no trailing zeros. */
    static String number(double value) {
        long hundredths = Math.round(value * 100);
        String sign = hundredths < 0 ? "-" : "";
        long whole = Math.abs(hundredths) / 100;
        long rest = Math.abs(hundredths) % 100;
        if (rest == 0) return sign + whole;
        return sign + whole + (rest % 10 == 0 ? "." + rest / 10 : "." + (rest < 10 ? "0" : "") + rest);
    }

    static String escaped(String text) {
        StringBuilder escaped = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                // XML 1.0 has no other control characters.
                default -> escaped.append(c < ' ' && c != '\n' && c != '\t' ? ' ' : c);
            }
        }
        return escaped.toString();
    }
}
