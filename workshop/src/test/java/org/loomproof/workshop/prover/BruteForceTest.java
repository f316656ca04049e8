package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.Solver;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.InputReach;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Settings;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.wiring.VehicleWiring;
import org.loomproof.workshop.wiring.Warmth;
import org.loomproof.workshop.wiring.Wired;

/**
 * A second opinion: the whole network, every position of everything, cold, at room temperature and hot, every state under
 * every feed at every supply point, nothing left out as alike or far away, each with the engine's own search for other points
 * of rest; while it cranks, at every hundredth of a volt on the way down as well (every tenth in everyday work). The worst
 * slack of a few claims, worked out here afresh, is the prover's.
 */
class BruteForceTest {

    /** Situations whose volts lie closer than this count as one: the prover tells the one with the fewest steps. */
    private static final double SAME_VOLTS = 1e-4;

    private static final double ALLOWED_DROP_VOLTS = 0.2;

    /** A warning turns into an alarm by what is seen still; an alarm must not keep itself going. */
    private static final Set<ControllerState> WATCHING =
            Set.of(ControllerState.ARMED, ControllerState.WARNING, ControllerState.SOUNDING);

    @Test
    void theVanAsPlanned() {
        check(Jobs.vanJob());
    }

    @Test
    void theVanWithItsStarterOnTheMakeContact() {
        Jobs.Job van = Jobs.vanJob();
        check(van.with(Altered.rewired(van.plan(), "W11", "K1 87", "circuit starter after")));
    }

    private static void check(Jobs.Job job) {
        Proven proven = Proven.proven(job);
        Worst room = new Worst(job, Corner.TYPICAL).walk();
        List<Worst> anyWarmth = Stream.concat(
                        Stream.of(room), Warmth.ends().stream().map(end -> new Worst(job, end).walk()))
                .toList();
        check(
                proven.verdict("starts-when-disarmed starter-solenoid"),
                anyWarmth,
                each -> each.startsDisarmed,
                SAME_VOLTS);
        check(
                proven.verdict("starts-with-controller-dead starter-solenoid"),
                anyWarmth,
                each -> each.startsDead,
                SAME_VOLTS);
        check(proven.verdict("opening-seen passenger-door"), anyWarmth, each -> each.doorSeen, SAME_VOLTS);
        check(proven.verdict("quiet-when-closed trigger"), anyWarmth, each -> each.quiet, SAME_VOLTS);
        check(proven.verdict("stock-as-before trunk-lamp-lamp"), anyWarmth, each -> each.lampPercent, 1e-3);
    }

    /** What holds does so however warm the car is; what is broken at room temperature already is told there. */
    private static void check(Verdict verdict, List<Worst> anyWarmth, ToDoubleFunction<Worst> slack, double within) {
        double room = slack.applyAsDouble(anyWarmth.getFirst());
        double least = anyWarmth.stream().mapToDouble(slack).min().orElseThrow();
        switch (verdict) {
            case Verdict.Holds holds -> assertThat(holds.tightest().slack()).isCloseTo(least, within(within));
            case Verdict.Broken broken -> assertThat(broken.worst().slack()).isCloseTo(room, within(within));
            case Verdict.Open open -> throw new AssertionError("open: " + open);
            case Verdict.Declared declared -> throw new AssertionError("declared: " + declared);
        }
    }

    private static final class Worst {

        private final Wired stock;
        private final Wired fitted;
        private final Settings stockSettings;
        private final Settings fittedSettings;
        private final Solver stockSolver;
        private final Solver fittedSolver;
        private final List<Operable> operables;
        private double lampWorks;
        private final double leastSupply;
        double startsDisarmed = Double.POSITIVE_INFINITY;
        double startsDead = Double.POSITIVE_INFINITY;
        double doorSeen = Double.POSITIVE_INFINITY;
        double quiet = Double.POSITIVE_INFINITY;
        double lampPercent = Double.POSITIVE_INFINITY;

        Worst(Jobs.Job job, Corner corner) {
            stock = VehicleWiring.stock(job.brief(), corner);
            fitted = VehicleWiring.fitted(job.brief(), job.plan(), corner);
            stockSettings =
                    new Settings(stock, job.brief().sheet(), job.brief().kit().behaviour());
            fittedSettings =
                    new Settings(fitted, job.brief().sheet(), job.brief().kit().behaviour());
            stockSolver = Solver.of(stock.network());
            fittedSolver = Solver.of(fitted.network());
            operables = job.brief().sheet().operables();
            leastSupply = job.brief().kit().leastSupply().typical().value();
        }

        Worst walk() {
            List<Map<OperableId, String>> all = positions(0);
            for (SupplyPoint supply : SupplyPoint.values()) {
                walk(supply.volts().value(), all, all);
            }
            List<Map<OperableId, String>> cranking = all.stream()
                    .filter(positions -> "start".equals(positions.get(Operable.KEY)))
                    .toList();
            int low = hundredths(SupplyPoint.CRANKING);
            for (int volts = low + 1; volts < hundredths(SupplyPoint.LOW); volts += Sample.count(10, 1)) {
                walk(volts / 100.0, all, cranking);
            }
            return this;
        }

