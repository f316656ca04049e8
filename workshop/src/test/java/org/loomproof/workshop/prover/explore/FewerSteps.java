package org.loomproof.workshop.prover.explore;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.claim.Claim;
import org.loomproof.workshop.prover.claim.Claimed;
import org.loomproof.workshop.prover.claim.Fitting;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.Space;
import org.loomproof.workshop.prover.state.StepsTo;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.wiring.WorkedSwitch;

/**
 * Both vehicles side by side, whole: every situation that takes fewer steps than a witness is solved, with none of the prover's
 * reductions, and the claim must be kept in each. Whatever step of the witness is dropped leaves one of them.
 */
public final class FewerSteps {
    private final Brief brief;
    private final Vehicle stock;
    private final Vehicle fitted;
    private final Space space;
    private final StockTable table;
    private final StepsTo stepsTo;
    private final List<Case> cases;

    /** The vehicles of a job, as planned or with something wrong. */
    public FewerSteps(Brief given, Plan plan, Optional<Damage> damage) {
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

    /** Whether every combination of positions is gone through; else nothing can be said. */
    public boolean isWhole() {
        return space.leftAtRest().isEmpty();
    }

    /** Whether a claim is asked in situations at all. */
    boolean isAsked(String claim) {
        return cases.stream().anyMatch(c -> c.id().equals(claim));
    }

    private Case find(String id) {
        return cases.stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
    }

    /** How many situations with fewer steps there are, all of which keep the claim. */
    public int check(String claim, Witness witness) {
        Case each = find(claim);
        Concern concern = new Concern(space, stepsTo, List.of(each));
        int told = steps(witness.situation());
        int most = told + (stepsTo.isSupposed(doing(witness.situation())) ? Concern.SUPPOSED : 0);
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
        assertThat(witness.steps().size()).isEqualTo(told);
        return fewer;
    }

    private static Condition.Doing doing(Situation situation) {
        return new Condition.Doing(situation.controller(), situation.feed(), situation.moment(), situation.still());
    }

    private int steps(Situation situation) {
        return stepsTo.count(doing(situation))
                + StepsTo.count(situation.supply())
                + stepsTo.count(situation.positions());
    }
}
