package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.loomproof.network.part.Node;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.kit.OutputBehaviour;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.prover.explore.WorkedLoads;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * What a pulse did to the locks stays done when it is over. Where the car's own switch stays as it is put, the wire sees it again:
 * it shows what the pulse gave it only if that switch has moved with the locks. How the wire stands during the pulse and after it,
 * with the switch in each position, is solved on the fitted network.
 */
final class StaysAsWorked implements Claim {

    /** The wire stands otherwise when it is further off than this. */
    private static final Volts MOST =
            new Volts(WorkedLoads.LEAST_SHARE * SupplyPoint.REST.volts().value());

    @Override
    public String name() {
        return "stays-as-worked";
    }

    @Override
    public boolean isWalked() {
        return false;
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        List<Claimed> all = new ArrayList<>();
        Workbench bench = new Workbench();
        List<CircuitId> wires = fitting.connected(Wish.LOCKS).stream()
                .flatMap(connect -> connect.circuits().stream())
                .distinct()
                .toList();
        for (Hookup.Connect connect : fitting.connected(Wish.LOCKS)) {
            PulseLongEnough.pulsed(fitting.brief().kit().behaviour(), connect.lead())
                    .flatMap(output -> wires.stream()
                            .flatMap(circuit -> undone(bench, fitting, output, circuit))
                            .max(Comparator.comparingDouble(Undone::offUnmoved)))
                    .ifPresent(undone -> all.add(result(fitting, connect, undone)));
        }
        return all;
    }

    /**
     * A pulse whose work the car's own switch undoes unless it moves.
     *
     * @param knob that switch
     * @param after the pulse over, the switch not moved
     * @param unmoved volts on the wire then
     * @param offUnmoved how far that is from what the pulse gave
     * @param offMoved how far it is at the least where the switch has moved
     */
    private record Undone(
            Operable knob, CircuitId circuit, Situation after, double unmoved, double offUnmoved, double offMoved) {}

    private static Stream<Undone> undone(Workbench bench, Fitting fitting, OutputBehaviour output, CircuitId circuit) {
        return fitting.brief().sheet().circuit(circuit).follows().stream()
                .map(fitting.brief().sheet()::operable)
                .filter(Operable::staysAsPut)
                .flatMap(knob -> knob.positions().stream()
                        .flatMap(from -> undone(bench, fitting, output, circuit, knob, from).stream()));
    }

    private static Optional<Undone> undone(
            Workbench bench, Fitting fitting, OutputBehaviour output, CircuitId circuit, Operable knob, String from) {
        ControllerState state = output.onIn().stream().findFirst().orElse(ControllerState.DISARMED);
        Moment acting = fitting.brief().kit().behaviour().momentOf(output.lead());
        Optional<Double> during = volts(bench, fitting, circuit, at(knob, from, state, acting));
        Situation after = at(knob, from, state, Moment.SETTLED);
        Optional<Double> unmoved = volts(bench, fitting, circuit, after);
        if (during.isEmpty() || unmoved.isEmpty() || off(during.get(), unmoved.get()) <= MOST.value()) {
            return Optional.empty();
        }
        double moved = knob.positions().stream()
                .flatMap(position -> volts(bench, fitting, circuit, at(knob, position, state, Moment.SETTLED)).stream())
                .mapToDouble(volts -> off(during.get(), volts))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        return Optional.of(new Undone(knob, circuit, after, unmoved.get(), off(during.get(), unmoved.get()), moved));
    }

    private static double off(double during, double after) {
        return Math.abs(during - after);
    }

    private static Situation at(Operable knob, String position, ControllerState state, Moment moment) {
        return new Situation(
                new TreeMap<>(Map.of(knob.id(), position)), SupplyPoint.REST, state, ControllerFeed.WHOLE, moment);
    }

    /** On the side of a cut wire where what it works is. */
    private static Optional<Double> volts(Workbench bench, Fitting fitting, CircuitId circuit, Situation at) {
        var factory = fitting.fitted().wired().factory();
        Optional<Node> wire = Optional.ofNullable(factory.after().get(circuit))
                .or(() -> Optional.ofNullable(factory.before().get(circuit)));
        return wire.flatMap(node -> bench.settled(
                        fitting.fitted().wired(), fitting.fitted().settings().of(at))
                .map(point -> point.volts(node)));
    }

    private Claimed result(Fitting fitting, Hookup.Connect connect, Undone undone) {
        Operable knob = undone.knob();
        Optional<Boolean> moves = knob.movesWithLocks();
        Verdict verdict;
        if (moves.isEmpty()) {
            Measurement settledBy = new Measurement("knob-of " + knob.id(), Phrase.of("measure.knob", knob.id()));
            verdict = new Verdict.Open(Phrase.of("open.not-said", settledBy.what()), List.of(settledBy));
        } else {
            Margin margin = margin(moves.get() ? undone.offMoved() : undone.offUnmoved());
            verdict = margin.isKept()
                    ? new Verdict.Holds(margin, undone.after())
                    : new Verdict.Broken(margin, witness(fitting, connect, undone));
        }
        Phrase statement = Phrase.of("claim.stays-as-worked", connect.lead(), knob.id());
        return new Claimed.Decided(new ClaimResult(name() + " " + connect.lead(), statement, verdict, List.of()));
    }

    private static Margin margin(double off) {
        return new Margin(
                MOST.value() - off,
                "V",
                Phrase.of("margin.wire-changes", new Volts(off)),
                Phrase.of("margin.at-most-volts", MOST));
    }

    private static Witness witness(Fitting fitting, Hookup.Connect connect, Undone undone) {
        Observation seen =
                new Observation(Phrase.of("meter.volts-at", undone.circuit()), new Volts(undone.unmoved()).toString());
        return new Witness(
                ByFigures.steps(fitting, undone.after(), Phrase.of("step.pulse-over", connect.lead())),
                undone.after(),
                List.of(seen));
    }
}
