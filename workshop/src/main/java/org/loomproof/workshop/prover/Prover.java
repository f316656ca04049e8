package org.loomproof.workshop.prover;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.claim.Claim;
import org.loomproof.workshop.prover.claim.Claimed;
import org.loomproof.workshop.prover.claim.Fitting;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Explorer;
import org.loomproof.workshop.prover.explore.Onlooker;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.product.Reachable;
import org.loomproof.workshop.prover.product.Sightings;
import org.loomproof.workshop.prover.threat.Threats;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Residual;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.wiring.Corner;

/** Proves a plan: states every claim, explores what can matter to it, and says what was found. */
public final class Prover {

    private Prover() {}

    /**
     * The proof of a plan for a brief.
     *
     * @param brief with a complete sheet
     * @param plan whose leads, circuits and parts are those of the brief
     * @throws IllegalArgumentException if the plan names a circuit or lead that the brief does not have
     */
    public static Proof prove(Brief brief, Plan plan) {
        return proveUntilLost(brief, plan, Integer.MAX_VALUE);
    }

    /**
     * The proof of a plan for a brief until somebody has enough: what was decided by then stands, and the rest is open. What
     * vehicle and controller come to together, and what a thief may try, is told of a whole proof only.
     *
     * @param isEnough true from when nothing more is to be looked at
     */
    public static Proof prove(Brief brief, Plan plan, BooleanSupplier isEnough) {
        return prove(brief, plan, Integer.MAX_VALUE, isEnough);
    }

    /**
     * The proof of a plan for a brief, given up as soon as the plan has lost against another: then it tells what was decided by
     * then, and nothing of what is reached or of threats. Where it is given up depends on brief and plan alone.
     *
     * @param mostBroken with more broken claims than this that a plan decides it has lost
     */
    public static Proof proveUntilLost(Brief brief, Plan plan, int mostBroken) {
        return prove(brief, plan, mostBroken, () -> false);
    }

    private static Proof prove(Brief brief, Plan plan, int mostBroken, BooleanSupplier isEnough) {
        Fitting fitting = fitting(brief, plan);
        Sightings sightings = new Sightings(fitting.brief().kit());
        Proof proof = proof(
                fitting,
                onlooker -> Explorer.ofWholeRanges(
                        fitting.brief(), plan, fitting.stock(), fitting.fitted(), onlooker, isEnough),
                sightings,
                mostBroken);
        return fitting.lifeOnHold().isPresent() || isEnough.getAsBoolean() || proof.countBroken() > mostBroken
                ? proof
                : Reachable.of(fitting, sightings)
                        .map(reachable -> reachable.told(proof))
                        .orElse(proof)
                        .with(Threats.of(fitting));
    }

    /** The claims that do not hold already with every figure at its typical value: the short answer, which proves nothing. */
    public static List<ClaimResult> listObjections(Brief brief, Plan plan) {
        Fitting fitting = fitting(brief, plan);
        Proof proof = proof(
                fitting,
                onlooker -> Explorer.ofTypicalValues(fitting.brief(), plan, fitting.stock(), fitting.fitted()),
                Onlooker.NONE,
                Integer.MAX_VALUE);
        return proof.results().stream()
                .filter(result -> switch (result.verdict()) {
                    case Verdict.Broken broken -> true;
                    case Verdict.Open open -> true;
                    case Verdict.Holds holds -> false;
                    case Verdict.Declared declared -> false;
                })
                .toList();
    }

    private static Fitting fitting(Brief given, Plan plan) {
        Brief brief = given.set(plan.settings());
        return new Fitting(
                brief, plan, Vehicle.stock(brief, Corner.TYPICAL), Vehicle.fitted(brief, plan, Corner.TYPICAL));
    }

    /**
     * The proof of a fitting.
     *
     * @param explorers makes an explorer that has decided nothing, for one who looks on
     */
    private static Proof proof(
            Fitting fitting, Function<Onlooker, Explorer> explorers, Onlooker onlooker, int mostBroken) {
        Explorer explorer = explorers.apply(onlooker);
        List<Claimed> claimed = new ArrayList<>();
        Claim.all().forEach(claim -> claimed.addAll(claim.in(fitting)));
        fitting.lifeOnHold().ifPresent(hold -> claimed.replaceAll(each -> leftOpen(each, hold)));
        int byFigures = (int) claimed.stream()
                .filter(each -> each instanceof Claimed.Decided(ClaimResult result) && result.countsAsBroken())
                .count();
        if (byFigures <= mostBroken) {
            explorer.decide(
                    claimed.stream()
                            .filter(Claimed.ToShow.class::isInstance)
                            .map(c -> ((Claimed.ToShow) c).toShow())
                            .toList(),
                    mostBroken - byFigures);
        }
        OnPurpose onPurpose = OnPurpose.decide(claimed, () -> explorers.apply(Onlooker.NONE));
        List<ClaimResult> results = new ArrayList<>();
        List<Residual> residuals = new ArrayList<>();
        for (Claimed each : claimed) {
            switch (each) {
                case Claimed.ToShow toShow ->
                    explorer.result(toShow.toShow())
                            .map(result -> onPurpose.judged(toShow, result))
                            .ifPresent(results::add);
                case Claimed.Decided(ClaimResult result) -> results.add(result);
                case Claimed.Left(Residual residual) -> residuals.add(residual);
            }
        }
        return new Proof(results, List.of(), residuals, onPurpose.and(explorer.effort()), explorer.bounds());
    }

    /** With its supply or ground still to be found, what the controller does to the vehicle cannot be shown. */
    private static Claimed leftOpen(Claimed claimed, Hookup.Hold hold) {
        return switch (claimed) {
            case Claimed.ToShow(Case toShow, var onPurpose) -> Fitting.open(toShow.id(), toShow.statement(), hold);
            case Claimed.Decided decided when decided.result().verdict() instanceof Verdict.Open -> decided;
            case Claimed.Decided(ClaimResult result) -> Fitting.open(result.id(), result.statement(), hold);
            case Claimed.Left left -> left;
        };
    }
}
