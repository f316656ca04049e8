package org.loomproof.workshop.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.loomproof.network.part.Breakdown;
import org.loomproof.network.part.Contact;
import org.loomproof.network.part.Diode;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.Switch;
import org.loomproof.network.part.Wire;
import org.loomproof.network.part.Zener;
import org.loomproof.workshop.brief.Basis;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.WireId;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.connector.ContactPlace;
import org.loomproof.workshop.trade.diode.ZenerType;
import org.loomproof.workshop.trade.diode.Zeners;
import org.loomproof.workshop.trade.fuse.Fuses;
import org.loomproof.workshop.trade.relay.Relays;
import org.loomproof.workshop.trade.resistor.PreferredValues;
import org.loomproof.workshop.trade.wire.Conductors;
import org.loomproof.workshop.words.Phrase;

/** Draws the parts and wires of a plan. */
final class AddedWiring {

    /** How much less a light-emitting diode drops for each kelvin; common practice, no published source. */
    private static final double LIT_VOLTS_PER_KELVIN = 2e-3;

    /** A pin switch with its mounting on bare metal; common practice, no published source. */
    static final double PIN_SWITCH_OHMS = 0.05;

    /** What an added load draws is stated at the rest supply point. */
    static final double LOAD_RATED_VOLTS = 12.6;

    /** Where a zener is measured that is not in the list, and how it rises above; common practice, no published source. */
    private static final double OTHER_ZENER_AMPS = 0.005;

    private static final double OTHER_ZENER_OHMS = 20;

    /** A wire is never taken to be better than this, so that a length of nothing stays solvable. */
    private static final double LEAST_WIRE_OHMS = 1e-6;

    private final FactoryParts factory;
    private final Drawing drawing;

    AddedWiring(FactoryParts factory, Drawing drawing) {
        this.factory = factory;
        this.drawing = drawing;
    }

    AddedParts draw(Plan plan) {
        Map<AddedPartId, Reach> parts = new LinkedHashMap<>();
        List<PartId> fuses = new ArrayList<>();
        for (AddedPart part : plan.parts()) {
            parts.put(part.id(), drawPart(part));
            if (part instanceof AddedPart.Fuse) {
                fuses.add(partId(part.id()));
            }
        }
        Map<WireId, Reach> wires = new LinkedHashMap<>();
        for (AddedWire wire : plan.wires()) {
            Node a = node(wire.from());
            Node b = node(wire.to());
            if (!a.equals(b)) {
                wires.put(
                        wire.id(),
                        drawing.add(new Wire(wireId(wire.id()), a, b, drawing.copper(ohms(wire))), words(wire)));
            }
        }
        return new AddedParts(parts, wires, fuses);
    }

    private static double ohms(AddedWire wire) {
        double ohms = Conductors.ohmsPerMetre(wire.size()) * wire.length().value();
        return Math.max(ohms, LEAST_WIRE_OHMS);
    }

    private static double ohms(AddedPart.Fuse fuse) {
        return Fuses.coldResistance(fuse.rating()).value()
                + ContactPlace.FUSE_HOLDER.typical().value();
    }

    private static Phrase words(AddedWire wire) {
        return Phrase.of("origin.added-wire", wire.id());
    }

    private Reach drawPart(AddedPart part) {
        PartId id = partId(part.id());
        return switch (part) {
            case AddedPart.Relay r ->
                drawing.add(
                        drawing.warmed(new Relay(
                                id,
                                terminal(r, "86"),
                                terminal(r, "85"),
                                r.coil().value(),
                                r.pullIn().value(),
                                r.dropOut().value(),
                                List.of(Contact.changeover(terminal(r, "30"), terminal(r, "87"), terminal(r, "87a"))),
                                Relays.usual().contact().value()
                                        + ContactPlace.RELAY_SOCKET.typical().value())),
                        words("relay", r));
            case AddedPart.Buffer b ->
                drawing.add(
                        new Relay(
                                id,
                                terminal(b, b.worksOn() == Port.Active.LOW ? "+" : "in"),
                                terminal(b, b.worksOn() == Port.Active.LOW ? "in" : "-"),
                                b.input().value(),
                                b.switchesAt().value(),
                                b.letsGoAt().value(),
                                List.of(Contact.make(terminal(b, "out"), terminal(b, "-"))),
                                b.closed().value()),
                        words("buffer", b));
            case AddedPart.Zener z ->
                drawing.add(
                        new Zener(id, terminal(z, "A"), terminal(z, "K"), drawing.warmed(model(z)), breakdown(z)),
                        words("zener", z));
            case AddedPart.Diode d ->
                drawing.add(
                        new Diode(id, terminal(d, "A"), terminal(d, "K"), drawing.warmed(model(d))), words("diode", d));
            case AddedPart.Resistor r ->
                drawing.add(
                        new Resistor(
                                id,
                                terminal(r, "1"),
                                terminal(r, "2"),
                                drawing.figures.take(r.id() + " resistance", asBought(r.resistance()))),
                        words("resistor", r));
            case AddedPart.Fuse f ->
                drawing.add(new Switch(id, terminal(f, "1"), terminal(f, "2"), ohms(f)), words("fuse", f));
            case AddedPart.Pole p ->
                drawing.add(
                        new Wire(
                                id,
                                terminal(p, "1"),
                                terminal(p, "2"),
                                ContactPlace.PLUG_CONTACT.high().value()),
                        Phrase.of("origin.added-pole", p.id(), p.to()));
            case AddedPart.Load l
            when l.forward().isPresent() ->
                drawing.add(
                        new Diode(
                                id,
                                terminal(l, "+"),
                                terminal(l, "-"),
                                lit(l.draws(), l.forward().get())),
                        words("load", l));
            case AddedPart.Load l ->
                drawing.add(
                        new Resistor(
                                id,
                                terminal(l, "+"),
                                terminal(l, "-"),
                                LOAD_RATED_VOLTS / l.draws().value()),
                        words("load", l));
            case AddedPart.StandbyBattery b ->
                drawing.add(
                        new Resistor(
                                id,
                                terminal(b, "+"),
                                terminal(b, "-"),
                                LOAD_RATED_VOLTS / b.charging().value()),
                        words("standby-battery", b));
            case AddedPart.Sender s -> sender(s);
            case AddedPart.PinSwitch p -> {
                drawing.switches.add(new WorkedSwitch(id, p.opening(), Set.of(Operable.OPENING_POSITIONS.getLast())));
                yield drawing.add(
                        new Switch(id, terminal(p, "1"), Node.CHASSIS, PIN_SWITCH_OHMS), words("pin-switch", p));
            }
        };
    }

