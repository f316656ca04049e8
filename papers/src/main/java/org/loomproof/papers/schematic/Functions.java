package org.loomproof.papers.schematic;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.Plan;

/**
 * A piece of a plan that is too much for one sheet, by its functions: leads and added parts are gathered from single ones, those
 * that share the most wires and circuits first, as long as they fit a sheet together. A wire between two functions is in both.
 */
final class Functions {

    private final Plan piece;
    private final List<Set<Object>> groups = new ArrayList<>();
    private final Set<Set<Object>> tooMuch = new HashSet<>();

    Functions(Plan piece) {
        this.piece = piece;
        Nets nets = new Nets(piece);
        piece.hookups().forEach(hookup -> groups.add(Set.of(hookup.lead())));
        for (AddedPart part : piece.parts()) {
            if (!nets.isClamp(part.id())) {
                Set<Object> group = new LinkedHashSet<>(Set.of(part.id()));
                nets.findClampOf(part.id()).ifPresent(group::add);
                groups.add(group);
            }
        }
    }

    /** Two groups that may become one, by their places. */
    private record Pair(int one, int other, int shared) {}

    /** The functions, each as large as fits; a single lead or part is never taken apart. */
    List<Plan> thatFit(Predicate<Plan> fits) {
        Optional<Pair> pair = nextPair();
        while (pair.isPresent()) {
            Set<Object> together = together(pair.get());
            if (fits.test(plan(together))) {
                groups.set(pair.get().one(), together);
                groups.remove(pair.get().other());
            } else {
                tooMuch.add(together);
            }
            pair = nextPair();
        }
        return groups.stream().map(this::plan).toList();
    }

    /** The pair that shares the most, of those not yet found to be too much; the first of equals. */
    private Optional<Pair> nextPair() {
        return IntStream.range(0, groups.size())
                .boxed()
                .flatMap(i -> IntStream.range(i + 1, groups.size())
                        .mapToObj(j -> new Pair(i, j, shared(groups.get(i), groups.get(j)))))
                .filter(pair -> pair.shared() > 0 && !tooMuch.contains(together(pair)))
                .max(Comparator.comparingInt(Pair::shared)
                        .thenComparing(Pair::one, Comparator.reverseOrder())
                        .thenComparing(Pair::other, Comparator.reverseOrder()));
    }

    private Set<Object> together(Pair pair) {
        Set<Object> all = new LinkedHashSet<>(groups.get(pair.one()));
        all.addAll(groups.get(pair.other()));
        return all;
    }

    private int shared(Set<Object> one, Set<Object> other) {
        Set<Object> bonds = bonds(one);
        bonds.retainAll(bonds(other));
        return bonds.size();
    }

    /** The wires that end in a group, and the circuits that these reach. */
    private Set<Object> bonds(Set<Object> group) {
        Set<Object> bonds = new HashSet<>();
        for (AddedWire wire : wires(group)) {
            bonds.add(wire.id());
            Stream.of(wire.from(), wire.to()).map(Connections::findCircuit).forEach(c -> c.ifPresent(bonds::add));
        }
        return bonds;
    }

    private List<AddedWire> wires(Set<Object> group) {
        return piece.wires().stream()
                .filter(wire -> Stream.of(wire.from(), wire.to())
                        .anyMatch(end -> Nets.owner(end).filter(group::contains).isPresent()))
                .toList();
    }

    private Plan plan(Set<Object> group) {
        Set<Object> things = new HashSet<>(group);
        wires(group).forEach(wire -> things.add(wire.id()));
        return Splitting.part(piece, things);
    }
}
