package org.loomproof.workshop.planner.coupling;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.quantity.Amps;

/** What an output works: a factory wire, or loads out of the kit's box, which hang on one wire and have their other pole to themselves. */
public sealed interface Target {

    /** What tells it from the others of one lead. */
    String name();

    /** The factory circuit, if it is one. */
    Optional<Circuit> wire();

    /** What a fuse of the controller sees of it while it carries that. */
    Amps fromController(Amps carries);

    /** A factory wire. */
    record Wire(Circuit circuit) implements Target {
        @Override
        public String name() {
            return circuit.id().value();
        }

        @Override
        public Optional<Circuit> wire() {
            return Optional.of(circuit);
        }

        @Override
        public Amps fromController(Amps carries) {
            return carries;
        }
    }

    /**
     * Loads out of the kit's box.
     *
     * @param items from the one nearest to the controller on
     * @param most what they draw together at the highest supply
     */
    record Loads(List<AddedLoad.Item> items, Amps most) implements Target {

        public Loads {
            items = List.copyOf(items);
        }

        @Override
        public String name() {
            return "loads";
        }

        @Override
        public Optional<Circuit> wire() {
            return Optional.empty();
        }

        @Override
        public Amps fromController(Amps carries) {
            return most;
        }

        /** What that one and those behind it draw for long. */
        public Amps from(int first) {
            return new Amps(items.stream()
                    .skip(first)
                    .mapToDouble(item -> item.draws().value())
                    .sum());
        }
    }
}
