package org.loomproof.workshop.prover.product;

import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.wiring.ControllerFeed;

/**
 * One state of the controller as a machine.
 *
 * @param state what it does, or did before it went to sleep
 * @param moment whether pulses and flashes of that are on
 * @param feed whether it gets supply and ground
 * @param asleep whether it is without supply
 * @param spent whether it has sounded for what is still open, and need not do so again
 */
record Control(ControllerState state, Moment moment, ControllerFeed feed, boolean asleep, boolean spent) {

    /** Disarmed and fed: where everything begins. */
    static final Control START =
            new Control(ControllerState.DISARMED, Moment.SETTLED, ControllerFeed.WHOLE, false, false);

    /** What it asks of the network; without its feed, or asleep, only what is steady counts. */
    Condition.Doing doing() {
        boolean settled = asleep || feed != ControllerFeed.WHOLE;
        return new Condition.Doing(state, feed, settled ? Moment.SETTLED : moment);
    }

    /** It has gone over to a state of its own. */
    Control in(ControllerState next) {
        return new Control(next, Moment.ACTING, feed, false, false);
    }

    Control at(Moment next) {
        return new Control(state, next, feed, asleep, spent);
    }

    Control fedBy(ControllerFeed next) {
        return new Control(state, Moment.SETTLED, next, asleep, spent);
    }

    Control fallenAsleep() {
        return new Control(state, Moment.SETTLED, feed, true, false);
    }

    Control spentFor(boolean whatIsOpen) {
        return new Control(state, moment, feed, asleep, whatIsOpen);
    }

    boolean isAwake(ControllerState wanted) {
        return !asleep && state == wanted;
    }
}
