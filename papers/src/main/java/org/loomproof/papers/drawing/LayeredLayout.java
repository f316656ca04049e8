package org.loomproof.papers.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.elk.alg.layered.options.CycleBreakingStrategy;
import org.eclipse.elk.alg.layered.options.GreedySwitchType;
import org.eclipse.elk.alg.layered.options.LayeredMetaDataProvider;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.options.LayeringStrategy;
import org.eclipse.elk.alg.layered.options.NodePlacementStrategy;
import org.eclipse.elk.alg.layered.options.OrderingStrategy;
import org.eclipse.elk.core.RecursiveGraphLayoutEngine;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.math.KVector;
import org.eclipse.elk.core.options.CoreOptions;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.options.PortConstraints;
import org.eclipse.elk.core.options.PortSide;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.graph.ElkBendPoint;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.ElkPort;
import org.eclipse.elk.graph.util.ElkGraphUtil;

/**
 * Places a drawing's blocks in columns and runs its conductors at right angles between them, by the layered method of the
 * Eclipse Layout Kernel. The same drawing always gets the same places: without an order of nodes and edges to hold on to,
 * that method's zones come out differently from run to run.
 */
public final class LayeredLayout {

    /** Tried in turn; the one with the fewest crossings is kept. */
    private static final int[] SEEDS = {1, 2, 3, 5, 8, 13};

    private static final double MARGIN = 6;

    static {
        LayoutMetaDataService.getInstance().registerLayoutMetaDataProviders(new LayeredMetaDataProvider());
    }

    private LayeredLayout() {}

    /** The drawing in its place. */
    public static PlacedDrawing place(Drawing drawing) {
        PlacedDrawing best = placeOnce(drawing, SEEDS[0]);
        int fewest = Inspection.countCrossings(best);
        for (int i = 1; i < SEEDS.length && fewest > 0; i++) {
            PlacedDrawing other = placeOnce(drawing, SEEDS[i]);
            int crossings = Inspection.countCrossings(other);
            if (crossings < fewest) {
                best = other;
                fewest = crossings;
            }
        }
        return best;
    }

    /** One try, to see how much room the drawing takes. */
    public static PlacedDrawing placeQuickly(Drawing drawing) {
        return placeOnce(drawing, SEEDS[0]);
    }

    private static PlacedDrawing placeOnce(Drawing drawing, int seed) {
        ElkNode graph = graph(seed);
        Map<String, ElkNode> nodes = new HashMap<>();
        Map<String, ElkPort> ports = new HashMap<>();
        for (Block block : drawing.blocks()) {
            nodes.put(block.id(), node(graph, block, ports));
        }
        List<ElkEdge> edges = new ArrayList<>();
        for (Conductor conductor : drawing.conductors()) {
            edges.add(ElkGraphUtil.createSimpleEdge(
                    port(ports, conductor.fromBlock(), conductor.fromPort()),
                    port(ports, conductor.toBlock(), conductor.toPort())));
        }
        new RecursiveGraphLayoutEngine().layout(graph, new BasicProgressMonitor());
        return placed(drawing, graph, nodes, edges);
    }

