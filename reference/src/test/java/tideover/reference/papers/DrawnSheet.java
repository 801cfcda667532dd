package tideover.reference.papers;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import tideover.papers.Wording;

/** An SVG drawing read back: where its texts stand and its lines run, in millimetres. */
final class DrawnSheet {

    /** A text with the room its letters take, small letters without their tails. */
    record Text(String words, float size, Area area) {}

    /** A straight line. */
    record Line(float x1, float y1, float x2, float y2) {

        /** Whether an upright and a level line cross, each inside the other: where one ends on the other they are joined. */
        boolean crosses(Line other) {
            return x1 == x2 && other.y1 == other.y2 && other.passes(x1, y1, y2);
        }

        private boolean passes(float x, float from, float to) {
            return x > Math.min(x1, x2) + 0.05f
                    && x < Math.max(x1, x2) - 0.05f
                    && y1 > Math.min(from, to) + 0.05f
                    && y1 < Math.max(from, to) - 0.05f;
        }
    }

    /** A rectangle. */
    record Area(float left, float top, float right, float bottom) {

        boolean overlaps(Area other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }

        boolean isInside(Area frame) {
            return left > frame.left && right < frame.right && top > frame.top && bottom < frame.bottom;
        }

        /** Whether an upright or level line passes through it. */
        boolean isCrossedBy(Line line) {
            return Math.min(line.x1, line.x2) < right
                    && Math.max(line.x1, line.x2) > left
                    && Math.min(line.y1, line.y2) < bottom
                    && Math.max(line.y1, line.y2) > top;
        }
    }

    private static final Pattern POINT = Pattern.compile("([ML])(-?[0-9.]+) (-?[0-9.]+)");
    private static final TrueTypeFont REGULAR = font("400.ttf");
    private static final TrueTypeFont BOLD = font("600.ttf");

    private final Document svg;
    private final List<Text> texts = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private final List<Line> inState = new ArrayList<>();

    /** @param text a well-formed SVG file; anything else fails */
    DrawnSheet(String text) throws Exception {
        svg = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        for (Element element : elements("text")) texts.add(text(element));
        for (Element element : elements("path")) {
            String way = element.getAttribute("d");
            // Conductors only: hairlines belong to symbols, areas and curves too.
            if (way.contains("C")) continue;
            if (element.getAttribute("class").matches("l[a-z] [nfxb]")) lines(way, lines);
            if (element.getAttribute("class").matches("l[a-z] [fx]")) lines(way, inState);
        }
    }

    private static TrueTypeFont font(String name) {
        try (InputStream bytes = Wording.class.getResourceAsStream("/tideover/papers/fonts/" + name)) {
            return new TTFParser().parse(new RandomAccessReadBuffer(bytes.readAllBytes()));
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private List<Element> elements(String name) {
        NodeList found = svg.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) elements.add((Element) found.item(i));
        return elements;
    }

    private static Text text(Element element) throws java.io.IOException {
        String size = element.getAttribute("font-size");
        float em = Float.parseFloat(
                size.isEmpty()
                        ? ((Element) element.getOwnerDocument()
                                        .getElementsByTagName("g")
                                        .item(0))
                                .getAttribute("font-size")
                        : size);
        TrueTypeFont font = element.getAttribute("class").contains("w") ? BOLD : REGULAR;
        CmapLookup glyphs = font.getUnicodeCmapLookup();
        String words = element.getTextContent();
        float width = 0;
        for (int i = 0; i < words.length(); i++) width += font.getAdvanceWidth(glyphs.getGlyphId(words.charAt(i)));
        width *= em / font.getUnitsPerEm();
        float x = Float.parseFloat(element.getAttribute("x"));
        float y = Float.parseFloat(element.getAttribute("y"));
        float left = switch (element.getAttribute("text-anchor")) {
            case "end" -> x - width;
            case "middle" -> x - width / 2;
            default -> x;
        };
        // From the height of capitals to the base line.
        return new Text(words, em, new Area(left, y - 0.66f * em, left + width, y));
    }

    private static void lines(String way, List<Line> lines) {
        Matcher point = POINT.matcher(way);
        float x = 0;
        float y = 0;
        while (point.find()) {
            float nextX = Float.parseFloat(point.group(2));
            float nextY = Float.parseFloat(point.group(3));
            if (point.group(1).equals("L")) lines.add(new Line(x, y, nextX, nextY));
            x = nextX;
            y = nextY;
        }
    }

    List<Text> texts() {
        return texts;
    }

    /** Conductors, drawn or dashed, and busbars. */
    List<Line> lines() {
        return lines;
    }

    /** Conductors alone, of a drawing that shows a state; level ones that go on from one another as one line. */
    List<Line> conductors() {
        List<Line> joined = new ArrayList<>();
        List<Line> level = new ArrayList<>();
        for (Line line : inState) (line.y1() == line.y2() ? level : joined).add(line);
        level.sort(Comparator.comparing(Line::y1).thenComparing(line -> Math.min(line.x1(), line.x2())));
        for (Line line : level) {
            float from = Math.min(line.x1(), line.x2());
            float to = Math.max(line.x1(), line.x2());
            Line last = joined.isEmpty() ? line : joined.get(joined.size() - 1);
            if (last.y1() == line.y1() && last.y2() == line.y1() && from <= last.x2() + 0.05f && from >= last.x1())
                joined.set(joined.size() - 1, new Line(last.x1(), line.y1(), Math.max(to, last.x2()), line.y1()));
            else joined.add(new Line(from, line.y1(), to, line.y1()));
        }
        return joined;
    }

    float width() {
        return Float.parseFloat(svg.getDocumentElement().getAttribute("width").replace("mm", ""));
    }

    float height() {
        return Float.parseFloat(svg.getDocumentElement().getAttribute("height").replace("mm", ""));
    }

    /** A place on the sheet. */
    record Point(float x, float y) {}

    /** All corners of the lines drawn for one thing, by the id of its group. */
    List<Point> corners(String group) {
        List<Point> corners = new ArrayList<>();
        for (Element element : elements("path")) {
            if (!((Element) element.getParentNode()).getAttribute("id").equals(group)) continue;
            Matcher point = POINT.matcher(element.getAttribute("d"));
            while (point.find())
                corners.add(new Point(Float.parseFloat(point.group(2)), Float.parseFloat(point.group(3))));
        }
        return corners;
    }

    /** Titles of the things drawn, in full. */
    List<String> titles() {
        return elements("title").stream().map(Element::getTextContent).toList();
    }
}
