package org.loomproof.workshop.meter.shock;

import java.util.List;

/**
 * What a file of blows says.
 *
 * @param blows in the order in which they were given; none before the first
 * @param harmless the strongest knock that the place gives the car now and then
 * @param matters the weakest blow that must be noticed; stronger than the harmless one
 */
public record Series(List<Blow> blows, Knock harmless, Knock matters) {

    public Series {
        blows = List.copyOf(blows);
    }

    /** What a setting must do. */
    public Demand demand(Wanted wanted) {
        return new Demand(harmless.joules(), matters.joules(), wanted);
    }
}
