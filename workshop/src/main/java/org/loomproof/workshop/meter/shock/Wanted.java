package org.loomproof.workshop.meter.shock;

/**
 * What a place and its owner ask of a setting, beside the two blows of the file.
 *
 * @param harmlessADay how often a day the strongest harmless knock comes, 0 or more
 * @param falseAMonth how many false alarms a month are borne, above 0
 * @param noticedShare how surely the blow that matters must be noticed, between 0 and 1
 */
public record Wanted(double harmlessADay, double falseAMonth, double noticedShare) {

    public Wanted {
        if (!(harmlessADay >= 0 && harmlessADay <= 100_000)
                || !(falseAMonth > 0 && falseAMonth <= 1_000_000)
                || !(noticedShare > 0 && noticedShare < 1)) {
            throw new IllegalArgumentException(
                    "nothing to set by: " + harmlessADay + " a day, " + falseAMonth + " a month, " + noticedShare);
        }
    }
}
