package org.loomproof.workshop.prover.claim;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.order.DeclaredChange;
import org.loomproof.workshop.brief.order.DeclaredChange.Becomes;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.wiring.ControllerFeed;

/** How far a factory load or input may be otherwise than it was: not at all, or so far as the order declares and where it does. */
final class Limit {

    /** Nothing is declared. */
    private static final Limit AS_BEFORE = new Limit(Optional.empty(), 0, Map.of(), Optional.empty());

    private final Optional<DeclaredChange> change;
    private final int times;
    private final Map<OperableId, String> rests;
    private final Optional<Set<Condition.Doing>> doings;

    private Limit(
            Optional<DeclaredChange> change,
            int times,
            Map<OperableId, String> rests,
            Optional<Set<Condition.Doing>> doings) {
        this.change = change;
        this.times = times;
        this.rests = rests;
        this.doings = doings;
    }

    /**
     * What is to be shown of a load or an input, with what the order declares of it.
     *
     * @param concerned the doings of the controller that the case is about
     * @param at the case with a limit
     */
    static Claimed stated(
            Fitting fitting, ElementId of, Predicate<Condition.Doing> concerned, Function<Limit, Case> at) {
        Optional<DeclaredChange> declared = fitting.brief().order().findChange(of);
        if (declared.isEmpty()) {
            return new Claimed.ToShow(at.apply(AS_BEFORE));
        }
        DeclaredChange change = declared.get();
        Map<OperableId, String> rests = new HashMap<>();
        change.positions()
                .keySet()
                .forEach(
                        id -> rests.put(id, fitting.brief().sheet().operable(id).rest()));
        Optional<Set<Condition.Doing>> doings = change.controller().map(state -> doings(fitting, state, concerned));
        return new Claimed.ToShow(
                at.apply(new Limit(declared, 1, rests, doings)),
                Optional.of(new Claimed.OnPurpose(
                        change, at.apply(AS_BEFORE), at.apply(new Limit(declared, 2, rests, doings)))));
    }

    /**
     * The doings to the same effect as some of that state, and as none of another state that the case is about: what is to the same
     * effect is solved as one, so that what is declared of the one would pass for the other.
     */
    private static Set<Condition.Doing> doings(
            Fitting fitting, ControllerState state, Predicate<Condition.Doing> concerned) {
        Set<Condition.Doing> doings = new HashSet<>();
        for (Condition condition : Condition.list(fitting.brief().kit(), false, false)) {
            boolean isWhole = condition.representative().feed() == ControllerFeed.WHOLE;
            boolean isOfTheState =
                    condition.members().stream().filter(concerned).allMatch(doing -> doing.state() == state);
            if (isWhole && isOfTheState) {
                doings.addAll(condition.members());
            }
        }
        return doings;
    }

    /** What must be known of to tell where it is allowed. */
    List<OperableId> asksAbout() {
        return change.map(c -> List.copyOf(c.positions().keySet())).orElse(List.of());
    }

    /** How far a current may rise or fall there, in per cent; 0 where nothing is declared. */
    double percent(Pair pair, boolean more) {
        return change.map(DeclaredChange::becomes)
                        .filter(becomes -> becomes instanceof Becomes.Draws draws && draws.more() == more)
                        .filter(becomes -> isThere(pair))
                        .map(becomes -> ((Becomes.Draws) becomes).atMostPercent())
                        .orElse(0)
                * times;
    }

    /** The level that an input may read there instead of its own: true for high. */
    Optional<Boolean> level(Pair pair) {
        return change.map(DeclaredChange::becomes)
                .filter(becomes -> becomes instanceof Becomes.Reads && isThere(pair))
                .map(becomes -> ((Becomes.Reads) becomes).high());
    }

    private boolean isThere(Pair pair) {
        return doings.map(those -> those.contains(pair.doing())).orElse(true)
                && change.orElseThrow().positions().entrySet().stream()
                        .allMatch(each -> each.getValue()
                                .equals(pair.positions().getOrDefault(each.getKey(), rests.get(each.getKey()))));
    }
}
