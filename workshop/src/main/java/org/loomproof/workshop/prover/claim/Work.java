package org.loomproof.workshop.prover.claim;

import java.util.List;
import java.util.OptionalDouble;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.quantity.Figures;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.words.Phrase;

/** A load at work: while the output is on, the load gets most of the volts that it gets when it works as it should. */
abstract class Work implements Case {

    /** The share of its volts at which a load still does its work; common practice, no published source. */
    private static final double LEAST_PERCENT = 85;

    private final String id;
    private final Phrase statement;
    private final PartId about;
    private final Acting acting;

    Work(String id, Phrase statement, PartId about, Acting acting) {
        this.id = id;
        this.statement = statement;
        this.about = about;
        this.acting = acting;
    }

    /** Where the load is in the fitted vehicle. */
    abstract Reach reach(Reading fitted);

    /** The volts at which it works as it should. */
    abstract double wholeVolts(Pair pair);

    /** What the circuit's own switch gives the load, with its sign: a motor must run the same way round. */
    OptionalDouble ownVolts(Pair pair) {
        return OptionalDouble.empty();
    }

    /** What somebody's hand on the car's own switches gives the load here. */
    double byHandVolts(Pair pair) {
        return 0;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public Phrase statement() {
        return statement;
    }

    @Override
    public PartId about() {
        return about;
    }

    @Override
    public boolean concerns(ControllerState state, ControllerFeed feed) {
        return acting.isIn(state, feed);
    }

    @Override
    public boolean concerns(Condition.Doing doing) {
        return acting.isIn(doing);
    }

    /** A load that takes no current does no work, whatever lies across it. */
    private double volts(Pair pair) {
        Reach reach = reach(pair.fitted());
        return Math.abs(pair.fitted().amps(reach)) < LoadCase.NEGLIGIBLE_AMPS
                ? 0
                : Math.abs(pair.fitted().volts(reach));
    }

    private double percent(Pair pair) {
        OptionalDouble own = ownVolts(pair);
        return 100
                * (own.isPresent()
                        ? pair.fitted().volts(reach(pair.fitted())) / own.getAsDouble()
                        : volts(pair) / wholeVolts(pair));
    }

    /** A hand that works the load the other way has the last word, whatever the output does. */
    boolean isOverruledByHand(Pair pair) {
        OptionalDouble own = ownVolts(pair);
        return own.isPresent() && byHandVolts(pair) / own.getAsDouble() < -0.1;
    }

    @Override
    public double slack(Pair pair) {
        return isOverruledByHand(pair) ? Double.NaN : percent(pair) - LEAST_PERCENT;
    }

    @Override
    public Margin margin(Pair pair) {
        return new Margin(
                slack(pair),
                "%",
                Phrase.of("margin.gets-share", Shown.volts(volts(pair)), Figures.plain(percent(pair))),
                Phrase.of("margin.at-least-percent", Figures.plain(LEAST_PERCENT), Shown.volts(wholeVolts(pair))));
    }

    @Override
    public List<Observation> observations(Pair pair) {
        return LoadCase.withControllerSupply(
                pair,
                new Observation(
                        Phrase.of("meter.volts-across", pair.fitted().words(about)),
                        Shown.volts(volts(pair)).toString()));
    }
}
