package org.loomproof.intake.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.Basis;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.sheet.Where;

/**
 * A second source merged into a sheet. What agrees with a circuit makes a guess a statement and adds its origin; what contradicts one is put beside it as a
 * guess; what is new is added. Nothing on the sheet is taken away, and what a meter has shown is never changed.
 *
 * @param sheet the sheet with both sources
 * @param agreements circuits that the second source bears out
 * @param conflicts pairs that cannot both be true: the circuit that was there, and the one put beside it
 * @param added circuits that only the second source knows
 */
public record Merge(Sheet sheet, List<CircuitId> agreements, List<Conflict> conflicts, List<CircuitId> added) {

    public Merge {
        agreements = List.copyOf(agreements);
        conflicts = List.copyOf(conflicts);
        added = List.copyOf(added);
    }

    /** Two circuits of one use that differ. */
    public record Conflict(CircuitId there, CircuitId beside) {}

    /** The draft merged into the sheet; the ids of the draft must not be those of the sheet ({@link DraftSheet#of} takes those that are taken). */
    public static Merge of(Sheet sheet, DraftSheet draft) {
        List<Circuit> circuits = new ArrayList<>(sheet.circuits());
        List<CircuitId> agreements = new ArrayList<>();
        List<Conflict> conflicts = new ArrayList<>();
        List<CircuitId> added = new ArrayList<>();
        for (Circuit drafted : draft.circuits()) {
            Circuit circuit = followingTheSheets(drafted, draft, sheet);
            Optional<Circuit> same = sheet.circuits().stream()
                    .filter(c -> c.role() == circuit.role() && !contradicts(c, circuit) && isOneWire(c, circuit))
                    .findFirst();
            Optional<Circuit> other = sheet.circuits().stream()
                    .filter(c -> c.role() == circuit.role() && contradicts(c, circuit))
                    .findFirst();
            if (same.isPresent()) {
                circuits.replaceAll(c -> c.id().equals(same.get().id()) ? borneOut(c, circuit) : c);
                agreements.add(same.get().id());
            } else if (other.isPresent()) {
                circuits.add(with(circuit, Certainty.GUESSED, circuit.origin()));
                conflicts.add(new Conflict(other.get().id(), circuit.id()));
            } else {
                circuits.add(circuit);
                added.add(circuit.id());
            }
        }
        return new Merge(new Sheet(sheet.vehicle(), operables(sheet, draft), circuits), agreements, conflicts, added);
    }

    /** True when both cannot be right about one wire: another colour, or another level when active. */
    private static boolean contradicts(Circuit one, Circuit other) {
        boolean colours = one.colour().isPresent()
                && other.colour().isPresent()
                && !one.colour().get().letters().equals(other.colour().get().letters());
        return colours || !one.switching().active().equals(other.switching().active());
    }

    /** True when something beside the use tells that both mean one wire: the colour, or the place in a connector. */
    private static boolean isOneWire(Circuit one, Circuit other) {
        boolean colour = one.colour().isPresent() && other.colour().isPresent();
        Where a = one.where();
        Where b = other.where();
        boolean cavity = !a.cavity().isEmpty()
                && a.cavity().equals(b.cavity())
                && a.connector().equals(b.connector());
        return colour || cavity;
    }

    /** A guess that an independent source bears out is a statement; anything surer stays as it is. */
    private static Circuit borneOut(Circuit there, Circuit second) {
        boolean independent = !there.origin().equals(second.origin());
        Certainty certainty = there.basis().certainty();
        boolean raised = certainty == Certainty.GUESSED
                && second.basis().certainty() == Certainty.STATED
                && independent
                && there.switching().rest().equals(second.switching().rest());
        String origin =
                there.origin().isEmpty() || !independent ? second.origin() : there.origin() + "; " + second.origin();
        return with(there, raised ? Certainty.STATED : certainty, origin);
    }

    /** The hood of the draft is the hood of the sheet, whatever that calls it. */
    private static Circuit followingTheSheets(Circuit circuit, DraftSheet draft, Sheet sheet) {
        List<OperableId> follows = circuit.follows().stream()
                .map(id -> draft.operables().stream()
                        .filter(o -> o.id().equals(id))
                        .flatMap(o -> sheet.operables().stream().filter(t -> t.kind() == o.kind()))
                        .map(Operable::id)
                        .findFirst()
                        .orElse(id))
                .toList();
        return with(circuit, circuit.basis().certainty(), circuit.origin(), follows);
    }

    private static Circuit with(Circuit c, Certainty certainty, String origin) {
        return with(c, certainty, origin, c.follows());
    }

    private static Circuit with(Circuit c, Certainty certainty, String origin, List<OperableId> follows) {
        return new Circuit(
                c.id(),
                c.role(),
                c.where(),
                c.colour(),
                c.size(),
                c.switching(),
                follows,
                c.paths(),
                c.access(),
                new Basis(certainty, c.basis().place()),
                origin,
                c.note());
    }

    private static List<Operable> operables(Sheet sheet, DraftSheet draft) {
        List<Operable> operables = new ArrayList<>(sheet.operables());
        draft.operables().stream()
                .filter(o -> operables.stream().noneMatch(t -> t.kind() == o.kind()))
                .forEach(operables::add);
        return operables;
    }
}
