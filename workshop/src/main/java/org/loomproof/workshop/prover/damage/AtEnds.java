package org.loomproof.workshop.prover.damage;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.loomproof.network.netlist.Setting;
import org.loomproof.workshop.prover.explore.Area;
import org.loomproof.workshop.prover.explore.Beside;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Ends;
import org.loomproof.workshop.prover.explore.Finding.Found;
import org.loomproof.workshop.prover.explore.Key;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.explore.Sensitivity;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.prover.explore.Working;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Warmth;
import org.loomproof.workshop.words.Phrase;

/**
 * One area of a damaged vehicle with ranged figures at their ends: for each case that the damage takes something of, and for each
 * sign by which the damage is noticed, the corner that is worst for it. Which that is shows where the case or sign is tightest;
 * a case that comes close to its limit at its corner is then asked there in every situation in which the damage takes something
 * of it.
 */
final class AtEnds {

    /** What keeps more than this share of what it has to spare, where that is least, is not looked at further. */
    private static final double CLOSE_SHARE = 0.5;

    private final AsPlanned job;
    private final WholeWalk whole;
    private final EndCars planned;
    private final Damaged what;
    private final Area area;
    private final Ends ends;
    private final Map<Corner, Vehicle> cars = new HashMap<>();
    private final Workbench bench = new Workbench();
    private final Fuses fuses;
    private long walked;

    /**
     * @param whole the walk of the vehicle as planned at typical values
     * @param planned the same area without the damage
     */
    AtEnds(AsPlanned job, WholeWalk whole, EndCars planned, Damaged what, Area area, Ends ends) {
        this.job = job;
        this.whole = whole;
        this.planned = planned;
        this.what = what;
        this.area = area;
        this.ends = ends;
        this.fuses = new Fuses(
                what.vehicle().restrictedTo(area).wired(), what.damage().plan());
    }

    /** Something that is so at typical values by some amount, in one situation; it is looked for where it is so no longer. */
    private interface Asked {

        Key key();

        /** By how much it is so at typical values. */
        double typical();

        /** By how much at a corner, negative where it is not so; NaN where nothing is said. */
        double at(Corner corner, Sight sight);
    }

    /** What the damaged vehicle comes to in one situation at one corner; empty where it does not come to rest. */
    private record Sight(Optional<List<List<Pair>>> pairs) {}

    /** A case that the damage takes something of, where least is left. */
    private record Spared(Case about, Key key, double typical) implements Asked {
        @Override
        public double at(Corner corner, Sight sight) {
            return sight.pairs().map(pairs -> Beside.slack(about, pairs)).orElse(Double.NaN);
        }
    }

    /** A case that the damage breaks, of which only that is seen. */
    private record Shown(Case about, Key key, double typical) implements Asked {
        @Override
        public double at(Corner corner, Sight sight) {
            return sight.pairs().map(pairs -> -Beside.slack(about, pairs)).orElse(Double.NEGATIVE_INFINITY);
        }
    }

    /** A sign by which the damage is noticed. */
    private final class Differing implements Asked {
        private final int sign;
        private final Key key;
        private final double typical;

        Differing(int sign, Key key, double typical) {
            this.sign = sign;
            this.key = key;
            this.typical = typical;
        }

        @Override
        public Key key() {
            return key;
        }

        @Override
        public double typical() {
            return typical;
        }

        @Override
        public double at(Corner corner, Sight sight) {
            Optional<Seen> before = planned.at(corner).seen(key);
            return before.isEmpty() || sight.pairs().isEmpty()
                    ? Double.NEGATIVE_INFINITY
                    : job.signs()
                            .read(sight.pairs().get())
                            .differsBy(before.get(), sign, job.signs().standingCurrent());
        }
    }

    private Vehicle car(Corner corner) {
        return cars.computeIfAbsent(
                corner, c -> what.damage().vehicle(job.brief(), c).restrictedTo(area));
    }

    private Sight sight(Corner corner, Key key, Working working) {
        Vehicle stock = planned.at(corner).stock();
        Vehicle damaged = car(corner);
        Setting setting = damaged.settings().of(whole.situation(key));
        return new Sight(new Beside(whole.space, key, stock, damaged, working, bench)
                .pairsAtRest(planned.at(corner).stock(key), fuses.settled(bench, damaged, setting)));
    }

