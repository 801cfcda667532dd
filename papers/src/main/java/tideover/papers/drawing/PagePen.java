package tideover.papers.drawing;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.Function;
import tideover.engine.site.ThingId;

/**
 * Writes the SVG element of a sheet for an HTML page: without style, typeface and ids, so that several may stand in one
 * page under a strict content security policy. How it looks is said by {@link DrawingStyle#css}; the groups of a thing
 * carry its id as {@code data-thing}.
 */
public final class PagePen extends SvgPen {

    /** Class of where a thing may be touched. */
    static final String REACH = "reach";

    private final Function<ThingId, Optional<String>> links;
    private final Deque<String> open = new ArrayDeque<>();

    /** Without links. */
    public PagePen() {
        this(thing -> Optional.empty());
    }

    /** @param links the address to which a thing leads; where there is none it is no link */
    public PagePen(Function<ThingId, Optional<String>> links) {
        this.links = links;
    }

    @Override
    public void begin(String id, String title) {
        open("g", "", title);
    }

    @Override
    public void begin(String id, ThingId thing, String title) {
        String data = " data-thing=\"" + escaped(thing.text()) + "\"";
        // A link inside a link means nothing: what stands within another thing leads where that leads.
        Optional<String> address = open.contains("a") ? Optional.empty() : links.apply(thing);
        if (address.isPresent()) open("a", " href=\"" + escaped(address.get()) + "\"" + data, title);
        else open("g", data, title);
    }

    private void open(String element, String attributes, String title) {
        open.push(element);
        body().append('<')
                .append(element)
                .append(attributes)
                .append("><title>")
                .append(escaped(title))
                .append("</title>\n");
    }

    @Override
    public void end() {
        body().append("</").append(open.pop()).append(">\n");
    }

    @Override
    public void reach(double x, double y, double width, double height) {
        body().append("<rect class=\"")
                .append(REACH)
                .append("\" x=\"")
                .append(number(x))
                .append("\" y=\"")
                .append(number(y))
                .append("\" width=\"")
                .append(number(width))
                .append("\" height=\"")
                .append(number(height))
                .append("\"/>\n");
    }

    /** The element; as wide as the page lets it be, its height in proportion. */
    public String element(double width, double height, String language, String title) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"td-diagram\" role=\"group\" lang=\""
                + escaped(language)
                + "\" aria-label=\"" + escaped(title) + "\" viewBox=\"0 0 " + number(width) + " " + number(height)
                + "\">\n<g font-size=\"" + number(Type.SIZE) + "\">\n" + body() + "</g>\n</svg>\n";
    }
}
