package org.loomproof.workshop.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.NetworkBuilder;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Lamp;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.trade.wire.Copper;
import org.loomproof.workshop.words.Phrase;

/** A network while it is drawn: its parts so far, where each came from, and what works each switch. */
final class Drawing {

    final FigureBook figures;
    final List<WorkedSwitch> switches = new ArrayList<>();
    final Map<PartId, Origin> origins = new LinkedHashMap<>();
    private final NetworkBuilder builder = Network.builder();
    private final Celsius warmth;

    Drawing(FigureBook figures, Celsius warmth) {
        this.figures = figures;
        this.warmth = warmth;
    }

    /** How warm all of it is. */
    Celsius warmth() {
        return warmth;
    }

    /** What a piece of copper resists that is known at room temperature. */
    double copper(double ohms) {
        return ohms * Copper.temperatureFactor(warmth);
    }

    /** A relay whose coil is known at room temperature. */
    Relay warmed(Relay relay) {
        return relay.atCelsius(warmth.value());
    }

    /** A silicon diode whose curve is known at room temperature. */
    DiodeModel warmed(DiodeModel silicon) {
        return silicon.atCelsius(warmth.value(), DiodeModel.SILICON_GAP_VOLTS);
    }

    /** A lamp whose cold filament is known at room temperature. */
    Lamp warmed(Lamp lamp) {
        return lamp.atCelsius(warmth.value());
    }

    /** Adds a part with the words for it; its first two pins are where a meter reaches it. */
    Reach add(Part part, Phrase origin) {
        builder.add(part);
        origins.put(part.id(), new Origin(origin));
        return Reach.across(part);
    }

    Network network() {
        return builder.build();
    }
}
