package org.loomproof.workshop.meter.comeback;

import java.util.List;
import java.util.Optional;

/**
 * How a comeback stands.
 *
 * @param suspects the likeliest first; their probabilities sum to at most 1, what is left out is less likely than any
 * @param next what to measure; empty when one suspect is left, or when no meter on volts tells the rest apart
 * @param isSettled whether one suspect is left, by more than symptoms
 */
public record Finding(List<Suspect> suspects, Optional<NextLook> next, boolean isSettled) {

    public Finding {
        suspects = List.copyOf(suspects);
    }
}
