package tideover.papers.diagram;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Thing;
import tideover.papers.diagram.Graph.Node;
import tideover.papers.diagram.Graph.Wire;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Weight;

/** Paints what runs between the boxes of one side: conductors, and busbars where several leave one thing. */
final class Conductors {

    private Conductors() {}

    static void paint(Pen pen, Look look, Side side, Graph graph) {
        for (Wire wire : graph.wires()) wire(pen, look, side, wire);
        for (Node node : graph.nodes()) busbar(pen, look, side, graph, node);
    }

    private static void wire(Pen pen, Look look, Side side, Wire wire) {
        switch (wire.kind) {
            case POWER -> pen.line(look.ink(wire.thing, side), look.weight(wire.thing), wire.way);
            case DIRECT_CURRENT -> pen.line(side.ink(), look.isInState() ? Weight.STRONG : Weight.NORMAL, wire.way);
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
            if (wire.to == node && node.box instanceof PointBox)
                joining.add(look, wire, wire.way.length - 4, wire.way.length - 5);
        }
        leaving.paint(pen, look, side);
        joining.paint(pen, look, side);
        if (leaving.isBusbar() && joining.isBusbar())
            pen.line(
                    Stroke.of(look, side, joining.live()).ink(),
                    Weight.BUS,
                    joining.x,
                    node.axisY(),
                    leaving.x,
                    node.axisY());
    }

    /** Where several conductors turn off at one place. */
    private static final class Upright {
        private double x = Double.NaN;
        private double top;
        private double bottom;
        private int conductors;
        private @Nullable Thing live;

        Upright(Node node) {
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
            Stroke stroke = Stroke.of(look, side, live());
            Weight weight = stroke.weight() == Weight.DEAD ? Weight.NORMAL : Weight.BUS;
            pen.line(stroke.ink(), weight, x, top - 0.6, x, bottom + 0.6);
        }
    }
}
