package org.loomproof.workshop.goods.joint;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
public final class Joints {

    private final Brief brief;
    private final Plan plan;
    private final Map<Spot, PlacedJoint> joints = new LinkedHashMap<>();
    private int numbered;

    /** Where wires meet; at the body every wire has a screw of its own. */
    private record Spot(End place, Optional<WireId> alone) {
        static Spot of(End place, AddedWire wire) {
            return new Spot(place, place instanceof End.Body ? Optional.of(wire.id()) : Optional.empty());
        }
    }

    public Joints(Brief brief, Plan plan) {
        this.brief = brief;
        this.plan = plan;
        for (AddedWire wire : plan.wires()) {
            for (End place : List.of(wire.from(), wire.to())) {
                if (!joints.containsKey(Spot.of(place, wire))) {
                    joint(place, wire).ifPresent(joint -> joints.put(Spot.of(place, wire), joint));
                }
            }
        }
    }

    /** Every joint once, in the order of the plan's wires; a lead that simply goes on as its own wire has none. */
    public List<PlacedJoint> list() {
        return List.copyOf(joints.values());
    }

    /** The joints at which these wires end, each once. */
    public List<PlacedJoint> at(List<AddedWire> wires) {
        List<WireId> names = wires.stream().map(AddedWire::id).toList();
        return joints.values().stream()
                .filter(joint -> joint.wires().stream().anyMatch(names::contains))
                .toList();
    }

    /** The joint at one end of a wire, if there is one. */
    public Optional<PlacedJoint> find(End place, AddedWire wire) {
        return Optional.ofNullable(joints.get(Spot.of(place, wire)));
    }

    private String name(End place) {
        return place instanceof End.OfPart(var part, var terminal) ? part.value() + " " + terminal : "J" + ++numbered;
    }

    private Optional<PlacedJoint> joint(End place, AddedWire wire) {
        if (place instanceof End.Body) {
            return Optional.of(new PlacedJoint(
                    name(place), place, List.of(wire.id()), Optional.of(JointChoice.onBody(List.of(wire.size())))));
        }
        List<AddedWire> meeting = plan.wires().stream()
                .filter(w -> w.from().equals(place) || w.to().equals(place))
                .toList();
        if (place instanceof End.OfLead && meeting.size() == 1) {
            return Optional.empty();
        }
        List<WireId> names = meeting.stream().map(AddedWire::id).toList();
        return Optional.of(new PlacedJoint(
                name(place),
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
        if (plan.findPart(part).filter(AddedPart.Pole.class::isInstance).isPresent()) {
            return JointChoice.inPlug(own);
        }
        boolean legs = plan.findPart(part)
                .filter(p -> p instanceof AddedPart.Junction || p instanceof AddedPart.Resistor)
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
                    ALARM_ARM,
                    ALARM_DISARM,
                    TRUNK_RELEASE,
                    BRAKE,
                    TACHOMETER,
                    DATA,
                    RESTRAINT,
                    OTHER -> JointChoice.Carries.SIGNAL;
        };
    }
}
