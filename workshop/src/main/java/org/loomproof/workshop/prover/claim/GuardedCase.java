package org.loomproof.workshop.prover.claim;

import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.words.Phrase;

/** A load that gets next to nothing while the controller is armed, warns or sounds. */
abstract class GuardedCase extends LoadCase {

    /** The share of its current at which a starter does nothing; common practice, no published source. */
    private static final double IDLE_SHARE = 0.05;

    GuardedCase(String claim, ElementId load, Fitting fitting) {
        super(claim, load, fitting);
    }

    /** Amps that it would take when it works; not a number where nothing is asked. */
    abstract double workingAmps(Pair pair);

    @Override
    public boolean concerns(ControllerState state, ControllerFeed feed) {
        boolean guards = switch (state) {
            case ARMED, WARNING, SOUNDING -> true;
            case WITHOUT_SUPPLY, DISARMED, ARMING, OVERRIDE -> false;
        };
        return guards && feed == ControllerFeed.WHOLE;
    }

    @Override
    public double slack(Pair pair) {
        return mostAmps(pair) - amps(pair.fitted());
    }

    @Override
    public Severity severity(Pair pair) {
        return Severity.UNPROTECTED;
    }

    private double mostAmps(Pair pair) {
        return IDLE_SHARE * workingAmps(pair);
    }

    @Override
    public Margin margin(Pair pair) {
        return new Margin(
                slack(pair),
                "A",
                Phrase.of("margin.draws-amps", Shown.amps(amps(pair.fitted()))),
                Phrase.of("margin.at-most-share", Shown.amps(mostAmps(pair)), Shown.amps(workingAmps(pair))));
    }
}
