package org.loomproof.workshop.planner.grammar;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.grammar.Coil.Driver;
import org.loomproof.workshop.planner.grammar.Sense.Held;
import org.loomproof.workshop.planner.grammar.Tie.Way;
import org.loomproof.workshop.planner.grammar.Word.Buffering;

/**
 * What poles alone say of a word that reads wires, while all rest, while one is active among resting ones, and while all are
 * active. Of two levels that meet the stronger stands: a switch or a contact before a resistor or a load, that before the
 * input's own pull.
 */
final class SenseJudge implements Judge {

    private static final int OWN = 1;
    private static final int WEAK = 2;
    private static final int FIRM = 3;

    private final Sense sense;
    private final Set<Held> atRest;
    private final Set<Held> oneActive;
    private final Set<Held> allActive;
    private final boolean joinDoes;

    SenseJudge(Sense sense) {
        this.sense = sense;
        this.atRest = EnumSet.of(sense.rest());
        this.oneActive = sense.several() ? EnumSet.of(sense.rest(), sense.active()) : EnumSet.of(sense.active());
        this.allActive = EnumSet.of(sense.active());
        this.joinDoes = Stream.of(Pull.values())
                .flatMap(pull -> Tie.all(List.of(Gate.ALWAYS)).stream()
                        .map(tie -> new Word(tie, Tie.NONE, Tie.NONE, List.of(), Buffering.NONE, pull)))
                .anyMatch(this::tells);
    }

    /** What the target is at; a level of no strength is none. */
    private record Seen(int high, int low) {

        boolean isAt(Side pole) {
            return pole == Side.HIGH ? high > low : low > high;
        }

        boolean isShort() {
            return high == FIRM && low == FIRM;
        }
    }

    @Override
    public Optional<LeftOut> leaveOut(Grammar.Block block) {
        if (block.coils().size() > 1) {
            // One changeover contact gives the target either pole in either state: a second relay says what the first
            // says.
            return Optional.of(LeftOut.SAME_WITH_FEWER);
        }
        boolean onSource = block.coils().stream().anyMatch(coil -> coil.driver() == Driver.SOURCE)
                && block.buffer() != Buffering.NONE;
        if (onSource) {
            // Where the wire bears the coil, the relay's other contact does what the buffer would.
            return Optional.of(LeftOut.SAME_WITH_FEWER);
        }
        boolean letGo = sense.rest() == Held.OPEN || sense.active() == Held.OPEN;
        if (block.pull() != Pull.NONE && !letGo) {
            return Optional.of(LeftOut.IDLE_PART);
        }
        if (!sense.guarded() && joinDoes && (!block.coils().isEmpty() || block.buffer() != Buffering.NONE)) {
            return Optional.of(LeftOut.SAME_WITH_FEWER);
        }
        return Optional.ofNullable(
                block.coils().isEmpty() ? null : coil(block.coils().getFirst()));
    }

    private @Nullable LeftOut coil(Coil coil) {
        if (coil.driver() != Driver.SOURCE) {
            return null;
        }
        Side worksAt = Word.opposite(coil.pole());
        if (sense.rest().isFirm(worksAt)) {
            return LeftOut.DRAWS_AT_REST;
        }
        if (!sense.active().isFirm(worksAt)) {
            return LeftOut.IDLE_PART;
        }
        if (coil.isolated() != sense.several()) {
            return sense.several() ? LeftOut.JOINS_TARGETS : LeftOut.IDLE_PART;
        }
        return null;
    }

    @Override
    public Optional<LeftOut> leaveOut(Word word) {
        return Optional.ofNullable(reason(word));
    }

    private @Nullable LeftOut reason(Word word) {
        boolean active = !word.coils().isEmpty() || word.buffer() != Buffering.NONE;
        if (active && word.through().joined()) {
            // Either the joint tells and the rest is idle, or the rest tells and the joint only loads it.
            return LeftOut.SAME_WITH_FEWER;
        }
        if (word.fromSupply().hasDiode() || word.toBody().hasDiode()) {
            return LeftOut.IDLE_PART;
        }
        if (!word.coils().isEmpty() && !isByContactAlone(word)) {
            // The changeover contact gives both poles, firmly.
            return LeftOut.SAME_WITH_FEWER;
        }
        for (Set<Held> state : List.of(atRest, oneActive, allActive)) {
            if (see(word, state).isShort()) {
                return LeftOut.SHORT;
            }
        }
        if (Stream.of(atRest, allActive).anyMatch(state -> feedsWire(word, state))) {
            return LeftOut.FEEDS_WIRE;
        }
        if (see(word, atRest).isAt(sense.reads())) {
            return LeftOut.WORKS_AT_REST;
        }
        if (!tells(word)) {
            return LeftOut.NEVER_WORKS;
        }
        if (!word.coils().isEmpty() && isWorked(word, atRest)) {
            return LeftOut.DRAWS_AT_REST;
        }
        if (sense.several() && word.through().joined() && !word.through().hasDiode()) {
            return LeftOut.JOINS_TARGETS;
        }
        return fewer(word).anyMatch(this::tells) ? LeftOut.IDLE_PART : null;
    }

