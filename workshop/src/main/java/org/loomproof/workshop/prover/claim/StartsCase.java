package org.loomproof.workshop.prover.claim;

import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.quantity.Figures;
import org.loomproof.workshop.trade.wire.AllowedDrop;
import org.loomproof.workshop.words.Phrase;

/** Wherever the stock vehicle puts the load to work, the fitted one gives it almost as many volts. */
abstract class StartsCase extends LoadCase {

    private final double allowedDropVolts = AllowedDrop.STARTER_CUT.volts().value();

    StartsCase(String claim, ElementId load, Fitting fitting) {
        super(claim, load, fitting);
    }

    @Override
    public double slack(Pair pair) {
        return worksInStock(pair) ? volts(pair.fitted()) - leastVolts(pair) : Double.NaN;
    }

    @Override
    public Severity severity(Pair pair) {
        return Severity.STRANDED;
    }

    private double leastVolts(Pair pair) {
        return volts(pair.stock()) - allowedDropVolts;
    }

    @Override
    public Margin margin(Pair pair) {
        double slack = slack(pair);
        return new Margin(
                slack,
                "V",
                Phrase.of("margin.gets-volts", Figures.volts(volts(pair.fitted()), slack)),
                Phrase.of(
                        "margin.at-least-volts",
                        Figures.volts(leastVolts(pair), slack),
                        Figures.volts(volts(pair.stock()), slack)));
    }
}
