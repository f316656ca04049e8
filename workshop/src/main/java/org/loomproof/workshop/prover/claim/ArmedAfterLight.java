package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * A wire of a light that waits and fades out is dark before the controller is armed: until then it shows an open door, or goes to and fro
 * while the light is dimmed by pulses.
 */
public final class ArmedAfterLight implements Claim {

    /** What its results' ids begin with. */
    public static final String NAME = "armed-after-light";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        List<Claimed> all = new ArrayList<>();
        for (Hookup.Connect connect : fitting.connected(Wish.WATCH_OPENINGS)) {
            connect.circuits().stream()
                    .map(fitting.brief().sheet()::circuit)
                    .forEach(circuit -> circuit.switching()
                            .lingers()
                            .ifPresent(lingers -> all.add(decided(fitting, connect, circuit, lingers))));
        }
        return all;
    }

    private Claimed decided(Fitting fitting, Hookup.Connect connect, Circuit circuit, Figure<Seconds> lingers) {
        String id = name() + " " + connect.lead() + " " + circuit.id();
        Figure<Seconds> arming = fitting.brief().kit().behaviour().armingDelay();
        Situation at = ByFigures.atRest(ControllerState.ARMED, Moment.SETTLED);
        return new ByFigures(
                        id,
                        Phrase.of("claim.armed-after-light", circuit.id()),
                        List.of(
                                new ByFigures.Used(
                                        lingers,
                                        new Measurement(
                                                "lingering-of " + circuit.id(),
                                                Phrase.of("measure.lingers", circuit.id()))),
                                new ByFigures.Used(
                                        arming, ByFigures.askFor("arming-delay", Phrase.of("measure.arming-delay")))),
                        true)
                .decide(
                        margin(arming.typical(), lingers.typical()),
                        margin(arming.low(), lingers.high()),
                        at,
                        ByFigures.steps(fitting, at, Phrase.of("step.watch-light", circuit.id())),
                        new Observation(
                                Phrase.of("meter.lingers", circuit.id()),
                                lingers.typical().toString()));
    }

    private static Margin margin(Seconds arming, Seconds lingers) {
        return new Margin(
                arming.value() - lingers.value(),
                "s",
                Phrase.of("margin.lingers", lingers),
                Phrase.of("margin.armed-after", arming));
    }
}
