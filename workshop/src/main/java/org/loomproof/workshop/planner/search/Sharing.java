package org.loomproof.workshop.planner.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Piece;
import org.loomproof.workshop.planner.coupling.Run;
import org.loomproof.workshop.planner.rule.Decision;
import org.loomproof.workshop.planner.rule.Option;
import org.loomproof.workshop.planner.survey.Duties;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.sizing.FuseChoice;

/**
 * Which parts of a plan may be one. Two diodes between the same nodes, two fuses at one take-off, two relays whose coils and poles
 * lie on the same nodes: the second is left out, and what hung on it hangs on the first. Whether that breaks anything the prover says.
 */
final class Sharing {

    private final Brief brief;
    private final List<Option> answers;
    private final Map<AddedPartId, Piece> pieces = new LinkedHashMap<>();
    private final Set<Run> runs = new HashSet<>();
    private final Map<End, End> joined = new HashMap<>();

    /** A part that may be left out, and the one that stands for it. */
    private record Pair(Piece stays, Piece goes) {}

    private Sharing(Brief brief, List<Option> answers) {
        this.brief = brief;
        this.answers = answers;
        drafts(answers).forEach(draft -> {
            draft.pieces().forEach(piece -> pieces.putIfAbsent(piece.name(), piece));
            runs.addAll(draft.runs());
        });
        runs.forEach(run -> join(run.from(), run.to()));
    }

    /** The answers with everything shared that may be, and with one part less each: every way to go on from here, in a fixed order. */
    static List<List<Option>> of(Brief brief, List<Option> answers) {
        List<List<Option>> single = new Sharing(brief, answers).singly();
        if (single.size() < 2) {
            return single;
        }
        List<Option> all = single.getFirst();
        for (List<List<Option>> more = single; !more.isEmpty(); more = new Sharing(brief, all).singly()) {
            all = more.getFirst();
        }
        return Stream.concat(Stream.of(all), single.stream()).toList();
    }

