package org.loomproof.workshop.prover.claim;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.explore.CutLoads;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.explore.WorkedLoads;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.words.Phrase;

/**
 * A job as the claims see it.
 *
 * @param brief what is given
 * @param plan what is to be shown right
 * @param stock the vehicle as it came, every figure at its typical value
 * @param fitted the vehicle with the plan carried out, likewise
 */
public record Fitting(Brief brief, Plan plan, Vehicle stock, Vehicle fitted) {

    /** The leads that are connected for a wish, in the kit's order. */
    public List<Hookup.Connect> connected(Wish wish) {
        return connected().stream().filter(c -> c.serves() == wish).toList();
    }

    /** All leads that are connected, in the kit's order. */
    public List<Hookup.Connect> connected() {
        return plan.hookups().stream()
                .filter(Hookup.Connect.class::isInstance)
                .map(Hookup.Connect.class::cast)
                .toList();
    }

    /** Where the lead leaves the controller of the fitted vehicle; empty where it is no output. */
    Optional<Reach> output(LeadId lead) {
        return Optional.ofNullable(
                fitted.wired().controller().orElseThrow().outputs().get(lead));
    }

    /** The leads that wait for a measurement before they can serve a wish. */
    List<Hookup.Hold> onHold(Wish wish) {
        return plan.hookups().stream()
                .filter(Hookup.Hold.class::isInstance)
                .map(Hookup.Hold.class::cast)
                .filter(h -> h.serves() == wish)
                .toList();
    }

    /** A lead that the controller lives on and that waits for a measurement: until then nothing of what it does is known. */
    public Optional<Hookup.Hold> lifeOnHold() {
        return plan.hookups().stream()
                .filter(Hookup.Hold.class::isInstance)
                .map(Hookup.Hold.class::cast)
                .filter(h -> switch (brief.kit().lead(h.lead()).port()) {
                    case Port.Supply supply -> true;
                    case Port.Ground ground -> true;
                    case Port.Input input -> false;
                    case Port.LowSide output -> false;
                    case Port.HighSide output -> false;
                    case Port.ToExtra plug -> false;
                })
                .findFirst();
    }

    /** True when the wish is asked for and not turned down. */
    boolean isWanted(Wish wish) {
        return brief.order().wishes().contains(wish) && plan.refusals().stream().noneMatch(r -> r.wish() == wish);
    }

    /** True when a lead is connected or waits for the wish. */
    boolean isServed(Wish wish) {
        return !connected(wish).isEmpty()
                || !onHold(wish).isEmpty()
                || (wish == Wish.SECOND_SOUNDER
                        && connected(Wish.SIREN).stream().anyMatch(connect -> countLoads(connect) > 1))
                || (wish == Wish.LOCK_ACTUATORS
                        && connected(Wish.LOCKS).stream().anyMatch(connect -> countLoads(connect) > 0));
    }

    /** How many added loads hang on a lead; each is shown to get its volts. */
    private long countLoads(Hookup.Connect connect) {
        return connect.parts().stream()
                .filter(id -> plan.findPart(id)
                        .filter(AddedPart.Load.class::isInstance)
                        .isPresent())
                .count();
    }

    /** What no longer works in the stock vehicle when the wires of these circuits are cut. */
    List<ElementId> loadsBehind(Set<CircuitId> circuits) {
        return CutLoads.list(brief, stock, circuits);
    }

    /** What works in the stock vehicle while the circuit's own switches work it. */
    List<ElementId> loadsWorkedBy(CircuitId circuit) {
        return WorkedLoads.list(brief, stock, circuit);
    }

    /** What reads a level of its own in the stock vehicle while the circuit's own switches work it. */
    List<ElementId> inputsWorkedBy(CircuitId circuit) {
        return WorkedLoads.listInputs(brief, stock, circuit);
    }

    /** A result that waits for what a lead on hold waits for. */
    public static Claimed.Decided open(String id, Phrase statement, Hookup.Hold hold) {
        Phrase because = Phrase.of("open.on-hold", hold.lead(), hold.because());
        return new Claimed.Decided(
                new ClaimResult(id, statement, new Verdict.Open(because, List.of(hold.until())), List.of()));
    }

    /** A result that nothing in the plan decides. */
    static Claimed open(String id, Phrase statement, Phrase because) {
        return new Claimed.Decided(new ClaimResult(id, statement, new Verdict.Open(because, List.of()), List.of()));
    }
}
