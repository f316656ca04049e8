package org.loomproof.workshop.planner.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.planner.coupling.Piece;
import org.loomproof.workshop.planner.coupling.Run;
import org.loomproof.workshop.planner.survey.Finder;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.SquareMillimetres;

/** What the car itself feeds into added wires: a short of one is drawn through that too, whatever the wire was added to carry. */
record CarFeeds(Sheet sheet, Ledger ledger) {

    private static final Amps NO_FUSE = new Amps(0);

    /**
     * The factory wire that the run lengthens, or that one does with which it meets at a terminal, straight or over a third: a short of
     * the run is drawn through what feeds that wire, whatever the run itself carries.
     */
    Optional<SquareMillimetres> wire(Run run) {
        List<Run> met = new ArrayList<>(List.of(run));
        for (int i = 0; i < met.size(); i++) {
            Run each = met.get(i);
            ledger.listRuns().stream()
                    .map(List::getFirst)
                    .filter(other -> !met.contains(other) && each.meetsAtPart(other))
                    .forEach(met::add);
        }
        return met.stream()
                .flatMap(each -> each.noThinnerThan().stream())
                .max(Comparator.comparingDouble(SquareMillimetres::value));
    }

    /**
     * The largest fuse of the car through which a short of the run is drawn while the car's own switch is closed: that of a factory
     * wire with which the run meets, straight or over added contacts. What leads from a factory wire to an added fuse is a take-off.
     */
    Amps fuse(Run run) {
        Amps most = NO_FUSE;
        List<End> met = new ArrayList<>(List.of(run.from(), run.to()));
        if (isTakeOff(run)) {
            return most;
        }
        for (int i = 0; i < met.size(); i++) {
            End end = met.get(i);
            if (end instanceof End.Tap(var circuit)) {
                most = larger(most, firmFuse(sheet.circuit(circuit)));
            } else if (end instanceof End.OfPart part) {
                Stream.concat(
                                across(part).stream(),
                                ledger.listRuns().stream()
                                        .map(List::getFirst)
                                        .filter(other -> !isTakeOff(other))
                                        .filter(other -> other.from().equals(end)
                                                || other.to().equals(end))
                                        .flatMap(other -> Stream.of(other.from(), other.to())))
                        .filter(other -> !met.contains(other))
                        .forEach(met::add);
            }
        }
        return most;
    }

    private boolean isTakeOff(Run run) {
        return run.from() instanceof End.Tap
                && run.to() instanceof End.OfPart(var part, var terminal)
                && ledger.named(part).getFirst() instanceof Piece.Fuse;
    }

    /** The terminals of the same part to which current may go on without a load. */
    private List<End> across(End.OfPart end) {
        List<String> on = switch (ledger.named(end.part()).getFirst()) {
            case Piece.Relay relay ->
                switch (end.terminal()) {
                    case "30" -> List.of("87", "87a");
                    case "87", "87a" -> List.of("30");
                    default -> List.<String>of();
                };
            case Piece.Pole pole -> List.of(end.terminal().equals("1") ? "2" : "1");
            default -> List.of();
        };
        return on.stream()
                .<End>map(terminal -> new End.OfPart(end.part(), terminal))
                .toList();
    }

    /** The fuse of a wire that its own switch puts at the supply, or that lies there until it opens. */
    private static Amps firmFuse(Circuit circuit) {
        Level active = circuit.switching().active();
        boolean firm = active instanceof Level.Supply
                || (active instanceof Level.Open && circuit.switching().rest() instanceof Level.Supply);
        return firm ? new Amps(Finder.findFuseAmps(circuit).orElse(0.0)) : NO_FUSE;
    }

    private static Amps larger(Amps one, Amps other) {
        return one.value() >= other.value() ? one : other;
    }
}
