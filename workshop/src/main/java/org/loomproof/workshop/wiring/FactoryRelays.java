package org.loomproof.workshop.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.loomproof.network.part.Contact;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.Resistor;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.words.Phrase;

/** Gathers the coil and the contacts of each factory relay, which stand in different paths, into one part. */
final class FactoryRelays {

    /** The armature's own share of a contact's resistance; what the sheet says of a contact stands in series with it. */
    private static final double BARE_CONTACT_OHMS = 1e-5;

    private final Drawing drawing;
    private final Map<PathStep.RelayId, Gathered> relays = new LinkedHashMap<>();
    private final List<PartId> contacts = new ArrayList<>();

    FactoryRelays(Drawing drawing) {
        this.drawing = drawing;
    }

    private static final class Gathered {
        private @Nullable Coil coil;
        private final List<Contact> contacts = new ArrayList<>();
    }

    private record Coil(PathStep.Coil step, Node a, Node b, Phrase words) {}

    void coil(PathStep.Coil step, Node a, Node b, Phrase words) {
        Gathered gathered = gathered(step.relay());
        if (gathered.coil != null) {
            throw new IllegalArgumentException("relay " + step.relay().value() + " has two coils");
        }
        gathered.coil = new Coil(step, a, b, words);
    }

    void contact(PathStep.Contact step, Node a, Node b, Phrase words) {
        Node inner = new Node("contact of " + step.id());
        double ohms = drawing.figures.take(step.id() + " resistance", step.closedResistance());
        PartId own = new PartId("car " + step.id());
        drawing.add(new Resistor(own, inner, b, ohms), words);
        contacts.add(own);
        gathered(step.relay())
                .contacts
                .add(step.closedWhenEnergised() ? Contact.make(a, inner) : Contact.rest(a, inner));
    }

    /** Every contact met, by the part whose current is its own. */
    List<PartId> contacts() {
        return contacts;
    }

    private Gathered gathered(PathStep.RelayId relay) {
        return relays.computeIfAbsent(relay, r -> new Gathered());
    }

    /** Draws every relay; gives where each coil is reached. A relay whose coil is not on the sheet stays released. */
    Map<ElementId, Reach> draw() {
        Map<ElementId, Reach> coils = new LinkedHashMap<>();
        relays.forEach((relay, gathered) -> {
            Coil coil = gathered.coil;
            if (coil != null) {
                coils.put(coil.step().id(), drawing.add(drawing.warmed(relay(coil, gathered.contacts)), coil.words()));
            } else {
                drawReleased(relay, gathered.contacts);
            }
        });
        return coils;
    }

    private Relay relay(Coil coil, List<Contact> contacts) {
        PathStep.Coil step = coil.step();
        double pullIn = drawing.figures.take(step.id() + " pull-in", step.pullIn());
        double dropOut = drawing.figures.take(step.id() + " drop-out", step.dropOut());
        return new Relay(
                new PartId("car " + step.id()),
                coil.a(),
                coil.b(),
                drawing.figures.take(step.id() + " resistance", step.resistance()),
                pullIn,
                Math.min(dropOut, Math.nextDown(pullIn)),
                contacts,
                BARE_CONTACT_OHMS);
    }

    private void drawReleased(PathStep.RelayId relay, List<Contact> contacts) {
        for (int k = 0; k < contacts.size(); k++) {
            Contact contact = contacts.get(k);
            Optional<Node> rest = contact.rest();
            if (rest.isPresent()) {
                PartId id = new PartId("car released " + relay.value() + " " + k);
                drawing.add(
                        new Resistor(id, contact.common(), rest.get(), BARE_CONTACT_OHMS),
                        Phrase.of("origin.factory-released", relay.value()));
            }
        }
    }
}
