package org.loomproof.workshop.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;

/** A part that the work adds. Terminals of relays carry their DIN 72552 numbers. */
public sealed interface AddedPart {

    /** Its name in the plan. */
    AddedPartId id();

    /** Its terminals, in a fixed order. */
    List<String> terminals();

    /**
     * A changeover relay of the cube kind: 86 and 85 coil, 30 common, 87 make, 87a break.
     *
     * @param coil coil resistance at 20 °C
     * @param pullIn it pulls in at or above this, at 20 °C
     * @param dropOut it lets go at or below this
     * @param makeRating what 87 may carry
     * @param breakRating what 87a may carry
     */
    record Relay(AddedPartId id, Ohms coil, Volts pullIn, Volts dropOut, Amps makeRating, Amps breakRating)
            implements AddedPart {
        @Override
        public List<String> terminals() {
            return List.of("86", "85", "30", "87", "87a");
        }
    }

    /**
     * A silicon diode: A anode, K cathode (the banded end).
     *
     * @param rating average forward current
     * @param reverse the most it blocks
     */
    record Diode(AddedPartId id, Amps rating, Volts reverse) implements Junction {}

    /**
     * A zener diode, terminals as a diode's: it conducts backwards too, from its volts on.
     *
     * @param rating the most for long, either way
     * @param volts from which it conducts from K to A
     */
    record Zener(AddedPartId id, Amps rating, Volts volts) implements Junction {}

    /** What has an anode A and a cathode K, the banded end. */
    sealed interface Junction extends AddedPart permits Diode, Zener {

        /** What it may carry. */
        Amps rating();

        @Override
        default List<String> terminals() {
            return List.of("A", "K");
        }
    }

    /**
     * A ready-made transistor buffer: {@code out} goes to {@code -} while {@code in} stands at the level it works on. Its input
     * is a resistance to the other pole, so next to nothing flows in a wire that it is hung on.
     *
     * @param worksOn the level at {@code in} that closes {@code out}; otherwise the input rests at the other pole
     * @param input resistance between {@code in} and the pole it rests at
     * @param switchesAt it switches at or above this, measured across the input
     * @param letsGoAt it lets go at or below this
     * @param closed resistance from {@code out} to {@code -} while it is switched
     * @param rating what {@code out} may carry
     */
    record Buffer(
            AddedPartId id, Port.Active worksOn, Ohms input, Volts switchesAt, Volts letsGoAt, Ohms closed, Amps rating)
            implements AddedPart {
        @Override
        public List<String> terminals() {
            return List.of("in", "out", "+", "-");
        }
    }

    /** A resistor: 1 and 2. */
    record Resistor(AddedPartId id, Ohms resistance) implements AddedPart {
        @Override
        public List<String> terminals() {
            return List.of("1", "2");
        }
    }

    /** A fuse in its holder: 1 towards the source, 2 towards the load. */
    record Fuse(AddedPartId id, Amps rating) implements AddedPart {
        @Override
        public List<String> terminals() {
            return List.of("1", "2");
        }
    }

    /**
     * One pole of a connector where added wires cross a hinge or go to a panel that comes off: 1 is on the half that is fixed, 2
     * on the half that moves.
     *
     * @param connector the connector that it belongs to
     * @param to what moves, by the words of the sheet, or the extra's name for the door that an extra lies in
     * @param rating what a contact may carry
     */
    record Pole(AddedPartId id, String connector, String to, Amps rating) implements AddedPart {
        @Override
        public List<String> terminals() {
            return List.of("1", "2");
        }
    }

    /**
     * A load that the work adds, such as the siren: + and −.
     *
     * @param extra the kit's name for it
     * @param draws what it draws at 12.6 V, or the most that a bare light-emitting diode may carry
     * @param forward volts across a bare light-emitting diode while it carries that; empty for any other load
     */
    record Load(AddedPartId id, String extra, Amps draws, Optional<Volts> forward) implements AddedPart {
        /** A load that is no bare light-emitting diode. */
        public Load(AddedPartId id, String extra, Amps draws) {
            this(id, extra, draws, Optional.empty());
        }

        @Override
        public List<String> terminals() {
            return List.of("+", "-");
        }
    }

    /**
     * The battery in a sounder that feeds itself, under charge: + and −. It hangs on a feed of its own whatever the controller does.
     *
     * @param extra the kit's name for the sounder
     * @param charging what it draws at 12.6 V while it charges
     * @param charged what it draws for long once it is full
     */
    record StandbyBattery(AddedPartId id, String extra, Amps charging, Amps charged) implements AddedPart {
        @Override
        public List<String> terminals() {
            return List.of("+", "-");
        }
    }

    /**
     * A button or sensor out of the box, on bare leads. A dry one has a contact between 1 and 2; a fed one hangs on + and - and
     * has a contact between the pole it closes to and 1, one of two stages another at 2, which closes at a hard blow only.
     *
     * @param extra the kit's name for it
     * @param draws what it draws at 12.6 V; empty for a dry one
     * @param closes what its contacts go to
     * @param twoStage whether it tells a light blow from a hard one
     * @param closed resistance of a contact while closed
     */
    record Sender(
            AddedPartId id, String extra, Optional<Amps> draws, Extra.Closes closes, boolean twoStage, Ohms closed)
            implements AddedPart {

        /**
         * One of its contacts.
         *
         * @param terminal where it is joined
         * @param pole the terminal it closes to
         * @param closedAt the positions at which it is closed
         */
        public record Stage(String terminal, String pole, Set<String> closedAt) {}

        @Override
        public List<String> terminals() {
            if (closes == Extra.Closes.DRY) {
                return List.of("1", "2");
            }
            return twoStage ? List.of("+", "-", "1", "2") : List.of("+", "-", "1");
        }

        /** What a person works it as. */
        public OperableId worked() {
            return Extra.workedAs(extra);
        }

        /** Its contacts, the one that closes first before the other. */
        public List<Stage> stages() {
            List<String> positions = Extra.positions(isTwoStage());
            String pole = switch (closes) {
                case DRY -> "2";
                case GROUND -> "-";
                case SUPPLY -> "+";
            };
            List<Stage> stages = new ArrayList<>();
            for (int stage = 1; stage < positions.size(); stage++) {
                stages.add(
                        new Stage(String.valueOf(stage), pole, Set.copyOf(positions.subList(stage, positions.size()))));
            }
            return stages;
        }

        /** A dry contact has one stage, whatever is said. */
        private boolean isTwoStage() {
            return twoStage && closes != Extra.Closes.DRY;
        }
    }

    /**
     * A pin switch added at an opening: closes to its mounting while the opening is open. 1 is the wire, 2 the body.
     *
     * @param opening which opening works it, by its name on the sheet
     */
    record PinSwitch(AddedPartId id, OperableId opening) implements AddedPart {
        @Override
        public List<String> terminals() {
            return List.of("1", "2");
        }
    }
}
