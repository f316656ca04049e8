package org.loomproof.workshop.meter.shock;

/**
 * What a setting must do.
 *
 * @param harmlessJoules the strongest knock that the place where the car stands gives it now and then
 * @param harmlessADay how often a day
 * @param falseAMonth how many false alarms a month are borne
 * @param mattersJoules the weakest blow that must be noticed
 * @param noticedShare how surely, 0 to 1
 */
public record Demand(
        double harmlessJoules, double harmlessADay, double falseAMonth, double mattersJoules, double noticedShare) {

    public Demand {
        if (!(harmlessJoules > 0)
                || !(mattersJoules > harmlessJoules)
                || !(harmlessADay >= 0)
                || !(falseAMonth > 0)
                || !(noticedShare > 0 && noticedShare < 1)) {
            throw new IllegalArgumentException("the blow that matters is stronger than the harmless one: "
                    + mattersJoules + " J, " + harmlessJoules + " J");
        }
    }
}
