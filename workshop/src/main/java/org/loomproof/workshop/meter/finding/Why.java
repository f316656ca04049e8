package org.loomproof.workshop.meter.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.meter.evidence.Belief;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.role.WireRole;
import org.loomproof.workshop.words.Phrase;

/** Which readings decided, and against what. */
final class Why {

    private static final int MOST_REASONS = 3;

    /** A reading that makes the odds no better than this decided nothing. */
    private static final double DECIDES = 1.3;

    /** What was possible and no longer is. */
    private static final double WAS_POSSIBLE = 0.01;

    static final double RULED_OUT = 0.001;

    private Why() {}

    private record Reason(double factor, Phrase text) {}

    /** The readings that speak most for the best role, each with what it and its rival would show there. */
    static List<Phrase> because(Belief prior, Belief belief, List<Reading> readings) {
        WireRole best = belief.best();
        List<Reason> reasons = new ArrayList<>();
        for (Reading reading : readings) {
            if (!reading.isTaken()) {
                continue;
            }
            List<Reading> others = new ArrayList<>(readings);
            others.remove(reading);
            Belief without = prior.afterReadings(others);
            double factor = odds(belief, best) / odds(without, best);
            if (factor >= DECIDES) {
                WireRole rival = rival(without, belief, best);
                reasons.add(new Reason(
                        factor,
                        Phrase.of(
                                "meter.why",
                                reading.step().word(),
                                Expectation.shown(reading),
                                name(best),
                                Expectation.of(without, best, reading),
                                name(rival),
                                Expectation.of(without, rival, reading))));
            }
        }
        return reasons.stream()
                .sorted(Comparator.comparingDouble(Reason::factor).reversed())
                .limit(MOST_REASONS)
                .map(Reason::text)
                .toList();
    }

    /** The role from which the reading took most. */
    private static WireRole rival(Belief without, Belief with, WireRole best) {
        WireRole rival = best == WireRole.DEAD ? WireRole.GROUND : WireRole.DEAD;
        double most = 0;
        for (WireRole role : WireRole.values()) {
            double lost = without.chance(role) - with.chance(role);
            if (role != best && lost > most) {
                rival = role;
                most = lost;
            }
        }
        return rival;
    }

    private static double odds(Belief belief, WireRole role) {
        return Math.max(1e-9, belief.chance(role)) / Math.max(1e-9, 1 - belief.chance(role));
    }

    /** What the wire proved not to be, each with the reading that speaks most against it. */
    static List<WireFinding.RuledOut> not(Belief prior, Belief belief, List<Reading> readings) {
        List<WireFinding.RuledOut> out = new ArrayList<>();
        for (WireRole role : WireRole.values()) {
            boolean wasPossible = prior.chance(role) >= WAS_POSSIBLE && role != WireRole.NONE_OF_THESE;
            if (wasPossible && belief.chance(role) < RULED_OUT) {
                strongestAgainst(prior, role, readings)
                        .ifPresent(reading -> out.add(new WireFinding.RuledOut(
                                role,
                                Phrase.of(
                                        "meter.not",
                                        name(role),
                                        reading.step().word(),
                                        Expectation.shown(reading),
                                        Expectation.of(prior, role, reading)))));
            }
        }
        return out;
    }

    private static Optional<Reading> strongestAgainst(Belief prior, WireRole role, List<Reading> readings) {
        return readings.stream()
                .filter(Reading::isTaken)
                .min(Comparator.comparingDouble(
                        r -> prior.after(prior.fleet().likelihood(r, List.of())).chance(role)));
    }

    static Phrase name(WireRole role) {
        return Phrase.of("meter.role." + role.word());
    }
}
