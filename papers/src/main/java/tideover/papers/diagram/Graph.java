package tideover.papers.diagram;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.site.Thing;

/** Boxes and the conductors between them, of one side of the line; the layout fills in their places. */
final class Graph {

    /** What runs between two boxes. */
    enum Kind {
        /** Alternating current, one line for all conductors. */
        POWER,
        /** Direct current of a battery or of modules. */
        DIRECT_CURRENT,
        /** Neutral or protective conductor alone. */
        EARTH,
        /** Nothing: only keeps a box near another. */
        NEAR
    }

    /** A box with its place. */
    static final class Node {
        final Box box;
        /** Whether it belongs into the column of circuits. */
        final boolean inLastColumn;

        double x;
        double y;

        Node(Box box, boolean inLastColumn) {
            this.box = box;
            this.inLastColumn = inLastColumn;
        }

        double axisY() {
            return y + box.axis();
        }

        double right() {
            return x + box.width();
        }
    }

    /** A conductor with its way: x and y in turn. */
    static final class Wire {
        final Node from;
        final Node to;
        /** Which of the inputs of the box it enters. */
        final int input;

        final Kind kind;
        /** Thing whose supply cable it begins: it has voltage where that has. */
        final Thing thing;

        double[] way = {};

        Wire(Node from, Node to, int input, Kind kind, Thing thing) {
            this.from = from;
            this.to = to;
            this.input = input;
            this.kind = kind;
            this.thing = thing;
        }
    }

    private final List<Node> nodes = new ArrayList<>();
    private final List<Wire> wires = new ArrayList<>();
    private double width;
    private double height;

    Node add(Box box, boolean inLastColumn) {
        Node node = new Node(box, inLastColumn);
        nodes.add(node);
        return node;
    }

    void join(Node from, Node to, int input, Kind kind, Thing thing) {
        wires.add(new Wire(from, to, input, kind, thing));
    }

    List<Node> nodes() {
        return nodes;
    }

    List<Wire> wires() {
        return wires;
    }

    boolean isEmpty() {
        return nodes.isEmpty();
    }

    void size(double newWidth, double newHeight) {
        width = newWidth;
        height = newHeight;
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    /** Moves everything. */
    void move(double dx, double dy) {
        for (Node node : nodes) {
            node.x += dx;
            node.y += dy;
        }
        for (Wire wire : wires)
            for (int i = 0; i < wire.way.length; i += 2) {
                wire.way[i] += dx;
                wire.way[i + 1] += dy;
            }
    }
}
