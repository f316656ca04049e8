package org.loomproof.network.time;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.LogicInput;
import org.loomproof.network.part.LogicLevel;
import org.loomproof.network.part.PartId;

/**
 * A controller's logic: in each state it drives certain outputs, and leaves the state when an input reads a level or a time
 * has passed. It begins in its first state.
 *
 * @param name of the block, for events
 * @param states one or more, names unique
 */
public record StateMachine(String name, List<State> states) implements Logic {
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

    @Override
    public Set<PartId> outputs() {
        Set<PartId> outputs = new LinkedHashSet<>();
        for (State state : states) {
            state.outputsOn().stream().sorted().forEach(outputs::add);
        }
        return outputs;
    }

    @Override
    public List<String> mistakesIn(Network network) {
        return inputs().stream()
                .filter(input -> !(network.part(input) instanceof LogicInput))
                .map(input -> input + " is no logic input: " + network.part(input))
                .toList();
    }

    @Override
    public Course begin(Network network) {
        return new Running(network);
    }

    private State state(String wanted) {
        return states.stream()
                .filter(state -> state.name().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(name + " has no state " + wanted));
    }

    private static Awaited awaited(Network network, WhenReads reads) {
        LogicInput input = (LogicInput) network.part(reads.input());
        double low = input.lowBelowVolts();
        double high = input.highAboveVolts();
        return switch (reads.level()) {
            case HIGH -> new Awaited(input.input(), input.ground(), high, Double.POSITIVE_INFINITY);
            case LOW -> new Awaited(input.input(), input.ground(), Double.NEGATIVE_INFINITY, low);
            case BETWEEN -> new Awaited(input.input(), input.ground(), low, high);
        };
    }

    private final class Running implements Course {
        private final Network network;
        private State state = states.getFirst();
        private double since;
        private List<Awaited> awaited;

        Running(Network network) {
            this.network = network;
            this.awaited = list();
        }

        private List<Awaited> list() {
            return state.exits().stream()
                    .filter(WhenReads.class::isInstance)
                    .map(exit -> StateMachine.awaited(network, (WhenReads) exit))
                    .toList();
        }

        @Override
        public Set<PartId> outputsOn() {
            return state.outputsOn();
        }

        @Override
        public List<Awaited> awaited() {
            return awaited;
        }

        @Override
        public double due() {
            double next = Double.POSITIVE_INFINITY;
            for (Exit exit : state.exits()) {
                if (exit instanceof After after) {
                    next = Math.min(next, since + after.seconds());
                }
            }
            return next;
        }

        @Override
        public Optional<String> move(double seconds, Predicate<Awaited> isThere) {
            for (Exit exit : state.exits()) {
                boolean taken = switch (exit) {
                    case WhenReads reads -> isThere.test(StateMachine.awaited(network, reads));
                    case After after -> since + after.seconds() <= seconds;
                };
                if (taken) {
                    state = state(exit.to());
                    since = seconds;
                    awaited = list();
                    return Optional.of(exit.to());
                }
            }
            return Optional.empty();
        }
    }
}
