package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Diode;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.RelayPosition;
import org.loomproof.network.part.Switch;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.fuse.OpeningTimes;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.words.Phrase;

/**
 * A vehicle of which a wire may touch the body at some places, one at a time, and the fuses that such a short is drawn through.
 * Relays stay where they stood before, and outputs that give the supply stay on: one that lets go for want of volts brings less,
 * or comes and goes.
 */
final class Shorts {

    /** A wire chafed through to the body. Common practice, no published source. */
    static final double OHMS = 0.02;

    /** A fuse that opens and leaves more than this of a current is no fuse of that current. */
    private static final double KEPT = 0.95;

    private final Vehicle whole;
    private final Vehicle vehicle;
    private final Map<Situation, Standing> standing = new HashMap<>();
    private final Workbench bench = new Workbench();
    private final Map<Node, PartId> contacts = new LinkedHashMap<>();
    private final Map<PartId, Amps> ratings = new LinkedHashMap<>();

    /** Where relays stand, and which outputs give the supply, before anything touches the body. */
    record Standing(Map<PartId, RelayPosition> relays, List<PartId> on) {}

    /** A fuse by its part of the network, with the rating printed on it. */
    record Guard(PartId part, Amps rating) {}

    /**
     * The vehicle with every such place.
     *
     * @param plan whose fuses are in the vehicle as well, beside the factory's; none of them in the stock vehicle
     */
    Shorts(Vehicle of, Plan plan, Collection<Node> places) {
        List<Part> touching = new ArrayList<>();
        for (Node place : Set.copyOf(places)) {
            PartId contact = new PartId("short at " + place);
            contacts.put(place, contact);
            touching.add(new Switch(contact, place, Node.CHASSIS, OHMS));
        }
        touching.sort(Comparator.comparing(part -> part.id().toString()));
        this.whole = of;
        Wired joined = of.wired().withMore(touching, Phrase.of("origin.touching"));
        this.vehicle = of.with(joined.withNetwork(Network.builder()
                .addAll(joined.network().parts().stream().flatMap(Shorts::held).toList())
                .build()));
        for (Part part : of.wired().network().parts()) {
            if (part instanceof Fuse fuse) {
                ratings.put(fuse.id(), new Amps(fuse.ratingAmps()));
            }
        }
        for (AddedPart part : plan.parts()) {
            Reach reach = of.wired().added().parts().get(part.id());
            if (part instanceof AddedPart.Fuse fuse
                    && reach != null
                    && of.wired().network().findPart(reach.part()).isPresent()) {
                ratings.put(reach.part(), fuse.rating());
            }
        }
    }

    /** What flows with a short at that place; empty when no operating point is found. */
    Optional<OperatingPoint> at(Node place, Situation situation) {
        return bench.settled(vehicle.wired(), setting(place, situation));
    }

    /** The same with relays and outputs as they stand elsewhere, and with these fuses opened. */
    Optional<OperatingPoint> at(Node place, Situation situation, Standing stand, Set<PartId> opened) {
        Setting setting = setting(place, situation, stand);
        for (PartId fuse : opened) {
            setting = setting.broken(fuse);
        }
        return bench.settled(vehicle.wired(), setting);
    }

    /** Each fuse, with the rating printed on it. */
    Map<PartId, Amps> ratings() {
        return Collections.unmodifiableMap(ratings);
    }

    private Setting setting(Node place, Situation situation) {
        return setting(place, situation, standing.computeIfAbsent(situation, this::standing));
    }

    private Setting setting(Node place, Situation situation, Standing stand) {
        Setting setting = vehicle.settings().of(situation).closed(contact(place));
        for (Map.Entry<PartId, RelayPosition> relay : stand.relays().entrySet()) {
            setting = setting.contactHeld(relay.getKey(), relay.getValue());
        }
        for (PartId output : stand.on()) {
            setting = setting.closed(held(output));
        }
        return setting;
    }

    private Standing standing(Situation situation) {
        return bench.settled(whole.wired(), whole.settings().of(situation))
                .map(Shorts::standing)
                .orElseGet(() -> new Standing(Map.of(), List.of()));
    }

    /** Where things stand at an operating point. */
    static Standing standing(OperatingPoint point) {
        Map<PartId, RelayPosition> relays = new LinkedHashMap<>();
        List<PartId> on = new ArrayList<>();
        for (Part part : point.network().parts()) {
            if (part instanceof Relay) {
                relays.put(part.id(), point.relayPosition(part.id()));
            } else if (part instanceof HighSideOutput && point.setting().isOn(part.id()) && point.isAwake(part.id())) {
                on.add(part.id());
            }
        }
        return new Standing(relays, on);
    }

    /** An output that gives the supply, as a contact that nothing lets go of, with its body diode. */
    private static Stream<Part> held(Part part) {
        if (!(part instanceof HighSideOutput out)) {
            return Stream.of(part);
        }
        Part contact = new Switch(
                held(out.id()), out.output(), out.supply(), out.drive().onOhms());
        Part body =
                new Diode(new PartId("body diode of " + out.id()), out.output(), out.supply(), DiodeModel.SILICON_3A);
        return out.bodyDiode() ? Stream.of(contact, body) : Stream.of(contact);
    }

    private static PartId held(PartId output) {
        return new PartId("held " + output);
    }

    /** The part of the network that is the short there. */
    PartId contact(Node place) {
        return Objects.requireNonNull(contacts.get(place), place::toString);
    }

    /**
     * The largest of the fuses that must open before a part carries no more than it bears, though the short stays: of those that
     * carry too much the one with the largest multiple of its rating opens first. Those whose opening takes nothing from the part
     * feed the short another way and are not counted. Empty where all that must open have opened and the part carries more still.
     */
    Optional<Guard> guard(Node place, Situation situation, PartId part, double bears) {
        Setting now = setting(place, situation);
        Optional<Guard> largest = Optional.empty();
        Optional<OperatingPoint> point = bench.settled(vehicle.wired(), now);
        while (point.isPresent() && Math.abs(point.get().amps(part)) > bears) {
            double before = Math.abs(point.get().amps(part));
            Optional<Guard> next = firstToOpen(point.get());
            if (next.isEmpty()) {
                return Optional.empty();
            }
            now = now.broken(next.get().part());
            point = bench.settled(vehicle.wired(), now);
            double after = point.map(left -> Math.abs(left.amps(part))).orElse(before);
            if (after < KEPT * before
                    && largest.filter(known -> isAsLarge(known, next.get())).isEmpty()) {
                largest = next;
            }
        }
        return point.isPresent() ? largest : Optional.empty();
    }

    private static boolean isAsLarge(Guard known, Guard other) {
        return known.rating().value() >= other.rating().value();
    }

    private Optional<Guard> firstToOpen(OperatingPoint point) {
        return ratings.entrySet().stream()
                .filter(fuse -> multiple(point, fuse) >= OpeningTimes.surely())
                .max(Comparator.comparingDouble(fuse -> multiple(point, fuse)))
                .map(fuse -> new Guard(fuse.getKey(), fuse.getValue()));
    }

    private static double multiple(OperatingPoint point, Map.Entry<PartId, Amps> fuse) {
        return Math.abs(point.amps(fuse.getKey())) / fuse.getValue().value();
    }
}
