package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.words.Phrase;

/**
 * A controller without its supply stays dead: nothing in the car, and no kit fitted before, feeds it by way of an output whose body
 * diode leads into its supply. The few milliamps that a coil lets through the clamp of an output to ground are not looked at.
 */
final class StaysDead implements Claim {

    /** A controller with no more than this sleeps. Common practice, no published source. */
    private static final Volts ASLEEP = new Volts(5);

    @Override
    public String name() {
        return "stays-dead";
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        List<Claimed> all = new ArrayList<>();
        for (Hookup.Connect connect : fitting.connected()) {
            if (leadsIn(fitting.brief().kit().lead(connect.lead()).port())) {
                all.add(new Claimed.ToShow(new Unfed(
                        name() + " " + connect.lead(),
                        Phrase.of("claim.stays-dead", connect.lead()),
                        fitting.output(connect.lead()).orElseThrow().part())));
            }
        }
        return all;
    }

    private static boolean leadsIn(Port port) {
        return switch (port) {
            case Port.HighSide output -> output.bodyDiode();
            case Port.LowSide output -> false;
            case Port.Input input -> false;
            case Port.Supply supply -> false;
            case Port.Ground ground -> false;
            case Port.ToExtra plug -> false;
        };
    }

    private record Unfed(String id, Phrase statement, PartId about) implements Case {

        @Override
        public boolean concerns(ControllerState state, ControllerFeed feed) {
            return feed == ControllerFeed.SUPPLY_LOST || feed == ControllerFeed.FUSE_OUT;
        }

        @Override
        public double slack(Pair pair) {
            return pair.fitted().hasController()
                    ? ASLEEP.value() - pair.fitted().controllerVolts()
                    : Double.NaN;
        }

        @Override
        public Margin margin(Pair pair) {
            return new Margin(
                    slack(pair),
                    "V",
                    Phrase.of(
                            "margin.controller-sees", Shown.volts(pair.fitted().controllerVolts())),
                    Phrase.of("margin.at-most-volts", ASLEEP));
        }

        @Override
        public List<Observation> observations(Pair pair) {
            return List.of(new Observation(
                    Phrase.of("meter.controller-supply"),
                    Shown.volts(pair.fitted().controllerVolts()).toString()));
        }
    }
}
