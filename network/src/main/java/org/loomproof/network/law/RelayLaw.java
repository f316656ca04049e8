package org.loomproof.network.law;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.network.law.Term.Conductance;
import org.loomproof.network.part.Contact;
import org.loomproof.network.part.Relay;

/** A coil, a threshold on its voltage, and throws that conduct on one side of it. */
final class RelayLaw {
    private RelayLaw() {}

    /** Pins as {@link Relay#pins()} numbers them: coil 0 and 1, then each contact's common, make and rest. */
    static PartEquations equations(Relay relay) {
        List<Term> terms = new ArrayList<>();
        terms.add(CoilLaw.term(0, 1, relay.coilOhms(), relay.coilHenries()));
        int pin = 2;
        for (Contact contact : relay.contacts()) {
            int common = pin++;
            if (contact.make().isPresent()) {
                terms.add(Conductance.when(When.PASSED, common, pin++, relay.contactOhms()));
            }
            if (contact.rest().isPresent()) {
                terms.add(Conductance.when(When.NOT_PASSED, common, pin++, relay.contactOhms()));
            }
        }
        return new PartEquations(
                terms, 0, Optional.of(new Threshold(0, 1, relay.pullInVolts(), relay.dropOutVolts(), true)));
    }
}
