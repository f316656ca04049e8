package org.loomproof.workshop.prover;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.fault.Mishap;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.claim.Claim;
import org.loomproof.workshop.prover.claim.Claimed;
import org.loomproof.workshop.prover.claim.Fitting;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.explore.Answers;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Standing;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Situation;

/**
 * A fitted vehicle, sound or with one mishap, beside the vehicle as it came: solved in one situation after another, every figure
 * at its typical value. Not for sharing between threads.
 */
public final class LiveVehicle {

    private final Vehicle stock;
    private final Vehicle fitted;
    private final Standing standing;
    private final Workbench bench = new Workbench();

    private LiveVehicle(Vehicle stock, Vehicle fitted, Standing standing) {
        this.stock = stock;
        this.fitted = fitted;
        this.standing = standing;
    }

    /** The vehicle of a job, as planned or with something wrong. */
    public static LiveVehicle of(Brief given, Plan plan, Optional<Mishap> wrong) {
        Brief brief = given.set(plan.settings());
        Vehicle stock = Vehicle.stock(brief, Corner.TYPICAL);
        Vehicle planned = Vehicle.fitted(brief, plan, Corner.TYPICAL);
        Optional<Damage> damage = wrong.map(mishap -> Damage.of(mishap, plan, planned.wired()));
        Vehicle shown = damage.map(d -> d.vehicle(brief)).orElse(planned);
        Plan inTheCar = damage.map(Damage::plan).orElse(plan);
        Vehicle asWired = inTheCar.equals(plan) ? planned : Vehicle.fitted(brief, inTheCar, Corner.TYPICAL);
        List<Case> cases = cases(new Fitting(brief, inTheCar, stock, asWired));
        return new LiveVehicle(stock, shown, new Standing(brief, stock, planned, shown, cases));
    }

    /** What is to be shown in every situation; what figures decide has no moment. */
    static List<Case> cases(Fitting fitting) {
        return Claim.all().stream()
                .filter(Claim::isWalked)
                .flatMap(claim -> claim.in(fitting).stream())
                .filter(Claimed.ToShow.class::isInstance)
                .map(claimed -> ((Claimed.ToShow) claimed).toShow())
                .toList();
    }

    /** The vehicle as it came. */
    public Vehicle stock() {
        return stock;
    }

    /** The fitted vehicle, with what is wrong. */
    public Vehicle fitted() {
        return fitted;
    }

    /** Every point of rest of one of the two; the one from power-up first. */
    public Answers answers(Vehicle either, Situation situation) {
        return bench.answers(either, either.settings().of(situation));
    }

    /** Where the claims stand there. */
    public Standing.Found claims(Situation situation) {
        return standing.at(situation);
    }
}
