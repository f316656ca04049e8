package org.loomproof.workshop.prover.claim;

import java.util.List;
import java.util.Objects;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.plan.AddedPart;
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

/** A bare light-emitting diode carries enough to be seen while its output is on. */
record LitWork(String id, Phrase statement, PartId about, Acting acting, AddedPart.Load light) implements Case {

    /** Of the most that it may carry: bright enough to be seen by day. Common practice, no published source. */
    private static final double LEAST_PERCENT = 30;

    @Override
    public boolean concerns(ControllerState state, ControllerFeed feed) {
        return acting.isIn(state, feed);
    }

    @Override
    public boolean concerns(Condition.Doing doing) {
        return acting.isIn(doing);
    }

    private double amps(Reading fitted) {
        Reach reach = Objects.requireNonNull(fitted.wired().added().parts().get(light.id()));
        return fitted.amps(reach);
    }

    private double percent(Pair pair) {
        return 100 * amps(pair.fitted()) / light.draws().value();
    }

    @Override
    public double slack(Pair pair) {
        return percent(pair) - LEAST_PERCENT;
    }

    @Override
    public Margin margin(Pair pair) {
        return new Margin(
                slack(pair),
                "%",
                Phrase.of("margin.carries-share", Shown.amps(amps(pair.fitted())), Figures.plain(percent(pair))),
                Phrase.of("margin.at-least-percent-carried", Figures.plain(LEAST_PERCENT), light.draws()));
    }

    @Override
    public List<Observation> observations(Pair pair) {
        return LoadCase.withControllerSupply(
                pair,
                new Observation(
                        Phrase.of("meter.amps-through", pair.fitted().words(about)),
                        Shown.amps(amps(pair.fitted())).toString()));
    }
}