    private List<Double> at(Corner corner, List<? extends Asked> asked) {
        Map<Key, Sight> sights = new HashMap<>();
        return asked.stream()
                .map(each -> each.at(
                        corner,
                        sights.computeIfAbsent(each.key(), key -> sight(corner, key, whole.stockTable.working()))))
                .toList();
    }

    private Lasting lasting(List<? extends Asked> asked) {
        return new Lasting(
                planned.variations(),
                ends,
                (corner, places) -> at(corner, places.stream().map(asked::get).toList()));
    }

    private BitSet everywhere(List<? extends Asked> asked) {
        return lasting(asked).everywhere(asked.stream().map(Asked::typical).toList());
    }

    /** Of signs that surely differ in a situation at typical values those that do so at the ends as well. */
    BitSet surely(Key key, BitSet differing) {
        return surely(Map.of(key, differing)).getOrDefault(key, new BitSet());
    }

    private Map<Key, BitSet> surely(Map<Key, BitSet> differing) {
        List<Differing> asked = new ArrayList<>();
        differing.forEach((key, signs) -> {
            Optional<Seen> before = planned.at(Corner.TYPICAL).seen(key);
            Sight now = sight(Corner.TYPICAL, key, whole.stockTable.working());
            if (before.isPresent() && now.pairs().isPresent()) {
                Seen seen = job.signs().read(now.pairs().get());
                signs.stream()
                        .forEach(sign -> asked.add(new Differing(
                                sign,
                                key,
                                seen.differsBy(before.get(), sign, job.signs().standingCurrent()))));
            }
        });
        BitSet so = everywhere(asked);
        Map<Key, BitSet> surely = new HashMap<>();
        so.stream()
                .mapToObj(asked::get)
                .forEach(each ->
                        surely.computeIfAbsent(each.key(), k -> new BitSet()).set(each.sign));
        return surely;
    }

    /**
     * What the damage comes to, ends looked at.
     *
     * @param walk of the damaged vehicle at typical values
     * @param sofar what was found there, and in the cold and in the heat
     */
    Outcome judged(DamageWalk walk, Outcome sofar) {
        Map<Key, BitSet> noticed = new LinkedHashMap<>();
        Map<Integer, Key> places = new LinkedHashMap<>();
        sofar.noticed()
                .forEach((w, signs) -> walk.find(job.watched().get(w)).ifPresent(key -> {
                    if (!signs.isEmpty()) {
                        places.put(w, key);
                        noticed.computeIfAbsent(key, k -> new BitSet()).or(signs);
                    }
                }));
        Map<Key, BitSet> surely = surely(noticed);
        Map<Integer, BitSet> seen = new LinkedHashMap<>();
        places.forEach((w, key) -> {
            BitSet signs =
                    (BitSet) Objects.requireNonNull(sofar.noticed().get(w)).clone();
            signs.and(surely.getOrDefault(key, new BitSet()));
            seen.put(w, signs);
        });
        Set<Phrase> trouble = new LinkedHashSet<>();
        List<Break> breaks = breaks(walk, sofar, trouble);
        Set<String> unsure = unsure(walk, sofar);
        return sofar.sure(claim -> !unsure.contains(claim))
                .noticing(seen)
                .orAtEnds(new Outcome(
                        breaks,
                        Map.of(),
                        Map.of(),
                        Optional.empty(),
                        fuses.opened(),
                        List.copyOf(trouble),
                        new Outcome.Effort(0, walked, bench.solves())));
    }

    /** What is broken that no point of rest shows, and is so no longer at some ends. */
    private Set<String> unsure(DamageWalk walk, Outcome sofar) {
        List<Shown> asked = new ArrayList<>();
        for (Break each : sofar.breaks()) {
            walk.cases().stream()
                    .filter(c -> c.looksBeyondRest() && c.id().equals(each.claim()) && each.isSure())
                    .forEach(c -> walk.find(each.witness().situation())
                            .ifPresent(key -> at(Corner.TYPICAL, List.of(new Shown(c, key, 0))).stream()
                                    .filter(slack -> !Double.isNaN(slack))
                                    .forEach(slack -> asked.add(new Shown(c, key, slack)))));
        }
        Set<String> unsure = new TreeSet<>();
        BitSet so = everywhere(asked);
        for (int k = so.nextClearBit(0); k < asked.size(); k = so.nextClearBit(k + 1)) {
            unsure.add(asked.get(k).about().id());
        }
        return unsure;
    }