        private static int hundredths(SupplyPoint supply) {
            return (int) Math.round(100 * supply.volts().value());
        }

        private void walk(double volts, List<Map<OperableId, String>> all, List<Map<OperableId, String>> asked) {
            lampWorks = all.stream()
                    .mapToDouble(positions -> Math.abs(lampAmps(stock, stockPoint(volts, positions))))
                    .max()
                    .orElseThrow();
            asked.forEach(positions -> walk(volts, positions));
        }

        private List<Map<OperableId, String>> positions(int from) {
            if (from == operables.size()) {
                return List.of(Map.of());
            }
            List<Map<OperableId, String>> all = new ArrayList<>();
            for (Map<OperableId, String> rest : positions(from + 1)) {
                for (String position : operables.get(from).positions()) {
                    Map<OperableId, String> each = new TreeMap<>(rest);
                    each.put(operables.get(from).id(), position);
                    all.add(each);
                }
            }
            return all;
        }

        private OperatingPoint stockPoint(double volts, Map<OperableId, String> positions) {
            Situation idle = situation(positions, ControllerState.DISARMED, ControllerFeed.WHOLE);
            return stockSolver
                    .solve(stockSettings.of(idle).emf(stock.battery(), volts))
                    .settledPoint();
        }

        /** Its supply is set anew wherever it is solved. */
        private static Situation situation(
                Map<OperableId, String> positions, ControllerState state, ControllerFeed feed) {
            return new Situation(new TreeMap<>(positions), SupplyPoint.REST, state, feed);
        }

        private void walk(double volts, Map<OperableId, String> positions) {
            OperatingPoint before = stockPoint(volts, positions);
            for (ControllerState state : ControllerState.values()) {
                for (ControllerFeed feed : ControllerFeed.values()) {
                    if (state != ControllerState.WITHOUT_SUPPLY) {
                        Situation situation = situation(positions, state, feed);
                        SolveOutcome outcome =
                                fittedSolver.solve(fittedSettings.of(situation).emf(fitted.battery(), volts));
                        points(outcome).forEach(after -> judge(situation, before, after));
                    }
                }
            }
        }

        private static Stream<OperatingPoint> points(SolveOutcome outcome) {
            return switch (outcome) {
                case SolveOutcome.Settled settled ->
                    Stream.concat(Stream.of(settled.point()), settled.otherStablePoints().stream());
                case SolveOutcome.Racing racing -> racing.stablePoints().stream();
                case SolveOutcome.Chattering chattering -> throw new AssertionError("chatters: " + chattering);
                case SolveOutcome.NotConverged lost -> throw new AssertionError("lost: " + lost);
            };
        }

        private void judge(Situation situation, OperatingPoint before, OperatingPoint after) {
            boolean idle = situation.controller() == ControllerState.DISARMED
                    || situation.controller() == ControllerState.OVERRIDE;
            boolean whole = situation.feed() == ControllerFeed.WHOLE;
            boolean watches = whole && WATCHING.contains(situation.controller());
            boolean sees = watches && situation.controller() != ControllerState.SOUNDING;
            if ("start".equals(situation.positions().get(Operable.KEY))) {
                double slack = volts(fitted, after) - volts(stock, before) + ALLOWED_DROP_VOLTS;
                startsDisarmed = whole && idle ? Math.min(startsDisarmed, slack) : startsDisarmed;
                startsDead = whole ? startsDead : Math.min(startsDead, slack);
            }
            InputReach trigger = Objects.requireNonNull(
                    fitted.controller().orElseThrow().inputs().get(new LeadId("trigger")));
            double reads = after.volts(trigger.wire(), trigger.ground());
            double alive = after.volts(
                            fitted.controller().orElseThrow().supply(),
                            fitted.controller().orElseThrow().ground())
                    - leastSupply;
            boolean anyOpen = situation.positions().containsValue("open");
            if (sees && "open".equals(situation.positions().get(new OperableId("passenger-door")))) {
                doorSeen = Math.min(doorSeen, alive < 0 ? alive : 2 - reads);
            }
            if (watches && !anyOpen && alive >= 0) {
                quiet = Math.min(quiet, reads - 4);
            }
            if (idle || (!whole && alive < 0)) {
                lampPercent = Math.min(lampPercent, 5 - lampChangePercent(before, after));
            }
        }

        private double lampChangePercent(OperatingPoint before, OperatingPoint after) {
            double amps = Math.abs(lampAmps(stock, before));
            double change = Math.abs(lampAmps(fitted, after) - lampAmps(stock, before));
            return change < 1e-5 ? 0 : 100 * change / (amps > 0.05 * lampWorks ? amps : lampWorks);
        }

        private static double lampAmps(Wired wired, OperatingPoint point) {
            Reach lamp = Objects.requireNonNull(wired.factory().loads().get(new ElementId("trunk-lamp-lamp")));
            return point.ampsInto(lamp.part(), lamp.pin());
        }

        private static double volts(Wired wired, OperatingPoint point) {
            Reach solenoid = Objects.requireNonNull(wired.factory().loads().get(new ElementId("starter-solenoid")));
            return Math.abs(point.volts(solenoid.from(), solenoid.to()));
        }
    }
}
