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

/**
 * The added fuses in the controller's own supply: the first one met on each way out of a supply lead.
 *
 * @param fuses in the order in which they are met
 * @param standAlone whether a supply lead leads nowhere but to a fuse, so that one without its fuse is as good as unplugged
 */
record FeedFuses(List<AddedPartId> fuses, boolean standAlone) {

    FeedFuses {
        fuses = List.copyOf(fuses);
    }

    static FeedFuses of(Kit kit, Plan plan) {
        boolean standAlone = true;
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
                    if (visited.add(next)) {
                        toVisit.add(next);
                    }
                } else if (next instanceof End.OfLead && visited.add(next)) {
                    toVisit.add(next);
                    standAlone &= isSupply(kit, next);
                } else if (visited.add(next)) {
                    standAlone = false;
                    if (next instanceof End.OfPart) {
                        toVisit.add(next);
                    }
                }
            }
        }
        return new FeedFuses(List.copyOf(found), standAlone && !found.isEmpty());
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
        plan.findAcrossPole(at).ifPresent(ends::add);
        return ends;
    }

    private static boolean isFuse(Plan plan, AddedPartId id) {
        return plan.findPart(id).filter(AddedPart.Fuse.class::isInstance).isPresent();
    }

    private static boolean isSupply(Kit kit, End end) {
        return end instanceof End.OfLead lead && kit.lead(lead.lead()).port() instanceof Port.Supply;
    }
}