    private List<Break> breaks(DamageWalk walk, Outcome sofar, Set<Phrase> trouble) {
        Set<String> broken = new TreeSet<>();
        sofar.breaks().forEach(each -> broken.add(each.claim()));
        List<Integer> places = new ArrayList<>();
        List<Spared> asked = new ArrayList<>();
        for (int c = 0; c < walk.cases().size(); c++) {
            Case each = walk.cases().get(c);
            Optional<Found> worst = walk.worstHarm(c);
            if (worst.isPresent() && job.lasting().contains(each.id()) && !broken.contains(each.id())) {
                places.add(c);
                asked.add(new Spared(each, worst.get().key(), worst.get().slack()));
            }
        }
        if (asked.isEmpty()) {
            return List.of();
        }
        Map<Integer, Sensitivity> sensitivities =
                lasting(asked).sensitivities(asked.stream().map(Asked::typical).toList());
        Map<Integer, Break> breaks = new LinkedHashMap<>();
        List<Integer> all = IntStream.range(0, asked.size()).boxed().toList();
        ends.groups(sensitivities, all).forEach((corner, group) -> {
            for (Corner end : ends.of(corner)) {
                List<Double> slacks = at(end, group.stream().map(asked::get).toList());
                for (int k = 0; k < group.size(); k++) {
                    int place = group.get(k);
                    Spared each = asked.get(place);
                    if (!(slacks.get(k) > CLOSE_SHARE * each.typical())) {
                        Sweep sweep = new Sweep(end, each.about());
                        walk.harm(places.get(place)).forEach(sweep::ask);
                        trouble.addAll(sweep.trouble);
                        sweep.worst.ifPresent(worst -> breaks.merge(
                                place,
                                sweep.broken(walk, places.get(place), Objects.requireNonNull(sensitivities.get(place))),
                                Break::or));
                    }
                }
            }
        });
        return List.copyOf(breaks.values());
    }

    /** One case asked at one corner, wherever the damage takes something of it. */
    private final class Sweep {
        private final Corner corner;
        private final Case about;
        private final Set<Phrase> trouble = new LinkedHashSet<>();
        private Optional<Found> worst = Optional.empty();
        private Optional<Found> soonest = Optional.empty();

        Sweep(Corner corner, Case about) {
            this.corner = corner;
            this.about = about;
        }

        void ask(Found typical) {
            walked++;
            Optional<List<List<Pair>>> pairs = pairs(typical.key());
            if (pairs.isEmpty()) {
                trouble.add(Phrase.of("open.unsettled-in-range"));
                return;
            }
            double slack = Beside.slack(about, pairs.get());
            if (slack < 0) {
                Found here = new Found(typical.key(), slack, typical.steps());
                worst = Optional.of(
                        worst.filter(known -> known.slack() <= slack).orElse(here));
                soonest = Optional.of(
                        soonest.filter(known -> known.steps() <= here.steps()).orElse(here));
            }
        }

        private Optional<List<List<Pair>>> pairs(Key key) {
            return sight(corner, key, planned.at(corner).working()).pairs();
        }

        Break broken(DamageWalk walk, int place, Sensitivity sensitivity) {
            Key key = soonest.orElseThrow().key();
            Pair atWorst =
                    Beside.deciding(about, pairs(worst.orElseThrow().key()).orElseThrow());
            Pair atSoonest = Beside.deciding(about, pairs(key).orElseThrow());
            return walk.breakOf(place, key, atWorst, atSoonest, steps(key, sensitivity));
        }

        /** The strongest figures that together do it, each with its end. */
        private List<Phrase> steps(Key key, Sensitivity sensitivity) {
            List<Sensitivity.Effect> harmful = sensitivity.harmful().stream()
                    .filter(effect -> corner.taken(effect.figure().key()) == effect.worse())
                    .sorted(Comparator.comparingDouble(Sensitivity.Effect::worseSlack))
                    .toList();
            Corner taken = corner.only(Warmth.KEY);
            for (Sensitivity.Effect effect : harmful) {
                if (isBroken(taken, key)) {
                    break;
                }
                taken = taken.with(effect.figure().key(), effect.worse());
            }
            return EndSteps.of(taken, job.variations(), car(corner).wired().warmth());
        }

        private boolean isBroken(Corner at, Key key) {
            return sight(at, key, planned.at(corner).working())
                    .pairs()
                    .map(pairs -> Beside.slack(about, pairs) < 0)
                    .orElse(false);
        }
    }
}
