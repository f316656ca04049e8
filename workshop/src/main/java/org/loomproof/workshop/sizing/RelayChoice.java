package org.loomproof.workshop.sizing;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.relay.RelayType;

/**
 * Which relay of those at hand does: contact rated for the load, coil within what its driver may sink, pull-in reached at a
 * tired battery's voltage with the coil hot.
 */
public final class RelayChoice {

    private RelayChoice() {}

    /**
     * What is asked of the relay.
     *
     * @param make what 87 must carry
     * @param breaking what 87a must carry
     * @param driver what may flow through the coil
     * @param lost volts lost before the coil
     * @param hottest the temperature where it sits
     */
    public record Need(Amps make, Amps breaking, Amps driver, Volts lost, Celsius hottest) {}

    /** The first of the relays that meets the need, in the order given. */
    public static Optional<RelayType> first(List<RelayType> relays, Need need) {
        return relays.stream().filter(r -> meets(r, need)).findFirst();
    }

    /** True when the relay meets the need. */
    public static boolean meets(RelayType relay, Need need) {
        return contactsCarry(relay, need) && driverCarries(relay, need) && pullsIn(relay, need);
    }

    /** True when both contacts carry what is asked of them. */
    public static boolean contactsCarry(RelayType relay, Need need) {
        return relay.makeRating().value() >= need.make().value()
                && (need.breaking().value() == 0
                        || relay.breakRating()
                                .filter(r -> r.value() >= need.breaking().value())
                                .isPresent());
    }

    /** True when the driver carries the coil's current at the highest supply. */
    public static boolean driverCarries(RelayType relay, Need need) {
        return CoilCurrent.most(relay.coil()).value() <= need.driver().value();
    }

    private static boolean pullsIn(RelayType relay, Need need) {
        return CoilCurrent.pullsInHot(relay.pullIn(), need.hottest(), need.lost());
    }
}
