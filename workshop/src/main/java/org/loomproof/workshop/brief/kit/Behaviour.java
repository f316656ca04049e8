package org.loomproof.workshop.brief.kit;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.quantity.Seconds;

/**
 * How the controller behaves.
 *
 * @param armingDelay from the command to armed
 * @param triggers the inputs that raise the alarm when armed
 * @param instantTriggers those of them that do so without a warning first
 * @param outputs what each output does; an output not named never acts
 * @param soundingTime how long one alarm sounds, when said
 */
public record Behaviour(
        Figure<Seconds> armingDelay,
        Set<LeadId> triggers,
        Set<LeadId> instantTriggers,
        List<OutputBehaviour> outputs,
        Optional<Figure<Seconds>> soundingTime) {

    /** A controller of which nobody says how long it sounds. */
    public Behaviour(
            Figure<Seconds> armingDelay,
            Set<LeadId> triggers,
            Set<LeadId> instantTriggers,
            List<OutputBehaviour> outputs) {
        this(armingDelay, triggers, instantTriggers, outputs, Optional.empty());
    }

    public Behaviour {
        triggers = Collections.unmodifiableSet(new TreeSet<>(triggers));
        instantTriggers = Collections.unmodifiableSet(new TreeSet<>(instantTriggers));
        outputs = List.copyOf(outputs);
    }

    /** The outputs that are on at that moment of the state, in the kit's order. */
    public Set<LeadId> listOn(ControllerState state, Moment moment) {
        Set<LeadId> on = new LinkedHashSet<>();
        for (OutputBehaviour output : outputs) {
            if (output.onIn().contains(state) && isOn(output.timing(), moment)) {
                on.add(output.lead());
            }
        }
        return Collections.unmodifiableSet(on);
    }

    /** The outputs with that timing that act in the state, in the kit's order. */
    public Set<LeadId> listOf(ControllerState state, OutputTiming timing) {
        Set<LeadId> all = new LinkedHashSet<>();
        for (OutputBehaviour output : outputs) {
            if (output.timing() == timing && output.onIn().contains(state)) {
                all.add(output.lead());
            }
        }
        return Collections.unmodifiableSet(all);
    }

    /** Whether that moment of the state has pulses in it that begin as the state is entered, and never again while it lasts. */
    public boolean isJustEntered(ControllerState state, Moment moment) {
        return moment == Moment.ACTING
                && outputs.stream()
                        .anyMatch(output -> output.timing() == OutputTiming.PULSE
                                && output.onIn().contains(state));
    }

    private static boolean isOn(OutputTiming timing, Moment moment) {
        return switch (timing) {
            case STEADY -> true;
            case PULSE, FLASHING -> moment == Moment.ACTING;
            case SECOND_PULSE -> moment == Moment.AGAIN;
        };
    }

    /** The moment of its states at which the output surely is on. */
    public Moment momentOf(LeadId output) {
        return outputs.stream().anyMatch(o -> o.lead().equals(output) && o.timing() == OutputTiming.SECOND_PULSE)
                ? Moment.AGAIN
                : Moment.ACTING;
    }

    /** What flashes is on half of the time. */
    private static final double FLASHING = 0.5;

    /** The share of the time that the output is on while the state lasts; pulses are over by then. */
    public double shareOn(LeadId output, ControllerState state) {
        return outputs.stream()
                .filter(o -> o.lead().equals(output) && o.onIn().contains(state))
                .mapToDouble(o -> switch (o.timing()) {
                    case STEADY -> 1;
                    case FLASHING -> FLASHING;
                    case PULSE, SECOND_PULSE -> 0;
                })
                .findFirst()
                .orElse(0);
    }

    /** True when something waits for a command that is given again. */
    public boolean tellsTheSecondCommand() {
        return outputs.stream().anyMatch(o -> o.timing() == OutputTiming.SECOND_PULSE);
    }

    /** True when the output is on in the state, be it for a pulse. */
    public boolean isOn(LeadId output, ControllerState state) {
        return outputs.stream()
                .anyMatch(o -> o.lead().equals(output) && o.onIn().contains(state));
    }
}
