package org.loomproof.workshop.fault;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;

/** A mistake of the hand with one added part. */
public sealed interface Slip {

    /** The part. */
    AddedPartId part();

    /** The plan as it then is in the car. */
    Plan on(Plan plan);

    /** The part was left out; its wires hang loose. */
    record LeftOut(AddedPartId part) implements Slip {
        @Override
        public Plan on(Plan plan) {
            List<AddedPart> others =
                    plan.parts().stream().filter(p -> !p.id().equals(part)).toList();
            return plan.withParts(others);
        }
    }

    /** A diode is the wrong way round. */
    record TurnedRound(AddedPartId part) implements Slip {
        @Override
        public Plan on(Plan plan) {
            return swapped(plan, part, "A", "K");
        }
    }

    /** The wires of 87 and 87a of a relay are swapped. */
    record ContactsSwapped(AddedPartId part) implements Slip {
        @Override
        public Plan on(Plan plan) {
            return swapped(plan, part, "87", "87a");
        }
    }

    /** The wires of 85 and 86 of a relay are swapped at its socket; the diode across the coil sits there and stays. */
    record CoilSwapped(AddedPartId part) implements Slip {
        @Override
        public Plan on(Plan plan) {
            Set<AddedPartId> clamps = clamps(plan, part);
            return swapped(plan, part, "85", "86", wire -> !isAt(wire.from(), clamps) && !isAt(wire.to(), clamps));
        }

        /** The diodes that lie across the relay's coil. */
        static Set<AddedPartId> clamps(Plan plan, AddedPartId relay) {
            Set<AddedPartId> at85 = beside(plan, new End.OfPart(relay, "85"));
            at85.retainAll(beside(plan, new End.OfPart(relay, "86")));
            return at85;
        }

        private static Set<AddedPartId> beside(Plan plan, End terminal) {
            Set<AddedPartId> parts = new LinkedHashSet<>();
            for (AddedWire wire : plan.wires()) {
                if (wire.from().equals(terminal) && wire.to() instanceof End.OfPart(AddedPartId id, String at)) {
                    parts.add(id);
                }
                if (wire.to().equals(terminal) && wire.from() instanceof End.OfPart(AddedPartId id, String at)) {
                    parts.add(id);
                }
            }
            parts.removeIf(id ->
                    plan.findPart(id).filter(AddedPart.Diode.class::isInstance).isEmpty());
            return parts;
        }

        private static boolean isAt(End end, Set<AddedPartId> parts) {
            return end instanceof End.OfPart(AddedPartId id, String terminal) && parts.contains(id);
        }
    }

    /** The slips that a plan's parts allow, in the order of the parts. */
    static List<Slip> list(Plan plan) {
        List<Slip> slips = new ArrayList<>();
        for (AddedPart part : plan.parts()) {
            slips.add(new LeftOut(part.id()));
            switch (part) {
                case AddedPart.Diode diode -> slips.add(new TurnedRound(diode.id()));
                case AddedPart.Relay relay -> {
                    slips.add(new ContactsSwapped(relay.id()));
                    if (!CoilSwapped.clamps(plan, relay.id()).isEmpty()) {
                        slips.add(new CoilSwapped(relay.id()));
                    }
                }
                case AddedPart.Buffer buffer -> {}
                case AddedPart.Resistor resistor -> {}
                case AddedPart.Fuse fuse -> {}
                case AddedPart.Load load -> {}
                case AddedPart.PinSwitch pin -> {}
            }
        }
        return slips;
    }

    private static Plan swapped(Plan plan, AddedPartId part, String one, String other) {
        return swapped(plan, part, one, other, wire -> true);
    }

    private static Plan swapped(Plan plan, AddedPartId part, String one, String other, Predicate<AddedWire> moved) {
        UnaryOperator<End> swap = end -> {
            if (end instanceof End.OfPart(AddedPartId id, String terminal) && id.equals(part)) {
                return new End.OfPart(id, terminal.equals(one) ? other : terminal.equals(other) ? one : terminal);
            }
            return end;
        };
        List<AddedWire> wires = plan.wires().stream()
                .map(w -> moved.test(w)
                        ? new AddedWire(w.id(), swap.apply(w.from()), swap.apply(w.to()), w.length(), w.size())
                        : w)
                .toList();
        return plan.withWires(wires);
    }
}
