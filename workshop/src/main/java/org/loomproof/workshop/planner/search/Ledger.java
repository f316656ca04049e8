package org.loomproof.workshop.planner.search;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.WireId;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Piece;
import org.loomproof.workshop.planner.coupling.Run;

/**
 * The pieces and runs of all couplings of a plan: those that several couplings name are one, and each gets its number in the
 * order in which it was entered.
 */
final class Ledger {

    private final Map<AddedPartId, List<Piece>> pieces = new LinkedHashMap<>();
    private final Map<List<End>, List<Run>> runs = new LinkedHashMap<>();
    private final Map<String, Integer> counts = new HashMap<>();
    private final Map<AddedPartId, AddedPartId> partNumbers = new HashMap<>();
    private final Map<List<End>, WireId> wireNumbers = new HashMap<>();

    void enter(Draft draft) {
        draft.pieces().forEach(this::enter);
        draft.runs().forEach(this::enter);
    }

    private void enter(Piece piece) {
        pieces.computeIfAbsent(piece.name(), k -> new ArrayList<>()).add(piece);
        partNumbers.computeIfAbsent(piece.name(), k -> {
            if (piece instanceof Piece.Pole pole) {
                return pole.name();
            }
            String letters = letters(piece);
            return new AddedPartId(letters + counts.merge(letters, 1, Integer::sum));
        });
    }

    private void enter(Run run) {
        runs.computeIfAbsent(ends(run), k -> new ArrayList<>()).add(run);
        wireNumbers.computeIfAbsent(ends(run), k -> new WireId("W" + (wireNumbers.size() + 1)));
    }

    private static List<End> ends(Run run) {
        return List.of(run.from(), run.to());
    }

    /** The letters that stand before a part's number. */
    private static String letters(Piece piece) {
        return switch (piece) {
            case Piece.Relay relay -> "K";
            case Piece.Buffer buffer -> "Q";
            case Piece.Diode diode -> "D";
            case Piece.Zener zener -> "Z";
            case Piece.Resistor resistor -> "R";
            case Piece.Fuse fuse -> "FU";
            case Piece.Pole pole -> "X";
            case Piece.Load load -> "L";
            case Piece.StandbyBattery battery -> "B";
            case Piece.Sender sender -> "S";
            case Piece.Pin pin -> "S";
        };
    }

    /** Each piece once, as often as couplings name it. */
    Collection<List<Piece>> listPieces() {
        return pieces.values();
    }

    /** Each run once, as often as couplings ask for it. */
    Collection<List<Run>> listRuns() {
        return runs.values();
    }

    /** All that several couplings say of one fuse. */
    List<Piece> named(AddedPartId name) {
        return requireNonNull(pieces.get(name), name::toString);
    }

    /** The runs that a fuse protects. */
    List<Run> behind(AddedPartId fuse) {
        return runs.values().stream()
                .map(List::getFirst)
                .filter(run -> run.behind().equals(Optional.of(fuse)))
                .toList();
    }

    /** The plan's name of a piece. */
    AddedPartId number(AddedPartId localName) {
        return requireNonNull(partNumbers.get(localName), localName::toString);
    }

    /** The plan's name of a run. */
    WireId number(Run run) {
        return requireNonNull(wireNumbers.get(ends(run)), run::toString);
    }

    /** An end with the plan's name of its part. */
    End numbered(End end) {
        return end instanceof End.OfPart(var part, var terminal) ? new End.OfPart(number(part), terminal) : end;
    }
}
