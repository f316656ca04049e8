package org.loomproof.workshop.prover.product;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.OutputBehaviour;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.APlan;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.prover.claim.Claim;
import org.loomproof.workshop.prover.claim.Claimed;
import org.loomproof.workshop.prover.claim.Fitting;
import org.loomproof.workshop.prover.explore.Explorer;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.product.PlainExplorer.Pulse;
import org.loomproof.workshop.prover.product.PlainExplorer.Seen;
import org.loomproof.workshop.prover.product.PlainExplorer.State;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.wiring.Corner;

/** What is reached, and what the controller is given in each state, is the same by a second way that shares nothing. */
class SecondWayTest {

    @Test
    void theHandcartWithTheSimpleKit() {
        check(Jobs.simple());
    }

    static LongStream seeds() {
        return Sample.seeds(3, 40);
    }

    /**
     * The handcart with resistances at chance in its supply lead, its ground lead and its trigger lead: readings between the
     * thresholds, a controller that the siren puts to sleep, one that never wakes.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void theHandcartBadlyJoined(long seed) {
        check(badlyJoined(seed));
    }

    static Jobs.Job badlyJoined(long seed) {
        Random chance = new Random(seed);
        Kit kit = AKit.simple().kit();
        APlan plan = APlan.byHand()
                .fuse("F1", 5)
                .load("B1", "sounder", 1.2)
                .resistor("R1", decades(chance, 0.1, 10))
                .resistor("R2", decades(chance, 0.1, 10))
                .resistor("R3", decades(chance, 100, 1e5))
                .wire("W1", "lead supply", "R1 1")
                .wire("W2", "R1 2", "F1 2")
                .wire("W3", "F1 1", "circuit constant tap", 0.2, 1)
                .wire("W4", "lead ground", "R2 1")
                .wire("W5", "R2 2", "body")
                .wire("W6", "lead trigger", "R3 1")
                .wire("W7", "R3 2", "circuit dome tap")
                .wire("W8", "lead siren", "B1 +")
                .wire("W9", "B1 -", "body")
                .connect("supply", Wish.BASICS, "constant", "F1 R1", "W1 W2 W3")
                .connect("ground", Wish.BASICS, "", "R2", "W4 W5")
                .connect("trigger", Wish.WATCH_OPENINGS, "dome", "R3", "W6 W7")
                .connect("siren", Wish.SIREN, "", "B1", "W8 W9");
        return new Jobs.Job(Jobs.simple().brief(), plan.forKit(kit));
    }

    private static double decades(Random chance, double from, double to) {
        return from * Math.pow(to / from, chance.nextDouble());
    }

    /** So long is a tick: the simple kit arms in two. */
    private static final double TICK_SECONDS = 10;

    static List<int[]> ticks() {
        return List.of(new int[] {1, 1, 1}, new int[] {1, 3, 1}, new int[] {3, 1, 1}, new int[] {1, 2, 3});
    }

    /**
     * A kit that locks, shuts a window and unlocks, all of it by pulses that overlap where their clocks let them: a lock pulse that outlasts
     * the arming is still there when it is armed, and meets the unlock pulse of one who changes his mind.
     */
    @ParameterizedTest
    @MethodSource("ticks")
    void theHandcartWithPulsesThatOverlap(int[] ticks) {
        List<Pulse> pulses = List.of(
                new Pulse(new LeadId("lock"), ControllerState.ARMING, ticks[0]),
                new Pulse(new LeadId("window"), ControllerState.ARMING, ticks[1]),
                new Pulse(new LeadId("unlock"), ControllerState.DISARMED, ticks[2]));
        Jobs.Job simple = Jobs.simple();
        AKit kit = AKit.simple();
        pulses.forEach(pulse -> kit.lead(pulse.lead().toString(), LeadRole.WINDOW, output(pulse), false)
                .output(new OutputBehaviour(pulse.lead(), EnumSet.of(pulse.on()), OutputTiming.PULSE)));
        Brief brief =
                new Brief(simple.brief().sheet(), kit.kit(), simple.brief().order());
        Jobs.Job job = new Jobs.Job(brief, Jobs.simplePlan().forKit(kit.kit()));
        Map<State, Seen> expected = check(job, new PlainExplorer(job, pulses, 2));
        assertThat(expected.keySet())
                .as("with pulses that overlap")
                .anyMatch(state -> state.does() == ControllerState.DISARMED
                        && state.pulses().containsAll(List.of(new LeadId("lock"), new LeadId("unlock"))));
        assertThat(expected.keySet().stream()
                        .anyMatch(state -> state.does() == ControllerState.ARMED
                                && state.pulses().contains(new LeadId("window"))))
                .isEqualTo(ticks[1] >= 2);
    }

