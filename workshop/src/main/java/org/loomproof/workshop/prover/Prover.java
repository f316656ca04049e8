package org.loomproof.workshop.prover;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.claim.Claim;
import org.loomproof.workshop.prover.claim.Claimed;
import org.loomproof.workshop.prover.claim.Fitting;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Explorer;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
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
        Vehicle stock = Vehicle.stock(brief, Corner.TYPICAL);
        Vehicle fitted = Vehicle.fitted(brief, plan, Corner.TYPICAL);
        Fitting fitting = new Fitting(brief, plan, stock, fitted);
        List<Claimed> claimed = new ArrayList<>();
        Claim.all().forEach(claim -> claimed.addAll(claim.in(fitting)));
        List<Case> cases = claimed.stream()
                .filter(Claimed.ToShow.class::isInstance)
                .map(c -> ((Claimed.ToShow) c).toShow())
                .toList();
        Explorer explorer = new Explorer(brief, plan, stock, fitted).decide(cases);
        List<ClaimResult> results = new ArrayList<>();
        for (Claimed each : claimed) {
            switch (each) {
                case Claimed.ToShow(Case toShow) -> explorer.result(toShow).ifPresent(results::add);
                case Claimed.LeftOpen(ClaimResult result) -> results.add(result);
            }
        }
        return new Proof(results, explorer.effort(), explorer.bounds());
    }
}
