package org.loomproof.workshop.prover.claim;

import java.util.EnumSet;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.wiring.ControllerFeed;

/**
 * When an output of a fed controller acts.
 *
 * @param onIn the states in which it does
 * @param when at which moment of them
 */
record Acting(Set<ControllerState> onIn, Moment when) {

    /** Whatever the controller does. */
    static final Acting ALWAYS = new Acting(EnumSet.allOf(ControllerState.class), Moment.SETTLED);

    Acting {
        onIn = Set.copyOf(onIn);
    }

    static Acting of(Behaviour behaviour, LeadId lead) {
        Set<ControllerState> onIn = EnumSet.noneOf(ControllerState.class);
        for (ControllerState state : ControllerState.values()) {
            if (behaviour.isOn(lead, state)) {
                onIn.add(state);
            }
        }
        return new Acting(onIn, behaviour.momentOf(lead));
    }

    boolean isNever() {
        return onIn.isEmpty();
    }

    boolean isIn(ControllerState state, ControllerFeed feed) {
        return feed == ControllerFeed.WHOLE && onIn.contains(state);
    }

    boolean isIn(Condition.Doing doing) {
        return doing.moment() == when && doing.still().isEmpty() && isIn(doing.state(), doing.feed());
    }
}
