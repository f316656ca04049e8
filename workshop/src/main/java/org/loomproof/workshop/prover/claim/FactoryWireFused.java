package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.WireId;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * A factory conductor that something added feeds is protected as well as it was: the smallest fuse before the feed is no larger
 * than what protects the conductor in the stock vehicle. At any current a fuse of the same kind and of no larger rating lets no
 * more through, so that this is enough for a short anywhere along the conductor.
 *
 * <p>Both are found on the network, with the conductor at the body: in the stock vehicle which fuse the short is drawn through, in
 * the fitted one through which fuse what an added wire brings. Where the stock vehicle feeds the conductor nowhere, what it bears
 * is taken from its cross-section. Looked at is every condition of a controller that is fed, and of what a person operates one
 * thing moved at a time.
 */
final class FactoryWireFused implements Claim {

    @Override
    public String name() {
        return "factory-wire-fused";
    }

    @Override
    public boolean isWalked() {
        return false;
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        Map<Conductor, List<Arrival>> fed = fed(fitting);
        Shorts before = new Shorts(
                fitting.stock(),
                fitting.plan(),
                fed.keySet().stream().map(Conductor::stock).toList());
        Shorts after = new Shorts(
                fitting.fitted(),
                fitting.plan(),
                fed.keySet().stream().map(Conductor::fitted).toList());
        List<Situation> situations = situations(fitting);
        List<Claimed> all = new ArrayList<>();
        fed.forEach((conductor, arrivals) -> {
            FactoryGuard guard = FactoryGuard.of(fitting, before, conductor.stock(), conductor.circuit());
            Optional<Outcome> worst = situations.stream()
                    .filter(situation -> !guard.isUnfused(situation))
                    .flatMap(situation -> outcomes(guard, after, conductor, arrivals, situation))
                    .reduce((first, second) -> second.amps() > first.amps() ? second : first);
            worst.map(outcome -> result(fitting, conductor, guard, outcome)).ifPresent(all::add);
        });
        return all;
    }

    /** A factory wire, or one end of a cut one. */
    private record Conductor(CircuitId circuit, Node stock, Node fitted, boolean isAfterCut) {}

    /** An added wire that ends on a factory wire, and how its current counts into that. */
    private record Arrival(WireId wire, PartId part, int sign) {}

    private static Map<Conductor, List<Arrival>> fed(Fitting fitting) {
        Map<Conductor, List<Arrival>> fed = new LinkedHashMap<>();
        AddedWays ways = new AddedWays(fitting);
        for (AddedWire wire : fitting.plan().wires()) {
            Reach reach = fitting.fitted().wired().added().wires().get(wire.id());
            if (reach != null) {
                enter(fed, ways, wire.from(), new Arrival(wire.id(), reach.part(), -1));
                enter(fed, ways, wire.to(), new Arrival(wire.id(), reach.part(), 1));
            }
        }
        return fed;
    }

    private static void enter(Map<Conductor, List<Arrival>> fed, AddedWays ways, End end, Arrival arrival) {
        conductor(ways.fitting(), end)
                .filter(conductor -> ways.canBring(end))
                .ifPresent(conductor ->
                        fed.computeIfAbsent(conductor, c -> new ArrayList<>()).add(arrival));
    }

    private static Optional<Conductor> conductor(Fitting fitting, End end) {
        return switch (end) {
            case End.Tap(var circuit) -> Optional.of(conductor(fitting, circuit, false));
            case End.CutBefore(var circuit) -> Optional.of(conductor(fitting, circuit, false));
            case End.CutAfter(var circuit) -> Optional.of(conductor(fitting, circuit, true));
            case End.OfLead lead -> Optional.empty();
            case End.OfPart part -> Optional.empty();
            case End.Body body -> Optional.empty();
        };
    }

    private static Conductor conductor(Fitting fitting, CircuitId circuit, boolean isAfterCut) {
        Node stock = node(fitting.stock().wired().factory().before(), circuit);
        var factory = fitting.fitted().wired().factory();
        return new Conductor(
                circuit, stock, node(isAfterCut ? factory.after() : factory.before(), circuit), isAfterCut);
    }

    private static Node node(Map<CircuitId, Node> nodes, CircuitId circuit) {
        return Objects.requireNonNull(nodes.get(circuit), circuit::toString);
    }

    private static List<Situation> situations(Fitting fitting) {
        List<Situation> all = new ArrayList<>();
        for (Condition condition : Condition.list(fitting.brief().kit(), false, false)) {
            Condition.Doing doing = condition.representative();
            if (doing.feed() == ControllerFeed.WHOLE) {
                moved(fitting).forEach(positions -> all.add(doing.with(positions, SupplyPoint.REST)));
            }
        }
        return all;
    }

