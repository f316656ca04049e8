package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.reach.Reach;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.quantity.Quantity;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.wiring.Warmth;
import org.loomproof.workshop.words.Phrase;

/** Decides cases area by area, and tells what was looked at and what was not. */
public final class Explorer {

    private final ExplorerJob job;
    private final List<Area> areas;
    private final Map<String, ClaimResult> results = new HashMap<>();
    private final Set<OperableId> leftAtRest = new LinkedHashSet<>();
    private long situations;
    private long solves;
    private long corners;

    private Explorer(
            Brief brief,
            Plan plan,
            Vehicle stock,
            Vehicle fitted,
            Variations variations,
            Onlooker onlooker,
            BooleanSupplier isEnough) {
        this.job = new ExplorerJob(brief, plan, stock, fitted, variations, onlooker, isEnough);
        this.areas = Area.list(stock.wired(), fitted.wired());
    }

    /**
     * An explorer of one job, wherever ranged figures lie. Both vehicles have every figure at its typical value.
     *
     * @param onlooker is told what is solved with them there
     */
    public static Explorer ofWholeRanges(Brief brief, Plan plan, Vehicle stock, Vehicle fitted, Onlooker onlooker) {
        return ofWholeRanges(brief, plan, stock, fitted, onlooker, () -> false);
    }

    /**
     * The same, until somebody has enough: then every case that is not decided is open.
     *
     * @param isEnough true from when nothing more is to be looked at
     */
    public static Explorer ofWholeRanges(
            Brief brief, Plan plan, Vehicle stock, Vehicle fitted, Onlooker onlooker, BooleanSupplier isEnough) {
        return new Explorer(brief, plan, stock, fitted, Variations.all(brief, plan, stock, fitted), onlooker, isEnough);
    }

    /** An explorer that leaves every figure at its typical value: fit to find what is broken, not to say that a claim holds. */
    public static Explorer ofTypicalValues(Brief brief, Plan plan, Vehicle stock, Vehicle fitted) {
        return new Explorer(brief, plan, stock, fitted, Variations.none(stock, fitted), Onlooker.NONE, () -> false);
    }

    /** Decides the cases; afterwards each has a result, unless it had nothing to say and fell away. */
    public Explorer decide(List<Case> cases) {
        return decide(cases, Integer.MAX_VALUE);
    }

    /** The same, given up once more cases than so many are broken; then some have no result. */
    public Explorer decide(List<Case> cases, int mostBroken) {
        Map<Area, List<Case>> byArea = new LinkedHashMap<>();
        for (Case each : cases) {
            byArea.computeIfAbsent(areaOf(each), a -> new ArrayList<>()).add(each);
        }
        byArea.forEach((area, there) -> {
            List<Case> toSolve = new ArrayList<>();
            for (Case each : there) {
                Optional<ClaimResult> untouched = area.touched() ? Optional.empty() : untouched(each);
                untouched.ifPresentOrElse(result -> results.put(each.id(), result), () -> toSolve.add(each));
            }
            int broken = countBroken();
            if (job.isEnough().getAsBoolean()) {
                leaveOpen(toSolve);
            } else if (!toSolve.isEmpty() && broken <= mostBroken) {
                solve(area, toSolve, mostBroken - broken);
            }
        });
        return this;
    }

    private int countBroken() {
        return (int)
                results.values().stream().filter(ClaimResult::countsAsBroken).count();
    }

    private Area areaOf(Case each) {
        return areas.stream()
                .filter(area -> area.parts().contains(each.about()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(each.id() + " is about no part: " + each.about()));
    }

    private static Optional<ClaimResult> untouched(Case each) {
        Situation rest =
                new Situation(new TreeMap<>(), SupplyPoint.REST, ControllerState.DISARMED, ControllerFeed.WHOLE);
        return each.marginWhereUntouched()
                .map(margin ->
                        new ClaimResult(each.id(), each.statement(), new Verdict.Holds(margin, rest), List.of()));
    }

    private void solve(Area area, List<Case> cases, int mostBroken) {
        AreaProof proof = new AreaProof(job, area, cases);
        results.putAll(proof.results(mostBroken));
        leftAtRest.addAll(proof.leftAtRest());
        situations += proof.situations();
        solves += proof.solves();
        corners += proof.corners();
        if (job.isEnough().getAsBoolean()) {
            leaveOpen(cases);
        }
    }

    private void leaveOpen(List<Case> cases) {
        for (Case each : cases) {
            Verdict open = new Verdict.Open(Phrase.of("open.stopped"), List.of());
            results.putIfAbsent(each.id(), new ClaimResult(each.id(), each.statement(), open, List.of()));
        }
    }

    /** What was found of a case. */
    public Optional<ClaimResult> result(Case each) {
        return Optional.ofNullable(results.get(each.id()));
    }

    /** What was looked at. */
    public Proof.Effort effort() {
        Reach reach = Reach.of(job.brief().kit());
        return new Proof.Effort(reach.modes(), reach.transitions(), situations, solves, corners);
    }

    /** What was not looked at, in words. */
    public List<Phrase> bounds() {
        List<Phrase> bounds = new ArrayList<>();
        bounds.add(Phrase.of("bound.supply-points"));
        bounds.add(Phrase.of("bound.steady-state"));
        bounds.add(Phrase.of("bound.moments"));
        bounds.add(Phrase.of("bound.histories"));
        bounds.add(Phrase.of("bound.by-hand"));
        Figure<? extends Quantity> warmth =
                Warmth.range(job.brief().order().shop()).figure();
        bounds.add(Phrase.of("bound.warmth", warmth.low(), warmth.high(), Warmth.ROOM));
        if (!job.variations().isEmpty()) {
            bounds.add(Phrase.of("bound.corners"));
        }
        if (job.isEnough().getAsBoolean()) {
            bounds.add(Phrase.of("bound.stopped"));
        }
        if (!leftAtRest.isEmpty()) {
            bounds.add(Phrase.of("bound.left-at-rest", List.copyOf(leftAtRest)));
        }
        return bounds;
    }
}