    private static boolean isByContactAlone(Word word) {
        return Stream.of(word.fromSupply(), word.toBody())
                .allMatch(tie -> !tie.joined() || (tie.gate().relay() > 0 && !tie.resistor()));
    }

    /** True when the target is at the pole that is read as soon as one wire is active, and at the other while all rest. */
    private boolean tells(Word word) {
        return see(word, atRest).isAt(Word.opposite(sense.reads()))
                && see(word, oneActive).isAt(sense.reads())
                && see(word, allActive).isAt(sense.reads());
    }

    /** The word with one thing less, where nothing but the level asks for that thing. */
    private Stream<Word> fewer(Word word) {
        Tie through = word.through();
        boolean diodeWanted = sense.several() || sense.guarded();
        boolean resistorWanted = sense.guarded() && !through.hasDiode();
        return Stream.of(
                        Stream.of(word.with(Pull.NONE)),
                        Stream.of(Tie.NONE).map(word::withThrough),
                        through.hasDiode() && !diodeWanted
                                ? Stream.of(word.withThrough(through.withoutDiode()))
                                : Stream.<Word>empty(),
                        through.resistor() && !resistorWanted
                                ? Stream.of(word.withThrough(through.withoutResistor()))
                                : Stream.<Word>empty(),
                        word.fromSupply().simpler().map(word::withFromSupply),
                        word.toBody().simpler().map(word::withToBody))
                .flatMap(some -> some)
                .filter(less -> !less.equals(word));
    }

    private Seen see(Word word, Set<Held> state) {
        int high = 0;
        int low = 0;
        Tie through = word.through();
        if (isOpenGate(word, through, state)) {
            for (Held held : state) {
                Held there = lifted(word, held);
                boolean firm = (there == Held.HIGH || there == Held.LOW) && !through.resistor();
                int strength = firm ? FIRM : WEAK;
                if (there.isAt(Side.HIGH) && through.diode() != Way.FROM_TARGET) {
                    high = Math.max(high, strength);
                } else if (there.isAt(Side.LOW) && through.diode() != Way.TO_TARGET) {
                    low = Math.max(low, strength);
                }
            }
        }
        if (isOpenGate(word, word.fromSupply(), state) && word.fromSupply().diode() != Way.FROM_TARGET) {
            high = Math.max(high, word.fromSupply().resistor() ? WEAK : FIRM);
        }
        if (isOpenGate(word, word.toBody(), state) && word.toBody().diode() != Way.TO_TARGET) {
            low = Math.max(low, word.toBody().resistor() ? WEAK : FIRM);
        }
        if (sense.pulled()) {
            high = sense.reads() == Side.LOW ? Math.max(high, OWN) : high;
            low = sense.reads() == Side.HIGH ? Math.max(low, OWN) : low;
        }
        return new Seen(high, low);
    }

    /** True when a pole comes to the wire that is read, where its own switch would meet it. */
    private static boolean feedsWire(Word word, Set<Held> state) {
        Tie through = word.through();
        return isOpenGate(word, through, state)
                && ((through.diode() != Way.TO_TARGET && isFed(word, word.fromSupply(), state))
                        || (through.diode() != Way.FROM_TARGET && isFed(word, word.toBody(), state)));
    }

    /** A resistor behind a diode gives the input its level; on a joined wire it is the wire's pull, and is told as one. */
    private static boolean isFed(Word word, Tie tie, Set<Held> state) {
        return isOpenGate(word, tie, state)
                && !(tie.resistor() && word.through().hasDiode());
    }

    private static Held lifted(Word word, Held held) {
        if (held != Held.OPEN) {
            return held;
        }
        return switch (word.pull()) {
            case NONE -> Held.OPEN;
            case UP -> Held.PULLED_HIGH;
            case DOWN -> Held.PULLED_LOW;
        };
    }

    private static boolean isOpenGate(Word word, Tie tie, Set<Held> state) {
        return tie.joined()
                && switch (tie.gate()) {
                    case ALWAYS -> true;
                    case BUFFER -> isBuffered(word, state);
                    case MAKE_1, BREAK_1, MAKE_2, BREAK_2 -> tie.gate().make() == isWorked(word, state);
                };
    }

    private static boolean isWorked(Word word, Set<Held> state) {
        Coil coil = word.coils().getFirst();
        return coil.driver() == Driver.BUFFER
                ? isBuffered(word, state)
                : state.stream().anyMatch(held -> held.isFirm(Word.opposite(coil.pole())));
    }

    private static boolean isBuffered(Word word, Set<Held> state) {
        Side worksAt = word.buffer() == Buffering.ON_GROUND ? Side.LOW : Side.HIGH;
        return state.stream().anyMatch(held -> lifted(word, held).isAt(worksAt));
    }
}