    /** Everything at rest, then each thing that a person operates moved by itself. */
    static List<SortedMap<OperableId, String>> moved(Fitting fitting) {
        List<SortedMap<OperableId, String>> all = new ArrayList<>();
        all.add(new TreeMap<>());
        for (Operable operable : fitting.brief().sheet().operables()) {
            operable.positions().stream()
                    .filter(position -> !position.equals(operable.rest()))
                    .forEach(position -> all.add(new TreeMap<>(Map.of(operable.id(), position))));
        }
        return all;
    }

    /**
     * What an added wire brings into a short.
     *
     * @param fuse the smallest before it; empty where there is none
     * @param brought in amps
     */
    private record Outcome(Situation at, Arrival arrival, Optional<Shorts.Guard> fuse, double brought) {

        /** The rating of the fuse before it; beyond all bounds where there is none. */
        double amps() {
            return fuse.map(each -> each.rating().value()).orElse(Double.POSITIVE_INFINITY);
        }
    }

    private static Stream<Outcome> outcomes(
            FactoryGuard guard, Shorts after, Conductor conductor, List<Arrival> arrivals, Situation situation) {
        Optional<OperatingPoint> point = after.at(conductor.fitted(), situation);
        return point.stream()
                .flatMap(found -> arrivals.stream().flatMap(arrival -> {
                    double brought = arrival.sign() * found.amps(arrival.part());
                    if (brought <= guard.bearsAnyhow()) {
                        return Stream.empty();
                    }
                    Optional<Shorts.Guard> fuse =
                            after.guard(conductor.fitted(), situation, arrival.part(), guard.bearsAnyhow());
                    return fuse.filter(each -> guard.fuses().contains(each.part()))
                                    .isPresent()
                            ? Stream.empty()
                            : Stream.of(new Outcome(situation, arrival, fuse, brought));
                }));
    }

    private Claimed result(Fitting fitting, Conductor conductor, FactoryGuard guard, Outcome outcome) {
        String id = name() + " " + conductor.circuit() + (conductor.isAfterCut() ? " after" : "");
        Phrase statement = Phrase.of("claim.factory-wire-fused", conductor.circuit());
        return new Claimed.Decided(
                new ClaimResult(id, statement, verdict(fitting, conductor, guard, outcome), List.of()));
    }

    private static Verdict verdict(Fitting fitting, Conductor conductor, FactoryGuard guard, Outcome outcome) {
        Phrase computed = outcome.fuse()
                .map(fuse -> Phrase.of(
                        "margin.fuse-before",
                        fitting.fitted().wired().words(fuse.part()),
                        fuse.rating(),
                        outcome.arrival().wire()))
                .orElseGet(() ->
                        Phrase.of("margin.no-fuse-before", outcome.arrival().wire()));
        if (guard.limits().isEmpty()) {
            return new Verdict.Open(
                    Phrase.of("open.wire-unknown", computed, conductor.circuit()), List.of(guard.ask()));
        }
        FactoryGuard.Limit most = guard.most();
        if (outcome.amps() > most.high().value()) {
            Margin margin = margin(most.high().value(), outcome, computed, most);
            List<Phrase> steps = ByFigures.steps(fitting, outcome.at(), Phrase.of("step.chafed", conductor.circuit()));
            Observation seen = new Observation(
                    Phrase.of("meter.amps-in", outcome.arrival().wire()),
                    Shown.amps(outcome.brought()).toString());
            return new Verdict.Broken(margin, new Witness(steps, outcome.at(), List.of(seen)));
        }
        FactoryGuard.Limit least = guard.least();
        return outcome.amps() <= least.low().value()
                ? new Verdict.Holds(margin(least.low().value(), outcome, computed, least), outcome.at())
                : new Verdict.Open(
                        Phrase.of("open.fuse-not-sure", computed, least.words(), least.low()), List.of(guard.ask()));
    }

    private static Margin margin(double most, Outcome outcome, Phrase computed, FactoryGuard.Limit limit) {
        double slack = most - Math.min(outcome.amps(), outcome.brought());
        return new Margin(slack, "A", computed, Phrase.of("margin.no-larger-than", new Amps(most), limit.words()));
    }

    /** A situation of the stock vehicle: what a person operates, and nothing else. */
    static Situation stock(SortedMap<OperableId, String> positions) {
        return new Situation(
                positions, SupplyPoint.REST, ControllerState.DISARMED, ControllerFeed.WHOLE, Moment.SETTLED);
    }
}
