package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.words.Phrase;

/**
 * At the instant an output lets go of a coil the coil's current has a way to go on. The coil is replaced by a source of its
 * current, the output is off, and the output then sees no more than its supply and what a clamp diode adds,
 * or than the kit says that it bears.
 */
public final class CoilKick implements Claim {

    /** What a clamp diode with its wires may add beyond the rail; common practice, no published source. */
    static final double CLAMP_VOLTS = 2;

    /** A coil that carries less than this when it is let go has no kick worth the name; common practice. */
    private static final double LEAST_AMPS = 0.005;

    private static final String NAME = "coil-kick";

    @Override
    public String name() {
        return NAME;
    }

    /** Whether a case is about the kick at that lead. */
    public static boolean isCaseOf(LeadId lead, String caseId) {
        return caseId.startsWith(NAME + " " + lead + " ");
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        List<Claimed> all = new ArrayList<>();
        for (Hookup.Connect connect : fitting.connected()) {
            LeadId lead = connect.lead();
            fitting.output(lead)
                    .ifPresent(output -> Coils.drivenFrom(fitting, lead)
                            .forEach(coil -> all.add(new Claimed.ToShow(new KickCase(
                                    name() + " " + lead + " " + Coils.name(fitting, coil),
                                    Phrase.of(
                                            "claim.coil-kick",
                                            lead,
                                            fitting.fitted().wired().words(coil)),
                                    new LetGoCase.Held(fitting, lead, output.part(), coil),
                                    fitting.brief().kit().lead(lead).port())))));
        }
        return all;
    }

    private record KickCase(String id, Phrase statement, Held held, Port port) implements LetGoCase {

        private boolean sinks() {
            return port instanceof Port.LowSide;
        }

        /**
         * Volts of the lead against the controller's ground at the instant; empty where the coil is idle. A coil
         * that something else holds on to has its way there, and shows no kick.
         */
        private Optional<Double> kickVolts(Pair pair) {
            OperatingPoint on = pair.fitted().point();
            double amps = on.amps(held.coil());
            if (Math.abs(amps) < LEAST_AMPS || pair.fitted().aliveByVolts() < 0) {
                return Optional.empty();
            }
            return Optional.of(KickedCoil.volts(pair, about(), held.coil(), amps)
                    .map(reading -> reading.volts(reach(reading)))
                    .orElse(sinks() ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY));
        }

        private Reach reach(Reading reading) {
            Reach output = Objects.requireNonNull(
                    reading.wired().controller().orElseThrow().outputs().get(held.lead()));
            return output.against(reading.wired().controller().orElseThrow().ground());
        }

        private double limitVolts(Pair pair) {
            return port instanceof Port.LowSide out
                    ? out.bears()
                            .map(volts -> volts.low().value())
                            .orElseGet(() -> pair.fitted().controllerVolts() + CLAMP_VOLTS)
                    : -CLAMP_VOLTS;
        }

        @Override
        public double slack(Pair pair) {
            Optional<Double> volts = kickVolts(pair);
            if (volts.isEmpty()) {
                return Double.NaN;
            }
            double slack = sinks() ? limitVolts(pair) - volts.get() : volts.get() - limitVolts(pair);
            return Double.isFinite(slack) ? slack : -KickedCoil.NO_WAY_VOLTS;
        }

        /** An output that has been killed by its coil guards nothing. */
        @Override
        public Severity severity(Pair pair) {
            return Severity.UNPROTECTED;
        }

        @Override
        public Margin margin(Pair pair) {
            double volts = kickVolts(pair).filter(Double::isFinite).orElse(KickedCoil.NO_WAY_VOLTS);
            Phrase computed = Math.abs(volts) > KickedCoil.NO_WAY_VOLTS / 2
                    ? Phrase.of("margin.no-way-for-current", held.lead())
                    : Phrase.of("margin.output-sees", held.lead(), Shown.volts(volts));
            String key = sinks() ? "margin.at-most-volts" : "margin.not-under-volts";
            return new Margin(slack(pair), "V", computed, Phrase.of(key, Shown.volts(limitVolts(pair))));
        }
    }
}
