package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.ControllerParts;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.words.Phrase;

/**
 * A controller without its supply stays dead: nothing in the car, and no kit fitted before, feeds it by way of an output from which
 * a diode leads into its supply: the body diode of one that gives the supply, the clamp of one that goes to ground. A controller that
 * sleeps is a load of a kilohm: what a relay's coil, a lamp or a horn lets through that clamp leaves it nearly all of the battery's
 * volts, and it wakes, works its outputs and starves itself again.
 *
 * <p>Of an output that clamps it is asked with the controller's fuse out. Where a coil hangs behind that same fuse and the supply lead alone
 * comes off, which is a fault and not something that anybody does, the coil goes on feeding the controller.
 */
final class StaysDead implements Claim {

    /** A controller with no more than this sleeps. Common practice, no published source. */
    private static final Volts ASLEEP = new Volts(5);

    /** An output that lets in less feeds nothing: it leaks. Common practice, no published source. */
    private static final double LEAK_AMPS = 1e-4;

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
                        connect.lead(),
                        fitting.output(connect.lead()).orElseThrow(),
                        fitting.brief().kit().lead(connect.lead()).port() instanceof Port.HighSide
                                || isFuseOutAsUnplugged(fitting))));
            }
        }
        return all;
    }

    /** True where the fuse out is not looked at by itself: there is none, or nothing else hangs behind it. */
    private static boolean isFuseOutAsUnplugged(Fitting fitting) {
        ControllerParts controller = fitting.fitted().wired().controller().orElseThrow();
        return controller.feedFuses().isEmpty() || controller.fuseOutIsUnplugged();
    }

    private static boolean leadsIn(Port port) {
        return switch (port) {
            case Port.HighSide output -> output.bodyDiode();
            case Port.LowSide output -> output.clamp();
            case Port.Input input -> false;
            case Port.Supply supply -> false;
            case Port.Ground ground -> false;
            case Port.ToExtra plug -> false;
        };
    }

    private record Unfed(String id, Phrase statement, LeadId lead, Reach output, boolean asksOfSupplyLost)
            implements Case {

        @Override
        public PartId about() {
            return output.part();
        }

        @Override
        public boolean concerns(ControllerState state, ControllerFeed feed) {
            return feed == ControllerFeed.FUSE_OUT || (feed == ControllerFeed.SUPPLY_LOST && asksOfSupplyLost);
        }

        @Override
        public double slack(Pair pair) {
            return pair.fitted().hasController()
                    ? ASLEEP.value() - (isFedHere(pair) ? pair.fitted().controllerVolts() : 0)
                    : Double.NaN;
        }

        /** What some other lead lets in is that one's to answer for. */
        private boolean isFedHere(Pair pair) {
            return Math.abs(pair.fitted().amps(output)) > LEAK_AMPS;
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
            return List.of(
                    new Observation(
                            Phrase.of("meter.controller-supply"),
                            Shown.volts(pair.fitted().controllerVolts()).toString()),
                    new Observation(
                            Phrase.of("meter.amps-in", lead),
                            Shown.amps(Math.abs(pair.fitted().amps(output))).toString()));
        }
    }
}
