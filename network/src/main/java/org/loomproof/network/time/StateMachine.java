package org.loomproof.network.time;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomproof.network.part.LogicLevel;
import org.loomproof.network.part.PartId;

/**
 * A controller's logic: in each state it drives certain outputs, and leaves the state when an input reads a level or a time
 * has passed. It begins in its first state. Whether an output has supply enough to be driven is the output's affair.
 *
 * @param name of the block, for events
 * @param states one or more, names unique
 */
public record StateMachine(String name, List<State> states) {
    /**
     * One state.
     *
     * @param outputsOn what is driven in it; all others of the machine let go
     * @param exits looked at in this order; the first that applies is taken
     */
    public record State(String name, Set<PartId> outputsOn, List<Exit> exits) {
        public State {
            outputsOn = Set.copyOf(outputsOn);
            exits = List.copyOf(exits);
        }
    }

    /** A way out of a state. */
    public sealed interface Exit {
        /** Name of the state entered. */
        String to();
    }

    /** Taken as soon as an input reads this level: at once when it does already. */
    public record WhenReads(PartId input, LogicLevel level, String to) implements Exit {}

    /**
     * Taken when the state has lasted so long.
     *
     * @param seconds above zero
     */
    public record After(double seconds, String to) implements Exit {
        public After {
            if (!(seconds > 0)) {
                throw new IllegalArgumentException("a timer needs a time above zero, was " + seconds);
            }
        }
    }

    public StateMachine {
        states = List.copyOf(states);
        List<String> mistakes = new ArrayList<>();
        Set<String> names = new LinkedHashSet<>();
        for (State state : states) {
            if (!names.add(state.name())) {
                mistakes.add("two states are named " + state.name());
            }
        }
        for (State state : states) {
            for (Exit exit : state.exits()) {
                if (!names.contains(exit.to())) {
                    mistakes.add(state.name() + " leads to " + exit.to() + ", which is no state; there are " + names);
                }
            }
        }
        if (states.isEmpty()) {
            mistakes.add("a machine needs a state");
        }
        if (!mistakes.isEmpty()) {
            throw new IllegalArgumentException(name + ": " + String.join("; ", mistakes));
        }
    }

    /** All inputs it reads, in the order of its states. */
    public Set<PartId> inputs() {
        Set<PartId> inputs = new LinkedHashSet<>();
        for (State state : states) {
            for (Exit exit : state.exits()) {
                if (exit instanceof WhenReads reads) {
                    inputs.add(reads.input());
                }
            }
        }
        return inputs;
    }

    /** All outputs it drives in some state, by name. */
    public Set<PartId> outputs() {
        Set<PartId> outputs = new LinkedHashSet<>();
        for (State state : states) {
            state.outputsOn().stream().sorted().forEach(outputs::add);
        }
        return outputs;
    }

    State state(String wanted) {
        return states.stream()
                .filter(state -> state.name().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(name + " has no state " + wanted));
    }
}
