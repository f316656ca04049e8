package org.loomproof.workshop.fault;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.WireId;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.words.Phrase;

/** A mistake of the hand. */
public sealed interface Slip extends Mishap {

    /** What kind of mistake: the message of its words is {@code slip.} and this. */
    @Override
    String kind();

    /** The names of what it is made with, in the order of its words. */
    @Override
    List<Object> names();

    @Override
    default String id() {
        StringBuilder id = new StringBuilder(kind());
        names().forEach(name -> id.append(' ').append(name));
        return id.toString();
    }

    @Override
    default Phrase words() {
        return new Phrase("slip." + kind(), names());
    }

    @Override
    default Phrase inspection() {
        return new Phrase("inspection." + kind(), names());
    }

    /** A mistake that makes another plan of it: parts, or what the wires join. */
    sealed interface Rewiring extends Slip {
        /** The plan as it then is in the car. */
        Plan on(Plan plan);
    }

    /** A mistake that leaves everything joined as planned, but badly. */
    sealed interface BadJoint extends Slip {
        WireId wire();

        @Override
        default List<Object> names() {
            return List.of(wire());
        }
    }

    /** A mistake with one added part. */
    sealed interface OfPart extends Rewiring {
        AddedPartId part();

        @Override
        default List<Object> names() {
            return List.of(part());
        }
    }

    /** A lead or a wire was never joined and hangs loose. */
    record LeftLoose(WireId wire) implements BadJoint {
        @Override
        public String kind() {
            return "left-loose";
        }
    }

    /** A ground was screwed to paint. */
    record PaintedGround(WireId wire) implements BadJoint {
        @Override
        public String kind() {
            return "painted-ground";
        }
    }

    /** A ground was screwed to something that moves or is not joined to the body: it comes and goes. */
    record MovingGround(WireId wire) implements BadJoint {
        @Override
        public String kind() {
            return "moving-ground";
        }
    }

    /** A tap of the wrong size was pressed on: it lets go, or cuts strands. */
    record WrongTap(WireId wire) implements BadJoint {
        @Override
        public String kind() {
            return "wrong-tap";
        }
    }

    /** The two sides of a cut factory wire are exchanged. */
    record SidesSwapped(CircuitId circuit) implements Rewiring {
        @Override
        public String kind() {
            return "sides-swapped";
        }

        @Override
        public List<Object> names() {
            return List.of(circuit);
        }

        @Override
        public Plan on(Plan plan) {
            End before = new End.CutBefore(circuit);
            End after = new End.CutAfter(circuit);
            return Rewired.ends(plan, end -> end.equals(before) ? after : end.equals(after) ? before : end);
        }
    }

    /** A wire that looks alike in the same loom was taken for the right one. */
    record NeighbourTapped(CircuitId meant, CircuitId taken) implements Rewiring {
        @Override
        public String kind() {
            return "neighbour-tapped";
        }

        @Override
        public List<Object> names() {
            return List.of(meant, taken);
        }

        @Override
        public Plan on(Plan plan) {
            End right = new End.Tap(meant);
            return Rewired.ends(plan, end -> end.equals(right) ? new End.Tap(taken) : end);
        }
    }

    /** Two leads of like kind are exchanged: the wrong trigger input, or the wrong output. */
    record LeadsExchanged(LeadId one, LeadId other) implements Rewiring {
        @Override
        public String kind() {
            return "leads-exchanged";
        }

        @Override
        public List<Object> names() {
            return List.of(one, other);
        }

        @Override
        public Plan on(Plan plan) {
            End first = new End.OfLead(one);
            End second = new End.OfLead(other);
            return Rewired.ends(plan, end -> end.equals(first) ? second : end.equals(second) ? first : end);
        }
    }

    /** A resistor's third band was misread: ten times too much, or a tenth. */
    record DecadeMisread(AddedPartId part, boolean up) implements OfPart {
        @Override
        public String kind() {
            return up ? "decade-too-much" : "decade-too-little";
        }

        @Override
        public Plan on(Plan plan) {
            return plan.withParts(plan.parts().stream()
                    .map(p -> p.id().equals(part) ? misread(p) : p)
                    .toList());
        }

        private AddedPart misread(AddedPart right) {
            return right instanceof AddedPart.Resistor(AddedPartId id, Ohms ohms)
                    ? new AddedPart.Resistor(id, new Ohms(ohms.value() * (up ? 10 : 0.1)))
                    : right;
        }
    }

    /** The part was left out; its wires hang loose. */
    record LeftOut(AddedPartId part) implements OfPart {
        @Override
        public String kind() {
            return "left-out";
        }

        @Override
        public Plan on(Plan plan) {
            List<AddedPart> others =
                    plan.parts().stream().filter(p -> !p.id().equals(part)).toList();
            return plan.withParts(others);
        }
    }

    /** A diode is the wrong way round. */
    record TurnedRound(AddedPartId part) implements OfPart {
        @Override
        public String kind() {
            return "turned-round";
        }

        @Override
        public Plan on(Plan plan) {
            return Rewired.swapped(plan, part, "A", "K");
        }
    }

    /** The wires of 87 and 87a of a relay are swapped. */
    record ContactsSwapped(AddedPartId part) implements OfPart {
        @Override
        public String kind() {
            return "contacts-swapped";
        }

        @Override
        public Plan on(Plan plan) {
            return Rewired.swapped(plan, part, "87", "87a");
        }
    }

    /** The wires of 85 and 86 of a relay are swapped at its socket; the diode across the coil sits there and stays. */
    record CoilSwapped(AddedPartId part) implements OfPart {
        @Override
        public String kind() {
            return "coil-swapped";
        }

        @Override
        public Plan on(Plan plan) {
            Set<AddedPartId> clamps = clamps(plan, part);
            return Rewired.swapped(
                    plan, part, "85", "86", wire -> !isAt(wire.from(), clamps) && !isAt(wire.to(), clamps));
        }

        /** The diodes that lie across the relay's coil, alone or two in a row. */
        static Set<AddedPartId> clamps(Plan plan, AddedPartId relay) {
            Set<AddedPartId> at85 = beside(plan, new End.OfPart(relay, "85"));
            Set<AddedPartId> at86 = beside(plan, new End.OfPart(relay, "86"));
            Set<AddedPartId> across = new LinkedHashSet<>();
            for (AddedPartId first : at85) {
                for (AddedPartId last : at86) {
                    if (first.equals(last) || areJoined(plan, first, last)) {
                        across.add(first);
                        across.add(last);
                    }
                }
            }
            return across;
        }

        private static boolean areJoined(Plan plan, AddedPartId one, AddedPartId other) {
            return plan.wires().stream()
                    .anyMatch(wire -> (isAt(wire.from(), Set.of(one)) && isAt(wire.to(), Set.of(other)))
                            || (isAt(wire.from(), Set.of(other)) && isAt(wire.to(), Set.of(one))));
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
            parts.removeIf(id -> plan.findPart(id)
                    .filter(AddedPart.Junction.class::isInstance)
                    .isEmpty());
            return parts;
        }

        private static boolean isAt(End end, Set<AddedPartId> parts) {
            return end instanceof End.OfPart(AddedPartId id, String terminal) && parts.contains(id);
        }
    }
}
