package org.loomproof.workshop.wiring;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.kit.LeadId;

/**
 * Where the controller is in the network. All maps keep the kit's order.
 *
 * @param supply its own supply node, behind its supply leads
 * @param ground its own ground node, behind its ground leads
 * @param leastSupplyVolts it is without supply under this
 * @param leads the node of each lead's end
 * @param outputs each output lead as a meter reaches it: from the lead to the node the output drives it to
 * @param inputs each input lead
 * @param supplySwitches between each supply lead and the supply node; open when the supply is lost
 * @param groundSwitches between each ground lead and the ground node; open when the ground is lost
 * @param feedFuses the added fuses on the way to a supply lead; open when the fuse is out
 * @param fuseOutIsUnplugged whether nothing but wire lies between those fuses and the supply leads, so that the controller
 *     without its fuse is the controller unplugged
 */
public record ControllerParts(
        Node supply,
        Node ground,
        double leastSupplyVolts,
        Map<LeadId, Node> leads,
        Map<LeadId, Reach> outputs,
        Map<LeadId, InputReach> inputs,
        List<PartId> supplySwitches,
        List<PartId> groundSwitches,
        List<PartId> feedFuses,
        boolean fuseOutIsUnplugged) {

    public ControllerParts {
        leads = Collections.unmodifiableMap(new LinkedHashMap<>(leads));
        outputs = Collections.unmodifiableMap(new LinkedHashMap<>(outputs));
        inputs = Collections.unmodifiableMap(new LinkedHashMap<>(inputs));
        supplySwitches = List.copyOf(supplySwitches);
        groundSwitches = List.copyOf(groundSwitches);
        feedFuses = List.copyOf(feedFuses);
    }

    /** Everything that stays with the controller when its plugs are pulled. */
    public List<PartId> behindPlugs() {
        List<PartId> parts = new ArrayList<>(supplySwitches);
        parts.addAll(groundSwitches);
        outputs.values().forEach(output -> parts.add(output.part()));
        inputs.values().forEach(input -> parts.add(input.part()));
        return parts;
    }
}
