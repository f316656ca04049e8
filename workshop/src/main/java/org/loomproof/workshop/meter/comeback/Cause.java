package org.loomproof.workshop.meter.comeback;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.loomproof.workshop.fault.Mishap;

/**
 * What may be behind a comeback.
 *
 * @param mishaps what is wrong: any one of them, and no voltage tells which; none for a cause outside the plan
 * @param symptoms what an owner would complain of
 * @param weight how often it is behind a comeback, against the others; before anything is known of this car
 */
public record Cause(List<Mishap> mishaps, Set<Symptom> symptoms, double weight) {

    public Cause {
        mishaps = List.copyOf(mishaps);
        symptoms = Set.copyOf(symptoms);
        if (!(weight > 0)) {
            throw new IllegalArgumentException("a cause needs a weight above zero: " + weight);
        }
    }

    /** This or the other. */
    Cause or(Cause other) {
        return new Cause(
                Stream.concat(mishaps.stream(), other.mishaps.stream()).toList(), symptoms, weight + other.weight);
    }

    /** True for the one that stands for everything outside the plan. */
    public boolean isElsewhere() {
        return mishaps.isEmpty();
    }
}
