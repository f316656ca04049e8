package org.loomproof.workshop.prover.damage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.prover.explore.Answers;
import org.loomproof.workshop.prover.explore.Beside;
import org.loomproof.workshop.prover.explore.Between;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Concern;
import org.loomproof.workshop.prover.explore.Finding;
import org.loomproof.workshop.prover.explore.Finding.Found;
import org.loomproof.workshop.prover.explore.Key;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.explore.Sensitivity;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.explore.Walker;
import org.loomproof.workshop.prover.explore.Witnesses;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.StepsTo;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/** One area of a damaged vehicle at one corner, solved wherever the damage may change something. */
final class DamageWalk {

    /** Volts of the controller's supply or ground that matter to nothing else. */
    private static final double NO_FEED_VOLTS = 0.001;

    private final AsPlanned job;
    private final WholeWalk whole;
    private final Vehicle damaged;
    private final List<Case> cases;
    private final Concern concern;
    private final StepsTo stepsTo;
    private final Fuses fuses;
    private final Corner corner;
    private final Optional<PlannedSlacks> planned;
    private final Workbench bench = new Workbench();
    private final List<Finding> found = new ArrayList<>();
    private final List<List<Found>> harmed = new ArrayList<>();
    private final Map<Key, Long> stood = new HashMap<>();
    private final Between between;
    private final Brink.Gauge gauge;
    private final Set<Key> near = new TreeSet<>();
    private final BitSet considered = new BitSet();
    private final Noticing noticing;
    private final Set<Phrase> trouble = new LinkedHashSet<>();
    private long walked;
    private double feedMoved;

    /**
     * @param whole the walk of the vehicle as planned at that corner
     * @param damaged the vehicle at that corner
     * @param cases those that are about something in this area and hold as planned
     * @param planned what they have to spare as planned, where it is asked what they lose; empty where it is not
     */
    DamageWalk(
            AsPlanned job,
            WholeWalk whole,
            Corner corner,
            Vehicle damaged,
            Fuses fuses,
            List<Case> cases,
            Optional<PlannedSlacks> planned) {
        this.job = job;
        this.whole = whole;
        this.damaged = damaged;
        this.cases = List.copyOf(cases);
        this.stepsTo = new StepsTo(job.brief().sheet(), job.brief().kit());
        this.concern = new Concern(whole.space, stepsTo, this.cases);
        this.fuses = fuses;
        this.corner = corner;
        this.planned = planned;
        this.cases.forEach(c -> {
            found.add(new Finding());
            harmed.add(new ArrayList<>());
        });
        this.gauge = whole.brink.of(damaged);
        this.between = new Between(
                whole.space,
                job.brief().sheet(),
                whole.stock,
                damaged,
                this.cases,
                concern,
                whole.stockTable,
                corner.equals(Corner.TYPICAL) ? whole.stands.but(stood) : whole.stands.only(stood),
                (by, setting) -> fuses.settled(by, damaged, setting));
        this.noticing = new Noticing(job, whole, stepsTo, corner.equals(Corner.TYPICAL) ? job.watched() : List.of());
    }

    /**
     * Walks what the damage of that number may change; everything when nobody looked where that is.
     *
     * <p>First only what is operated in the damaged blocks is moved. What lies in others can feel the damage through the
     * controller's supply and ground alone: when these move by more than a case can bear, what is operated in its own blocks is
     * moved as well.
     */
    Outcome walk(Optional<Integer> number, Damaged what) {
        Set<OperableId> near = what.blocks().operables(what.touched());
        BitSet nearby = whole.movingOnly(near);
        BitSet walkedAlready = new BitSet();
        walkAll((c, s) -> {
            BitSet here = noticing.watched(c, s);
            here.or(nearby);
            here.and(touched(number, c, s));
            here.or(beyondRest(c, s, nearby));
            return here;
        });
        walkedAlready.or(nearby);
        for (Set<OperableId> far : far(what)) {
            Set<OperableId> both = new LinkedHashSet<>(near);
            both.addAll(far);
            BitSet more = whole.movingOnly(both);
            more.andNot(walkedAlready);
            walkedAlready.or(more);
            walkAll((c, s) -> {
                BitSet here = touched(number, c, s);
                here.and(more);
                here.andNot(noticing.watched(c, s));
                return here;
            });
        }
        considered.or(walkedAlready);
        return outcome();
    }

    /**
     * At a corner, what contacts may do there that they do not do at typical values: asked is where they are close to it in the
     * damaged vehicle, or in the one as planned where that has to do with the damage.
     */
    Outcome walkNear(Optional<Integer> number, DamageWalk typical) {
        walkAll((c, s) -> {
            BitSet here = touched(number, c, s);
            here.and(typical.whole.near(c, s));
            here.and(typical.considered);
            typical.near.stream()
                    .filter(key -> key.condition() == c && key.supply() == s)
                    .forEach(key -> here.set(key.positions()));
            return here;
        });
        return outcome();
    }

