package org.loomproof.workshop.wiring;

import java.util.Set;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.sheet.OperableId;

/**
 * A contact and what works it.
 *
 * @param part the switch in the network
 * @param operatedBy what a person moves
 * @param closedAt the positions at which it is closed
 */
public record WorkedSwitch(PartId part, OperableId operatedBy, Set<String> closedAt) {

    public WorkedSwitch {
        closedAt = Set.copyOf(closedAt);
    }
}