    private static Port output(Pulse pulse) {
        return new Port.LowSide(
                Figure.exactly(new Amps(0.5), Figured.STATED),
                Figure.exactly(new Volts(0.3), Figured.STATED),
                Optional.of(Figure.exactly(new Seconds(TICK_SECONDS * pulse.ticks()), Figured.STATED)),
                false,
                false);
    }

    private static void check(Jobs.Job job) {
        check(job, new PlainExplorer(job));
    }

    private static Map<State, Seen> check(Jobs.Job job, PlainExplorer plain) {
        Map<State, Seen> expected = plain.explore();
        Reachable reachable = reachable(job);
        Product product = reachable.product();
        assertThat(reachable.search().isComplete()).isTrue();
        Map<State, Given> found = new HashMap<>();
        for (int k = 0; k < reachable.search().size(); k++) {
            Product.Place at = reachable.search().place(k);
            found.put(state(product, at), product.given(at));
        }
        assertThat(found).hasSize(reachable.search().size());
        Set<State> alike = new HashSet<>();
        expected.forEach((state, seen) -> {
            State here = alike(state, product);
            Given given = found.get(here);
            assertThat(given).as("not reached: %s", state).isNotNull();
            if (given != null) {
                assertSame(given, seen, state);
            }
            alike.add(here);
        });
        assertThat(alike).isEqualTo(found.keySet());
        return expected;
    }

    /** The state without what is not moved there; what moves nothing from its place at rest stays at rest. */
    private static State alike(State state, Product product) {
        SortedMap<OperableId, String> moved = new TreeMap<>();
        product.moved().forEach((operable, positions) -> {
            String position = state.positions().getOrDefault(operable, positions.getFirst());
            moved.put(operable, positions.contains(position) ? position : positions.getFirst());
        });
        return new State(
                moved, state.supply(), state.does(), state.pulses(), state.feed(), state.asleep(), state.spent());
    }

    private static void assertSame(Given given, Seen seen, State state) {
        assertThat(given.isUnsettled()).as("goes in a circle: %s", state).isEqualTo(seen.circles());
        if (!seen.circles()) {
            assertThat(given.mayLive()).as("lives: %s", state).isEqualTo(seen.alive());
            assertThat(given.maySleep()).as("sleeps: %s", state).isNotEqualTo(seen.alive());
            if (seen.alive()) {
                assertThat(given.isSurelyRaised()).as("active: %s", state).isEqualTo(seen.active());
                assertThat(given.isQuiet()).as("resting: %s", state).isEqualTo(seen.resting());
            }
        }
    }

    private static State state(Product product, Product.Place at) {
        Control control = product.control(at);
        return new State(
                product.positions(at),
                product.supply(at),
                control.state(),
                control.pulses(),
                control.feed(),
                control.asleep(),
                control.spent());
    }

    static Reachable reachable(Jobs.Job job) {
        Vehicle stock = Vehicle.stock(job.brief(), Corner.TYPICAL);
        Vehicle fitted = Vehicle.fitted(job.brief(), job.plan(), Corner.TYPICAL);
        Fitting fitting = new Fitting(job.brief(), job.plan(), stock, fitted);
        Sightings sightings = new Sightings(job.brief().kit());
        Explorer.ofWholeRanges(job.brief(), job.plan(), stock, fitted, sightings)
                .decide(Claim.all().stream()
                        .flatMap(claim -> claim.in(fitting).stream())
                        .filter(Claimed.ToShow.class::isInstance)
                        .map(claimed -> ((Claimed.ToShow) claimed).toShow())
                        .toList());
        return Reachable.of(fitting, sightings).orElseThrow();
    }
}
