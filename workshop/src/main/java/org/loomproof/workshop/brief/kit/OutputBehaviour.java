package org.loomproof.workshop.brief.kit;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;

/**
 * What one output does.
 *
 * @param lead which output
 * @param onIn the controller states in which it is on
 * @param timing how
 */
public record OutputBehaviour(LeadId lead, Set<ControllerState> onIn, OutputTiming timing) {

    public OutputBehaviour {
        onIn = Collections.unmodifiableSet(new TreeSet<>(onIn));
        if (onIn.contains(ControllerState.WITHOUT_SUPPLY)) {
            throw new IllegalArgumentException(lead + " cannot act without supply");
        }
    }
}
