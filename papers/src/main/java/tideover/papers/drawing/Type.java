package tideover.papers.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import tideover.papers.drawing.Pen.Face;

/** The typeface of all papers: how wide texts run, and the files it comes in. */
public final class Type {

    /** Size of all common text [mm]: capitals come out 2 mm high. */
    public static final double SIZE = 3.0;

    /** From base line to base line [mm]. */
    public static final double LEADING = 3.75;

    private static final Type[] TYPES = new Type[Face.values().length];

    private final TrueTypeFont font;
    private final CmapLookup glyphs;
    private final double unitsPerEm;

    private Type(Face face) {
        try (InputStream bytes = open(face)) {
            font = new TTFParser().parse(new RandomAccessReadBuffer(bytes.readAllBytes()));
            glyphs = font.getUnicodeCmapLookup();
            unitsPerEm = font.getUnitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the typeface", e);
        }
    }

    static synchronized Type of(Face face) {
        Type type = TYPES[face.ordinal()];
        if (type == null) TYPES[face.ordinal()] = type = new Type(face);
        return type;
    }

    /** The file of a face. */
    static InputStream open(Face face) {
        String name = face == Face.BOLD ? "600.ttf" : "400.ttf";
        InputStream bytes = Type.class.getResourceAsStream("/tideover/papers/fonts/" + name);
        if (bytes == null) throw new IllegalStateException("the typeface " + name + " is not on the class path");
        return bytes;
    }

    /** The parsed font. */
    TrueTypeFont font() {
        return font;
    }

    /** Whether the typeface has a sign. */
    public static boolean has(Face face, int character) {
        return of(face).glyphs.getGlyphId(character) != 0;
    }

    /** Width of a text [mm] at a size [mm]. */
    public static double width(Face face, double size, String text) {
        return of(face).width(text) * size;
    }

    private double width(String text) {
        try {
            double units = 0;
            for (int i = 0; i < text.length(); i++)
                units += font.getAdvanceWidth(glyphs.getGlyphId(text.charAt(i) == '\u00a0' ? ' ' : text.charAt(i)));
            return units / unitsPerEm;
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the typeface", e);
        }
    }

    /** Breaks a text into lines no wider than this [mm] where its words allow. */
    public static List<String> wrapped(Face face, double size, String text, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(face, size, longer) > width) {
                lines.add(line);
                longer = word;
            }
            line = longer;
        }
        if (!line.isEmpty()) lines.add(line);
        return lines;
    }

    /** The text, shortened with an ellipsis to fit this width [mm]. */
    public static String fitted(Face face, double size, String text, double width) {
        if (width(face, size, text) <= width) return text;
        int end = text.length();
        while (end > 1 && width(face, size, text.substring(0, end).stripTrailing() + "…") > width) end--;
        return text.substring(0, end).stripTrailing() + "…";
    }
}
