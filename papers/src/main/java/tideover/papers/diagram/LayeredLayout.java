package tideover.papers.diagram;

import static java.util.Objects.requireNonNull;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.elk.alg.layered.LayeredLayoutProvider;
import org.eclipse.elk.alg.layered.options.LayerConstraint;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.options.NodePlacementStrategy;
import org.eclipse.elk.alg.layered.options.OrderingStrategy;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.options.CoreOptions;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.options.PortConstraints;
import org.eclipse.elk.core.options.PortSide;
import org.eclipse.elk.core.options.SizeConstraint;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.graph.ElkBendPoint;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.ElkPort;
import org.eclipse.elk.graph.util.ElkGraphUtil;

/**
 * Places a graph from left to right by the layered method: boxes in columns in the order in which they were added,
 * conductors at right angles, those that leave one box together in one upright, which becomes its busbar.
 */
final class LayeredLayout {

    static {
        // Registers the option types of the library; without it no default of an option can be copied.
        LayoutMetaDataService.getInstance();
    }

    private LayeredLayout() {}

    /** @param between room between columns [mm] */
    static void place(Graph graph, double between) {
        ElkNode root = ElkGraphUtil.createGraph();
        root.setProperty(CoreOptions.DIRECTION, Direction.RIGHT);
        root.setProperty(CoreOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
        root.setProperty(CoreOptions.PADDING, new ElkPadding(0));
        root.setProperty(CoreOptions.SEPARATE_CONNECTED_COMPONENTS, false);
        root.setProperty(CoreOptions.RANDOM_SEED, 1);
        root.setProperty(LayeredOptions.CONSIDER_MODEL_ORDER_STRATEGY, OrderingStrategy.NODES_AND_EDGES);
        root.setProperty(LayeredOptions.NODE_PLACEMENT_STRATEGY, NodePlacementStrategy.BRANDES_KOEPF);
        root.setProperty(LayeredOptions.NODE_PLACEMENT_FAVOR_STRAIGHT_EDGES, true);
        root.setProperty(LayeredOptions.SPACING_NODE_NODE, 0.0);
        root.setProperty(LayeredOptions.SPACING_EDGE_NODE, 2.5);
        root.setProperty(LayeredOptions.SPACING_EDGE_EDGE, 2.5);
        root.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, between);
        root.setProperty(LayeredOptions.SPACING_EDGE_NODE_BETWEEN_LAYERS, 3.0);
        root.setProperty(LayeredOptions.SPACING_EDGE_EDGE_BETWEEN_LAYERS, 3.0);

        Map<Graph.Node, ElkNode> nodes = new HashMap<>();
        Map<ElkNode, Map<String, ElkPort>> ports = new HashMap<>();
        for (Graph.Node node : graph.nodes()) nodes.put(node, node(root, node));
        Map<Graph.Wire, ElkEdge> edges = new HashMap<>();
        for (Graph.Wire wire : graph.wires()) {
            Box from = wire.from.box;
            Box to = wire.to.box;
            ElkPort out =
                    port(ports, requireNonNull(nodes.get(wire.from)), PortSide.EAST, 0, from.width(), from.axis());
            double y = to.inputs().get(wire.input);
            ElkPort in = port(ports, requireNonNull(nodes.get(wire.to)), PortSide.WEST, wire.input, 0, y);
            edges.put(wire, ElkGraphUtil.createSimpleEdge(out, in));
        }
        new LayeredLayoutProvider().layout(root, new BasicProgressMonitor());
        graph.size(root.getWidth(), root.getHeight());
        nodes.forEach((node, placed) -> {
            node.x = placed.getX();
            node.y = placed.getY();
        });
        edges.forEach((wire, routed) -> wire.way = way(routed));
    }

    private static ElkNode node(ElkNode root, Graph.Node node) {
        ElkNode placed = ElkGraphUtil.createNode(root);
        placed.setDimensions(node.box.width(), node.box.height());
        placed.setProperty(CoreOptions.NODE_SIZE_CONSTRAINTS, EnumSet.noneOf(SizeConstraint.class));
        placed.setProperty(CoreOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_POS);
        if (node.inLastColumn) placed.setProperty(LayeredOptions.LAYERING_LAYER_CONSTRAINT, LayerConstraint.LAST);
        return placed;
    }

    private static ElkPort port(
            Map<ElkNode, Map<String, ElkPort>> ports, ElkNode node, PortSide side, int index, double x, double y) {
        return ports.computeIfAbsent(node, n -> new HashMap<>()).computeIfAbsent(side + " " + index, key -> {
            ElkPort port = ElkGraphUtil.createPort(node);
            port.setDimensions(0, 0);
            port.setLocation(x, y);
            port.setProperty(CoreOptions.PORT_SIDE, side);
            return port;
        });
    }

    private static double[] way(ElkEdge edge) {
        ElkEdgeSection section = edge.getSections().get(0);
        List<ElkBendPoint> bends = section.getBendPoints();
        double[] way = new double[4 + 2 * bends.size()];
        way[0] = section.getStartX();
        way[1] = section.getStartY();
        for (int i = 0; i < bends.size(); i++) {
            way[2 + 2 * i] = bends.get(i).getX();
            way[3 + 2 * i] = bends.get(i).getY();
        }
        way[way.length - 2] = section.getEndX();
        way[way.length - 1] = section.getEndY();
        return way;
    }
}
