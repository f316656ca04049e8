package org.loomproof.workshop.goods.bay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.WireId;

/**
 * The work of one plan in the bay.
 *
 * @param stations in working order
 */
public record BayOrder(List<Station> stations) {

    public BayOrder {
        stations = List.copyOf(stations);
    }

    /** The order for a plan; panels come in the order of the plan's wires. */
    public static BayOrder of(Brief brief, Plan plan) {
        return new Ordering(brief, plan).order();
    }

    private static final class Ordering {
        private final Brief brief;
        private final Plan plan;
        private final Set<CircuitId> tapped = new LinkedHashSet<>();
        private final Set<CircuitId> cut = new LinkedHashSet<>();
        private final List<Station> stations = new ArrayList<>();

        Ordering(Brief brief, Plan plan) {
            this.brief = brief;
            this.plan = plan;
            for (AddedWire wire : plan.wires()) {
                note(wire.from());
                note(wire.to());
            }
        }

        private void note(End end) {
            switch (end) {
                case End.Tap(var circuit) -> tapped.add(circuit);
                case End.CutBefore(var circuit) -> cut.add(circuit);
                case End.CutAfter(var circuit) -> cut.add(circuit);
                case End.Body body -> {}
                case End.OfLead lead -> {}
                case End.OfPart part -> {}
            }
        }

        BayOrder order() {
            List<WireId> grounds = wiresAt(end -> end instanceof End.Body);
            if (!grounds.isEmpty()) {
                stations.add(new Station(Station.Kind.GROUND, "", List.of(new Visit.Ground(grounds))));
            }
            // A circuit that is both tapped and cut is worked on once, with the cuts.
            tapped.removeAll(cut);
            byPanel(Station.Kind.PANEL, tapped, Visit.Tapped::new);
            List<Visit> mounted = plan.parts().stream()
                    .filter(part -> part instanceof AddedPart.Load
                            || part instanceof AddedPart.Sender
                            || part instanceof AddedPart.PinSwitch)
                    .map(part -> (Visit) new Visit.Mounted(part.id(), wiresOf(part.id())))
                    .toList();
            if (!mounted.isEmpty()) {
                stations.add(new Station(Station.Kind.MOUNT, "", mounted));
            }
            byPanel(Station.Kind.CUT, cut, Visit.Cut::new);
            supplyFuse()
                    .ifPresent(fuse -> stations.add(
                            new Station(Station.Kind.FUSE, "", List.of(new Visit.SupplyFuse(fuse, wiresOf(fuse))))));
            return new BayOrder(stations);
        }

        private void byPanel(
                Station.Kind kind, Set<CircuitId> circuits, BiFunction<CircuitId, List<WireId>, Visit> visit) {
            Map<String, List<Visit>> panels = new LinkedHashMap<>();
            for (CircuitId circuit : circuits) {
                panels.computeIfAbsent(brief.sheet().circuit(circuit).where().panel(), panel -> new ArrayList<>())
                        .add(visit.apply(circuit, wiresAt(end -> isOn(end, circuit))));
            }
            panels.forEach((panel, visits) -> stations.add(new Station(kind, panel, visits)));
        }

        private Optional<AddedPartId> supplyFuse() {
            return plan.hookups().stream()
                    .filter(Hookup.Connect.class::isInstance)
                    .map(Hookup.Connect.class::cast)
                    .filter(h -> brief.kit().lead(h.lead()).role() == LeadRole.SUPPLY)
                    .flatMap(h -> h.parts().stream())
                    .filter(id -> plan.findPart(id)
                            .filter(AddedPart.Fuse.class::isInstance)
                            .isPresent())
                    .findFirst();
        }

        private List<WireId> wiresOf(AddedPartId part) {
            return wiresAt(end -> end instanceof End.OfPart of && of.part().equals(part));
        }

        private List<WireId> wiresAt(Predicate<End> place) {
            return plan.wires().stream()
                    .filter(wire -> place.test(wire.from()) || place.test(wire.to()))
                    .map(AddedWire::id)
                    .toList();
        }

        private static boolean isOn(End end, CircuitId circuit) {
            return switch (end) {
                case End.Tap(var id) -> id.equals(circuit);
                case End.CutBefore(var id) -> id.equals(circuit);
                case End.CutAfter(var id) -> id.equals(circuit);
                case End.Body body -> false;
                case End.OfLead lead -> false;
                case End.OfPart part -> false;
            };
        }
    }
}
