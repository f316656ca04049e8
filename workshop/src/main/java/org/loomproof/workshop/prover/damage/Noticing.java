package org.loomproof.workshop.prover.damage;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.loomproof.workshop.prover.explore.Key;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.StepsTo;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Situation;

/** What a person sees of one area of a damaged vehicle otherwise than planned, where the battery is charged and at rest. */
final class Noticing {

    private final AsPlanned job;
    private final WholeWalk whole;
    private final StepsTo stepsTo;
    private final Map<Key, List<Integer>> watched = new HashMap<>();
    private final Map<Integer, BitSet> noticed = new TreeMap<>();
    private Outcome.@Nullable Elsewhere elsewhere;

    /** @param watched situations in which it is looked at anyway */
    Noticing(AsPlanned job, WholeWalk whole, StepsTo stepsTo, List<Situation> watched) {
        this.job = job;
        this.whole = whole;
        this.stepsTo = stepsTo;
        for (int w = 0; w < watched.size(); w++) {
            int place = w;
            whole.places
                    .find(watched.get(w))
                    .ifPresent(key -> this.watched
                            .computeIfAbsent(key, k -> new ArrayList<>())
                            .add(place));
        }
    }

    /** Whether it is looked at there anyway. */
    boolean isWatched(Key key) {
        return watched.containsKey(key);
    }

    /** The combinations of positions in which it is looked at anyway. */
    BitSet watched(int condition, int supply) {
        BitSet at = new BitSet();
        watched.keySet().stream()
                .filter(key -> key.condition() == condition && key.supply() == supply)
                .forEach(key -> at.set(key.positions()));
        return at;
    }

    /** Looks at what was solved there. */
    void look(Key key, List<List<Pair>> pairs) {
        List<Integer> here = watched.get(key);
        int steps = steps(key);
        boolean isNearer = isAtHand(key) && (elsewhere == null || steps < elsewhere.steps());
        if (here == null && !isNearer) {
            return;
        }
        Seen planned = whole.seen(key);
        if (planned == null) {
            return;
        }
        BitSet differing =
                job.signs().read(pairs).differing(planned, job.signs().standingCurrent());
        if (here != null) {
            here.forEach(w -> noticed.put(w, differing));
        } else {
            BitSet plain = withoutMeter(differing);
            if (!plain.isEmpty()) {
                elsewhere = new Outcome.Elsewhere(whole.situation(key, soonest(key)), plain, steps);
            }
        }
    }

    /** The signs that surely differ in each watched situation, by its number. */
    Map<Integer, BitSet> noticed() {
        return Collections.unmodifiableMap(noticed);
    }

    /** Of all other situations the one with the fewest steps in which something is seen without a meter. */
    Optional<Outcome.Elsewhere> elsewhere() {
        return Optional.ofNullable(elsewhere);
    }

    private BitSet withoutMeter(BitSet signs) {
        BitSet plain = (BitSet) signs.clone();
        plain.stream().filter(k -> job.signs().list().get(k).takesMeter()).forEach(plain::clear);
        return plain;
    }

    /** A technician has the car as it stands: nothing unplugged, the battery charged. */
    private boolean isAtHand(Key key) {
        return whole.space.supplies().get(key.supply()) == SupplyPoint.REST
                && condition(key).representative().feed() == ControllerFeed.WHOLE;
    }

    /** Of the doings that are electrically one the one with the fewest steps. */
    private Condition.Doing soonest(Key key) {
        return condition(key).members().stream()
                .min(Comparator.comparingInt(stepsTo::count))
                .orElseThrow();
    }

    private Condition condition(Key key) {
        return whole.space.conditions().get(key.condition());
    }

    private int steps(Key key) {
        return stepsTo.count(soonest(key))
                + stepsTo.count(whole.space.positions().get(key.positions()));
    }
}
