package org.loomproof.workshop.meter.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.meter.evidence.Belief;
import org.loomproof.workshop.meter.evidence.Fleet;
import org.loomproof.workshop.meter.evidence.Piece;
import org.loomproof.workshop.meter.reading.Measured;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.reading.Shown;
import org.loomproof.workshop.meter.reading.Step;
import org.loomproof.workshop.meter.role.WireRole;
import org.loomproof.workshop.words.Phrase;

/** Says of one wire whether it may be joined or cut, and what to measure if not. */
public final class Advisor {

    /** A wire is cut by so many independent pieces of evidence; one of them is never a paper. */
    static final int PIECES_FOR_A_CUT = 2;

    private final Foresight foresight;
    private final Costs costs;

    /**
     * @param foresight of the fleet that beliefs are about
     * @param costs of errors
     */
    public Advisor(Foresight foresight, Costs costs) {
        this.foresight = foresight;
        this.costs = costs;
    }

    /**
     * Whether something may be done to a wire.
     *
     * @param allowed that it may
     * @param lacks what stands against it, or is asked for afterwards where it is allowed
     */
    public record Standing(boolean allowed, List<Phrase> lacks) {
        public Standing {
            lacks = List.copyOf(lacks);
        }
    }

    /** How sure the likeliest role is. First and second starter wire are read alike and worked on alike: they count together. */
    public static double sure(Belief belief) {
        return belief.best().isStart()
                ? belief.chance(WireRole.STARTER) + belief.chance(WireRole.SECOND_STARTER)
                : belief.chance(belief.best());
    }

    /** Whether a lead may be joined to it: by a paper alone never, since what is to be joined is measured first. */
    public Standing connect(Belief belief, List<Reading> readings) {
        WireRole role = belief.best();
        List<Phrase> lacks = new ArrayList<>();
        if (isNeverJoined(role)) {
            lacks.add(Phrase.of("meter.never." + role.word()));
        }
        if (sure(belief) < costs.connectAt()) {
            lacks.add(Phrase.of("meter.not-certain", sure(belief), costs.connectAt()));
        }
        if (isByPaperAlone(readings)) {
            lacks.add(Phrase.of("meter.demand.measured"));
        }
        Demand.unmet(role, readings).forEach(d -> lacks.add(Phrase.of("meter.demand." + word(d))));
        return new Standing(lacks.isEmpty(), lacks);
    }

    /** Whether it may be cut; where it may, the proof of both ends is asked for afterwards. */
    public Standing cut(Belief prior, Belief belief, List<Reading> readings, boolean sheetSaysSo) {
        WireRole role = belief.best();
        List<Phrase> lacks = new ArrayList<>(connect(belief, readings).lacks());
        lacks.removeIf(phrase -> phrase.key().equals("meter.not-certain"));
        if (sure(belief) < costs.cutAt()) {
            lacks.add(Phrase.of("meter.not-certain", sure(belief), costs.cutAt()));
        }
        List<Piece> pieces = new ArrayList<>(Piece.speakingFor(role, prior, readings));
        boolean isMeasured = !pieces.isEmpty();
        if (sheetSaysSo) {
            pieces.add(Piece.PAPER);
        }
        if (pieces.size() < PIECES_FOR_A_CUT || !isMeasured) {
            lacks.add(Phrase.of("meter.pieces", pieces.size(), PIECES_FOR_A_CUT));
        }
        return lacks.isEmpty()
                ? new Standing(true, List.of(Phrase.of(role.isStart() ? "meter.both-ends.starter" : "meter.both-ends")))
                : new Standing(false, lacks);
    }

    /** What to measure next: what the likeliest role still asks for, else what tells most a second; empty when enough is known. */
    public Optional<Foresight.Choice> next(Belief belief, List<Reading> readings) {
        Optional<Foresight.Choice> demanded = demanded(belief, readings);
        if (isByPaperAlone(readings)) {
            return foresight.next(belief, List.of()).or(() -> demanded).or(() -> safe(MeterTest.KEY_OFF, belief));
        }
        return sure(belief) < costs.connectAt() ? foresight.next(belief, done(readings)) : demanded;
    }

    private Optional<Foresight.Choice> demanded(Belief belief, List<Reading> readings) {
        WireRole role = belief.best();
        return Demand.unmet(role, readings).stream()
                .flatMap(demand -> safe(demand.test(role), belief).stream())
                .findFirst();
    }

    private Optional<Foresight.Choice> safe(MeterTest test, Belief belief) {
        return Harm.isSafe(test.kind(), belief)
                ? Optional.of(new Foresight.Choice(test, foresight.bits(test, belief)))
                : Optional.empty();
    }

    private static boolean isByPaperAlone(List<Reading> readings) {
        return readings.stream().noneMatch(Fleet::counts);
    }

    /**
     * The safe test that best tells some roles apart, were it known to be one of them; empty when none does or the wire can be none
     * of them.
     */
    public Optional<Foresight.Choice> splitting(Belief belief, Set<WireRole> roles, List<Reading> readings) {
        return roles.stream().allMatch(role -> belief.chance(role) == 0)
                ? Optional.empty()
                : foresight.splitting(belief, roles, done(readings));
    }

    /** The tests that have been made. */
    static List<MeterTest> done(List<Reading> readings) {
        return MeterTest.ALL.stream()
                .filter(test -> readings.stream().anyMatch(r -> r.isTaken() && isOf(r, test)))
                .toList();
    }

    private static boolean isOf(Reading reading, MeterTest test) {
        Step step = reading.step().plain();
        boolean isVolts = reading.measured() == Measured.VOLTS;
        boolean isAlternating = reading.shown() instanceof Shown.Alternating;
        return switch (test.kind()) {
            case VOLTS, TEST_LAMP -> isVolts && !isAlternating && step.equals(test.step());
            case ALTERNATING -> isAlternating && step.equals(test.step());
            case OHMS -> reading.measured() == Measured.OHMS && step.equals(test.step());
            case RESISTOR -> isVolts && step.resistorOhms().isPresent();
        };
    }

    private static boolean isNeverJoined(WireRole role) {
        return role == WireRole.DATA
                || role == WireRole.RESTRAINT
                || role == WireRole.DEAD
                || role == WireRole.NONE_OF_THESE;
    }

    private static String word(Demand demand) {
        return demand.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