    private Outcome outcome() {
        between.look(found, bench);
        return new Outcome(
                breaks(),
                noticing.noticed(),
                noticing.noticed(),
                noticing.elsewhere(),
                fuses.opened(),
                List.copyOf(trouble),
                new Outcome.Effort(whole.situations(), walked, bench.solves()));
    }

    /** What is operated in the blocks of the cases that cannot bear what supply and ground of the controller have moved. */
    private Set<Set<OperableId>> far(Damaged what) {
        Set<Set<OperableId>> far = new LinkedHashSet<>();
        if (feedMoved > NO_FEED_VOLTS) {
            for (Case each : cases) {
                if (feedMoved > bearableVolts(each)) {
                    far.add(what.blocks().operables(each));
                }
            }
        }
        return far;
    }

    /**
     * How far supply and ground of the controller may move without breaking a case: no volt elsewhere moves by more than they
     * do. Half of its margin is taken; where the margin is in amps a contact may hang on it, and nothing is taken.
     */
    private double bearableVolts(Case each) {
        Margin margin = job.margins().get(each.id());
        if (margin == null) {
            return 0;
        }
        return switch (margin.unit()) {
            case "V" -> margin.slack() / 2;
            case "%" -> margin.slack() / 200 * SupplyPoint.CRANKING.volts().value();
            default -> 0;
        };
    }

    private void walkAll(BiFunction<Integer, Integer, BitSet> combinations) {
        for (int c = 0; c < whole.space.conditions().size(); c++) {
            int[] under = concern.under(c);
            for (int s = 0; s < whole.space.supplies().size(); s++) {
                walk(c, s, under, combinations.apply(c, s));
            }
        }
    }

    /**
     * Where a part that carries nothing may matter all the same, to a case that looks beyond the point of rest: at the highest
     * supply, which is the worst for it, and with the battery at rest, which takes a step less to show.
     */
    private BitSet beyondRest(int condition, int supply, BitSet nearby) {
        SupplyPoint at = whole.space.supplies().get(supply);
        boolean asked = (at == SupplyPoint.HIGH || at == SupplyPoint.REST)
                && Arrays.stream(concern.under(condition))
                        .anyMatch(c -> cases.get(c).looksBeyondRest());
        return asked ? nearby : new BitSet();
    }

    private BitSet touched(Optional<Integer> number, int condition, int supply) {
        BitSet touched = new BitSet();
        if (number.isPresent()) {
            touched.or(whole.touched(number.get(), condition, supply));
        } else {
            touched.set(0, whole.space.positions().size());
        }
        return touched;
    }

    private void walk(int condition, int supply, int[] under, BitSet combinations) {
        if (combinations.isEmpty()) {
            return;
        }
        Condition.Doing doing = whole.space.conditions().get(condition).representative();
        Walker settings = new Walker(
                whole.space, damaged.settings(), whole.space.supplies().get(supply), doing);
        for (int p = combinations.nextSetBit(0); p >= 0; p = combinations.nextSetBit(p + 1)) {
            Key key = new Key(condition, supply, p);
            int[] asked = concern.at(under, p);
            if (asked.length > 0 || noticing.isWatched(key)) {
                walked++;
                ask(asked, key, settings.at(p));
            }
        }
    }

    private void ask(int[] asked, Key key, Setting setting) {
        pairs(key, setting, true).ifPresent(pairs -> {
            for (int c : asked) {
                double slack = Beside.slack(cases.get(c), pairs);
                if (!Double.isNaN(slack)) {
                    Found here = new Found(key, slack, concern.steps(c, key));
                    found.get(c).add(here);
                    planned.filter(whole -> isHarmed(whole.slack(cases.get(c).id(), key), slack))
                            .ifPresent(whole -> harmed.get(c).add(here));
                }
            }
            if (corner.equals(Corner.TYPICAL)) {
                noticing.look(key, pairs);
            }
        });
    }

    /** Whether a damage takes anything worth the name of what a case has to spare as planned. */
    private static boolean isHarmed(double plannedSlack, double slack) {
        return Double.isNaN(plannedSlack) || slack < plannedSlack - Sensitivity.NOTHING_SHARE * Math.abs(plannedSlack);
    }

    private Optional<List<List<Pair>>> pairs(Key key, Setting setting, boolean tell) {
        Answers before = whole.stockTable.at(key.supply(), key.positions());
        Answers after = fuses.settled(bench, damaged, setting);
        if (tell) {
            stood.put(key, bench.stand(damaged, after));
            if (fuses.isNear() || gauge.isNear(after)) {
                near.add(key);
            }
        }
        feedMoved = Math.max(feedMoved, whole.feedMoved(key, damaged, after));
        Optional<List<List<Pair>>> pairs = beside(key).pairsAtRest(before, after);
        if (tell && pairs.isEmpty()) {
            trouble.add(words(before instanceof Answers.AtRest ? after : before));
        }
        return pairs;
    }

    private static Phrase words(Answers answers) {
        return switch (answers) {
            case Answers.Chatters(Phrase words) -> words;
            case Answers.Lost(Phrase words) -> words;
            case Answers.AtRest rest -> throw new IllegalArgumentException("at rest is no trouble");
        };
    }

