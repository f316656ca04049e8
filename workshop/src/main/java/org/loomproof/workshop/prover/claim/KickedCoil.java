package org.loomproof.workshop.prover.claim;

import java.util.Optional;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.NetworkBuilder;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Contact;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.Resistor;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.wiring.Wired;

/** The fitted vehicle at the instant a coil is let go: the coil drives its current on, its contacts have not moved yet. */
final class KickedCoil {

    /** A source of current is a source of very many volts behind this. */
    private static final double SOURCE_OHMS = 1e6;

    /** More volts than any way for the current would leave. */
    static final double NO_WAY_VOLTS = 1000;

    private KickedCoil() {}

    /** The vehicle at that instant, if it settles. */
    static Optional<Reading> volts(Pair pair, PartId output, PartId coil, double amps) {
        Vehicle kicked = pair.bench().variant(pair.fitted().vehicle(), coil, v -> v.with(withSource(v.wired(), coil)));
        Setting setting = pair.settingOf(kicked).off(output).emf(coil, amps * SOURCE_OHMS);
        return pair.bench().settled(kicked.wired(), setting).map(point -> new Reading(kicked, point));
    }

    /**
     * Volts that the way of the current takes from the coil's own, its winding aside, while it carries that current; empty where
     * there is no way.
     */
    static Optional<Double> takenVolts(Pair pair, PartId output, PartId coil, double amps) {
        return volts(pair, output, coil, amps).map(reading -> {
            Part source = reading.wired().network().part(coil);
            double volts = reading.point().volts(source.pins().get(0).node())
                    - reading.point().volts(source.pins().get(1).node());
            return volts * Math.signum(amps);
        });
    }

    private static Wired withSource(Wired wired, PartId coil) {
        NetworkBuilder builder = Network.builder();
        for (Part part : wired.network().parts()) {
            if (part.id().equals(coil)) {
                Node first = part.pins().get(0).node();
                Node second = part.pins().get(1).node();
                builder.add(new Battery(coil, second, first, 0, SOURCE_OHMS));
                if (part instanceof Relay relay) {
                    addPulledIn(builder, relay);
                }
            } else {
                builder.add(part);
            }
        }
        return wired.withNetwork(builder.build());
    }

    private static void addPulledIn(NetworkBuilder builder, Relay relay) {
        for (int k = 0; k < relay.contacts().size(); k++) {
            Contact contact = relay.contacts().get(k);
            PartId id = new PartId(relay.id() + " contact " + k);
            contact.make()
                    .ifPresent(make -> builder.add(new Resistor(id, contact.common(), make, relay.contactOhms())));
        }
    }
}
