package org.loomproof.pages.bay;

import java.util.Optional;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Volts;

/**
 * What a meter shows at one thing.
 *
 * @param volts at it, or across it; empty where nothing holds the wire, so that a meter shows what it likes
 * @param amps through it; empty where none are counted
 * @param says how it stands or what it reads, as the end of a message's key; empty text for what neither stands nor reads
 */
public record Meter(Optional<Volts> volts, Optional<Amps> amps, String says) {

    /** All that is to be read off it. */
    String shown() {
        return volts.map(Volts::toString).orElse("") + "|"
                + amps.map(Amps::toString).orElse("") + "|" + says;
    }
}