    private static ElkNode graph(int seed) {
        ElkNode graph = ElkGraphUtil.createGraph();
        graph.setProperty(CoreOptions.ALGORITHM, LayeredOptions.ALGORITHM_ID);
        graph.setProperty(CoreOptions.DIRECTION, Direction.RIGHT);
        graph.setProperty(CoreOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
        graph.setProperty(CoreOptions.PADDING, new ElkPadding(MARGIN));
        graph.setProperty(LayeredOptions.CYCLE_BREAKING_STRATEGY, CycleBreakingStrategy.GREEDY);
        graph.setProperty(LayeredOptions.LAYERING_STRATEGY, LayeringStrategy.NETWORK_SIMPLEX);
        graph.setProperty(LayeredOptions.NODE_PLACEMENT_STRATEGY, NodePlacementStrategy.NETWORK_SIMPLEX);
        graph.setProperty(LayeredOptions.CROSSING_MINIMIZATION_GREEDY_SWITCH_TYPE, GreedySwitchType.TWO_SIDED);
        graph.setProperty(LayeredOptions.THOROUGHNESS, 30);
        graph.setProperty(LayeredOptions.RANDOM_SEED, seed);
        graph.setProperty(LayeredOptions.PARTITIONING_ACTIVATE, true);
        graph.setProperty(LayeredOptions.CONSIDER_MODEL_ORDER_STRATEGY, OrderingStrategy.NODES_AND_EDGES);
        graph.setProperty(LayeredOptions.SEPARATE_CONNECTED_COMPONENTS, false);
        graph.setProperty(LayeredOptions.SPACING_NODE_NODE, 8.0);
        graph.setProperty(LayeredOptions.SPACING_EDGE_NODE, 7.0);
        graph.setProperty(LayeredOptions.SPACING_EDGE_EDGE, 6.0);
        graph.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, 14.0);
        graph.setProperty(LayeredOptions.SPACING_EDGE_NODE_BETWEEN_LAYERS, 7.0);
        graph.setProperty(LayeredOptions.SPACING_EDGE_EDGE_BETWEEN_LAYERS, 6.0);
        return graph;
    }

    private static ElkNode node(ElkNode graph, Block block, Map<String, ElkPort> ports) {
        ElkNode node = ElkGraphUtil.createNode(graph);
        node.setDimensions(block.width(), block.height());
        node.setProperty(CoreOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_POS);
        node.setProperty(CoreOptions.PARTITIONING_PARTITION, column(block.zone()));
        for (Port port : block.ports()) {
            ElkPort made = ElkGraphUtil.createPort(node);
            made.setDimensions(0, 0);
            boolean isLeft = port.side() == Port.Side.LEFT;
            made.setProperty(CoreOptions.PORT_SIDE, isLeft ? PortSide.WEST : PortSide.EAST);
            made.setLocation(isLeft ? 0 : block.width(), port.y());
            ports.put(block.id() + "\n" + port.name(), made);
        }
        return node;
    }

    private static int column(Block.Zone zone) {
        return switch (zone) {
            case LEFT -> 0;
            case MIDDLE -> 1;
            case RIGHT -> 2;
        };
    }

    private static ElkPort port(Map<String, ElkPort> ports, String block, String name) {
        ElkPort port = ports.get(block + "\n" + name);
        if (port == null) {
            throw new IllegalArgumentException("block " + block + " has no port " + name);
        }
        return port;
    }

    private static PlacedDrawing placed(
            Drawing drawing, ElkNode graph, Map<String, ElkNode> nodes, List<ElkEdge> edges) {
        List<Ink> ink = new ArrayList<>();
        for (Block block : drawing.blocks()) {
            ElkNode node = nodes.get(block.id());
            if (node != null) {
                block.ink().forEach(i -> ink.add(i.moved(node.getX(), node.getY())));
            }
        }
        List<PlacedDrawing.Route> routes = new ArrayList<>();
        List<Point> joints = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            routes.add(new PlacedDrawing.Route(drawing.conductors().get(i), corners(edges.get(i))));
            for (KVector joint : edges.get(i).getProperty(CoreOptions.JUNCTION_POINTS)) {
                Point point = new Point(joint.x, joint.y);
                if (!joints.contains(point)) {
                    joints.add(point);
                }
            }
        }
        return new PlacedDrawing(graph.getWidth(), graph.getHeight(), routes, joints, ink);
    }

    private static List<Point> corners(ElkEdge edge) {
        List<Point> corners = new ArrayList<>();
        for (ElkEdgeSection section : edge.getSections()) {
            corners.add(new Point(section.getStartX(), section.getStartY()));
            for (ElkBendPoint bend : section.getBendPoints()) {
                corners.add(new Point(bend.getX(), bend.getY()));
            }
            corners.add(new Point(section.getEndX(), section.getEndY()));
        }
        return corners;
    }
}
