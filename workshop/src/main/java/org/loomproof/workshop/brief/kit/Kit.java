package org.loomproof.workshop.brief.kit;

import java.util.List;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Volts;

/**
 * One security system.
 *
 * @param name what its box says
 * @param leastSupply the controller is without supply under this
 * @param mostSupply the most it bears
 * @param standby what the controller draws when armed and idle
 * @param leads all of them, plug by plug
 * @param options what can be set
 * @param extras what else is in the box
 * @param behaviour how the controller behaves
 */
public record Kit(
        String name,
        Figure<Volts> leastSupply,
        Figure<Volts> mostSupply,
        Figure<Amps> standby,
        List<Lead> leads,
        List<KitOption> options,
        List<Extra> extras,
        Behaviour behaviour) {

    public Kit {
        leads = List.copyOf(leads);
        options = List.copyOf(options);
        extras = List.copyOf(extras);
    }

    /** The lead of that id; the id must be in the kit. */
    public Lead lead(LeadId id) {
        return leads.stream()
                .filter(l -> l.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no lead " + id + " in the kit"));
    }
}
