package org.loomproof.workshop.prover.claim;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.prover.explore.Working.Reads;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.InputReach;
import org.loomproof.workshop.words.Phrase;

/**
 * A factory input that an output works: while the output is on, the input surely reads what something in the car itself works
 * it to, and among several levels that of this circuit. Where nothing in the car does, there is nothing to compare with and
 * the case says nothing.
 */
record WorkedInput(String id, Phrase statement, ElementId input, PartId about, CircuitId circuit, Acting acting)
        implements Case {

    @Override
    public boolean concerns(ControllerState state, ControllerFeed feed) {
        return acting.isIn(state, feed);
    }

    @Override
    public boolean concerns(Condition.Doing doing) {
        return acting.isIn(doing);
    }

    private InputReach reach(Reading reading) {
        return Objects.requireNonNull(reading.wired().factory().inputs().get(input));
    }

    @Override
    public double slack(Pair pair) {
        InputReach reach = reach(pair.fitted());
        double volts = pair.fitted().volts(reach);
        Optional<Reads> wanted = wanted(pair);
        if (wanted.isEmpty()) {
            return Double.NaN;
        }
        double level = wanted.get() == Reads.LOW ? reach.lowBelow() - volts : volts - reach.highAbove();
        double step = onStepBy(pair);
        return Double.isNaN(step) ? Double.NaN : Math.min(level, step);
    }

    /** What the input reads of the circuit's own switches; where that is not clear, the level that something works it to. */
    private Optional<Reads> wanted(Pair pair) {
        OptionalDouble own = pair.working().worked(circuit, input, pair.supply());
        Reads read = own.isPresent() ? Reads.of(reach(pair.stock()), own.getAsDouble()) : Reads.BETWEEN;
        return read == Reads.BETWEEN ? pair.working().workedLevel(input) : Optional.of(read);
    }

    /** A module that tells several levels apart must see that of this circuit; a level among two has no other beside it. */
    private double onStepBy(Pair pair) {
        return pair.working()
                .onStepBy(
                        circuit,
                        input,
                        pair.supply(),
                        pair.fitted().volts(reach(pair.fitted())),
                        pair.stock().volts(reach(pair.stock())))
                .orElse(Double.POSITIVE_INFINITY);
    }

    @Override
    public Margin margin(Pair pair) {
        InputReach reach = reach(pair.fitted());
        double slack = slack(pair);
        if (slack == onStepBy(pair)) {
            return new Margin(
                    slack,
                    "V",
                    Phrase.of("margin.wire-shows", Shown.volts(pair.fitted().volts(reach))),
                    Phrase.of("margin.own-step", circuit));
        }
        boolean low = wanted(pair).filter(l -> l == Reads.LOW).isPresent();
        Phrase allowed = low
                ? Phrase.of("margin.input-low", new Volts(reach.lowBelow()))
                : Phrase.of("margin.input-high", new Volts(reach.highAbove()));
        Phrase computed =
                Phrase.of("margin.wire-shows", Shown.volts(pair.fitted().volts(reach)));
        return new Margin(slack, "V", computed, allowed);
    }

    @Override
    public List<Observation> observations(Pair pair) {
        return LoadCase.withControllerSupply(
                pair,
                new Observation(
                        Phrase.of("meter.volts-at", pair.fitted().words(about)),
                        Shown.volts(pair.fitted().volts(reach(pair.fitted()))).toString()));
    }
}
