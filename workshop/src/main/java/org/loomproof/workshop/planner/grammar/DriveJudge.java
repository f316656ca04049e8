package org.loomproof.workshop.planner.grammar;

import java.util.Comparator;
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
final class DriveJudge {

    private static final Comparator<Coil> ORDER =
            Comparator.comparing(Coil::driver).thenComparing(Coil::pole).thenComparing(Coil::isolated);

    private final Drive drive;
    private final Way works;

    DriveJudge(Drive drive) {
        this.drive = drive;
        this.works = Word.workedBy(drive.output());
    }

    Optional<LeftOut> leaveOut(Word word) {
        return Optional.ofNullable(reason(word));
    }

    private @Nullable LeftOut reason(Word word) {
        if (isMirrored(word)) {
            return LeftOut.MIRRORED;
        }
        if (!followsSource(word) || hasIdlePart(word)) {
            return LeftOut.IDLE_PART;
        }
        boolean byOutput = conducts(word, word.through(), works, true);
        boolean own = byOutput && drive.output() == drive.active();
        if (own && (!word.coils().isEmpty() || word.buffer() != Buffering.NONE)) {
            // Either the output works the target and the rest is idle, or the rest does and the output's own way is.
            return LeftOut.SAME_WITH_FEWER;
        }
        boolean supplyAtRest = conducts(word, word.fromSupply(), Way.TO_TARGET, false);
        boolean bodyAtRest = conducts(word, word.toBody(), Way.FROM_TARGET, false);
        boolean supply = conducts(word, word.fromSupply(), Way.TO_TARGET, true);
        boolean body = conducts(word, word.toBody(), Way.FROM_TARGET, true);
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
        if ((own && pole) || word.coils().size() > 1) {
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

    /** Of two relays that hang on the same thing the one whose contact comes first is the first. */
    private static boolean isMirrored(Word word) {
        if (word.coils().size() < 2) {
            return false;
        }
        Coil one = word.coils().get(0);
        Coil two = word.coils().get(1);
        if (two.isBehindFirst()) {
            return false;
        }
        if (!one.equals(two)) {
            return ORDER.compare(one, two) > 0;
        }
        return word.ties()
                .map(tie -> tie.gate().relay())
                .filter(relay -> relay > 0)
                .findFirst()
                .filter(relay -> relay == 2)
                .isPresent();
    }

    /** True when every relay and the buffer change with the source. */
    private boolean followsSource(Word word) {
        if (word.buffer() != Buffering.NONE && word.buffer() != Word.bufferFor(drive.output())) {
            return false;
        }
        return word.coils().stream()
                .allMatch(coil -> coil.driver() != Driver.SOURCE
                        || (coil.pole() != drive.output() && (drive.leaks() || !coil.isolated())));
    }

    private boolean hasIdlePart(Word word) {
        // A source at rest is open: what joins it only then does nothing.
        return (word.through().joined() && !conducts(word, word.through(), works, true))
                || (isIdle(word, word.fromSupply(), Way.TO_TARGET) && !isUsefulClamp(word, Side.LOW))
                || (isIdle(word, word.toBody(), Way.FROM_TARGET) && !isUsefulClamp(word, Side.HIGH));
    }

    private static boolean isIdle(Word word, Tie tie, Way way) {
        return tie.joined() && !conducts(word, tie, way, false) && !conducts(word, tie, way, true);
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

    private static boolean conducts(Word word, Tie tie, Way way, boolean atWork) {
        return tie.joined()
                && (tie.diode() == Way.BOTH || tie.diode() == way)
                && switch (tie.gate()) {
                    case ALWAYS -> true;
                    case BUFFER -> atWork;
                    case MAKE_1, BREAK_1, MAKE_2, BREAK_2 -> tie.gate().make() == isWorked(word, tie.gate(), atWork);
                };
    }

    private static boolean isWorked(Word word, Gate gate, boolean atWork) {
        return atWork != (word.coils().get(gate.relay() - 1).driver() == Driver.FIRST_BREAK);
    }
}
