package org.loomproof.workshop.goods.joint;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.order.ShopChoices;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.WireId;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.sizing.JointChoice;

/** How each end of the added wires is joined: by the size of what meets there, and by what the place is. */
public record Joints(Brief brief, Plan plan) {

    /** Every joint once, in the order of the plan's wires. */
    public List<PlacedJoint> list() {
        return at(plan.wires());
    }

    /** The joints at which these wires end, each once; a lead that simply goes on as its own wire has none. */
    public List<PlacedJoint> at(List<AddedWire> wires) {
        Set<PlacedJoint> joints = new LinkedHashSet<>();
        for (AddedWire wire : wires) {
            at(wire.from(), wire).ifPresent(joints::add);
            at(wire.to(), wire).ifPresent(joints::add);
        }
        return List.copyOf(joints);
    }

    private Optional<PlacedJoint> at(End place, AddedWire wire) {
        if (place instanceof End.Body) {
            // Every wire has a screw of its own.
            return Optional.of(
                    new PlacedJoint(place, List.of(wire.id()), Optional.of(JointChoice.onBody(List.of(wire.size())))));
        }
        List<AddedWire> meeting = plan.wires().stream()
                .filter(w -> w.from().equals(place) || w.to().equals(place))
                .toList();
        if (place instanceof End.OfLead && meeting.size() == 1) {
            return Optional.empty();
        }
        List<WireId> names = meeting.stream().map(AddedWire::id).toList();
        return Optional.of(new PlacedJoint(
                place,
                names,
                choice(place, meeting.stream().map(AddedWire::size).toList())));
    }

    private Optional<JointChoice> choice(End place, List<SquareMillimetres> own) {
        return switch (place) {
            case End.OfLead(var lead) ->
                Optional.of(JointChoice.onEnd(brief.kit().lead(lead).size().typical(), own, solders()));
            case End.OfPart(var part, var terminal) -> Optional.of(onPart(part, own));
            case End.Tap(var circuit) -> onFactory(circuit, own, true);
            case End.CutBefore(var circuit) -> onFactory(circuit, own, false);
            case End.CutAfter(var circuit) -> onFactory(circuit, own, false);
            case End.Body() -> Optional.of(JointChoice.onBody(own));
        };
    }

    private boolean solders() {
        return brief.order().shop().joint() == ShopChoices.Joint.SOLDER;
    }

    /** Diodes and resistors have bare legs; everything else has blades for push-on terminals. */
    private JointChoice onPart(AddedPartId part, List<SquareMillimetres> own) {
        boolean legs = plan.findPart(part)
                .filter(p -> p instanceof AddedPart.Diode || p instanceof AddedPart.Resistor)
                .isPresent();
        return legs
                ? JointChoice.onEnd(own.getFirst(), own.subList(1, own.size()), solders())
                : JointChoice.onPart(own);
    }

    private Optional<JointChoice> onFactory(CircuitId id, List<SquareMillimetres> own, boolean whole) {
        Circuit circuit = brief.sheet().circuit(id);
        return circuit.size()
                .map(Figure::typical)
                .map(size -> whole
                        ? JointChoice.onWhole(size, own, carries(circuit.role()), solders())
                        : JointChoice.onEnd(size, own, solders()));
    }

    private static JointChoice.Carries carries(CircuitRole role) {
        return switch (role) {
            case CONSTANT_SUPPLY,
                    IGNITION,
                    SECOND_IGNITION,
                    ACCESSORY,
                    STARTER,
                    SECOND_STARTER,
                    GROUND,
                    PARKING_LAMP,
                    LOCK_MOTOR_LEG,
                    WINDOW,
                    FUEL_PUMP,
                    HIGH_VOLTAGE -> JointChoice.Carries.POWER;
            case DOOR_TRIGGER,
                    HOOD_TRIGGER,
                    TRUNK_TRIGGER,
                    INTERIOR_LIGHT,
                    HORN,
                    LOCK,
                    UNLOCK,
                    TRUNK_RELEASE,
                    BRAKE,
                    TACHOMETER,
                    DATA,
                    RESTRAINT,
                    OTHER -> JointChoice.Carries.SIGNAL;
        };
    }
}
