package org.loomproof.workshop.prover.product;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.wiring.ControllerFeed;

/**
 * One state of the controller as a machine.
 *
 * @param state what it does, or did before it went to sleep
 * @param pulses outputs with a pulse under way, whichever state has begun it; none without its feed, or asleep
 * @param lit whether what flashes is lit; never without its feed, or asleep
 * @param feed whether it gets supply and ground
 * @param asleep whether it is without supply
 * @param spent whether it has sounded for what is still open, and need not do so again
 */
record Control(
        ControllerState state, Set<LeadId> pulses, boolean lit, ControllerFeed feed, boolean asleep, boolean spent) {

    /** Disarmed and fed: where everything begins. */
    static final Control START =
            new Control(ControllerState.DISARMED, Set.of(), false, ControllerFeed.WHOLE, false, false);

    Control {
        pulses = Collections.unmodifiableSet(new TreeSet<>(pulses));
    }

    /** The outputs that it drives. */
    Set<LeadId> on(Behaviour behaviour) {
        Set<LeadId> on = new TreeSet<>(behaviour.listOn(state, Moment.SETTLED));
        on.addAll(pulses);
        if (lit) {
            on.addAll(behaviour.listOf(state, OutputTiming.FLASHING));
        }
        return on;
    }

    /** It has gone over to a state of its own. */
    Control in(ControllerState next, Set<LeadId> underWay, boolean nowLit) {
        return new Control(next, underWay, nowLit, feed, false, false);
    }

    Control with(Set<LeadId> underWay) {
        return new Control(state, underWay, lit, feed, asleep, spent);
    }

    Control lit(boolean now) {
        return new Control(state, pulses, now, feed, asleep, spent);
    }

    Control fedBy(ControllerFeed next) {
        return new Control(state, Set.of(), false, next, asleep, spent);
    }

    Control fallenAsleep() {
        return new Control(state, Set.of(), false, feed, true, false);
    }

    Control spentFor(boolean whatIsOpen) {
        return new Control(state, pulses, lit, feed, asleep, whatIsOpen);
    }

    boolean isAwake(ControllerState wanted) {
        return !asleep && state == wanted;
    }
}
