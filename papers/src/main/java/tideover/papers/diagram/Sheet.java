package tideover.papers.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.site.Thing;
import tideover.papers.diagram.Graph.Node;
import tideover.papers.diagram.Graph.Wire;

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
    static final double MARGIN = 8;
    static final double STRIP = 24;

    private static final double BAR = 4;
    private static final double INSIDE = 4;
    private static final double SMALLEST_PITCH = 5.2;
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
        return MARGIN + INSIDE + sides.graph(Side.ISLAND).height() + Crossing.ABOVE + Crossing.BELOW
                + sides.graph(Side.GRID).height() + INSIDE + STRIP + MARGIN;
    }

    /** Columns of a side, one for each place at which boxes begin. */
    private static double columns(Graph graph) {
        return Math.max(1, graph.nodes().stream().mapToLong(node -> Math.round(node.x)).distinct().count());
    }

    /** Puts both sides on the sheet, flush right, spare room shared above and below. */
    private void arrange() {
        Graph island = sides.graph(Side.ISLAND);
        Graph grid = sides.graph(Side.GRID);
        double right = format.width - MARGIN - INSIDE;
        double spare = Math.max(0, format.height - neededHeight(sides));
        double top = MARGIN + INSIDE + spare / 2;
        island.move(right - island.width(), top);
        lineY = top + island.height() + Crossing.ABOVE;
        boolean circuits = grid.nodes().stream().anyMatch(node -> node.inLastColumn);
        double left = LEFT + BAR + 2 * INSIDE;
        grid.move(circuits ? right - grid.width() : left, lineY + Crossing.BELOW);
        for (Crossing crossing : sides.crossings()) {
            double upright = upright(crossing);
            // Nothing is drawn from the point itself to where the upright begins, unless an inverter is joined there.
            for (Wire wire : island.wires()) if (wire.from == crossing.entry()) wire.way[0] = upright;
        }
    }

    Format format() {
        return format;
    }

    Sides sides() {
        return sides;
    }

    /** Paints everything but the strip below. */
    void paint(Pen pen, Look look, Labels labels) {
        double left = LEFT;
        double right = format.width - MARGIN;
        double bottom = format.height - MARGIN - STRIP;
        pen.box(Ink.BLACK, Weight.NORMAL, left, MARGIN, right - left, format.height - 2 * MARGIN);
        pen.fill(Ink.ISLAND, left, MARGIN, BAR, lineY - 0.9 - MARGIN);
        pen.hatch(Ink.GRID, left, lineY + 0.9, BAR, bottom - lineY - 0.9, 2.4);
        for (Side side : Side.values()) {
            Graph graph = sides.graph(side);
            for (Wire wire : graph.wires()) wire(pen, look, side, wire);
            for (Node node : graph.nodes()) busbar(pen, look, side, graph, node);
            for (Node node : graph.nodes()) node.box.paint(pen, look, node.x, node.y);
        }
        crossings(pen, look);
        captions(pen, labels, right - 2);
    }

    private static Stroke stroke(Look look, Side side, Thing thing) {
        return new Stroke(look.ink(thing, side), look.weight(thing));
    }

    private static void wire(Pen pen, Look look, Side side, Wire wire) {
        switch (wire.kind) {
            case POWER -> pen.line(look.ink(wire.thing, side), look.weight(wire.thing), wire.way);
            case DIRECT_CURRENT ->
                pen.line(side.ink(), look.isInState() ? Weight.STRONG : Weight.NORMAL, wire.way);
            case EARTH -> pen.line(Ink.BLACK, Weight.NORMAL, wire.way);
            case NEAR -> {}
        }
    }

    /** The upright in which several conductors leave one thing is its busbar; those that join it there enter it. */
    private static void busbar(Pen pen, Look look, Side side, Graph graph, Node node) {
        Upright leaving = new Upright(node);
        Upright joining = new Upright(node);
        for (Wire wire : graph.wires()) {
            if (wire.kind != Graph.Kind.POWER) continue;
            if (wire.from == node) leaving.add(look, wire, 2, 5);
            if (wire.to == node && node.box instanceof PointBox) joining.add(look, wire, wire.way.length - 4, wire.way.length - 5);
        }
        leaving.paint(pen, look, side);
        joining.paint(pen, look, side);
        if (leaving.isBusbar() && joining.isBusbar())
            pen.line(stroke(look, side, joining.live()).ink(), Weight.BUS, joining.x, node.axisY(), leaving.x, node.axisY());
    }

    /** Where several conductors turn off at one place. */
    private static final class Upright {
        private final Node node;
        private double x = Double.NaN;
        private double top;
        private double bottom;
        private int conductors;
        private @Nullable Thing live;

        Upright(Node node) {
            this.node = node;
            top = node.axisY();
            bottom = top;
        }

        void add(Look look, Wire wire, int atX, int atY) {
            conductors++;
            if (live == null || look.weight(wire.thing) == Weight.STRONG) live = wire.thing;
            if (wire.way.length < 6) return;
            x = wire.way[atX];
            top = Math.min(top, wire.way[atY]);
            bottom = Math.max(bottom, wire.way[atY]);
        }

        boolean isBusbar() {
            return conductors > 1 && !Double.isNaN(x);
        }

        Thing live() {
            return Objects.requireNonNull(live);
        }

        void paint(Pen pen, Look look, Side side) {
            if (!isBusbar()) return;
            Stroke stroke = stroke(look, side, live());
            Weight weight = stroke.weight() == Weight.DEAD ? Weight.NORMAL : Weight.BUS;
            pen.line(stroke.ink(), weight, x, top - 0.6, x, bottom + 0.6);
        }
    }

    private void crossings(Pen pen, Look look) {
        double right = format.width - MARGIN;
        List<Crossing> all = sides.crossings();
        double[] uprights = new double[all.size()];
        double free = 0;
        List<Double> gaps = new ArrayList<>();
        for (int i = 0; i < uprights.length; i++) {
            Crossing crossing = all.get(i);
            uprights[i] = Math.max(upright(crossing), free);
            free = crossing.right(uprights[i], look);
            gaps.addAll(crossing.gaps(uprights[i], look));
        }
        doubleLine(pen, gaps, right);
        for (int i = 0; i < uprights.length; i++) crossing(pen, look, all.get(i), uprights[i], i);
    }

    /** Where its conductor turns up on the island side: no bend more than needed. */
    private double upright(Crossing crossing) {
        Node entry = crossing.entry();
        if (sides.graph(Side.ISLAND).wires().stream().anyMatch(wire -> wire.to == entry)) return entry.x;
        for (Wire wire : sides.graph(Side.ISLAND).wires())
            if (wire.from == entry && wire.way.length > 4 && wire.way[5] < wire.way[3]) return wire.way[2];
        return entry.x;
    }

    private void crossing(Pen pen, Look look, Crossing crossing, double x, int index) {
        Thing thing = crossing.thing();
        Stroke above = stroke(look, Side.ISLAND, thing);
        Node entry = crossing.entry();
        pen.line(above.ink(), above.weight(), x, lineY - Crossing.HALF_GAP, x, entry.axisY(), upright(crossing), entry.axisY());
        Node exit = crossing.exit();
        Stroke below = new Stroke(Ink.GRID, Weight.NORMAL);
        if (exit != null) {
            below = below(look, exit);
            // Each in its own channel, so that ways to several crossings do not lie on one another.
            double channel = lineY + 8.5 - 1.5 * (index % 2);
            pen.line(below.ink(), below.weight(), exit.x, exit.axisY(), exit.x, channel, x, channel, x,
                    lineY + Crossing.HALF_GAP);
        }
        crossing.paint(pen, look, x, lineY, below, above);
    }

    /** A crossing has voltage below the line where what feeds it has. */
    private Stroke below(Look look, Node exit) {
        for (Wire wire : sides.graph(Side.GRID).wires())
            if (wire.to == exit) return stroke(look, Side.GRID, wire.thing);
        return new Stroke(Ink.GRID, Weight.NORMAL);
    }

    private void doubleLine(Pen pen, List<Double> gaps, double right) {
        double from = LEFT;
        for (double gap : gaps.stream().sorted().toList()) {
            doubleLine(pen, from, gap - 2.6);
            from = gap + 1.6;
        }
        doubleLine(pen, from, right);
    }

    private void doubleLine(Pen pen, double from, double to) {
        if (to <= from) return;
        pen.fill(Ink.BLACK, from, lineY - 0.9, to - from, 0.5);
        pen.fill(Ink.BLACK, from, lineY + 0.4, to - from, 0.5);
    }

    private void captions(Pen pen, Labels labels, double right) {
        boolean split = !sides.crossings().isEmpty();
        String above = labels.text(split ? "diagram.above" : "diagram.above.none");
        pen.text(Ink.ISLAND, Pen.Face.BOLD, Type.SIZE, Pen.Anchor.END, right, lineY - 2.6, above);
        pen.text(Ink.GRID, Pen.Face.BOLD, Type.SIZE, Pen.Anchor.END, right, lineY + 4.6, labels.text("diagram.below"));
    }
}
