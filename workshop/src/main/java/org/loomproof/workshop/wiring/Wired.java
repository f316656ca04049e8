package org.loomproof.workshop.wiring;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.NetworkBuilder;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.words.Phrase;

/**
 * A vehicle as a network, with the way back from each part to the reader's words.
 *
 * @param network all of it
 * @param battery the part whose volts the supply point sets
 * @param factory where the things of the sheet are
 * @param controller where the controller is; empty in the stock vehicle
 * @param added where the things of the plan are; nothing in the stock vehicle
 * @param switches every contact that a person works
 * @param origins where each part comes from
 * @param ranged the figures that are ranges and have a say here
 * @param warmth how warm its copper is
 */
public record Wired(
        Network network,
        PartId battery,
        FactoryParts factory,
        Optional<ControllerParts> controller,
        AddedParts added,
        List<WorkedSwitch> switches,
        Map<PartId, Origin> origins,
        List<RangedFigure> ranged,
        Celsius warmth) {

    public Wired {
        switches = List.copyOf(switches);
        origins = Collections.unmodifiableMap(new LinkedHashMap<>(origins));
        ranged = List.copyOf(ranged);
    }

    /** The same with only the parts that are wanted, and the battery. */
    public Wired restrictedTo(Predicate<PartId> wanted) {
        NetworkBuilder builder = Network.builder();
        for (Part part : network.parts()) {
            if (part.id().equals(battery) || wanted.test(part.id())) {
                builder.add(part);
            }
        }
        return withNetwork(builder.build());
    }

    /** The same vehicle with another network. */
    public Wired withNetwork(Network other) {
        return new Wired(other, battery, factory, controller, added, switches, origins, ranged, warmth);
    }

    /** The same with more parts, all from one place. */
    public Wired withMore(List<? extends Part> more, Phrase from) {
        Map<PartId, Origin> known = new LinkedHashMap<>(origins);
        more.forEach(part -> known.put(part.id(), new Origin(from)));
        Network joined = Network.builder().addAll(network.parts()).addAll(more).build();
        return new Wired(joined, battery, factory, controller, added, switches, known, ranged, warmth);
    }

    /** The battery's plus post. */
    public Node post() {
        return network.part(battery).pins().getFirst().node();
    }

    /** The words for a part of the network. */
    public Phrase words(PartId part) {
        Origin origin = origins.get(part);
        if (origin == null) {
            throw new IllegalArgumentException(part + " is no part of this network");
        }
        return origin.what();
    }
}
