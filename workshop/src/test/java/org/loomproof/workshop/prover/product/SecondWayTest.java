package org.loomproof.workshop.prover.product;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.APlan;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.prover.claim.Claim;
import org.loomproof.workshop.prover.claim.Claimed;
import org.loomproof.workshop.prover.claim.Fitting;
import org.loomproof.workshop.prover.explore.Explorer;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.product.PlainExplorer.Seen;
import org.loomproof.workshop.prover.product.PlainExplorer.State;
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

    private static void check(Jobs.Job job) {
        PlainExplorer plain = new PlainExplorer(job);
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
    }

    /** The state without what is not moved there; what moves nothing from its place at rest stays at rest. */
    private static State alike(State state, Product product) {
        SortedMap<OperableId, String> moved = new TreeMap<>();
        product.moved().forEach((operable, positions) -> {
            String position = state.positions().getOrDefault(operable, positions.getFirst());
            moved.put(operable, positions.contains(position) ? position : positions.getFirst());
        });
        return new State(
                moved, state.supply(), state.does(), state.acting(), state.feed(), state.asleep(), state.spent());
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
                product.situation(at).supply(),
                control.state(),
                control.moment() == Moment.ACTING,
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
