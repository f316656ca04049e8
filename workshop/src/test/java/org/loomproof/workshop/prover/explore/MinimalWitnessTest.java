package org.loomproof.workshop.prover.explore;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.FaultProver;
import org.loomproof.workshop.prover.FaultWatch;
import org.loomproof.workshop.prover.MishapResult;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.claim.Claim;
import org.loomproof.workshop.prover.claim.Claimed;
import org.loomproof.workshop.prover.claim.Fitting;
import org.loomproof.workshop.prover.damage.Break;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.Space;
import org.loomproof.workshop.prover.state.StepsTo;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.wiring.WorkedSwitch;

/**
 * The steps of a witness show what is broken, and nothing shorter does: every situation of the whole vehicle that takes fewer
 * steps is solved, with none of the prover's reductions, and the claim is kept in each. Whatever step is dropped leaves one of
 * them.
 */
class MinimalWitnessTest {

    /** The vehicles side by side, whole. */
    private static final class Whole {
        private final Brief brief;
        private final Vehicle stock;
        private final Vehicle fitted;
        private final Space space;
        private final StockTable table;
        private final StepsTo stepsTo;
        private final List<Case> cases;

        Whole(Brief given, Plan plan, Optional<Damage> damage) {
            this.brief = given.set(plan.settings());
            this.stock = Vehicle.stock(brief, Corner.TYPICAL);
            Plan inCar = damage.map(Damage::plan).orElse(plan);
            Vehicle planned = Vehicle.fitted(brief, inCar, Corner.TYPICAL);
            this.fitted = damage.map(d -> d.vehicle(brief)).orElse(planned);
            this.cases = Claim.all().stream()
                    .filter(Claim::isWalked)
                    .flatMap(claim -> claim.in(new Fitting(brief, inCar, stock, planned)).stream())
                    .filter(Claimed.ToShow.class::isInstance)
                    .map(claimed -> ((Claimed.ToShow) claimed).toShow())
                    .toList();
            List<WorkedSwitch> switches = Stream.concat(
                            stock.wired().switches().stream(), fitted.wired().switches().stream())
                    .toList();
            var controller = fitted.wired().controller().orElseThrow();
            this.space = Space.of(
                    brief.sheet(),
                    Condition.list(brief.kit(), !controller.feedFuses().isEmpty(), controller.fuseOutIsUnplugged()),
                    Stream.concat(stock.wired().network().parts().stream(), fitted.wired().network().parts().stream())
                            .map(part -> part.id())
                            .collect(Collectors.toSet()),
                    switches,
                    brief.sheet().operables().stream().map(Operable::id).collect(Collectors.toSet()));
            this.table = StockTable.of(space, stock, brief.sheet());
            this.stepsTo = new StepsTo(brief.sheet(), brief.kit());
        }

        private Case find(String id) {
            return cases.stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
        }

        /** How many situations with fewer steps there are, all of which keep the claim. */
        int check(String claim, Witness witness) {
            Case each = find(claim);
            Concern concern = new Concern(space, stepsTo, List.of(each));
            int most = steps(witness.situation());
            Workbench bench = new Workbench();
            int fewer = 0;
            boolean isShown = false;
            for (int c = 0; c < space.conditions().size(); c++) {
                int[] under = concern.under(c);
                for (int s = 0; under.length > 0 && s < space.supplies().size(); s++) {
                    for (int p = 0; p < space.positions().size(); p++) {
                        Key key = new Key(c, s, p);
                        if (concern.at(under, p).length == 1 && concern.steps(0, key) <= most) {
                            double slack = new Beside(space, key, stock, fitted, table.working(), bench).slack(each);
                            boolean isFewer = concern.steps(0, key) < most;
                            isShown |= slack < 0;
                            fewer += isFewer ? 1 : 0;
                            assertThat(isFewer && slack < 0)
                                    .as(claim + " is shown with fewer steps than "
                                            + witness.steps() + ": "
                                            + space.positions().get(p) + " "
                                            + concern.doing(0, c) + " "
                                            + space.supplies().get(s))
                                    .isFalse();
                        }
                    }
                }
            }
            assertThat(isShown).as(claim + " " + witness.steps()).isTrue();
            assertThat(witness.steps().size()).isEqualTo(most);
            return fewer;
        }

        private int steps(Situation situation) {
            return stepsTo.count(new Condition.Doing(
                            situation.controller(), situation.feed(), situation.moment(), situation.still()))
                    + StepsTo.count(situation.supply())
                    + stepsTo.count(situation.positions());
        }
    }

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
            Whole whole = new Whole(job.brief(), job.plan(), Optional.empty());
            for (ClaimResult result : Prover.prove(job.brief(), job.plan()).results()) {
                boolean isWalked = whole.cases.stream().anyMatch(c -> c.id().equals(result.id()));
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
            List<MishapResult> results = new ArrayList<>(FaultProver.prove(job.brief(), job.plan(), FaultWatch.PATIENT)
                    .results());
            results.removeIf(r -> !r.opens().isEmpty()
                    || !r.undecided().isEmpty()
                    || r.breaks().isEmpty());
            for (MishapResult result : Sample.of(results, 8)) {
                Damage damage = Damage.of(result.mishap(), job.plan(), planned.wired());
                Whole whole = new Whole(job.brief(), job.plan(), Optional.of(damage));
                for (Break each : result.breaks()) {
                    whole.check(each.claim(), each.witness());
                    checked++;
                }
            }
        }
        Note.that("minimal witnesses of faults and slips: " + checked);
        assertThat(checked).isGreaterThan(20);
    }
}
