package org.loomproof.workshop.meter.comeback;

import java.util.List;

/**
 * A cause, or two at once, with how likely it is by all that is known.
 *
 * @param causes one, or two that are there together
 * @param probability 0 to 1
 * @param shows what a meter shows of it at what was measured, in the same order
 */
public record Suspect(List<Cause> causes, double probability, List<Shows> shows) {

    public Suspect {
        causes = List.copyOf(causes);
        shows = List.copyOf(shows);
    }
}
