package org.loomproof.workshop.prover.reach;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;

/**
 * What a controller does at one time.
 *
 * @param state its state
 * @param pulses outputs whose pulse this state has begun
 * @param left outputs whose pulse an earlier state has begun; whether the controller lets it end or cuts it short, nobody says
 */
record Mode(ControllerState state, Set<LeadId> pulses, Set<LeadId> left) {

    Mode {
        pulses = Collections.unmodifiableSet(new TreeSet<>(pulses));
        left = Collections.unmodifiableSet(new TreeSet<>(left));
    }

    /** All outputs with a pulse under way. */
    Set<LeadId> running() {
        Set<LeadId> running = new TreeSet<>(pulses);
        running.addAll(left);
        return running;
    }

    /** The same with a pulse over. */
    Mode without(LeadId output) {
        Set<LeadId> stillOwn = new TreeSet<>(pulses);
        Set<LeadId> stillLeft = new TreeSet<>(left);
        stillOwn.remove(output);
        stillLeft.remove(output);
        return new Mode(state, stillOwn, stillLeft);
    }

    /** Another state entered, which begins these pulses. */
    Mode enter(ControllerState next, Set<LeadId> begun) {
        Set<LeadId> stillLeft = running();
        stillLeft.removeAll(begun);
        return new Mode(next, begun, stillLeft);
    }
}