    private List<List<Option>> singly() {
        List<Piece> all = List.copyOf(pieces.values());
        List<List<Option>> ways = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                Pair pair = new Pair(all.get(i), all.get(j));
                if (mayBeOne(pair)) {
                    ways.add(answers.stream()
                            .map(option -> option.redrafted(draft -> shared(draft, pair)))
                            .toList());
                }
            }
        }
        return ways;
    }

    private static Stream<Draft> drafts(List<Option> answers) {
        return answers.stream()
                .flatMap(option -> option.decisions().stream())
                .flatMap(decision -> decision instanceof Decision.Join join ? Stream.of(join.draft()) : Stream.empty());
    }

    private void join(End one, End other) {
        End a = node(one);
        End b = node(other);
        if (!a.equals(b)) {
            joined.put(a, b);
        }
    }

    private End node(End end) {
        End here = end;
        while (joined.containsKey(here)) {
            here = joined.get(here);
        }
        return here;
    }

    private boolean mayBeOne(Pair pair) {
        return switch (pair.stays()) {
            case Piece.Diode one ->
                pair.goes() instanceof Piece.Diode other
                        && one.type().equals(other.type())
                        && meet(pair, "A")
                        && meet(pair, "K")
                        && isLeaf(other, "A")
                        && isLeaf(other, "K");
            case Piece.Fuse one ->
                pair.goes() instanceof Piece.Fuse other
                        && !feedController(pair)
                        && meet(pair, "1")
                        && serves(one).equals(serves(other))
                        && guardNoWorse(pair)
                        && feedNoFactoryWires(pair);
            case Piece.Relay one ->
                pair.goes() instanceof Piece.Relay other
                        && one.type().equals(other.type())
                        && Stream.of("85", "86", "87", "87a").allMatch(terminal -> meet(pair, terminal))
                        && contactBears(pair, one);
            case Piece.Zener zener -> false;
            case Piece.Buffer buffer -> false;
            case Piece.Resistor resistor -> false;
            case Piece.Pole pole -> false;
            case Piece.Load load -> false;
            case Piece.StandbyBattery battery -> false;
            case Piece.Sender sender -> false;
            case Piece.Pin pin -> false;
        };
    }

    /** True where both have that terminal on one node, or nothing on it. */
    private boolean meet(Pair pair, String terminal) {
        End one = new End.OfPart(pair.stays().name(), terminal);
        End other = new End.OfPart(pair.goes().name(), terminal);
        return node(one).equals(node(other)) || (at(one).isEmpty() && at(other).isEmpty());
    }

    private List<Run> at(End end) {
        return runs.stream()
                .filter(run -> run.from().equals(end) || run.to().equals(end))
                .toList();
    }

    /** True where nothing goes on from that terminal. */
    private boolean isLeaf(Piece piece, String terminal) {
        return at(new End.OfPart(piece.name(), terminal)).size() == 1;
    }

    /** A short behind the fuse of something else must not silence the controller. */
    private boolean feedController(Pair pair) {
        return fuses(pair.stays(), pair.goes()).anyMatch(Piece.Fuse::feedsController);
    }

    /**
     * One fuse for both is no larger than each would be alone: behind the fuse of a motor a clamp diode that is turned round, or a coil
     * that shorts, burns before anything opens.
     */
    private boolean guardNoWorse(Pair pair) {
        Optional<Amps> both = size(pair.stays(), pair.goes());
        return both.isPresent() && both.equals(size(pair.stays())) && both.equals(size(pair.goes()));
    }

    private Optional<Amps> size(Piece... named) {
        double carries =
                fuses(named).mapToDouble(fuse -> fuse.carries().value()).sum();
        return FuseChoice.rating(new Amps(carries), new Amps(Double.MAX_VALUE));
    }

    /** What every coupling says of fuses of those names. */
    private Stream<Piece.Fuse> fuses(Piece... named) {
        List<AddedPartId> names = Stream.of(named).map(Piece::name).toList();
        return drafts(answers)
                .flatMap(draft -> draft.pieces().stream())
                .filter(piece -> names.contains(piece.name()))
                .flatMap(piece -> piece instanceof Piece.Fuse fuse ? Stream.of(fuse) : Stream.empty());
    }

    /** What falls silent with a fuse: a short of the siren's wires must not take the horn with it, which no claim would tell. */
    private Set<Wish> serves(Piece fuse) {
        return answers.stream()
                .flatMap(option -> option.decisions().stream())
                .flatMap(decision -> decision instanceof Decision.Join join ? Stream.of(join) : Stream.empty())
                .filter(join -> join.draft().pieces().stream()
                        .anyMatch(piece -> piece.name().equals(fuse.name())))
                .map(Decision.Join::serves)
                .collect(Collectors.toSet());
    }

    /** What the factory fuses apart stays apart. */
    private boolean feedNoFactoryWires(Pair pair) {
        return !feedsFactoryWire(pair.stays()) && !feedsFactoryWire(pair.goes());
    }

    private boolean feedsFactoryWire(Piece fuse) {
        return runs.stream()
                .anyMatch(run -> run.behind().filter(fuse.name()::equals).isPresent() && run.to() instanceof End.Tap);
    }

    /** One contact for both wires, derated for what they work. */
    private boolean contactBears(Pair pair, Piece.Relay relay) {
        List<Run> worked = Stream.of(pair.stays(), pair.goes())
                .flatMap(each -> at(new End.OfPart(each.name(), "30")).stream())
                .toList();
        double rating = 0;
        for (Run run : worked) {
            if (!(run.to() instanceof End.Tap(var circuit))) {
                return false;
            }
            rating += Duties.of(brief.sheet().circuit(circuit))
                    .rating(run.carries())
                    .value();
        }
        return rating <= relay.type().makeRating().value();
    }

    private static Draft shared(Draft draft, Pair pair) {
        AddedPartId stays = pair.stays().name();
        AddedPartId goes = pair.goes().name();
        List<Piece> pieces = draft.pieces().stream()
                .map(piece -> piece.name().equals(goes) ? standIn(piece, pair.stays()) : piece)
                .toList();
        if (pair.goes() instanceof Piece.Diode) {
            return draft.with(
                    pieces,
                    draft.runs().stream()
                            .filter(run -> !isOn(run.from(), goes) && !isOn(run.to(), goes))
                            .toList());
        }
        UnaryOperator<End> renamed = end -> end instanceof End.OfPart(var part, var terminal) && part.equals(goes)
                ? new End.OfPart(stays, terminal)
                : end;
        Set<List<End>> own =
                draft.runs().stream().map(run -> List.of(run.from(), run.to())).collect(Collectors.toSet());
        List<Run> runs = draft.runs().stream()
                .filter(run -> !isCoilAgain(run, renamed, own))
                .map(run -> run.between(
                        renamed.apply(run.from()),
                        renamed.apply(run.to()),
                        run.behind().map(fuse -> fuse.equals(goes) ? stays : fuse)))
                .filter(run -> !run.from().equals(run.to()))
                .toList();
        return draft.with(pieces, runs);
    }

    /** A second coil's wire that the first one's already is: it would be reckoned with twice. */
    private static boolean isCoilAgain(Run run, UnaryOperator<End> renamed, Set<List<End>> own) {
        List<End> ends = List.of(renamed.apply(run.from()), renamed.apply(run.to()));
        boolean changed = !ends.equals(List.of(run.from(), run.to()));
        return changed
                && own.contains(ends)
                && ends.stream()
                        .anyMatch(end -> end instanceof End.OfPart(var part, var terminal)
                                && (terminal.equals("85") || terminal.equals("86")));
    }

    private static boolean isOn(End end, AddedPartId part) {
        return end instanceof End.OfPart(var name, var terminal) && name.equals(part);
    }

    /** A fuse says what each coupling sends through it; of all else there is one. */
    private static Piece standIn(Piece goes, Piece stays) {
        return goes instanceof Piece.Fuse fuse
                ? new Piece.Fuse(stays.name(), fuse.carries(), fuse.feedsController())
                : stays;
    }
}
