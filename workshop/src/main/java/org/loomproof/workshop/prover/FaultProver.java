package org.loomproof.workshop.prover;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.fault.Mishap;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.claim.Fitting;
import org.loomproof.workshop.prover.damage.AsPlanned;
import org.loomproof.workshop.prover.damage.ColdLoom;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.damage.DamageSearch;
import org.loomproof.workshop.prover.damage.Outcome;
import org.loomproof.workshop.prover.damage.Signs;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Explorer;
import org.loomproof.workshop.prover.explore.Onlooker;
import org.loomproof.workshop.prover.explore.Variations;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.testorder.HandTest;
import org.loomproof.workshop.prover.testorder.HandTests;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * Says of every single fault of what a plan adds, and of every slip of the hand that carries it out, what would happen, how
 * bad that is, and which test of the finished car notices it.
 */
public final class FaultProver {

    private final Brief brief;
    private final Plan plan;
    private final Fitting whole;
    private final Explorer explorer;
    private final Map<String, Margin> holding = new LinkedHashMap<>();
    private final List<Mishap> mishaps;
    private final List<Damage> damages;
    private final Map<Damage, Integer> numbers = new LinkedHashMap<>();
    private final List<HandTest> tests;
    private final AsPlanned job;
    private final DamageSearch search;
    private final Consequences consequences;
    private final ColdLoom cold;

    private FaultProver(Brief given, Plan plan) {
        this.brief = given.set(plan.settings());
        this.plan = plan;
        Vehicle fitted = Vehicle.fitted(brief, plan, Corner.TYPICAL);
        this.whole = new Fitting(brief, plan, Vehicle.stock(brief, Corner.TYPICAL), fitted);
        List<Case> cases = LiveVehicle.cases(whole);
        this.explorer =
                Explorer.ofTypicalValues(brief, plan, whole.stock(), fitted).decide(cases);
        cases.forEach(each -> margin(explorer, each).ifPresent(margin -> holding.put(each.id(), margin)));
        Explorer ofWholeRanges = Explorer.ofWholeRanges(brief, plan, whole.stock(), fitted, Onlooker.NONE)
                .decide(cases.stream()
                        .filter(each -> holding.containsKey(each.id()))
                        .toList());
        Set<String> lasting = new LinkedHashSet<>();
        for (Case each : cases) {
            margin(ofWholeRanges, each).ifPresent(margin -> {
                lasting.add(each.id());
                holding.put(each.id(), margin);
            });
        }
        this.mishaps = Mishap.list(brief, plan);
        mishaps.forEach(m -> numbers.putIfAbsent(Damage.of(m, plan, fitted.wired()), numbers.size()));
        this.damages = List.copyOf(numbers.keySet());
        boolean hasFeedFuse =
                !fitted.wired().controller().orElseThrow().feedFuses().isEmpty();
        this.tests = HandTests.list(brief, plan, hasFeedFuse);
        List<Situation> watched = tests.stream()
                .flatMap(test -> test.situations().stream())
                .distinct()
                .toList();
        Signs signs = new Signs(brief, plan, fitted.wired());
        Set<OperableId> askedAbout = new LinkedHashSet<>();
        cases.forEach(each -> askedAbout.addAll(each.asksAbout()));
        this.job = new AsPlanned(
                brief,
                plan,
                whole.stock(),
                fitted,
                signs,
                askedAbout,
                watched,
                holding,
                lasting,
                Variations.all(brief, plan, whole.stock(), fitted));
        this.search = new DamageSearch(job, this::cases, damages);
        this.consequences = new Consequences(search, plan);
        this.cold = new ColdLoom(brief, plan, fitted);
    }

    /**
     * What every fault and slip comes to.
     *
     * @param given with a complete sheet
     * @param plan whose leads, circuits and parts are those of the brief
     */
    public static FaultProof prove(Brief given, Plan plan, FaultWatch watch) {
        return new FaultProver(given, plan).tried(watch).chosen().proof();
    }

