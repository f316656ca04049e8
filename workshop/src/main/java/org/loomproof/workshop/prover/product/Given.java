package org.loomproof.workshop.prover.product;

import java.util.Set;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.prover.claim.Triggers.Trigger;
import org.loomproof.workshop.prover.explore.Answers;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.prover.explore.Vehicle;

/**
 * What the network gives the controller in one situation: whether it lives, and how its triggers read. What lies between two
 * thresholds, floats or has no point of rest may be read either way.
 *
 * @param bits which of the statements are true
 */
record Given(int bits) {

    private static final int LOOKED_AT = 1;
    private static final int MAY_LIVE = 1 << 1;
    private static final int MAY_SLEEP = 1 << 2;
    private static final int MAY_WARN = 1 << 3;
    private static final int MAY_SOUND = 1 << 4;
    private static final int SURELY_RAISED = 1 << 5;
    private static final int UNSETTLED = 1 << 6;

    /** How many there can be. */
    static final int ALL = 1 << 7;

    /** Nothing was looked at yet. */
    static final Given NOTHING = new Given(0);

    /** What the answers come to for a controller with those triggers. */
    static Given of(Vehicle fitted, Answers answers, Iterable<Trigger> triggers, Set<LeadId> instant) {
        return switch (answers) {
            case Answers.AtRest rest -> atRest(fitted, rest, triggers, instant);
            case Answers.Chatters chatters -> anything();
            case Answers.Lost lost -> anything();
        };
    }

    private static Given anything() {
        return new Given(LOOKED_AT | MAY_LIVE | MAY_SLEEP | MAY_WARN | MAY_SOUND | UNSETTLED);
    }

    private static Given atRest(Vehicle fitted, Answers.AtRest rest, Iterable<Trigger> triggers, Set<LeadId> instant) {
        int bits = LOOKED_AT;
        boolean surelyRaised = true;
        for (OperatingPoint point : rest.points()) {
            Reading reading = new Reading(fitted, point);
            bits |= reading.aliveByVolts() < 0 ? MAY_SLEEP : MAY_LIVE;
            boolean raised = false;
            for (Trigger trigger : triggers) {
                raised |= trigger.activeBy(reading) >= 0;
                if (trigger.restingBy(reading) < 0) {
                    bits |= instant.contains(trigger.lead()) ? MAY_SOUND : MAY_WARN;
                }
            }
            surelyRaised &= raised;
        }
        return new Given(surelyRaised ? bits | SURELY_RAISED : bits);
    }

    /** The same where further triggers may be read either way. */
    Given withDoubt(boolean ofWarning, boolean ofInstant) {
        return new Given(bits | (ofWarning ? MAY_WARN : 0) | (ofInstant ? MAY_SOUND : 0));
    }

    private boolean is(int statement) {
        return (bits & statement) != 0;
    }

    boolean isLookedAt() {
        return is(LOOKED_AT);
    }

    /** At some point of rest the controller has the volts it needs. */
    boolean mayLive() {
        return is(MAY_LIVE);
    }

    /** At some point of rest it has not. */
    boolean maySleep() {
        return is(MAY_SLEEP);
    }

    /** Some trigger that warns first is not surely at rest. */
    boolean mayWarn() {
        return is(MAY_WARN);
    }

    /** Some trigger that sounds at once is not surely at rest. */
    boolean maySound() {
        return is(MAY_SOUND);
    }

    /** Some trigger is surely active, whatever contacts did before. */
    boolean isSurelyRaised() {
        return is(SURELY_RAISED);
    }

    /** Every trigger is surely at rest. */
    boolean isQuiet() {
        return !mayWarn() && !maySound();
    }

    /** Contacts chatter or no answer was found: everything is taken to be possible. */
    boolean isUnsettled() {
        return is(UNSETTLED);
    }
}
