package org.loomproof.workshop.planner.grammar;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.grammar.Coil.Driver;
import org.loomproof.workshop.planner.grammar.Tie.Way;
import org.loomproof.workshop.planner.grammar.Word.Buffering;

/**
 * What poles alone say of a word, in the two states of an output: at rest it is open, at work it gives its pole. A contact is
 * open or closed, a diode a wire one way; what a weak pull does is left to the prover.
 */
final class DriveJudge implements Judge {

    private final Drive drive;
    private final Way works;

    DriveJudge(Drive drive) {
        this.drive = drive;
        this.works = Word.workedBy(drive.output());
    }

    @Override
    public Optional<LeftOut> leaveOut(Grammar.Block block) {
        if (block.pull() != Pull.NONE || !followsSource(block.coils(), block.buffer())) {
            // At rest the output is open and nothing else hangs on it.
            return Optional.of(LeftOut.IDLE_PART);
        }
        // One make contact gives a target its pole at work and nothing at rest: a second relay says what the first
        // says.
        return block.coils().size() > 1 ? Optional.of(LeftOut.SAME_WITH_FEWER) : Optional.empty();
    }

    @Override
    public Optional<LeftOut> leaveOut(Word word) {
        return Optional.ofNullable(reason(word));
    }

    private @Nullable LeftOut reason(Word word) {
        if (hasIdlePart(word)) {
            return LeftOut.IDLE_PART;
        }
        boolean byOutput = conducts(word.through(), works, true);
        boolean own = byOutput && drive.output() == drive.active();
        if (own && (!word.coils().isEmpty() || word.buffer() != Buffering.NONE)) {
            // Either the output works the target and the rest is idle, or the rest does and the output's own way is.
            return LeftOut.SAME_WITH_FEWER;
        }
        boolean supplyAtRest = conducts(word.fromSupply(), Way.TO_TARGET, false);
        boolean bodyAtRest = conducts(word.toBody(), Way.FROM_TARGET, false);
        boolean supply = conducts(word.fromSupply(), Way.TO_TARGET, true);
        boolean body = conducts(word.toBody(), Way.FROM_TARGET, true);
        if ((supplyAtRest && bodyAtRest)
                || ((supply || (byOutput && drive.output() == Side.HIGH))
                        && (body || (byOutput && drive.output() == Side.LOW)))) {
            return LeftOut.SHORT;
        }
        if (supplyAtRest || bodyAtRest) {
            return LeftOut.WORKS_AT_REST;
        }
        boolean pole = drive.active() == Side.HIGH ? supply : body;
        if (!own && !pole) {
            return LeftOut.NEVER_WORKS;
        }
        if (own && pole) {
            return LeftOut.SAME_WITH_FEWER;
        }
        return refined(
                word, own ? word.through() : drive.active() == Side.HIGH ? word.fromSupply() : word.toBody(), own);
    }

    /** What is said of the one tie that works the target. */
    private @Nullable LeftOut refined(Word word, Tie tie, boolean own) {
        if (tie.resistor() != drive.stepped()) {
            return drive.stepped() ? LeftOut.NEVER_WORKS : LeftOut.SAME_WITH_FEWER;
        }
        boolean contact = tie.gate().relay() > 0;
        if (drive.stepped() && tie.hasDiode()) {
            // The level on the wire would be the diode's and not the resistor's.
            return LeftOut.NEVER_WORKS;
        }
        boolean needed = drive.several() || (own && drive.leaks());
        if (tie.hasDiode() && (contact || !needed)) {
            return LeftOut.IDLE_PART;
        }
        if (drive.several() && !contact && !tie.hasDiode()) {
            return LeftOut.JOINS_TARGETS;
        }
        if (drive.kicks() && tie.gate() == Gate.BUFFER && !isClamp(word.fromSupply())) {
            return LeftOut.NO_WAY_FOR_KICK;
        }
        return null;
    }

    /** True when every relay and the buffer change with the source. */
    private boolean followsSource(List<Coil> coils, Buffering buffer) {
        if (buffer != Buffering.NONE && buffer != Word.bufferFor(drive.output())) {
            return false;
        }
        return coils.stream()
                .allMatch(coil -> coil.driver() != Driver.SOURCE
                        || (coil.pole() != drive.output() && (drive.leaks() || !coil.isolated())));
    }

    private boolean hasIdlePart(Word word) {
        // A source at rest is open: what joins it only then does nothing.
        return (word.through().joined() && !conducts(word.through(), works, true))
                || (isIdle(word.fromSupply(), Way.TO_TARGET) && !isUsefulClamp(word, Side.LOW))
                || (isIdle(word.toBody(), Way.FROM_TARGET) && !isUsefulClamp(word, Side.HIGH));
    }

    private static boolean isIdle(Tie tie, Way way) {
        return tie.joined() && !conducts(tie, way, false) && !conducts(tie, way, true);
    }

    /** A diode that lets a target's own current go on when what works it lets go: to the supply, or from the body. */
    private boolean isUsefulClamp(Word word, Side lettingGo) {
        boolean semiconductor = lettingGo == Side.LOW
                ? (word.through().joined() && drive.output() == Side.LOW)
                        || word.toBody().gate() == Gate.BUFFER
                : word.through().joined() && drive.output() == Side.HIGH;
        return drive.kicks() && semiconductor && isClamp(lettingGo == Side.LOW ? word.fromSupply() : word.toBody());
    }

    private static boolean isClamp(Tie tie) {
        return tie.joined() && tie.hasDiode() && !tie.resistor() && tie.gate() == Gate.ALWAYS;
    }

    private static boolean conducts(Tie tie, Way way, boolean atWork) {
        return tie.joined()
                && (tie.diode() == Way.BOTH || tie.diode() == way)
                && switch (tie.gate()) {
                    case ALWAYS -> true;
                    case BUFFER -> atWork;
                    case MAKE_1, BREAK_1, MAKE_2, BREAK_2 -> tie.gate().make() == atWork;
                };
    }
}
