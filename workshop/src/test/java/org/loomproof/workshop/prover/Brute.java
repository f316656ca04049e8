package org.loomproof.workshop.prover;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.prover.claim.Claim;
import org.loomproof.workshop.prover.claim.Claimed;
import org.loomproof.workshop.prover.claim.Fitting;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Explorer;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.wiring.Corner;

/** Asks every claim of a damaged vehicle in every situation, nothing taken over from the vehicle as planned. */
final class Brute {

    private final Brief brief;
    private final Vehicle stock;
    private final Vehicle fitted;
    private final Set<String> holding;

    Brute(Jobs.Job job) {
        this.brief = job.brief().set(job.plan().settings());
        this.stock = Vehicle.stock(brief, Corner.TYPICAL);
        this.fitted = Vehicle.fitted(brief, job.plan(), Corner.TYPICAL);
        List<Case> cases = cases(new Fitting(brief, job.plan(), stock, fitted));
        Explorer explorer =
                Explorer.ofTypicalValues(brief, job.plan(), stock, fitted).decide(cases);
        this.holding = ids(explorer, cases, Verdict.Holds.class);
    }

    private static List<Case> cases(Fitting fitting) {
        return Claim.all().stream()
                .flatMap(claim -> claim.in(fitting).stream())
                .filter(Claimed.ToShow.class::isInstance)
                .map(claimed -> ((Claimed.ToShow) claimed).toShow())
                .toList();
    }

    private static Set<String> ids(Explorer explorer, List<Case> cases, Class<? extends Verdict> verdict) {
        return cases.stream()
                .filter(c -> explorer.result(c)
                        .filter(r -> verdict.isInstance(r.verdict()))
                        .isPresent())
                .map(Case::id)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The vehicle as planned, at typical values. */
    Vehicle fitted() {
        return fitted;
    }

    /** The cases that hold as planned and are broken with the damage. */
    Set<String> broken(Damage damage) {
        Vehicle damaged = damage.vehicle(brief);
        List<Case> cases =
                cases(new Fitting(brief, damage.plan(), stock, Vehicle.fitted(brief, damage.plan(), Corner.TYPICAL)));
        Explorer explorer = Explorer.ofTypicalValues(brief, damage.plan(), stock, damaged)
                .decide(cases.stream().filter(c -> holding.contains(c.id())).toList());
        return ids(explorer, cases, Verdict.Broken.class);
    }
}
