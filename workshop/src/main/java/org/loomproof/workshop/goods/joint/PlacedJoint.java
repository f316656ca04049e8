package org.loomproof.workshop.goods.joint;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.WireId;
import org.loomproof.workshop.sizing.JointChoice;

/**
 * One joint of the plan.
 *
 * @param name what it is called on every paper: a terminal by its part and number, any other by a number of its own
 * @param place where it is
 * @param wires the added wires that meet there, in the plan's order
 * @param choice how it is made; empty where nobody said how thick the factory wire is
 */
public record PlacedJoint(String name, End place, List<WireId> wires, Optional<JointChoice> choice) {

    public PlacedJoint {
        wires = List.copyOf(wires);
    }
}
