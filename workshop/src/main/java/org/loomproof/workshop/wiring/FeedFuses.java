package org.loomproof.workshop.wiring;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;

/** Finds the added fuses in the controller's own supply: the first one met on each way out of a supply lead. */
final class FeedFuses {

    private FeedFuses() {}

    static List<AddedPartId> list(Kit kit, Plan plan) {
        Set<AddedPartId> found = new LinkedHashSet<>();
        Deque<End> toVisit = new ArrayDeque<>();
        for (Lead lead : kit.leads()) {
            if (lead.port() instanceof Port.Supply) {
                toVisit.add(new End.OfLead(lead.id()));
            }
        }
        Set<End> visited = new HashSet<>(toVisit);
        while (!toVisit.isEmpty()) {
            for (End next : neighbours(plan, toVisit.remove())) {
                if (next instanceof End.OfPart part && isFuse(plan, part.part())) {
                    found.add(part.part());
                } else if (isJunctionOfAddedWires(next) && visited.add(next)) {
                    toVisit.add(next);
                }
            }
        }
        return List.copyOf(found);
    }

    private static List<End> neighbours(Plan plan, End at) {
        List<End> ends = new ArrayList<>();
        for (AddedWire wire : plan.wires()) {
            if (wire.from().equals(at)) {
                ends.add(wire.to());
            } else if (wire.to().equals(at)) {
                ends.add(wire.from());
            }
        }
        return ends;
    }

    private static boolean isFuse(Plan plan, AddedPartId id) {
        return plan.findPart(id).filter(AddedPart.Fuse.class::isInstance).isPresent();
    }

    private static boolean isJunctionOfAddedWires(End end) {
        return switch (end) {
            case End.OfLead lead -> true;
            case End.OfPart part -> true;
            case End.Tap tap -> false;
            case End.CutBefore cut -> false;
            case End.CutAfter cut -> false;
            case End.Body body -> false;
        };
    }
}
