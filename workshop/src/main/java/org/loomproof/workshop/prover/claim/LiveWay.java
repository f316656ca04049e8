package org.loomproof.workshop.prover.claim;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Capacitor;
import org.loomproof.network.part.Contact;
import org.loomproof.network.part.Diode;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.Inductor;
import org.loomproof.network.part.Lamp;
import org.loomproof.network.part.LogicInput;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Meter;
import org.loomproof.network.part.Motor;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.PulsedSource;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.RelayPosition;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.SelectorSwitch;
import org.loomproof.network.part.SteppedSwitch;
import org.loomproof.network.part.Suppressor;
import org.loomproof.network.part.Switch;
import org.loomproof.network.part.Wire;
import org.loomproof.network.part.Zener;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.wiring.Wired;

/**
 * What a place is joined to at an operating point by anything that lets a dangerous current through: wires, fuses, closed
 * contacts, outputs that give the supply, diodes, lamps and small resistances. Where two situations agree in that, a short at
 * the place is the same in both.
 */
final class LiveWay {

    /** What resists more lets no more than an ampere through, which any wire bears. */
    private static final double MOST_OHMS = 12;

    private final Wired wired;
    private final Map<Node, List<Part>> parts = new HashMap<>();

    LiveWay(Wired wired) {
        this.wired = wired;
        for (Part part : wired.network().parts()) {
            if (!part.id().equals(wired.battery())) {
                part.pins().stream()
                        .map(pin -> pin.node())
                        .distinct()
                        .forEach(node -> parts.computeIfAbsent(node, n -> new ArrayList<>())
                                .add(part));
            }
        }
    }

    /** All those parts; battery and body end the way. */
    Set<PartId> from(Node place, OperatingPoint point) {
        Set<PartId> found = new HashSet<>();
        Set<Node> seen = new HashSet<>(Set.of(place));
        Deque<Node> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            Node at = open.removeFirst();
            if (at.equals(Node.CHASSIS) || at.equals(wired.post())) {
                continue;
            }
            for (Part part : parts.getOrDefault(at, List.of())) {
                beyond(part, at, point).forEach(next -> {
                    found.add(part.id());
                    if (seen.add(next)) {
                        open.add(next);
                    }
                });
            }
        }
        return found;
    }

    private static Stream<Node> beyond(Part part, Node at, OperatingPoint point) {
        return switch (part) {
            case Wire wire -> other(wire.a(), wire.b(), at);
            case Fuse fuse -> other(fuse.a(), fuse.b(), at);
            case Lamp lamp -> across(lamp, at);
            case Diode diode -> across(diode, at);
            case Resistor resistor -> resistor.ohms() > MOST_OHMS ? Stream.empty() : across(resistor, at);
            case Switch contact -> point.setting().isOn(contact.id()) ? across(contact, at) : Stream.empty();
            case HighSideOutput out ->
                point.setting().isOn(out.id()) && point.isAwake(out.id())
                        ? other(out.output(), out.supply(), at)
                        : Stream.empty();
            case Relay relay ->
                relay.contacts().stream()
                        .flatMap(each -> closed(relay, each, point).flatMap(to -> other(each.common(), to, at)));
            case Motor motor -> across(motor, at);
            case Inductor inductor -> across(inductor, at);
            case Meter meter -> across(meter, at);
            case Battery battery -> Stream.empty();
            case LowSideOutput out -> Stream.empty();
            case LogicInput input -> Stream.empty();
            case Capacitor capacitor -> Stream.empty();
            case Zener zener -> across(zener, at);
            case Suppressor suppressor -> Stream.empty();
            case PulsedSource source -> across(source, at);
            case SelectorSwitch selector -> joined(selector, at);
            case SteppedSwitch stepped -> joined(stepped, at);
        };
    }

    private static Stream<Node> closed(Relay relay, Contact contact, OperatingPoint point) {
        return (point.relayPosition(relay.id()) == RelayPosition.PULLED_IN ? contact.make() : contact.rest()).stream();
    }

    /** Switches of several positions are drawn by nobody here; they are taken to join all their pins. */
    private static Stream<Node> joined(Part part, Node at) {
        return part.pins().stream().map(pin -> pin.node()).filter(node -> !node.equals(at));
    }

    private static Stream<Node> across(Part part, Node at) {
        return other(part.pins().get(0).node(), part.pins().get(1).node(), at);
    }

    private static Stream<Node> other(Node one, Node two, Node at) {
        return one.equals(at) ? Stream.of(two) : two.equals(at) ? Stream.of(one) : Stream.empty();
    }
}
