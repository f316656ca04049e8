package org.loomproof.workshop.meter.advice;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.meter.evidence.Belief;
import org.loomproof.workshop.meter.evidence.Fleet;
import org.loomproof.workshop.meter.evidence.Outcomes;
import org.loomproof.workshop.meter.role.WireRole;

/** Which test tells most for the time it takes. */
public final class Foresight {

    /** Less than this is not worth getting up for. */
    static final double LEAST_BITS = 0.02;

    private final Fleet fleet;
    private final Map<MeterTest, Outcomes> outcomes = new HashMap<>();

    /** @param fleet what a wire may be */
    public Foresight(Fleet fleet) {
        this.fleet = fleet;
    }

    /**
     * A test and what it is expected to tell.
     *
     * @param test what to do
     * @param bits expected information about the role
     */
    public record Choice(MeterTest test, double bits) {
        /** Bits a second. */
        public double pace() {
            return bits / test.seconds();
        }
    }

    /**
     * The safe test that tells most a second; empty when none tells anything, or the wire is better left alone.
     *
     * @param done tests whose readings the belief already holds: the same again would tell nothing new
     */
    public Optional<Choice> next(Belief belief, Collection<MeterTest> done) {
        return best(belief, belief, done);
    }

    /** The same, were it known to be one of some roles. What is safe goes by all that the wire may still be. */
    public Optional<Choice> splitting(Belief belief, Set<WireRole> roles, Collection<MeterTest> done) {
        return best(belief.among(roles), belief, done);
    }

    private Optional<Choice> best(Belief asked, Belief belief, Collection<MeterTest> done) {
        return MeterTest.ALL.stream()
                .filter(test -> !done.contains(test) && Harm.isSafe(test.kind(), belief))
                .map(test -> new Choice(test, bits(test, asked)))
                .filter(choice -> choice.bits() >= LEAST_BITS)
                .max(Comparator.comparingDouble(Choice::pace));
    }

    /** Expected bits about the role. */
    public double bits(MeterTest test, Belief belief) {
        return outcomes.computeIfAbsent(test, this::foresee).bits(belief);
    }

    private Outcomes foresee(MeterTest test) {
        return switch (test.kind()) {
            case VOLTS, RESISTOR, TEST_LAMP -> Outcomes.volts(fleet, test.step());
            case ALTERNATING -> Outcomes.alternating(fleet, test.step());
            case OHMS -> Outcomes.ohms(fleet, test.step());
        };
    }
}
