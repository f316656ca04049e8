package org.loomproof.workshop.planner.cut;

import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Driving.Side;

/**
 * What works coils: the output of a lead, or a leg of the car's own motors that the lead drives.
 *
 * @param lead the lead with which they are drawn
 * @param owner of the local names of what hangs on it
 * @param end from where they are worked
 * @param gives the pole that it gives while it works
 * @param port what it bears and what it lets back
 */
public record CoilSource(Lead lead, String owner, End end, Side gives, Port port) {

    /** The output of a lead; one that gives no pole is an error. */
    public static CoilSource of(Lead lead) {
        return new CoilSource(
                lead,
                lead.id().toString(),
                Draft.lead(lead),
                Side.of(lead.port()).orElseThrow(),
                lead.port());
    }

    /** A leg that the lead drives: like a supply it bears any coil, and nothing gets through it into a controller. */
    public static CoilSource leg(Lead lead, End driven, Side gives) {
        return new CoilSource(lead, lead.id() + " follower", driven, gives, new Port.Supply());
    }

    /** True for an output, false for a leg. */
    public boolean isOutput() {
        return end instanceof End.OfLead;
    }
}
