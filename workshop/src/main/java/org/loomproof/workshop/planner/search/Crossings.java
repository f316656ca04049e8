package org.loomproof.workshop.planner.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Where;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Feed;
import org.loomproof.workshop.planner.coupling.Piece;
import org.loomproof.workshop.planner.coupling.Run;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.trade.connector.MovingPlaces;

/**
 * Puts a connector where added wires go to a door, or to a panel that comes off: one for each, on its fixed side, with a pole for
 * each place beyond it where something is joined. Added parts stay on the fixed side, but for a fuse, which keeps near its
 * take-off, and for what comes out of the box to be mounted in a door.
 */
final class Crossings {

    /** From the connector through the hinge to where a wire is joined. Common practice, no published source. */
    static final Metres BEYOND = new Metres(0.7);

    private final Brief brief;
    private final Map<String, String> connectors = new LinkedHashMap<>();
    private final Map<String, Integer> poles = new HashMap<>();
    private final Map<End, Piece.Pole> reached = new HashMap<>();

    Crossings(Brief brief) {
        this.brief = brief;
    }

    /** The same coupling with its connectors. */
    Draft over(Draft draft) {
        Map<AddedPartId, String> beyond = findPartsBeyond(draft);
        List<Piece> pieces = new ArrayList<>(draft.pieces());
        List<Run> runs = new ArrayList<>();
        for (Run run : draft.runs()) {
            Optional<String> from = place(run.from(), beyond);
            Optional<String> to = place(run.to(), beyond);
            if (from.equals(to)) {
                runs.add(run);
                continue;
            }
            // What goes on from a place that is reached already goes on from its pole.
            boolean isReached = reached.containsKey(run.from());
            Optional<Piece.Pole> out = from.map(place -> pole(run.from(), place));
            Optional<Piece.Pole> in = to.map(place -> pole(run.to(), place));
            out.filter(pole -> !isReached).ifPresent(pole -> runs.add(further(run, run.from(), moving(pole))));
            runs.add(run.between(
                    out.map(Crossings::fixed).orElse(run.from()),
                    in.map(Crossings::fixed).orElse(run.to()),
                    run.behind()));
            in.ifPresent(pole -> runs.add(further(run, moving(pole), run.to())));
            out.ifPresent(pieces::add);
            in.ifPresent(pieces::add);
        }
        return draft.with(pieces, runs);
    }

    private static Run further(Run run, End from, End to) {
        return new Run(from, to, BEYOND, run.carries(), run.drop(), run.behind(), run.noThinnerThan());
    }

    private static End fixed(Piece.Pole pole) {
        return Draft.at(pole.name(), "1");
    }

    private static End moving(Piece.Pole pole) {
        return Draft.at(pole.name(), "2");
    }

    private Piece.Pole pole(End end, String place) {
        return reached.computeIfAbsent(end, e -> {
            String connector = connectors.computeIfAbsent(place, p -> "X" + (connectors.size() + 1));
            int number = poles.merge(connector, 1, Integer::sum);
            return new Piece.Pole(new AddedPartId(connector + "-" + number), connector, place);
        });
    }

    /** Added parts that lie beyond a hinge, with what they lie in. */
    private Map<AddedPartId, String> findPartsBeyond(Draft draft) {
        Map<AddedPartId, String> beyond = new HashMap<>();
        for (Piece piece : draft.pieces()) {
            if (piece instanceof Piece.Load load && isInDoor(load.extra())) {
                beyond.put(load.name(), load.extra());
            }
        }
        for (Run run : draft.runs()) {
            if (run.length().value() <= Feed.TAKE_OFF.value()
                    && run.from() instanceof End.Tap(var circuit)
                    && run.to() instanceof End.OfPart(var part, var terminal)) {
                place(circuit).ifPresent(place -> beyond.put(part, place));
            }
        }
        return beyond;
    }

    private boolean isInDoor(String extra) {
        return brief.kit()
                .findExtra(extra)
                .filter(found -> found.kind() == Extra.Kind.ACTUATOR)
                .isPresent();
    }

    private Optional<String> place(End end, Map<AddedPartId, String> beyond) {
        return switch (end) {
            case End.Tap(var circuit) -> place(circuit);
            case End.CutBefore(var circuit) -> place(circuit);
            case End.CutAfter(var circuit) -> place(circuit);
            case End.OfPart(var part, var terminal) -> Optional.ofNullable(beyond.get(part));
            case End.OfLead lead -> Optional.empty();
            case End.Body body -> Optional.empty();
        };
    }

    private Optional<String> place(CircuitId circuit) {
        Where where = brief.sheet().circuit(circuit).where();
        boolean moves = where.carriedBy()
                .map(carrier -> carrier != Where.Carrier.BODY)
                .orElseGet(() -> MovingPlaces.isOnDoor(where.panel()));
        return moves ? Optional.of(where.panel().isBlank() ? circuit.toString() : where.panel()) : Optional.empty();
    }
}
