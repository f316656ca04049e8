package org.loomproof.workshop.brief.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * One vehicle: facts, what can be operated, and its circuits.
 *
 * @param vehicle facts of the whole
 * @param operables the key first, then openings, then controls, in the sheet's order
 * @param circuits in the sheet's order
 */
public record Sheet(VehicleFacts vehicle, List<Operable> operables, List<Circuit> circuits) {

    public Sheet {
        operables = List.copyOf(operables);
        circuits = List.copyOf(circuits);
    }

    /** The same vehicle with further things to operate, last. */
    public Sheet withFurther(List<Operable> further) {
        List<Operable> all = new ArrayList<>(operables);
        all.addAll(further);
        return new Sheet(vehicle, all, circuits);
    }

    /** The circuit of that id; the id must be on the sheet. */
    public Circuit circuit(CircuitId id) {
        return circuits.stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no circuit " + id + " on the sheet"));
    }

    /** The operable of that id; the id must be on the sheet. */
    public Operable operable(OperableId id) {
        return operables.stream()
                .filter(o -> o.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("nothing to operate called " + id));
    }

    /** All circuits of a role, in the sheet's order. */
    public List<Circuit> listCircuits(CircuitRole role) {
        return circuits.stream().filter(c -> c.role() == role).toList();
    }
}
