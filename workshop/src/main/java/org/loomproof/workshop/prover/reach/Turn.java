package org.loomproof.workshop.prover.reach;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.brief.kit.ControllerState;

/**
 * One way in which a fed controller goes from one of its states to another. This is the only list of them: the walk of its clocks
 * and the search through all that vehicle and controller come to both go by it, and each knows when a turn can be taken.
 *
 * @param cause what brings it about
 * @param to the state that is entered
 */
public record Turn(Cause cause, ControllerState to) {

    /** What brings a turn about. */
    public enum Cause {
        ARMED_BY_HAND("step.arm"),
        DISARMED_BY_HAND("step.disarm"),
        OVERRIDDEN("step.override"),
        OVERRIDE_LEFT("step.leave-override"),
        ARMING_OVER("step.wait-armed"),
        CAUSE_TO_WARN("step.warn"),
        CAUSE_TO_SOUND("step.sound"),
        WARNING_GOES_ON("step.sound"),
        WARNING_ENDS("step.wait-quiet"),
        SOUNDING_OVER("step.wait-quiet"),
        SOUNDS_AGAIN("step.sound");

        private final String step;

        Cause(String step) {
            this.step = step;
        }

        /** The key of what a person does, or waits for, to have it so. */
        String step() {
            return step;
        }
    }

    /** Every turn from a state, in a fixed order. */
    public static List<Turn> from(ControllerState state) {
        List<Turn> turns = new ArrayList<>(
                switch (state) {
                    case DISARMED -> List.of(new Turn(Cause.ARMED_BY_HAND, ControllerState.ARMING));
                    case ARMING -> List.of(new Turn(Cause.ARMING_OVER, ControllerState.ARMED), DISARM);
                    case ARMED ->
                        List.of(
                                new Turn(Cause.CAUSE_TO_WARN, ControllerState.WARNING),
                                new Turn(Cause.CAUSE_TO_SOUND, ControllerState.SOUNDING),
                                DISARM);
                    case WARNING ->
                        List.of(
                                new Turn(Cause.WARNING_GOES_ON, ControllerState.SOUNDING),
                                new Turn(Cause.WARNING_ENDS, ControllerState.ARMED),
                                DISARM);
                    case SOUNDING ->
                        List.of(
                                new Turn(Cause.SOUNDING_OVER, ControllerState.ARMED),
                                new Turn(Cause.SOUNDS_AGAIN, ControllerState.SOUNDING),
                                DISARM);
                    case OVERRIDE -> List.of(new Turn(Cause.OVERRIDE_LEFT, ControllerState.DISARMED));
                    case WITHOUT_SUPPLY ->
                        throw new IllegalArgumentException("a fed controller is never without supply");
                });
        if (state != ControllerState.OVERRIDE) {
            turns.add(new Turn(Cause.OVERRIDDEN, ControllerState.OVERRIDE));
        }
        return List.copyOf(turns);
    }

    private static final Turn DISARM = new Turn(Cause.DISARMED_BY_HAND, ControllerState.DISARMED);
}
