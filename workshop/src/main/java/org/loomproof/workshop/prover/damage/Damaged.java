package org.loomproof.workshop.prover.damage;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Pin;
import org.loomproof.workshop.prover.explore.Area;
import org.loomproof.workshop.prover.explore.Vehicle;

/**
 * A damaged vehicle, with the areas that it differs in from the vehicle as planned.
 *
 * @param damage what is wrong
 * @param vehicle all of it
 * @param changes what is wrong, and what is wired otherwise because of it
 * @param reached the areas
 * @param blocks what the areas fall into
 * @param touched the parts that are wrong
 */
record Damaged(
        Damage damage, Vehicle vehicle, List<Change> changes, List<Area> reached, Blocks blocks, Set<PartId> touched) {

    Damaged {
        changes = List.copyOf(changes);
        reached = List.copyOf(reached);
        touched = Set.copyOf(touched);
    }

    static Damaged of(AsPlanned job, Damage damage) {
        Vehicle vehicle = damage.vehicle(job.brief());
        List<Change> changes = new ArrayList<>(damage.changes());
        Set<PartId> touched = new LinkedHashSet<>();
        for (Change change : damage.changes()) {
            switch (change) {
                case Change.Broken(PartId part) -> touched.add(part);
                case Change.Shorted(PartId part) -> touched.add(part);
                case Change.Ohms(PartId part, double ohms) -> touched.add(part);
                case Change.Held(PartId relay, var at) -> touched.add(relay);
                case Change.Off(PartId output) -> touched.add(output);
                case Change.Joined bridge -> touched.add(bridge.by());
                case Change.Rewired rewired -> {}
            }
        }
        if (!damage.isWiredAs(job.plan())) {
            Change.Rewired rewired = Change.Rewired.between(
                    job.fitted().wired().network(), vehicle.wired().network(), joinedParts(damage));
            changes.add(rewired);
            rewired.gone().forEach(part -> touched.add(part.id()));
            rewired.come().forEach(part -> touched.add(part.id()));
            touched.addAll(neighbours(job.fitted(), rewired.gone()));
            touched.addAll(neighbours(vehicle, rewired.come()));
        }
        List<Area> reached = Area.list(job.stock().wired(), job.fitted().wired(), vehicle.wired()).stream()
                .filter(area -> area.parts().stream().anyMatch(touched::contains))
                .toList();
        return new Damaged(damage, vehicle, changes, reached, Blocks.of(job, vehicle), touched);
    }

    private static Set<PartId> joinedParts(Damage damage) {
        Set<PartId> parts = new LinkedHashSet<>();
        for (Change change : damage.changes()) {
            if (change instanceof Change.Joined joined) {
                parts.add(joined.by());
            }
        }
        return parts;
    }

    /** What a part that is gone was joined to differs too: it has lost a neighbour. */
    private static Set<PartId> neighbours(Vehicle vehicle, List<Part> parts) {
        Set<Node> nodes = new LinkedHashSet<>();
        parts.forEach(part -> part.pins().stream().map(Pin::node).forEach(nodes::add));
        nodes.remove(Node.CHASSIS);
        nodes.remove(vehicle.wired().post());
        Set<PartId> near = new LinkedHashSet<>();
        for (Part part : vehicle.wired().network().parts()) {
            if (part.pins().stream().map(Pin::node).anyMatch(nodes::contains)) {
                near.add(part.id());
            }
        }
        near.remove(vehicle.wired().battery());
        return near;
    }

    /** The parts of an area that are there without the damage. */
    Set<PartId> planned(AsPlanned job, Area area) {
        Set<PartId> parts = new LinkedHashSet<>();
        for (PartId part : area.parts()) {
            if (job.stock().wired().network().findPart(part).isPresent()
                    || job.fitted().wired().network().findPart(part).isPresent()) {
                parts.add(part);
            }
        }
        return parts;
    }
}
