package org.loomproof.workshop.prover.damage;

import java.util.List;
import java.util.Objects;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.RelayPosition;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.fault.Fault;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.WireId;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Wired;

/** What each fault changes in the network. */
final class Changes {

    /** A joint that was badly made or has corroded; common practice, no published source. */
    private static final double POOR_JOINT_OHMS = 1;

    /** Wire on wire, or wire on sheet metal. */
    private static final double CHAFED_OHMS = Setting.SHORT_OHMS;

    /** A coil that is burnt through, and one whose turns have met; common practice, no published source. */
    private static final double OPEN_COIL_OHMS = 1e9;

    private static final double SHORTED_COIL_OHMS = 0.1;

    /** The last stage of an output, melted; common practice, no published source. */
    private static final double MELTED_STAGE_OHMS = 0.1;

    private Changes() {}

    /** A wire that is drawn as nothing, both its ends being on the body, cannot be open. */
    static List<Change> open(Wired whole, WireId wire) {
        Reach reach = whole.added().wires().get(wire);
        return reach == null ? List.of() : List.of(new Change.Broken(reach.part()));
    }

    static List<Change> of(Fault fault, Plan plan, Wired whole) {
        return switch (fault) {
            case Fault.WireOpen(WireId wire) -> open(whole, wire);
            case Fault.PoorJoint(WireId wire) -> {
                Reach reach = whole.added().wires().get(wire);
                yield reach == null ? List.of() : List.of(new Change.Ohms(reach.part(), POOR_JOINT_OHMS));
            }
            case Fault.ChafedToBody(WireId wire) -> chafed(whole, wire, Node.CHASSIS);
            case Fault.ChafedToSupply(WireId wire) -> chafed(whole, wire, whole.post());
            case Fault.PartOpen(AddedPartId part) -> opened(plan, part, network(whole, part));
            case Fault.PartShorted(AddedPartId part) -> shorted(plan, part, network(whole, part));
            case Fault.Drifted(AddedPartId part, boolean up) -> drifted(plan, part, up, network(whole, part));
            case Fault.ContactStuck(AddedPartId part, boolean pulledIn) ->
                List.of(new Change.Held(
                        network(whole, part), pulledIn ? RelayPosition.PULLED_IN : RelayPosition.RELEASED));
            case Fault.OutputStuck(LeadId lead, boolean conducting) -> {
                Reach output = Objects.requireNonNull(
                        whole.controller().orElseThrow().outputs().get(lead));
                Change off = new Change.Off(output.part());
                yield conducting
                        ? List.of(off, joined("melted " + lead, output.from(), output.to(), MELTED_STAGE_OHMS))
                        : List.of(off);
            }
        };
    }

    /** An added part in the network. */
    static PartId network(Wired whole, AddedPartId part) {
        return Objects.requireNonNull(whole.added().parts().get(part)).part();
    }

    private static Change joined(String by, Node one, Node other, double ohms) {
        return new Change.Joined(new PartId(by), one, other, ohms);
    }

    /** Chafed at its first end, or at the other where the first is on the body. */
    private static List<Change> chafed(Wired whole, WireId wire, Node to) {
        Reach reach = whole.added().wires().get(wire);
        if (reach == null) {
            return List.of();
        }
        Node at = reach.from().equals(Node.CHASSIS) ? reach.to() : reach.from();
        return List.of(joined("chafed " + wire, at, to, CHAFED_OHMS));
    }

    private static List<Change> opened(Plan plan, AddedPartId id, PartId part) {
        return isRelay(plan, id) ? coil(part, OPEN_COIL_OHMS) : List.of(new Change.Broken(part));
    }

    private static List<Change> shorted(Plan plan, AddedPartId id, PartId part) {
        return isRelay(plan, id) ? coil(part, SHORTED_COIL_OHMS) : List.of(new Change.Shorted(part));
    }

    /** A coil that no longer pulls, whatever current it takes. */
    private static List<Change> coil(PartId relay, double ohms) {
        return List.of(new Change.Held(relay, RelayPosition.RELEASED), new Change.Ohms(relay, ohms));
    }

    /** A buffer is drawn as a relay: an input that draws little and a contact to ground. */
    private static boolean isRelay(Plan plan, AddedPartId id) {
        AddedPart part = plan.findPart(id).orElseThrow();
        return part instanceof AddedPart.Relay || part instanceof AddedPart.Buffer;
    }

    private static List<Change> drifted(Plan plan, AddedPartId id, boolean up, PartId part) {
        return plan.findPart(id).orElseThrow() instanceof AddedPart.Resistor resistor
                ? List.of(new Change.Ohms(part, resistor.resistance().value() * (up ? 2 : 0.5)))
                : List.of();
    }
}
