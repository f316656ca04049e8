package org.loomproof.workshop.prover.damage;

import java.util.List;
import java.util.function.Predicate;
import org.loomproof.workshop.wiring.Situation;

/**
 * What a vehicle fitted as planned shows in one situation. A sign of which neither is sure stands in neither list.
 *
 * @param when the situation
 * @param there the signs that are surely there
 * @param absent the signs that are surely not there
 */
public record Showing(Situation when, List<Sign> there, List<Sign> absent) {

    public Showing {
        there = List.copyOf(there);
        absent = List.copyOf(absent);
    }

    /** The same of some signs only. */
    public Showing only(Predicate<Sign> looked) {
        return new Showing(
                when,
                there.stream().filter(looked).toList(),
                absent.stream().filter(looked).toList());
    }
}
