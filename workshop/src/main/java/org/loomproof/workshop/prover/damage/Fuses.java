package org.loomproof.workshop.prover.damage;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.explore.Answers;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.trade.fuse.OpeningTimes;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Wired;

/**
 * The fuses of a vehicle and what becomes of it when one opens. Of several that carry too much the one that carries the
 * largest multiple of its rating opens first, and with it those of which nobody can say that they are slower.
 */
final class Fuses {

    /** How much the current through a fuse may be moved by figures at their ends. */
    private static final double MOVED_FACTOR = 1.4;

    private final Map<PartId, Double> ratingAmps = new LinkedHashMap<>();
    private final Set<PartId> opened = new LinkedHashSet<>();
    private boolean isNear;

    Fuses(Wired fitted, Plan plan) {
        for (Part part : fitted.network().parts()) {
            if (part instanceof Fuse fuse) {
                ratingAmps.put(fuse.id(), fuse.ratingAmps());
            }
        }
        for (AddedPart part : plan.parts()) {
            Reach reach = fitted.added().parts().get(part.id());
            if (part instanceof AddedPart.Fuse fuse && reach != null) {
                ratingAmps.put(reach.part(), fuse.rating().value());
            }
        }
        ratingAmps.keySet().removeIf(id -> fitted.network().findPart(id).isEmpty());
    }

    /** What the vehicle comes to when every fuse that must open has opened. */
    Answers settled(Workbench bench, Vehicle vehicle, Setting setting) {
        return settled(bench, vehicle, setting, opened);
    }

    /** The fuses that must open there, one after another. */
    Set<PartId> openingIn(Workbench bench, Vehicle vehicle, Setting setting) {
        Set<PartId> there = new LinkedHashSet<>();
        settled(bench, vehicle, setting, there);
        return there;
    }

    private Answers settled(Workbench bench, Vehicle vehicle, Setting setting, Set<PartId> into) {
        Setting now = setting;
        isNear = false;
        while (true) {
            Answers answers = bench.answers(vehicle, now);
            Set<PartId> opening =
                    answers instanceof Answers.AtRest(List<OperatingPoint> points) ? opening(points) : Set.of();
            if (opening.isEmpty()) {
                return answers;
            }
            for (PartId fuse : opening) {
                now = now.broken(fuse);
                into.add(fuse);
            }
        }
    }

    private Set<PartId> opening(List<OperatingPoint> points) {
        Map<PartId, Double> multiples = new LinkedHashMap<>();
        ratingAmps.forEach((fuse, rating) -> {
            for (OperatingPoint point : points) {
                multiples.merge(fuse, Math.abs(point.amps(fuse)) / rating, Math::max);
            }
        });
        double most = multiples.values().stream().mapToDouble(m -> m).max().orElse(0);
        isNear |= multiples.values().stream()
                .anyMatch(m -> m * MOVED_FACTOR > OpeningTimes.surely() && m < MOVED_FACTOR * OpeningTimes.surely());
        Set<PartId> opening = new LinkedHashSet<>();
        if (most >= OpeningTimes.surely()) {
            multiples.forEach((fuse, multiple) -> {
                if (multiple >= OpeningTimes.surely()
                        && multiple * org.loomproof.workshop.trade.fuse.Fuses.selectiveRatio() > most) {
                    opening.add(fuse);
                }
            });
        }
        return opening;
    }

    /** Whether some fuse was close to opening, or to bearing what opens it, when last it was asked. */
    boolean isNear() {
        return isNear;
    }

    /** Every fuse that has opened in any situation asked about. */
    Set<PartId> opened() {
        return opened;
    }
}
