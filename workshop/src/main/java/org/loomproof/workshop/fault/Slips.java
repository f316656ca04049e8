package org.loomproof.workshop.fault;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Where;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.JoinedCircuits;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.trade.colour.Colour;
import org.loomproof.workshop.trade.colour.WireColour;

/** The slips that a plan allows. */
public final class Slips {

    private Slips() {}

    /** Those with one part each, in the order of the parts. */
    public static List<Slip.OfPart> ofParts(Plan plan) {
        List<Slip.OfPart> slips = new ArrayList<>();
        for (AddedPart part : plan.parts()) {
            slips.add(new Slip.LeftOut(part.id()));
            switch (part) {
                case AddedPart.Junction diode -> slips.add(new Slip.TurnedRound(diode.id()));
                case AddedPart.Relay relay -> {
                    slips.add(new Slip.ContactsSwapped(relay.id()));
                    if (!Slip.CoilSwapped.clamps(plan, relay.id()).isEmpty()) {
                        slips.add(new Slip.CoilSwapped(relay.id()));
                    }
                }
                case AddedPart.Buffer buffer -> {}
                case AddedPart.Resistor resistor -> {}
                case AddedPart.Fuse fuse -> {}
                case AddedPart.Pole pole -> {}
                case AddedPart.Load load -> {}
                case AddedPart.StandbyBattery battery -> {}
                case AddedPart.Sender sender -> {}
                case AddedPart.PinSwitch pin -> {}
            }
        }
        return slips;
    }

    static List<Slip> list(Brief brief, Plan plan) {
        List<Slip> slips = new ArrayList<>(ofParts(plan));
        for (AddedPart part : plan.parts()) {
            if (part instanceof AddedPart.Resistor) {
                slips.add(new Slip.DecadeMisread(part.id(), true));
                slips.add(new Slip.DecadeMisread(part.id(), false));
            }
        }
        for (AddedWire wire : plan.wires()) {
            if (has(wire, End.OfLead.class)) {
                slips.add(new Slip.LeftLoose(wire.id()));
            }
            if (has(wire, End.Body.class)) {
                slips.add(new Slip.PaintedGround(wire.id()));
                slips.add(new Slip.MovingGround(wire.id()));
            }
            if (has(wire, End.Tap.class)) {
                slips.add(new Slip.WrongTap(wire.id()));
            }
        }
        for (CircuitId cut : JoinedCircuits.cut(plan)) {
            slips.add(new Slip.SidesSwapped(cut));
        }
        for (CircuitId meant : JoinedCircuits.tapped(plan)) {
            for (Circuit other : brief.sheet().circuits()) {
                if (isLike(brief.sheet().circuit(meant), other)) {
                    slips.add(new Slip.NeighbourTapped(meant, other.id()));
                }
            }
        }
        slips.addAll(exchanged(brief, plan));
        return slips;
    }

    private static boolean has(AddedWire wire, Class<? extends End> kind) {
        return kind.isInstance(wire.from()) || kind.isInstance(wire.to());
    }

    /** Wires in one loom whose colours have something in common; a colour that nobody noted is like any. */
    private static boolean isLike(Circuit meant, Circuit other) {
        return !meant.id().equals(other.id())
                && !other.paths().isEmpty()
                && inOneLoom(meant.where(), other.where())
                && alike(meant.colour(), other.colour());
    }

    private static boolean inOneLoom(Where one, Where other) {
        return isSame(one.connector(), other.connector()) || isSame(one.panel(), other.panel());
    }

    private static boolean isSame(String one, String other) {
        return !one.isBlank() && one.equals(other);
    }

    private static boolean alike(Optional<WireColour> one, Optional<WireColour> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return true;
        }
        Set<Colour> shared = colours(one.get());
        shared.retainAll(colours(other.get()));
        return !shared.isEmpty();
    }

    private static Set<Colour> colours(WireColour colour) {
        Set<Colour> colours = new LinkedHashSet<>();
        colours.add(colour.base());
        colour.tracer().ifPresent(colours::add);
        return colours;
    }

    /** Two connected leads from one plug, both inputs or both outputs. */
    private static List<Slip> exchanged(Brief brief, Plan plan) {
        List<LeadId> leads = plan.hookups().stream()
                .filter(Hookup.Connect.class::isInstance)
                .map(Hookup::lead)
                .toList();
        List<Slip> slips = new ArrayList<>();
        for (int k = 0; k < leads.size(); k++) {
            for (LeadId other : leads.subList(k + 1, leads.size())) {
                if (mayBeExchanged(brief, leads.get(k), other)) {
                    slips.add(new Slip.LeadsExchanged(leads.get(k), other));
                }
            }
        }
        return slips;
    }

    private static boolean mayBeExchanged(Brief brief, LeadId one, LeadId other) {
        Port first = brief.kit().lead(one).port();
        Port second = brief.kit().lead(other).port();
        boolean inputs = first instanceof Port.Input && second instanceof Port.Input;
        boolean inOnePlug =
                brief.kit().lead(one).plug().equals(brief.kit().lead(other).plug());
        return inputs || (inOnePlug && isOutput(first) && isOutput(second));
    }

    private static boolean isOutput(Port port) {
        return port instanceof Port.LowSide || port instanceof Port.HighSide;
    }
}
