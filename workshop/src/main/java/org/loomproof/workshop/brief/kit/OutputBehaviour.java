package org.loomproof.workshop.brief.kit;

import java.util.Set;

/**
 * What one output does.
 *
 * @param lead which output
 * @param onIn the controller states in which it is on
 * @param timing how
 */
public record OutputBehaviour(LeadId lead, Set<ControllerState> onIn, OutputTiming timing) {

    public OutputBehaviour {
        onIn = Set.copyOf(onIn);
        if (onIn.contains(ControllerState.WITHOUT_SUPPLY)) {
            throw new IllegalArgumentException(lead + " cannot act without supply");
        }
    }
}
