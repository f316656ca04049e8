package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.trade.relay.ReleaseTimes;
import org.loomproof.workshop.trade.wire.Copper;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.words.Phrase;

/**
 * A relay, an added one or the car's own, has let go before the output that works it is on again: else what should sound or flash by
 * turns stays on. The coil's current dies by L di/dt = -(R i + v), where v is what its way takes: the higher the kick that it is let have, the sooner.
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
            Port port = fitting.brief().kit().lead(connect.lead()).port();
            port.pause()
                    .map(Figure::low)
                    .ifPresent(pause -> relays(fitting, connect)
                            .map(coil -> releaseCase(fitting, connect.lead(), coil, pause))
                            .forEach(each -> all.add(new Claimed.ToShow(each))));
        }
        return all;
    }

    private ReleaseCase releaseCase(Fitting fitting, LeadId lead, PartId coil, Seconds pause) {
        PartId output = fitting.output(lead).orElseThrow().part();
        String relay = Coils.name(fitting, coil);
        return new ReleaseCase(
                name() + " " + lead + " " + relay,
                Phrase.of("claim.lets-go-in-time", relay, lead),
                new LetGoCase.Held(fitting, lead, output, coil),
                relay,
                pause);
    }

    /** The coils of the relays that were added for the lead, and of the car's own that it works without one. */
    private static Stream<PartId> relays(Fitting fitting, Hookup.Connect connect) {
        Wired wired = fitting.fitted().wired();
        Stream<PartId> added = connect.parts().stream()
                .filter(id -> fitting.plan()
                        .findPart(id)
                        .filter(AddedPart.Relay.class::isInstance)
                        .isPresent())
                .map(id -> Objects.requireNonNull(wired.added().parts().get(id)).part());
        Set<PartId> ofThePlan =
                wired.added().parts().values().stream().map(Reach::part).collect(Collectors.toSet());
        Stream<PartId> factory = Coils.drivenFrom(fitting, connect.lead()).stream()
                .filter(coil -> wired.network().part(coil) instanceof Relay && !ofThePlan.contains(coil));
        return Stream.concat(added, factory);
    }

    private record ReleaseCase(String id, Phrase statement, Held held, String relay, Seconds pause)
            implements LetGoCase {

        /** Empty where the relay is not held, or something else goes on holding it: whether that may be, other claims say. */
        private Optional<Seconds> release(Pair pair) {
            PartId coil = held.coil();
            Wired wired = pair.fitted().wired();
            Relay drawn = (Relay) wired.network().part(coil);
            double asDrawn = Copper.temperatureFactor(wired.warmth());
            double cold = Copper.temperatureFactor(
                            held.fitting().brief().order().shop().coldest())
                    / asDrawn;
            double ohms = drawn.coilOhms() * cold;
            double warm = pair.fitted().point().amps(coil);
            double from = Math.abs(warm) / cold;
            double to = drawn.dropOutVolts() / drawn.coilOhms();
            if (from <= to) {
                return Optional.empty();
            }
            double henries = ReleaseTimes.coil().value() * drawn.coilOhms() / asDrawn;
            double seconds = ReleaseTimes.armature().value();
            double share = Math.pow(to / from, 1.0 / STEPS);
            for (int step = 0; step < STEPS; step++) {
                double high = from * Math.pow(share, step);
                double low = high * share;
                Optional<Double> taken = KickedCoil.takenVolts(pair, about(), coil, Math.copySign(low, warm));
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
    }
}
