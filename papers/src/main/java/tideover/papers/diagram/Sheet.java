package tideover.papers.diagram;

import tideover.engine.installation.Installation;
import tideover.papers.diagram.Graph.Node;
import tideover.papers.diagram.Graph.Wire;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Weight;

/**
 * The drawing laid out on a sheet of paper: island side above the double line, grid side below it, circuits flush right.
 * Text keeps its size; what does not fit on A3 takes the next larger sheet.
 */
final class Sheet {

    /** Sheets of ISO 216, landscape [mm]. */
    enum Format {
        A3(420, 297),
        A2(594, 420),
        A1(841, 594),
        A0(1189, 841);

        final double width;
        final double height;

        Format(double width, double height) {
            this.width = width;
            this.height = height;
        }
    }

    static final double LEFT = 15;
    static final double MARGIN = 7;
    static final double STRIP = 22;

    static final double BAR = 4;
    static final double INSIDE = 3;
    private static final double SMALLEST_PITCH = 4.45;
    private static final double LARGEST_PITCH = 8.5;
    private static final double TEXT_WIDTH = 31;
    private static final double NARROW_TEXT_WIDTH = 21;
    private static final double SMALLEST_BETWEEN = 6;
    private static final double LARGEST_BETWEEN = 24;

    private final Format format;
    private final Sides sides;
    private double lineY;

    private Sheet(Format format, Sides sides) {
        this.format = format;
        this.sides = sides;
    }

    /** Lays it out: as loose as the sheet allows. */
    static Sheet of(Installation installation, Labels labels) {
        double textWidth = TEXT_WIDTH;
        Sides tight = tight(installation, labels, textWidth);
        Format format = smallest(tight);
        if (format != Format.A3) {
            Sides narrow = tight(installation, labels, NARROW_TEXT_WIDTH);
            if (smallest(narrow).compareTo(format) < 0) {
                textWidth = NARROW_TEXT_WIDTH;
                tight = narrow;
                format = smallest(narrow);
            }
        }
        int rows = Math.max(1, installation.circuits().size());
        double spareHeight = format.height - neededHeight(tight);
        double pitch = Math.min(LARGEST_PITCH, SMALLEST_PITCH + Math.max(0, spareHeight - 2) / rows);
        Sides loose = new Sides(installation, labels, pitch, textWidth);
        for (Side side : Side.values()) {
            Graph graph = tight.graph(side);
            double spareWidth = format.width - neededWidth(graph);
            double between = SMALLEST_BETWEEN + Math.max(0, spareWidth - 2) / columns(graph);
            place(loose.graph(side), Math.min(LARGEST_BETWEEN, between));
        }
        Sheet sheet = new Sheet(format, fits(loose, format) ? loose : tight);
        sheet.arrange();
        return sheet;
    }

    private static Sides tight(Installation installation, Labels labels, double textWidth) {
        Sides sides = new Sides(installation, labels, SMALLEST_PITCH, textWidth);
        for (Side side : Side.values()) place(sides.graph(side), SMALLEST_BETWEEN);
        return sides;
    }

    private static void place(Graph graph, double between) {
        if (!graph.isEmpty()) LayeredLayout.place(graph, between);
    }

    private static Format smallest(Sides sides) {
        for (Format format : Format.values()) if (fits(sides, format)) return format;
        return Format.A0;
    }

    private static boolean fits(Sides sides, Format format) {
        return neededWidth(sides.graph(Side.ISLAND)) <= format.width
                && neededWidth(sides.graph(Side.GRID)) <= format.width
                && neededHeight(sides) <= format.height;
    }

    private static double neededWidth(Graph graph) {
        return LEFT + BAR + INSIDE + graph.width() + INSIDE + MARGIN;
    }

    private static double neededHeight(Sides sides) {
        return MARGIN
                + INSIDE
                + sides.graph(Side.ISLAND).height()
                + Crossing.ABOVE
                + Crossing.BELOW
                + sides.graph(Side.GRID).height()
                + INSIDE
                + STRIP
                + MARGIN;
    }

    /** Columns of a side, one for each place at which boxes begin. */
    private static double columns(Graph graph) {
        return Math.max(
                1,
                graph.nodes().stream()
                        .mapToLong(node -> Math.round(node.x))
                        .distinct()
                        .count());
    }

    /** Puts both sides on the sheet, flush right, spare room shared above and below. */
    private void arrange() {
        Graph island = sides.graph(Side.ISLAND);
        Graph grid = sides.graph(Side.GRID);
        double spare = Math.max(0, format.height - neededHeight(sides));
        double top = MARGIN + INSIDE + spare / 2;
        island.move(x(island), top);
        lineY = top + island.height() + Crossing.ABOVE;
        grid.move(x(grid), lineY + Crossing.BELOW);
        for (Crossing crossing : sides.crossings()) {
            double upright = upright(crossing);
            // Nothing is drawn from the point itself to where the upright begins, unless an inverter is joined there.
            for (Wire wire : island.wires()) if (wire.from == crossing.entry()) wire.way[0] = upright;
        }
    }

    /** Circuits stand flush right in one column; a side without any begins left. */
    private double x(Graph graph) {
        boolean circuits = graph.nodes().stream().anyMatch(node -> node.inLastColumn);
        return circuits ? format.width - MARGIN - INSIDE - graph.width() : LEFT + BAR + 2 * INSIDE;
    }

    Format format() {
        return format;
    }

    Sides sides() {
        return sides;
    }

    /** Where the double line runs, from the upper edge [mm]. */
    double lineY() {
        return lineY;
    }

    /** Where its conductor turns up on the island side: no bend more than needed. */
    double upright(Crossing crossing) {
        Node entry = crossing.entry();
        if (sides.graph(Side.ISLAND).wires().stream().anyMatch(wire -> wire.to == entry)) return entry.x;
        for (Wire wire : sides.graph(Side.ISLAND).wires())
            if (wire.from == entry && wire.way.length > 4 && wire.way[5] < wire.way[3]) return wire.way[2];
        return entry.x;
    }

    /** Paints frame, bars and both sides, and the double line between them. */
    void paint(Pen pen, Look look, Labels labels) {
        double right = format.width - MARGIN;
        double bottom = format.height - MARGIN - STRIP;
        pen.box(Ink.BLACK, Weight.NORMAL, LEFT, MARGIN, right - LEFT, format.height - 2 * MARGIN);
        pen.fill(Ink.ISLAND, LEFT, MARGIN, BAR, lineY - 0.9 - MARGIN);
        pen.hatch(Ink.GRID, LEFT, lineY + 0.9, BAR, bottom - lineY - 0.9, 2.4);
        for (Side side : Side.values()) {
            Graph graph = sides.graph(side);
            Conductors.paint(pen, look, side, graph);
            for (Node node : graph.nodes()) node.box.paint(pen, look, node.x, node.y);
        }
        new DoubleLine(pen, look, this).paint(labels);
    }
}
