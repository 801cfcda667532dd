package tideover.papers.drawing;

import java.util.function.Function;

/** How drawings look: one rule for each ink and each weight, the same in files and in pages. */
public final class DrawingStyle {

    private DrawingStyle() {}

    /**
     * The style sheet of a page that shows drawings, whichever and however many. Each ink is a property that the page may
     * set, such as {@code --td-island}; the page brings the typeface.
     */
    public static String css() {
        StringBuilder css = new StringBuilder(2000);
        rules(css, ink -> "var(%s,#%06x)".formatted(ink.property(), ink.rgb()));
        rule(css, "." + PagePen.REACH, "fill:none;pointer-events:all");
        return css.toString();
    }

    /** Rules reach no further than the drawing, which may stand inside a page with rules of its own. */
    static void rules(StringBuilder css, Function<Ink, String> colour) {
        rule(css, "text", "font-family:\"Atkinson Hyperlegible Next\",\"DejaVu Sans\",sans-serif");
        rule(css, ".w", "font-weight:600");
        rule(css, "path", "fill:none");
        rule(css, ".a", "fill-opacity:" + SvgPen.WASH);
        for (Ink ink : Ink.values()) {
            rule(css, ".l" + ink.letter(), "stroke:" + colour.apply(ink));
            rule(css, ".t" + ink.letter(), "fill:" + colour.apply(ink));
        }
        for (Weight weight : Weight.values()) {
            // Square ends close the corners where one conductor is drawn on from another.
            String ends =
                    weight.isDashed() ? ";stroke-dasharray:" + SvgPen.number(Weight.DASH) : ";stroke-linecap:square";
            rule(css, "." + weight.letter(), "stroke-width:" + SvgPen.number(weight.width()) + ends);
        }
    }

    private static void rule(StringBuilder css, String selector, String declarations) {
        css.append(".td-diagram ")
                .append(selector)
                .append('{')
                .append(declarations)
                .append("}\n");
    }
}
