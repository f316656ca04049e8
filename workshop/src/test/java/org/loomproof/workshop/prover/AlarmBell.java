package org.loomproof.workshop.prover;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.fault.Slip;
import org.loomproof.workshop.fault.Slips;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.verdict.ClaimResult;

/**
 * Tests the alarm bell: every slip that a plan's parts allow is made, one at a time, and the prover must object. A part that
 * may be left out without an objection is not needed, and is named.
 *
 * @param tried how many slips were made
 * @param caught those after which a claim no longer holds, each with the claims
 * @param notNeeded parts that may be left out
 * @param missed slips that nothing notices although the part is there
 */
public record AlarmBell(int tried, List<String> caught, List<String> notNeeded, List<String> missed) {

    /** Makes every slip of a plan that is right. */
    public static AlarmBell ring(Brief brief, Plan plan) {
        return ring(brief, plan, Slips.ofParts(plan));
    }

    /** Makes these slips of a plan that is right. */
    public static AlarmBell ring(Brief brief, Plan plan, List<? extends Slip.OfPart> slips) {
        List<String> before = ids(Prover.listObjections(brief, plan));
        List<String> caught = new ArrayList<>();
        List<String> notNeeded = new ArrayList<>();
        List<String> missed = new ArrayList<>();
        for (Slip.OfPart slip : slips) {
            List<String> now = new ArrayList<>(ids(Prover.listObjections(brief, slip.on(plan))));
            now.removeAll(before);
            if (!now.isEmpty()) {
                caught.add(slip + ": " + now);
            } else if (slip instanceof Slip.LeftOut) {
                notNeeded.add(slip.part().toString());
            } else {
                missed.add(slip.toString());
            }
        }
        return new AlarmBell(slips.size(), caught, notNeeded, missed);
    }

    private static List<String> ids(List<ClaimResult> results) {
        return results.stream().map(ClaimResult::id).toList();
    }

    /** One line with the counts. */
    public String summary(String plan) {
        return "%s: %d slips tried, %d caught, parts not needed: %s, missed: %s"
                .formatted(plan, tried, caught.size(), notNeeded, missed);
    }
}
