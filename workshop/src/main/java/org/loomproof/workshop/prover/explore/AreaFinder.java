package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Pin;
import org.loomproof.workshop.wiring.Wired;

/** Joins parts that share a node of the stock or of the fitted vehicle, posts and body apart. */
final class AreaFinder {

    private final Wired stock;
    private final Wired fitted;
    private final Set<Node> firm;
    private final List<Wired> all;
    private final Map<Object, Object> parents = new HashMap<>();

    private record Spot(int vehicle, Node node) {}

    AreaFinder(Wired stock, Wired fitted) {
        this(stock, fitted, Set.of(), List.of());
    }

    /**
     * @param firm nodes besides posts and body that are taken to be held
     * @param others vehicles whose joints count as well
     */
    AreaFinder(Wired stock, Wired fitted, Set<Node> firm, List<Wired> others) {
        this.stock = stock;
        this.fitted = fitted;
        this.firm = Set.copyOf(firm);
        this.all = Stream.concat(Stream.of(stock, fitted), others.stream()).toList();
        for (int vehicle = 0; vehicle < all.size(); vehicle++) {
            join(all.get(vehicle), vehicle);
        }
    }

    private void join(Wired wired, int vehicle) {
        for (Part part : wired.network().parts()) {
            for (Pin pin : part.pins()) {
                if (!part.id().equals(wired.battery()) && !isFirm(wired, pin.node())) {
                    join(part.id(), new Spot(vehicle, pin.node()));
                }
            }
        }
    }

    private boolean isFirm(Wired wired, Node node) {
        return node.equals(Node.CHASSIS) || node.equals(wired.post()) || firm.contains(node);
    }

    private Object root(Object at) {
        Object root = at;
        for (Object next = parents.get(root); next != null; next = parents.get(root)) {
            root = next;
        }
        return root;
    }

    private void join(Object one, Object other) {
        Object a = root(one);
        Object b = root(other);
        if (!a.equals(b)) {
            parents.put(b, a);
        }
    }

    List<Area> list() {
        Map<Object, Set<PartId>> byRoot = new LinkedHashMap<>();
        for (Wired wired : all) {
            for (Part part : wired.network().parts()) {
                if (!part.id().equals(wired.battery())) {
                    byRoot.computeIfAbsent(root(part.id()), r -> new LinkedHashSet<>())
                            .add(part.id());
                }
            }
        }
        List<Area> areas = new ArrayList<>();
        byRoot.values()
                .forEach(parts -> areas.add(new Area(parts, parts.stream().anyMatch(this::isChanged))));
        return areas;
    }

    private boolean isChanged(PartId id) {
        Optional<Part> before = stock.network().findPart(id);
        return !before.equals(fitted.network().findPart(id));
    }
}
