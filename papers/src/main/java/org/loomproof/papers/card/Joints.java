package org.loomproof.papers.card;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.loomproof.papers.page.Wording;
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
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.sizing.JointChoice;

/** How each end of the added wires is joined: by the size of what meets there, and by what the place is. */
record Joints(Brief brief, Plan plan, Wording words) {

    /** One sentence a place where these wires end; a lead that simply goes on as its own wire has no joint. */
    List<String> at(List<AddedWire> wires) {
        Set<String> said = new LinkedHashSet<>();
        for (AddedWire wire : wires) {
            at(wire.from(), wire).ifPresent(said::add);
            at(wire.to(), wire).ifPresent(said::add);
        }
        return List.copyOf(said);
    }

    private Optional<String> at(End place, AddedWire wire) {
        List<SquareMillimetres> own = plan.wires().stream()
                .filter(w -> w.from().equals(place) || w.to().equals(place))
                .map(AddedWire::size)
                .toList();
        boolean solder = brief.order().shop().joint() == ShopChoices.Joint.SOLDER;
        return switch (place) {
            case End.OfLead(var lead) ->
                own.size() == 1
                        ? Optional.empty()
                        : Optional.of(sentence(
                                place,
                                JointChoice.onEnd(brief.kit().lead(lead).size().typical(), own, solder)));
            case End.OfPart(var part, var terminal) -> Optional.of(sentence(place, onPart(part, own, solder)));
            case End.Tap(var circuit) -> Optional.of(onFactory(place, circuit, own, solder, true));
            case End.CutBefore(var circuit) -> Optional.of(onFactory(place, circuit, own, solder, false));
            case End.CutAfter(var circuit) -> Optional.of(onFactory(place, circuit, own, solder, false));
            // Every wire has a screw of its own.
            case End.Body() -> Optional.of(sentence(place, JointChoice.onBody(List.of(wire.size()))));
        };
    }

    /** Diodes and resistors have bare legs; everything else has blades for push-on terminals. */
    private JointChoice onPart(AddedPartId part, List<SquareMillimetres> own, boolean solder) {
        boolean legs = plan.findPart(part)
                .filter(p -> p instanceof AddedPart.Diode || p instanceof AddedPart.Resistor)
                .isPresent();
        return legs ? JointChoice.onEnd(own.getFirst(), own.subList(1, own.size()), solder) : JointChoice.onPart(own);
    }

    private String onFactory(End place, CircuitId id, List<SquareMillimetres> own, boolean solder, boolean whole) {
        Circuit circuit = brief.sheet().circuit(id);
        Optional<SquareMillimetres> size = circuit.size().map(Figure::typical);
        if (size.isEmpty()) {
            return words.of("joint.size-not-said", words.end(place));
        }
        return sentence(
                place,
                whole
                        ? JointChoice.onWhole(size.get(), own, carries(circuit.role()), solder)
                        : JointChoice.onEnd(size.get(), own, solder));
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

    private String sentence(End place, JointChoice joint) {
        String method = joint.method().name().toLowerCase(Locale.ROOT).replace('_', '-');
        String sleeve = joint.sleeve()
                .map(s -> words.of("joint.sleeve." + s.word()))
                .orElseGet(() -> words.of("joint.sleeve.none"));
        String strip = joint.strip().map(words::millimetres).orElse("");
        String how = words.of("joint." + method, words.end(place), sleeve, words.size(joint.by()), strip);
        return joint.pull()
                .map(p -> words.of("joint.holds", how, Math.round(p.newtons()), Math.round(p.pounds())))
                .orElse(how);
    }
}