    private Beside beside(Key key) {
        return new Beside(whole.space, key, whole.stock, damaged, whole.stockTable.working(), bench);
    }

    /**
     * The signs that surely differ in one situation; empty where the vehicle, as planned or damaged, does not come to rest. No
     * sign where the area has nothing to do with the situation.
     */
    Optional<BitSet> lookAt(Situation situation) {
        Optional<Key> here = whole.places.find(situation);
        if (here.isEmpty()) {
            return Optional.of(new BitSet());
        }
        Key key = here.get();
        return Optional.ofNullable(whole.seen(key))
                .flatMap(planned -> pairs(key, setting(key), false)
                        .map(pairs -> job.signs()
                                .read(pairs)
                                .differing(planned, job.signs().standingCurrent())));
    }

    private Setting setting(Key key) {
        return damaged.settings().of(whole.situation(key));
    }

    private List<Break> breaks() {
        List<Break> breaks = new ArrayList<>();
        for (int c = 0; c < cases.size(); c++) {
            Finding finding = found.get(c);
            if (finding.soonestBroken().isPresent()) {
                breaks.add(breakOf(
                        c,
                        finding.worst().orElseThrow(),
                        finding.soonestBroken().get()));
            } else {
                int about = c;
                finding.between()
                        .filter(place -> place.found().slack() < 0)
                        .flatMap(place -> between(about, place))
                        .ifPresent(breaks::add);
            }
        }
        return breaks;
    }

    private Break breakOf(int c, Found worst, Found soonest) {
        Case each = cases.get(c);
        List<List<Pair>> pairs = settledPairs(soonest.key());
        Witness witness = witness(
                each,
                pairs,
                soonest.key(),
                whole.situation(soonest.key(), concern.doing(c, soonest.key().condition())));
        return breakOf(each, deciding(each, worst.key()), Beside.deciding(each, pairs), witness, stepAtEnd());
    }

    Break breakOf(int c, Key key, Pair atWorst, Pair atSoonest, List<Phrase> atEnd) {
        Case each = cases.get(c);
        Situation situation = whole.situation(key, concern.doing(c, key.condition()));
        Witness witness = new Witness(stepsTo.list(situation), situation, each.observations(atSoonest));
        return breakOf(each, atWorst, atSoonest, witness, atEnd);
    }

    private static Break breakOf(Case each, Pair atWorst, Pair atSoonest, Witness witness, List<Phrase> atEnd) {
        List<Phrase> steps = new ArrayList<>(witness.steps());
        steps.addAll(atEnd);
        return new Break(
                each.id(),
                each.statement(),
                each.severity(atWorst).or(each.severity(atSoonest)),
                each.margin(atWorst),
                new Witness(steps, witness.situation(), witness.seen()),
                !atEnd.isEmpty(),
                atEnd.isEmpty());
    }

    /** With the fuses open that open there. */
    private Witness witness(Case each, List<List<Pair>> pairs, Key key, Situation situation) {
        Set<PartId> open = fuses.openingIn(bench, damaged, setting(key));
        return new Witnesses(stepsTo, bench).of(each, pairs, situation, on -> {
            Setting setting = damaged.settings().of(on);
            for (PartId fuse : open) {
                setting = setting.broken(fuse);
            }
            return setting;
        });
    }

    /** What breaks between two supply points, where contacts move there; what does not come to rest there is told as trouble. */
    private Optional<Break> between(int c, Between.Place place) {
        Key key = place.found().key();
        Volts volts = new Volts(place.volts());
        if (place.found().slack() == Double.NEGATIVE_INFINITY) {
            trouble.add(Phrase.of("open.restless-between"));
            return Optional.empty();
        }
        Pair pair = between.deciding(c, place, bench);
        List<Phrase> at = new ArrayList<>(List.of(Phrase.of("step.volts", volts)));
        at.addAll(stepAtEnd());
        return Optional.of(breakOf(c, key, pair, pair, at));
    }

    /** What it takes beyond a car at room temperature with every figure at its typical value. */
    private List<Phrase> stepAtEnd() {
        return EndSteps.of(corner, job.variations(), damaged.wired().warmth());
    }

    private Pair deciding(Case each, Key key) {
        return Beside.deciding(each, settledPairs(key));
    }

    private List<List<Pair>> settledPairs(Key key) {
        return pairs(key, setting(key), false)
                .orElseThrow(() -> new IllegalStateException("settled once, not settled again: " + key));
    }

    /** The cases that were asked. */
    List<Case> cases() {
        return cases;
    }

    /** Where the damage takes something of what a case has to spare, by the case's place, the least first that is left. */
    Optional<Found> worstHarm(int caseIndex) {
        return harmed.get(caseIndex).stream().min(Comparator.comparingDouble(Found::slack));
    }

    /** Every situation in which it does. */
    List<Found> harm(int caseIndex) {
        return harmed.get(caseIndex);
    }

    /** The place of a situation of this area. */
    Optional<Key> find(Situation situation) {
        return whole.places.find(situation);
    }
}
