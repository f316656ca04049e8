package org.loomproof.workshop.trade.relay;

import java.util.Optional;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;

/**
 * A relay that can be bought. Coil figures hold at 20 °C.
 *
 * @param name what the shop calls it
 * @param coil coil resistance
 * @param pullIn it has pulled in at this
 * @param dropOut it still holds above this
 * @param makeRating what 87 may carry
 * @param breakRating what 87a may carry; empty when there is no 87a
 * @param contact resistance of a closed contact
 */
public record RelayType(
        String name,
        Ohms coil,
        Volts pullIn,
        Volts dropOut,
        Amps makeRating,
        Optional<Amps> breakRating,
        Ohms contact) {

    /** True when it has 87a. */
    public boolean isChangeover() {
        return breakRating.isPresent();
    }
}
