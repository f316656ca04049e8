package org.loomproof.network.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A switch of several positions and poles, all moved together from outside. In each position every pole joins its common to
 * one throw or to nothing. At rest it stands in position 0. Break before make.
 *
 * @param poles one or more, all of the same number of positions
 * @param closedOhms resistance of a closed contact, above zero
 */
public record SelectorSwitch(PartId id, List<Pole> poles, double closedOhms) implements Part {
    /**
     * One pole.
     *
     * @param common the moving contact
     * @param throwAt for each position the node joined, or empty for none
     */
    public record Pole(Node common, List<Optional<Node>> throwAt) {
        public Pole {
            throwAt = List.copyOf(throwAt);
        }

        /** A pole that joins one node after the other. */
        public static Pole of(Node common, Node... throwAt) {
            return new Pole(common, List.of(throwAt).stream().map(Optional::of).toList());
        }
    }

    /** Positions are kept in a byte. */
    public static final int MOST_POSITIONS = 100;

    public SelectorSwitch {
        poles = List.copyOf(poles);
        Require.that(!poles.isEmpty(), "a switch needs a pole", id);
        int positions = poles.getFirst().throwAt().size();
        Require.that(
                positions >= 1 && positions <= MOST_POSITIONS, "it needs 1 to " + MOST_POSITIONS + " positions", id);
        Require.that(
                poles.stream().allMatch(pole -> pole.throwAt().size() == positions),
                "all poles must have the same number of positions",
                id);
        Require.positive(closedOhms, "closed ohms", id);
    }

    /** How many positions it has, the same for all poles. */
    public int positions() {
        return poles.getFirst().throwAt().size();
    }

    /** For each pole {@code common}, then {@code at-0}, {@code at-1} … as far as joined; from the second pole on numbered. */
    @Override
    public List<Pin> pins() {
        List<Pin> pins = new ArrayList<>();
        for (int k = 0; k < poles.size(); k++) {
            String suffix = k == 0 ? "" : "-" + (k + 1);
            Pole pole = poles.get(k);
            pins.add(new Pin("common" + suffix, pole.common()));
            for (int position = 0; position < pole.throwAt().size(); position++) {
                String name = "at-" + position + suffix;
                pole.throwAt().get(position).ifPresent(node -> pins.add(new Pin(name, node)));
            }
        }
        return List.copyOf(pins);
    }
}
