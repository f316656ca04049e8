package org.loomproof.workshop.meter.shock;

/**
 * What a setting must do.
 *
 * @param harmlessJoules the strongest knock that the place where the car stands gives it now and then
 * @param mattersJoules the weakest blow that must be noticed
 * @param wanted how often the one comes, and how surely the other must be noticed
 */
public record Demand(double harmlessJoules, double mattersJoules, Wanted wanted) {

    public Demand {
        if (!(harmlessJoules > 0) || !(mattersJoules > harmlessJoules)) {
            throw new IllegalArgumentException("the blow that matters is stronger than the harmless one: "
                    + mattersJoules + " J, " + harmlessJoules + " J");
        }
    }

    /** The strength that is as far from the one as from the other, in joules. */
    public double middleJoules() {
        return Math.sqrt(harmlessJoules * mattersJoules);
    }
}
