package org.loomproof.workshop.planner.survey;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Sheet;

/**
 * What a person operates that has a contact on a wire: everything that hangs together with it other than by the battery's
 * posts and the body. A relay's coil and contacts hang together.
 */
public final class Contacts {

    private final Ties ties = new Ties();
    private final Map<String, Set<OperableId>> workedBy = new LinkedHashMap<>();

    /** The contacts of a sheet. */
    public Contacts(Sheet sheet) {
        sheet.circuits().forEach(this::join);
        for (Circuit circuit : sheet.circuits()) {
            for (List<PathStep> path : circuit.paths()) {
                for (PathStep step : path) {
                    if (step instanceof PathStep.Switch contact) {
                        workedBy.computeIfAbsent(ties.root(part(contact)), k -> new LinkedHashSet<>())
                                .add(contact.operatedBy());
                    }
                }
            }
        }
    }

    /** Whatever has a contact that can matter to the circuit's wire. */
    public Set<OperableId> workers(Circuit circuit) {
        return workedBy.getOrDefault(ties.root(here(circuit.id())), Set.of());
    }

    private void join(Circuit circuit) {
        for (List<PathStep> path : circuit.paths()) {
            String last = "";
            for (PathStep step : path) {
                String next = switch (step) {
                    case PathStep.Supply() -> "";
                    case PathStep.Ground() -> "";
                    case PathStep.Point(var id) -> "point " + id;
                    case PathStep.Here() -> here(circuit.id());
                    case PathStep.Part part -> part(part);
                };
                if (!last.isEmpty() && !next.isEmpty()) {
                    ties.tie(last, next);
                }
                switch (step) {
                    case PathStep.Coil coil -> ties.tie(next, "relay " + coil.relay());
                    case PathStep.Contact contact -> ties.tie(next, "relay " + contact.relay());
                    case PathStep other -> {}
                }
                last = next;
            }
        }
    }

    private static String here(CircuitId circuit) {
        return "here " + circuit;
    }

    private static String part(PathStep.Part part) {
        return "part " + part.id();
    }
}