    /** The contact of a dry one; of a fed one what it draws, and its contacts beside. */
    private Reach sender(AddedPart.Sender sender) {
        List<Reach> contacts = new ArrayList<>();
        for (AddedPart.Sender.Stage stage : sender.stages()) {
            PartId id = sender.closes() == Extra.Closes.DRY
                    ? partId(sender.id())
                    : new PartId(partId(sender.id()) + " stage " + stage.terminal());
            drawing.switches.add(new WorkedSwitch(id, sender.worked(), stage.closedAt()));
            contacts.add(drawing.add(
                    new Switch(
                            id,
                            terminal(sender, stage.terminal()),
                            terminal(sender, stage.pole()),
                            sender.closed().value()),
                    words("sender", sender)));
        }
        return sender.draws()
                .filter(draws -> sender.closes() != Extra.Closes.DRY)
                .map(draws -> drawing.add(
                        new Resistor(
                                partId(sender.id()),
                                terminal(sender, "+"),
                                terminal(sender, "-"),
                                LOAD_RATED_VOLTS / draws.value()),
                        words("sender", sender)))
                .orElseGet(contacts::getFirst);
    }

    /** A resistor is a part of the finer series, and off by as much as that series allows. */
    static Figure<Ohms> asBought(Ohms printed) {
        double tolerance = PreferredValues.E96.tolerance();
        return new Figure<>(
                new Ohms(printed.value() * (1 - tolerance)),
                printed,
                new Ohms(printed.value() * (1 + tolerance)),
                new Basis(Certainty.VERIFIED, Place.nowhere("")));
    }

    /**
     * A light-emitting diode through its one known point at room temperature, with the slope and the resistance that such a one
     * usually has.
     */
    private DiodeModel lit(Amps amps, Volts forward) {
        double ohms = DiodeModel.LED_RED.seriesOhms();
        double emission = DiodeModel.LED_RED.emission();
        double junction = Math.max(0, forward.value() - ohms * amps.value());
        double gap = junction + LIT_VOLTS_PER_KELVIN * Warmth.ROOM.kelvin();
        return new DiodeModel(
                        amps.value() / Math.expm1(junction / (emission * DiodeModel.THERMAL_VOLTS)), emission, ohms)
                .atCelsius(drawing.warmth().value(), gap);
    }

    /** The family whose typical curve stands for the diode. */
    private static DiodeModel model(AddedPart.Junction diode) {
        double rating = diode.rating().value();
        if (rating <= 1) {
            return DiodeModel.SILICON_1A;
        }
        return rating <= 3 ? DiodeModel.SILICON_3A : DiodeModel.SILICON_6A;
    }

    /** One that breaks down as late as its tolerance allows: what lets go of a coil then sees most. */
    private static Breakdown breakdown(AddedPart.Zener zener) {
        double volts = Math.max(Breakdown.LEAST_VOLTS, zener.volts().value() * (1 + ZenerType.TOLERANCE));
        return Zeners.find(zener.volts())
                .map(type ->
                        new Breakdown(volts, type.test().value(), type.slope().value()))
                .orElseGet(() -> new Breakdown(volts, OTHER_ZENER_AMPS, OTHER_ZENER_OHMS));
    }

    private static Phrase words(String what, AddedPart part) {
        return Phrase.of("origin.added-" + what, part.id());
    }

    static PartId partId(AddedPartId id) {
        return new PartId("plan " + id);
    }

    static PartId wireId(WireId id) {
        return new PartId("plan wire " + id);
    }

    private static Node terminal(AddedPart part, String terminal) {
        return node(part.id(), terminal);
    }

    /** The node of a terminal of an added part. */
    static Node node(AddedPartId part, String terminal) {
        return new Node("plan " + part + " " + terminal);
    }

    private Node node(End end) {
        return switch (end) {
            case End.OfLead lead -> ControllerWiring.node(lead.lead());
            case End.OfPart part -> node(part.part(), part.terminal());
            case End.Tap tap -> place(factory.before().get(tap.circuit()), end);
            case End.CutBefore cut -> place(factory.before().get(cut.circuit()), end);
            case End.CutAfter cut -> place(factory.after().get(cut.circuit()), end);
            case End.Body body -> Node.CHASSIS;
        };
    }

    private static Node place(@Nullable Node node, End end) {
        if (node == null) {
            throw new IllegalArgumentException("no such circuit on the sheet: " + end);
        }
        return node;
    }
}
