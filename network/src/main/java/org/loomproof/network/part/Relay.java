package org.loomproof.network.part;

import java.util.ArrayList;
import java.util.List;

/**
 * A relay with a plain coil (no polarity). It pulls in when the coil voltage's size reaches {@code pullInVolts}, drops out
 * when it falls to {@code dropOutVolts}, and stays where it was in between. What counts is the coil's current, so in a run in
 * time the voltage is that across the coil's resistance alone, and the contacts follow {@code operateSeconds} or {@code
 * releaseSeconds} after it has passed its threshold, unless it turns back before.
 *
 * @param coilOhms coil resistance at the temperature meant, above zero
 * @param pullInVolts above {@code dropOutVolts}
 * @param dropOutVolts above zero
 * @param contacts one or more sets, moved together, break before make
 * @param contactOhms resistance of a closed contact, above zero
 * @param coilHenries inductance of the coil, zero or more
 * @param operateSeconds from the current that pulls in to contacts that have moved. A data sheet's operate time also holds the
 *     rise of the current
 * @param releaseSeconds from the current that lets go to contacts that have moved
 */
public record Relay(
        PartId id,
        Node coilPlus,
        Node coilMinus,
        double coilOhms,
        double pullInVolts,
        double dropOutVolts,
        List<Contact> contacts,
        double contactOhms,
        double coilHenries,
        double operateSeconds,
        double releaseSeconds)
        implements Part {
    public Relay {
        Require.positive(coilOhms, "coil ohms", id);
        Require.positive(dropOutVolts, "drop-out volts", id);
        Require.that(pullInVolts > dropOutVolts && Double.isFinite(pullInVolts), "pull-in must exceed drop-out", id);
        Require.positive(contactOhms, "contact ohms", id);
        contacts = List.copyOf(contacts);
        Require.notNegative(coilHenries, "coil henries", id);
        Require.notNegative(operateSeconds, "operate seconds", id);
        Require.notNegative(releaseSeconds, "release seconds", id);
    }

    /** A relay for those who only ask for steady states: no inductance, no time to move. */
    public Relay(
            PartId id,
            Node coilPlus,
            Node coilMinus,
            double coilOhms,
            double pullInVolts,
            double dropOutVolts,
            List<Contact> contacts,
            double contactOhms) {
        this(id, coilPlus, coilMinus, coilOhms, pullInVolts, dropOutVolts, contacts, contactOhms, 0, 0, 0);
    }

    /** The same relay with the dynamics of its coil and armature. */
    public Relay timed(double henries, double operate, double release) {
        return new Relay(
                id,
                coilPlus,
                coilMinus,
                coilOhms,
                pullInVolts,
                dropOutVolts,
                contacts,
                contactOhms,
                henries,
                operate,
                release);
    }

    /**
     * The same relay, stated at 20 °C, with its coil at another temperature: copper's resistance rises ({@link Copper}), and
     * with it the volts that the same pull-in and drop-out currents need.
     */
    public Relay atCelsius(double celsius) {
        double factor = Copper.temperatureFactor(celsius);
        return new Relay(
                id,
                coilPlus,
                coilMinus,
                coilOhms * factor,
                pullInVolts * factor,
                dropOutVolts * factor,
                contacts,
                contactOhms,
                coilHenries,
                operateSeconds,
                releaseSeconds);
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
