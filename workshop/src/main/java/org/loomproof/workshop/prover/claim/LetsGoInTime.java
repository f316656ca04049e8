package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.trade.relay.ReleaseTimes;
import org.loomproof.workshop.trade.wire.Copper;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.words.Phrase;

/**
 * An added relay has let go before the output that works it is on again: else what should sound or flash by turns stays on. The
 * coil's current dies by L di/dt = -(R i + v), where v is what its way takes: the higher the kick that it is let have, the sooner.
 *
 * <p>The time is a bound from above: v is solved for on the network at falling currents, and between two of them the lower one's v
 * counts, since v does not fall as the current rises; the coil is as cold as the shop reckons with; of v, a zener's tolerance is
 * taken off.
 */
public final class LetsGoInTime implements Claim {

    /** Steps between the coil's current and that which lets go, each so much less than the one before. */
    private static final int STEPS = 16;

    /** What is left of the way's volts at the worst: a zener is drawn 5 % late and may come 5 % early. */
    private static final double LEAST_SHARE = 0.9;

    @Override
    public String name() {
        return "lets-go-in-time";
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        List<Claimed> all = new ArrayList<>();
        for (Hookup.Connect connect : fitting.connected()) {
            LeadId lead = connect.lead();
            Optional<Figure<Seconds>> pause =
                    fitting.brief().kit().lead(lead).port().pause();
            Reach output = fitting.fitted()
                    .wired()
                    .controller()
                    .orElseThrow()
                    .outputs()
                    .get(lead);
            if (pause.isEmpty() || output == null) {
                continue;
            }
            for (AddedPartId id : connect.parts()) {
                if (fitting.plan().findPart(id).orElseThrow() instanceof AddedPart.Relay) {
                    all.add(new Claimed.ToShow(new ReleaseCase(
                            name() + " " + lead + " " + id,
                            Phrase.of("claim.lets-go-in-time", id, lead),
                            output.part(),
                            lead,
                            id,
                            pause.get().low(),
                            fitting)));
                }
            }
        }
        return all;
    }

    private record ReleaseCase(
            String id, Phrase statement, PartId about, LeadId lead, AddedPartId relay, Seconds pause, Fitting fitting)
            implements Case {

        @Override
        public boolean concerns(ControllerState state, ControllerFeed feed) {
            return acting().isIn(state, feed);
        }

        @Override
        public boolean concerns(Condition.Doing doing) {
            return acting().isIn(doing);
        }

        private Acting acting() {
            return Acting.of(fitting.brief().kit().behaviour(), lead);
        }

        @Override
        public boolean fallsAwayUnasked() {
            return true;
        }

        @Override
        public boolean looksBeyondRest() {
            return true;
        }

        private PartId coil(Pair pair) {
            return Objects.requireNonNull(pair.fitted().wired().added().parts().get(relay))
                    .part();
        }

        /** Empty where the relay is not held, or something else goes on holding it: whether that may be, other claims say. */
        private Optional<Seconds> release(Pair pair) {
            PartId coil = coil(pair);
            Relay drawn = (Relay) pair.fitted().wired().network().part(coil);
            double cold =
                    Copper.temperatureFactor(fitting.brief().order().shop().coldest());
            double ohms = drawn.coilOhms() * cold;
            double warm = pair.fitted().point().amps(coil);
            double from = Math.abs(warm) / cold;
            double to = drawn.dropOutVolts() / drawn.coilOhms();
            if (from <= to) {
                return Optional.empty();
            }
            double henries = ReleaseTimes.coil().value() * drawn.coilOhms();
            double seconds = ReleaseTimes.armature().value();
            double share = Math.pow(to / from, 1.0 / STEPS);
            for (int step = 0; step < STEPS; step++) {
                double high = from * Math.pow(share, step);
                double low = high * share;
                Optional<Double> taken = KickedCoil.takenVolts(pair, about, coil, Math.copySign(low, warm));
                if (taken.isPresent()) {
                    double volts = taken.get() * LEAST_SHARE;
                    if (ohms * low + volts <= 0) {
                        return Optional.empty();
                    }
                    seconds += henries / ohms * Math.log((ohms * high + volts) / (ohms * low + volts));
                }
                // No way at all: the current breaks off at once, which is for the claim about the kick to judge.
            }
            return Optional.of(new Seconds(seconds));
        }

        @Override
        public double slack(Pair pair) {
            return release(pair).map(seconds -> pause.value() - seconds.value()).orElse(Double.NaN);
        }

        @Override
        public Margin margin(Pair pair) {
            Seconds seconds = release(pair).orElse(new Seconds(0));
            return new Margin(
                    slack(pair),
                    "s",
                    Phrase.of("margin.lets-go-after", relay, seconds),
                    Phrase.of("margin.within", pause));
        }

        @Override
        public List<Observation> observations(Pair pair) {
            PartId coil = coil(pair);
            return LoadCase.withControllerSupply(
                    pair,
                    new Observation(
                            Phrase.of("meter.coil-amps-before", pair.fitted().words(coil)),
                            Shown.amps(Math.abs(pair.fitted().point().amps(coil)))
                                    .toString()));
        }
    }
}
