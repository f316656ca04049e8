package org.loomproof.papers.schematic;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;

/**
 * Which ends are joined by added wires. Leads and terminals that wires join are one net; a factory wire or the body is
 * where a net ends, since what is joined there is drawn there. So is a lead or a part that is not of this plan, when the plan
 * is a part of one.
 */
final class Nets {

    private final Plan plan;
    private final Set<Object> here = new HashSet<>();
    private final Map<End, Set<End>> joined = new LinkedHashMap<>();
    private final Map<AddedPartId, AddedPartId> clamps = new LinkedHashMap<>();

    Nets(Plan plan) {
        this.plan = plan;
        plan.hookups().forEach(hookup -> here.add(hookup.lead()));
        plan.parts().forEach(part -> here.add(part.id()));
        for (AddedWire wire : plan.wires()) {
            for (End end : List.of(wire.from(), wire.to())) {
                if (isInner(end)) {
                    joined.computeIfAbsent(end, this::reach);
                }
            }
        }
        for (AddedPart part : plan.parts()) {
            if (part instanceof AddedPart.Relay relay) {
                findClamp(relay).ifPresent(diode -> clamps.put(relay.id(), diode));
            }
        }
    }

    /** The lead or the added part whose end it is; empty for a factory wire and the body. */
    static Optional<Object> owner(End end) {
        return switch (end) {
            case End.OfLead e -> Optional.of(e.lead());
            case End.OfPart e -> Optional.of(e.part());
            case End.Tap e -> Optional.empty();
            case End.CutBefore e -> Optional.empty();
            case End.CutAfter e -> Optional.empty();
            case End.Body e -> Optional.empty();
        };
    }

    /** True for leads and terminals of added parts of this plan. */
    boolean isInner(End end) {
        return owner(end).filter(here::contains).isPresent();
    }

    /** True for leads and terminals of added parts of another part of the plan. */
    boolean isElsewhere(End end) {
        return owner(end).filter(owner -> !here.contains(owner)).isPresent();
    }

    private Set<End> reach(End start) {
        Set<End> reached = new LinkedHashSet<>();
        Deque<End> next = new ArrayDeque<>(List.of(start));
        reached.add(start);
        while (!next.isEmpty()) {
            End here = next.removeFirst();
            for (AddedWire wire : listWires(here)) {
                End there = other(wire, here);
                if (isInner(there) && reached.add(there)) {
                    next.addLast(there);
                }
            }
        }
        return reached;
    }

    /** The wires that end there, in the plan's order. */
    List<AddedWire> listWires(End end) {
        return plan.wires().stream()
                .filter(w -> w.from().equals(end) || w.to().equals(end))
                .toList();
    }

    /** The wire's end that is not this one. */
    static End other(AddedWire wire, End end) {
        return wire.from().equals(end) ? wire.to() : wire.from();
    }

    /** Every net, each with its ends in the order in which the plan's wires reach them. */
    List<Set<End>> list() {
        List<Set<End>> nets = new ArrayList<>();
        Set<End> seen = new LinkedHashSet<>();
        joined.forEach((end, net) -> {
            if (!seen.contains(end)) {
                nets.add(net);
                seen.addAll(net);
            }
        });
        return nets;
    }

    private Set<End> net(End end) {
        return joined.getOrDefault(end, Set.of(end));
    }

    /** The diode that lies across the relay's coil, when there is one; it is drawn at the coil. */
    Optional<AddedPartId> findClampOf(AddedPartId relay) {
        return Optional.ofNullable(clamps.get(relay));
    }

    /** True when the part is a diode that is drawn at a relay's coil. */
    boolean isClamp(AddedPartId part) {
        return clamps.containsValue(part);
    }

    private Optional<AddedPartId> findClamp(AddedPart.Relay relay) {
        Set<End> plus = net(new End.OfPart(relay.id(), "86"));
        Set<End> minus = net(new End.OfPart(relay.id(), "85"));
        return plan.parts().stream()
                .filter(AddedPart.Diode.class::isInstance)
                .map(AddedPart::id)
                .filter(diode -> !clamps.containsValue(diode))
                .filter(diode -> {
                    End anode = new End.OfPart(diode, "A");
                    End cathode = new End.OfPart(diode, "K");
                    return (plus.contains(cathode) && minus.contains(anode))
                            || (plus.contains(anode) && minus.contains(cathode));
                })
                .findFirst();
    }

    /** True when the clamp diode's cathode is on 86. */
    boolean isCathodeOn86(AddedPartId relay, AddedPartId diode) {
        return net(new End.OfPart(relay, "86")).contains(new End.OfPart(diode, "K"));
    }
}
