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
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.fault.Mishap;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.claim.Claim;
import org.loomproof.workshop.prover.claim.Claimed;
import org.loomproof.workshop.prover.claim.Fitting;
import org.loomproof.workshop.prover.damage.AsPlanned;
import org.loomproof.workshop.prover.damage.Break;
import org.loomproof.workshop.prover.damage.ColdLoom;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.damage.DamageSearch;
import org.loomproof.workshop.prover.damage.Outcome;
import org.loomproof.workshop.prover.damage.Signs;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Explorer;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.testorder.HandTest;
import org.loomproof.workshop.prover.testorder.HandTests;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Severity;
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
    private final List<Situation> watched;
    private final DamageSearch search;
    private final Signs signs;

    private FaultProver(Brief given, Plan plan) {
        this.brief = given.set(plan.settings());
        this.plan = plan;
        Vehicle fitted = Vehicle.fitted(brief, plan, Corner.TYPICAL);
        this.whole = new Fitting(brief, plan, Vehicle.stock(brief, Corner.TYPICAL), fitted);
        List<Case> cases = cases(whole);
        this.explorer =
                Explorer.ofTypicalValues(brief, plan, whole.stock(), fitted).decide(cases);
        cases.forEach(each -> margin(each).ifPresent(margin -> holding.put(each.id(), margin)));
        this.mishaps = Mishap.list(brief, plan);
        mishaps.forEach(m -> numbers.putIfAbsent(Damage.of(m, plan, fitted.wired()), numbers.size()));
        this.damages = List.copyOf(numbers.keySet());
        boolean hasFeedFuse =
                !fitted.wired().controller().orElseThrow().feedFuses().isEmpty();
        this.tests = HandTests.list(brief, plan, hasFeedFuse);
        this.watched = tests.stream()
                .flatMap(test -> test.situations().stream())
                .distinct()
                .toList();
        this.signs = new Signs(brief, plan, fitted.wired());
        Set<OperableId> askedAbout = new LinkedHashSet<>();
        cases.forEach(each -> askedAbout.addAll(each.asksAbout()));
        AsPlanned job = new AsPlanned(brief, plan, whole.stock(), fitted, signs, askedAbout, watched, holding);
        this.search = new DamageSearch(job, this::cases, damages);
    }

    /**
     * What every fault and slip comes to.
     *
     * @param given with a complete sheet
     * @param plan whose leads, circuits and parts are those of the brief
     */
    public static FaultProof prove(Brief given, Plan plan, FaultWatch watch) {
        return new FaultProver(given, plan).proof(watch);
    }

    private static List<Case> cases(Fitting fitting) {
        return Claim.all().stream()
                .filter(Claim::isWalked)
                .flatMap(claim -> claim.in(fitting).stream())
                .filter(Claimed.ToShow.class::isInstance)
                .map(claimed -> ((Claimed.ToShow) claimed).toShow())
                .toList();
    }

    /** How far inside its limit a case is as planned; empty where it does not hold. */
    private Optional<Margin> margin(Case each) {
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
        return cases(fitting).stream()
                .filter(each -> holding.containsKey(each.id()))
                .toList();
    }

    private FaultProof proof(FaultWatch watch) {
        List<Optional<Outcome>> outcomes = outcomes(watch);
        Map<PartId, Outcome> opened = openedFuses(outcomes);
        List<Integer> known = IntStream.range(0, mishaps.size())
                .filter(m -> outcomes.get(number(m)).isPresent())
                .boxed()
                .toList();
        Map<Integer, MishapResult> results = new LinkedHashMap<>();
        known.forEach(m -> results.put(m, result(m, outcomes.get(number(m)).orElseThrow(), opened)));
        List<Integer> worstFirst = known.stream()
                .sorted(Comparator.comparing(
                        (Integer m) -> Objects.requireNonNull(results.get(m)).severity()))
                .toList();
        TestChoice choice = new TestChoice(
                brief,
                tests,
                watched,
                signs,
                holding.keySet(),
                new ColdLoom(brief, plan, whole.fitted()),
                search,
                damages);
        List<Integer> numbersInOrder = worstFirst.stream().map(this::number).toList();
        Outcome.Effort effort = outcomes.stream()
                .flatMap(Optional::stream)
                .map(Outcome::effort)
                .reduce(new Outcome.Effort(0, 0, search.wholeSolves()), Outcome.Effort::and);
        return choice.proof(
                worstFirst.stream().map(results::get).toList(),
                numbersInOrder,
                outcomes,
                mishaps.size() - known.size(),
                effort,
                bounds(mishaps.size() - known.size()));
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

    /** A fuse that opens stays open: what then follows is what follows from that fuse alone being out. */
    private Map<PartId, Outcome> openedFuses(List<Optional<Outcome>> outcomes) {
        Map<PartId, Outcome> opened = new LinkedHashMap<>();
        for (Optional<Outcome> outcome : outcomes) {
            for (PartId fuse : outcome.map(Outcome::opened).orElse(Set.of())) {
                opened.computeIfAbsent(fuse, f -> search.outcome(Damage.openedFuse(plan, f)));
            }
        }
        return opened;
    }

    private MishapResult result(int mishap, Outcome outcome, Map<PartId, Outcome> opened) {
        List<Break> breaks = new ArrayList<>(outcome.breaks());
        Set<Phrase> undecided = new LinkedHashSet<>(outcome.trouble());
        for (PartId fuse : outcome.opened()) {
            Outcome after = Objects.requireNonNull(opened.get(fuse));
            after.breaks().stream()
                    .filter(more -> breaks.stream().noneMatch(b -> b.claim().equals(more.claim())))
                    .forEach(breaks::add);
            undecided.addAll(after.trouble());
        }
        breaks.sort(Comparator.comparing(Break::severity));
        Severity least = undecided.isEmpty() ? Severity.NONE : Severity.NUISANCE;
        return new MishapResult(
                mishaps.get(mishap),
                breaks.stream().map(Break::severity).reduce(least, Severity::or),
                breaks,
                outcome.opened().stream().map(whole.fitted().wired()::words).toList(),
                List.copyOf(undecided));
    }

    private List<Phrase> bounds(int left) {
        List<Phrase> bounds = new ArrayList<>(explorer.bounds());
        bounds.add(Phrase.of("bound.faults-typical"));
        bounds.add(Phrase.of("bound.faults-alone"));
        bounds.add(Phrase.of("bound.faults-fuses"));
        if (left > 0) {
            bounds.add(Phrase.of("bound.faults-left", left));
        }
        return bounds;
    }
}
