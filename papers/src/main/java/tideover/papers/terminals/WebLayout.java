package tideover.papers.terminals;

import static java.util.Objects.requireNonNull;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.elk.alg.layered.LayeredLayoutProvider;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.options.NodePlacementStrategy;
import org.eclipse.elk.alg.layered.options.OrderingStrategy;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.options.CoreOptions;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeLabelPlacement;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.options.PortConstraints;
import org.eclipse.elk.core.options.PortSide;
import org.eclipse.elk.core.options.SizeConstraint;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.graph.ElkBendPoint;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkLabel;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.ElkPort;
import org.eclipse.elk.graph.util.ElkGraphUtil;
import tideover.papers.drawing.Type;

/** Places a web in layers by the layered method: lines at right angles, words beside them in room of their own. */
final class WebLayout {

    static {
        // Registers the option types of the library; without it no default of an option can be copied.
        LayoutMetaDataService.getInstance();
    }

    private WebLayout() {}

    /** @param room how much more of it than least is left between things, as a ratio */
    static void place(Web web, double room) {
        ElkNode root = ElkGraphUtil.createGraph();
        root.setProperty(CoreOptions.DIRECTION, web.growth == Web.Growth.RIGHT ? Direction.RIGHT : Direction.UP);
        root.setProperty(CoreOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
        root.setProperty(CoreOptions.PADDING, new ElkPadding(0));
        root.setProperty(CoreOptions.SEPARATE_CONNECTED_COMPONENTS, false);
        root.setProperty(CoreOptions.RANDOM_SEED, 1);
        root.setProperty(LayeredOptions.PARTITIONING_ACTIVATE, true);
        root.setProperty(LayeredOptions.CONSIDER_MODEL_ORDER_STRATEGY, OrderingStrategy.PREFER_NODES);
        root.setProperty(LayeredOptions.NODE_PLACEMENT_STRATEGY, NodePlacementStrategy.NETWORK_SIMPLEX);
        root.setProperty(LayeredOptions.NODE_PLACEMENT_FAVOR_STRAIGHT_EDGES, true);
        root.setProperty(LayeredOptions.SPACING_NODE_NODE, 5 * room);
        root.setProperty(LayeredOptions.SPACING_EDGE_NODE, 3 * room);
        root.setProperty(LayeredOptions.SPACING_EDGE_EDGE, 3 * room);
        root.setProperty(LayeredOptions.SPACING_EDGE_LABEL, 0.8);
        root.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, 2.5 * room);
        root.setProperty(LayeredOptions.SPACING_EDGE_NODE_BETWEEN_LAYERS, 2.0 * room);
        root.setProperty(LayeredOptions.SPACING_EDGE_EDGE_BETWEEN_LAYERS, 1.5 * room);

        Map<Web.Box, ElkNode> nodes = new HashMap<>();
        for (Web.Box box : web.boxes) nodes.put(box, node(root, box, web));
        Map<Web.Place, ElkPort> ports = new HashMap<>();
        Map<Web.Line, ElkEdge> edges = new HashMap<>();
        for (Web.Line line : web.lines) {
            ElkEdge edge = ElkGraphUtil.createSimpleEdge(port(ports, nodes, line.from), port(ports, nodes, line.to));
            if (!line.words.isEmpty()) {
                ElkLabel label = ElkGraphUtil.createLabel(edge);
                label.setText(line.words.get(0));
                label.setDimensions(line.wordsWidth, line.words.size() * Type.LEADING);
                label.setProperty(CoreOptions.EDGE_LABELS_PLACEMENT, EdgeLabelPlacement.CENTER);
            }
            edges.put(line, edge);
        }
        new LayeredLayoutProvider().layout(root, new BasicProgressMonitor());
        web.width = root.getWidth();
        web.height = root.getHeight();
        nodes.forEach((box, node) -> {
            box.x = node.getX();
            box.y = node.getY();
        });
        edges.forEach((line, edge) -> {
            line.way = way(edge);
            for (ElkLabel label : edge.getLabels()) {
                line.wordsX = label.getX();
                line.wordsY = label.getY();
            }
        });
    }

    private static ElkNode node(ElkNode root, Web.Box box, Web web) {
        ElkNode node = ElkGraphUtil.createNode(root);
        node.setDimensions(box.width, box.height);
        node.setProperty(CoreOptions.NODE_SIZE_CONSTRAINTS, EnumSet.noneOf(SizeConstraint.class));
        boolean free = web.lines.stream()
                .anyMatch(line ->
                        line.from.box == box && line.from.offset < 0 || line.to.box == box && line.to.offset < 0);
        node.setProperty(CoreOptions.PORT_CONSTRAINTS, free ? PortConstraints.FIXED_SIDE : PortConstraints.FIXED_POS);
        node.setProperty(LayeredOptions.PARTITIONING_PARTITION, box.rank);
        return node;
    }

    /** Lines to a fixed place share it; each other one has its own. */
    private static ElkPort port(Map<Web.Place, ElkPort> ports, Map<Web.Box, ElkNode> nodes, Web.Place place) {
        ElkPort known = place.offset < 0 ? null : ports.get(place);
        if (known != null) return known;
        ElkPort port = ElkGraphUtil.createPort(requireNonNull(nodes.get(place.box)));
        port.setDimensions(0, 0);
        port.setProperty(CoreOptions.PORT_SIDE, side(place.edge));
        if (place.offset >= 0) {
            switch (place.edge) {
                case LEFT -> port.setLocation(0, place.offset);
                case RIGHT -> port.setLocation(place.box.width, place.offset);
                case UPPER -> port.setLocation(place.offset, 0);
                case LOWER -> port.setLocation(place.offset, place.box.height);
            }
            ports.put(place, port);
        }
        return port;
    }

    private static PortSide side(Web.Edge edge) {
        return switch (edge) {
            case LEFT -> PortSide.WEST;
            case RIGHT -> PortSide.EAST;
            case UPPER -> PortSide.NORTH;
            case LOWER -> PortSide.SOUTH;
        };
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
