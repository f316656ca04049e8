package org.loomproof.workshop.prover.damage;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.explore.Variations;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Situation;

/**
 * A job as planned, which everything that is damaged is held against.
 *
 * @param brief with the kit set as the plan says
 * @param plan what is right
 * @param stock the vehicle as it came
 * @param fitted the vehicle with the plan carried out
 * @param signs what there is to see
 * @param askedAbout operables that some case asks about
 * @param watched the situations in which a person will look
 * @param margins of the cases that hold, by their ids
 * @param lasting ids of the cases that hold wherever ranged figures lie and however warm the car is
 * @param variations the ranged figures, each at either end
 */
public record AsPlanned(
        Brief brief,
        Plan plan,
        Vehicle stock,
        Vehicle fitted,
        Signs signs,
        Set<OperableId> askedAbout,
        List<Situation> watched,
        Map<String, Margin> margins,
        Set<String> lasting,
        Variations variations) {

    public AsPlanned {
        askedAbout = Set.copyOf(askedAbout);
        watched = List.copyOf(watched);
        margins = Map.copyOf(margins);
        lasting = Set.copyOf(lasting);
    }

    /** The same job with figures, and the car's warmth, taken elsewhere. */
    AsPlanned at(Corner corner) {
        return new AsPlanned(
                brief,
                plan,
                Vehicle.stock(brief, corner),
                Vehicle.fitted(brief, plan, corner),
                signs,
                askedAbout,
                watched,
                margins,
                lasting,
                variations);
    }
}
