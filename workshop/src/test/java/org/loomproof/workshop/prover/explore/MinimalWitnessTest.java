package org.loomproof.workshop.prover.explore;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.prover.MishapResult;
import org.loomproof.workshop.prover.Mishaps;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.damage.Break;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.wiring.Corner;

/** The steps of a witness show what is broken, and nothing shorter does. */
class MinimalWitnessTest {

    @Test
    void noStepOfAWitnessOfABrokenPlanIsTooMany() {
        Jobs.Job cart = Jobs.simple();
        Jobs.Job van = Jobs.vanJob();
        int checked = 0;
        int fewer = 0;
        Set<String> claims = new LinkedHashSet<>();
        for (Jobs.Job job : List.of(
                cart.with(Altered.rewired(cart.plan(), "W11", "K1 87", "circuit starter after")),
                cart.with(Altered.withoutWire(cart.plan(), "W6")),
                cart.with(Altered.withoutWire(cart.plan(), "W3")),
                cart.with(Altered.rewired(cart.plan(), "W3", "lead trigger", "circuit ignition tap")),
                van.with(Altered.rewired(van.plan(), "W23", "lead trigger", "circuit driver-lamp tap")),
                van.with(Altered.withoutWire(van.plan(), "W36")))) {
            FewerSteps whole = new FewerSteps(job.brief(), job.plan(), Optional.empty());
            for (ClaimResult result : Prover.prove(job.brief(), job.plan()).results()) {
                boolean isWalked = whole.isAsked(result.id());
                if (isWalked && result.verdict() instanceof Verdict.Broken broken) {
                    fewer += whole.check(result.id(), broken.witness());
                    claims.add(result.id().substring(0, result.id().indexOf(' ')));
                    checked++;
                }
            }
        }
        Note.that("minimal witnesses: " + checked + " of " + claims + ", " + fewer + " situations with fewer steps");
        assertThat(claims).contains("starts-with-controller-dead", "opening-seen", "does-its-work");
        assertThat(fewer).isPositive();
    }

    @Test
    void noStepOfAWitnessOfAFaultIsTooMany() {
        int checked = 0;
        for (Jobs.Job job : List.of(Jobs.simple(), Jobs.vanJob())) {
            Vehicle planned = Vehicle.fitted(job.brief().set(job.plan().settings()), job.plan(), Corner.TYPICAL);
            List<MishapResult> results = new ArrayList<>(Mishaps.of(job).proof().results());
            results.removeIf(r -> !r.opens().isEmpty()
                    || !r.undecided().isEmpty()
                    || r.breaks().isEmpty());
            for (MishapResult result : Sample.bySeed(results, 8)) {
                Damage damage = Damage.of(result.mishap(), job.plan(), planned.wired());
                FewerSteps whole = new FewerSteps(job.brief(), job.plan(), Optional.of(damage));
                for (Break each : result.breaks()) {
                    if (!each.takesEnds()) {
                        whole.check(each.claim(), each.witness());
                        checked++;
                    }
                }
            }
        }
        Note.that("minimal witnesses of faults and slips: " + checked);
        assertThat(checked).isGreaterThan(20);
    }
}
