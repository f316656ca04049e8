package org.loomproof.workshop.prover.claim;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.End;

/**
 * Where what is added can bring current from, whatever its contacts do: through wires, fuses, contacts, and diodes the way they
 * conduct (a zener conducts both), but not through coils, resistors and loads, which leave no current that a wire could not bear.
 */
record AddedWays(Fitting fitting) {

    /** True when a factory wire can be fed at that end: by an output that gives the supply, or from another factory wire. */
    boolean canBring(End to) {
        Set<End> seen = new HashSet<>(Set.of(to));
        Deque<End> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            End end = open.removeFirst();
            if (!end.equals(to) && isSource(end)) {
                return true;
            }
            Stream.concat(alongWires(end), through(end)).filter(seen::add).forEach(open::add);
        }
        return false;
    }

    private boolean isSource(End end) {
        return switch (end) {
            case End.OfLead(var lead) -> fitting.brief().kit().lead(lead).port() instanceof Port.HighSide;
            case End.Tap tap -> true;
            case End.CutBefore cut -> true;
            case End.CutAfter cut -> true;
            case End.OfPart part -> false;
            case End.Body body -> false;
        };
    }

    private Stream<End> alongWires(End end) {
        return end instanceof End.Body
                ? Stream.empty()
                : fitting.plan().wires().stream()
                        .flatMap(wire -> wire.from().equals(end)
                                ? Stream.of(wire.to())
                                : wire.to().equals(end) ? Stream.of(wire.from()) : Stream.empty());
    }

    /** The terminals from which current can reach this one inside its part. */
    private Stream<End> through(End end) {
        return end instanceof End.OfPart(var id, var terminal)
                ? fitting.plan().findPart(id).stream()
                        .flatMap(part -> sources(part, terminal).stream())
                        .map(other -> (End) new End.OfPart(id, other))
                : Stream.empty();
    }

    private static List<String> sources(AddedPart part, String terminal) {
        return switch (part) {
            case AddedPart.Relay relay -> terminal.startsWith("8") && !terminal.startsWith("87") ? List.of() : CONTACTS;
            case AddedPart.Fuse fuse -> fuse.terminals();
            case AddedPart.Pole pole -> pole.terminals();
            case AddedPart.Diode diode -> terminal.equals("K") ? List.of("A") : List.of();
            case AddedPart.Zener zener -> zener.terminals();
            case AddedPart.Buffer buffer -> terminal.equals("out") ? List.of("-") : List.of();
            case AddedPart.Resistor resistor -> List.of();
            case AddedPart.Load load -> List.of();
            case AddedPart.StandbyBattery battery -> List.of();
            case AddedPart.Sender sender ->
                sender.stages().stream()
                        .flatMap(stage -> stage.terminal().equals(terminal)
                                ? Stream.of(stage.pole())
                                : stage.pole().equals(terminal) ? Stream.of(stage.terminal()) : Stream.empty())
                        .toList();
            case AddedPart.PinSwitch pin -> List.of();
        };
    }

    private static final List<String> CONTACTS = List.of("30", "87", "87a");
}
