package org.loomproof.workshop.meter.comeback;

import java.util.List;

/**
 * A cause, or two at once, with how likely it is by all that is known.
 *
 * @param causes one, or two that are there together
 * @param probability 0 to 1
 */
public record Suspect(List<Cause> causes, double probability) {

    public Suspect {
        causes = List.copyOf(causes);
    }
}
