package org.loomproof.workshop.goods.shelf;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.goods.joint.PlacedJoint;
import org.loomproof.workshop.plan.Plan;

/**
 * Everything that one plan needs.
 *
 * @param items what is needed, the box first, then bin by bin
 * @param tools what to have at hand
 * @param unsized joints for which nothing could be counted, since nobody said how thick the factory wire is
 */
public record PickList(List<Item> items, Set<Tool> tools, List<PlacedJoint> unsized) {

    public PickList {
        items = List.copyOf(items);
        tools = Collections.unmodifiableSet(EnumSet.copyOf(tools));
        unsized = List.copyOf(unsized);
    }

    /** Counts a plan. */
    public static PickList of(Brief brief, Plan plan) {
        return new Picking(brief, plan).count();
    }
}