    /**
     * What every fault and slip comes to, and every two of them at once in the tests that notice them.
     *
     * @param given with a complete sheet
     * @param plan whose leads, circuits and parts are those of the brief
     */
    public static Pairwise provePairs(Brief given, Plan plan, FaultWatch watch) {
        FaultProver prover = new FaultProver(given, plan);
        Tried tried = prover.tried(watch);
        PairSearch pairs = new PairSearch(
                prover.job, prover.search, prover.cold, prover.consequences, tried.chosen(), tried.numbers());
        return new Pairwise(tried.chosen().proof(), pairs.pairs(watch));
    }

    /** The singles and the pairs of one plan. */
    public record Pairwise(FaultProof faults, MaskedPairs pairs) {}

    /** What was found of the singles, with the number of each result's damage. */
    private record Tried(TestChoice.Chosen chosen, List<Integer> numbers) {}

    /** How far inside its limit a case is as planned; empty where it does not hold. */
    private static Optional<Margin> margin(Explorer explorer, Case each) {
        return explorer.result(each)
                .map(ClaimResult::verdict)
                .filter(Verdict.Holds.class::isInstance)
                .map(verdict -> ((Verdict.Holds) verdict).tightest());
    }

    /** What holds as planned, stated for a damaged vehicle. */
    private List<Case> cases(Damage damage) {
        Fitting fitting = damage.plan().equals(plan)
                ? whole
                : new Fitting(
                        brief, damage.plan(), whole.stock(), Vehicle.fitted(brief, damage.plan(), Corner.TYPICAL));
        return LiveVehicle.cases(fitting).stream()
                .filter(each -> holding.containsKey(each.id()))
                .toList();
    }

    private Tried tried(FaultWatch watch) {
        List<Optional<Outcome>> outcomes = outcomes(watch);
        List<Integer> known = IntStream.range(0, mishaps.size())
                .filter(m -> outcomes.get(number(m)).isPresent())
                .boxed()
                .toList();
        Map<Integer, MishapResult> results = new LinkedHashMap<>();
        known.forEach(m -> results.put(m, result(m, outcomes.get(number(m)).orElseThrow())));
        List<Integer> worstFirst = known.stream()
                .sorted(Comparator.comparing(
                        (Integer m) -> Objects.requireNonNull(results.get(m)).severity()))
                .toList();
        TestChoice choice = new TestChoice(job, tests, cold, search, damages);
        List<Integer> numbersInOrder = worstFirst.stream().map(this::number).toList();
        Outcome.Effort effort = outcomes.stream()
                .flatMap(Optional::stream)
                .map(Outcome::effort)
                .reduce(new Outcome.Effort(0, 0, search.wholeSolves()), Outcome.Effort::and);
        return new Tried(
                choice.choose(
                        worstFirst.stream().map(results::get).toList(),
                        numbersInOrder,
                        outcomes,
                        mishaps.size() - known.size(),
                        effort,
                        bounds(mishaps.size() - known.size())),
                numbersInOrder);
    }

    private int number(int mishap) {
        return Objects.requireNonNull(
                numbers.get(Damage.of(mishaps.get(mishap), plan, whole.fitted().wired())));
    }

    private List<Optional<Outcome>> outcomes(FaultWatch watch) {
        AtomicInteger done = new AtomicInteger();
        return IntStream.range(0, damages.size())
                .parallel()
                .mapToObj(number -> {
                    if (watch.isEnough()) {
                        return Optional.<Outcome>empty();
                    }
                    Outcome outcome = search.outcome(number);
                    watch.lookedAt(done.incrementAndGet(), damages.size());
                    return Optional.of(outcome);
                })
                .toList();
    }

    private MishapResult result(int mishap, Outcome outcome) {
        Consequences.All all = consequences.of(outcome);
        return new MishapResult(
                mishaps.get(mishap),
                all.severity(),
                all.breaks(),
                outcome.opened().stream().map(whole.fitted().wired()::words).toList(),
                all.undecided());
    }

    private List<Phrase> bounds(int left) {
        List<Phrase> bounds = new ArrayList<>(explorer.bounds());
        bounds.add(Phrase.of("bound.faults-ends"));
        bounds.add(Phrase.of("bound.faults-alone"));
        bounds.add(Phrase.of("bound.faults-fuses"));
        if (left > 0) {
            bounds.add(Phrase.of("bound.faults-left", left));
        }
        return bounds;
    }
}
