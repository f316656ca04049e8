package org.loomproof.network.part;

import java.util.ArrayList;
import java.util.List;

/**
 * A relay with a plain coil (no polarity). It pulls in when the coil voltage's size reaches {@code pullInVolts}, drops out
 * when it falls to {@code dropOutVolts}, and stays where it was in between.
 *
 * @param coilOhms coil resistance at the temperature meant, above zero
 * @param pullInVolts above {@code dropOutVolts}
 * @param dropOutVolts above zero
 * @param contacts one or more sets, moved together, break before make
 * @param contactOhms resistance of a closed contact, above zero
 */
public record Relay(
        PartId id,
        Node coilPlus,
        Node coilMinus,
        double coilOhms,
        double pullInVolts,
        double dropOutVolts,
        List<Contact> contacts,
        double contactOhms)
        implements Part {
    public Relay {
        Require.positive(coilOhms, "coil ohms", id);
        Require.positive(dropOutVolts, "drop-out volts", id);
        Require.that(pullInVolts > dropOutVolts && Double.isFinite(pullInVolts), "pull-in must exceed drop-out", id);
        Require.positive(contactOhms, "contact ohms", id);
        contacts = List.copyOf(contacts);
    }

    /**
     * Coil pins {@code 86} and {@code 85}, then {@code 30}, {@code 87}, {@code 87a} of each contact as far as present; from
     * the second contact on the names carry the contact's number, for instance {@code 30-2}.
     */
    @Override
    public List<Pin> pins() {
        List<Pin> pins = new ArrayList<>(List.of(new Pin("86", coilPlus), new Pin("85", coilMinus)));
        for (int k = 0; k < contacts.size(); k++) {
            Contact contact = contacts.get(k);
            String suffix = k == 0 ? "" : "-" + (k + 1);
            pins.add(new Pin("30" + suffix, contact.common()));
            contact.make().ifPresent(node -> pins.add(new Pin("87" + suffix, node)));
            contact.rest().ifPresent(node -> pins.add(new Pin("87a" + suffix, node)));
        }
        return List.copyOf(pins);
    }
}
