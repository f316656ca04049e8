package org.loomproof.workshop.meter.finding;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.meter.evidence.Priors;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.role.WireRole;
import org.loomproof.workshop.trade.colour.ColourReader;

/**
 * What a sheet has about a measured wire.
 *
 * @param circuit its entry
 * @param isNamed whether the wire bears the circuit's name; otherwise it shares nothing but its colour
 */
record Entry(Circuit circuit, boolean isNamed) {

    /** The circuit of the wire's name, or the only one whose colour was written at the wire. */
    static Optional<Entry> of(Sheet sheet, String wire, List<Reading> readings) {
        return sheet.circuits().stream()
                .filter(c -> c.id().value().equalsIgnoreCase(wire))
                .findFirst()
                .map(c -> new Entry(c, true))
                .or(() -> ofColour(sheet, readings));
    }

    private static Optional<Entry> ofColour(Sheet sheet, List<Reading> readings) {
        List<Circuit> alike = sheet.circuits().stream()
                .filter(c -> c.colour().isPresent() && readings.stream().anyMatch(r -> isWritten(c, r)))
                .toList();
        return alike.size() == 1 ? Optional.of(new Entry(alike.getFirst(), false)) : Optional.empty();
    }

    private static boolean isWritten(Circuit circuit, Reading reading) {
        return !reading.colour().isEmpty()
                && ColourReader.read(reading.colour()).equals(circuit.colour());
    }

    /** The probability that the entry is right about this wire; a wire of the same colour is a guess at it. */
    double trust() {
        return Priors.trust(isNamed ? circuit.basis().certainty() : Certainty.GUESSED);
    }

    /** True where the sheet itself is a piece of evidence for a role: by name, and not as a guess. */
    boolean saysSo(WireRole role) {
        return isNamed
                && role.circuits().contains(circuit.role())
                && circuit.basis().certainty().compareTo(Certainty.STATED) <= 0;
    }
}
