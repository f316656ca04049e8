package org.loomproof.workshop.planner.survey;

import java.util.Optional;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.trade.colour.Colour;

/**
 * Looms in which nothing is joined whatever a circuit there is good for: those of the restraints and of the high voltage. A
 * circuit lies in one when it shares a connector with a circuit of that kind, or when its wire is plain orange in a vehicle with
 * an electric drive.
 *
 * <p>Yellow alone bars nothing: ordinary wires are yellow too, and restraint looms are known by their sleeve, which no sheet
 * shows. Where a plain yellow wire is joined, the plan says so.
 */
final class ForbiddenLooms {

    private final Sheet sheet;

    ForbiddenLooms(Sheet sheet) {
        this.sheet = sheet;
    }

    /** The word for the loom it lies in, as used in messages; empty for every other circuit. */
    Optional<String> find(Circuit circuit) {
        if (circuit.role() == CircuitRole.RESTRAINT || sharesConnector(circuit, CircuitRole.RESTRAINT)) {
            return Optional.of("restraint-loom");
        }
        boolean highVoltage = circuit.role() == CircuitRole.HIGH_VOLTAGE
                || sharesConnector(circuit, CircuitRole.HIGH_VOLTAGE)
                || (isElectric() && isPlain(circuit, Colour.ORANGE));
        return highVoltage ? Optional.of("high-voltage-loom") : Optional.empty();
    }

    /** True when its wire is of one colour alone. */
    static boolean isPlain(Circuit circuit, Colour colour) {
        return circuit.colour()
                .filter(c -> c.base() == colour && c.tracer().isEmpty())
                .isPresent();
    }

    private boolean isElectric() {
        return sheet.vehicle().drive() != VehicleFacts.Drive.COMBUSTION;
    }

    private boolean sharesConnector(Circuit circuit, CircuitRole role) {
        return !circuit.where().connector().isBlank()
                && sheet.listCircuits(role).stream()
                        .anyMatch(other -> other.where()
                                        .connector()
                                        .equals(circuit.where().connector())
                                && other.where().panel().equals(circuit.where().panel()));
    }
}
