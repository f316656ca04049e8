package org.loomproof.workshop.prover.explore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.RelayPosition;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.prover.claim.Claim;
import org.loomproof.workshop.prover.claim.Claimed;
import org.loomproof.workshop.prover.claim.Fitting;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.Space;
import org.loomproof.workshop.prover.state.StepsTo;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.VehicleWiring;
import org.loomproof.workshop.words.Phrase;

/** What holds at two supply points holds between them, or is open. */
class BetweenTest {

    private static final PartId K1 = new PartId("plan K1");

    /** The coil of a relay has so many volts at the least wherever it is pulled in. */
    private record PulledInHard(double leastVolts) implements Case {
        @Override
        public String id() {
            return "pulled-in-hard K1";
        }

        @Override
        public Phrase statement() {
            return Phrase.of("claim.coil-kick", "K1");
        }

        @Override
        public PartId about() {
            return K1;
        }

        @Override
        public boolean concerns(ControllerState state, ControllerFeed feed) {
            return state == ControllerState.ARMED && feed == ControllerFeed.WHOLE;
        }

        @Override
        public double slack(Pair pair) {
            OperatingPoint point = pair.fitted().point();
            return point.relayPosition(K1) == RelayPosition.PULLED_IN ? coil(pair) - leastVolts : 1;
        }

        private static double coil(Pair pair) {
            AddedPartId relay = new AddedPartId("K1");
            return Math.abs(pair.fitted()
                    .point()
                    .volts(VehicleWiring.terminal(relay, "86"), VehicleWiring.terminal(relay, "85")));
        }

        @Override
        public Margin margin(Pair pair) {
            return new Margin(slack(pair), "V", Phrase.of("margin.is", "K1"), Phrase.of("margin.is", "K1"));
        }

        @Override
        public List<Observation> observations(Pair pair) {
            return List.of();
        }
    }

    /**
     * A coil that pulls in at 10 V at the coil. At 9 V it is let go, at 11.6 V it has some 11.4 V: 11 V are kept at every supply
     * point. Between, once it is pulled in, it has 10 V and no more: the lead takes 0.2 V of saturation, so that it moves at 10.2 V.
     */
    @Test
    void aRelayThatPullsInBetweenTwoSupplyPointsIsAskedAtTheVoltsWhereItDoes() {
        Jobs.Job cart = Jobs.simple();
        AddedPart late = new AddedPart.Relay(
                new AddedPartId("K1"), new Ohms(85), new Volts(10), new Volts(9.9), new Amps(40), new Amps(30));
        Jobs.Job job = cart.with(Altered.part(cart.plan(), late));
        Vehicle stock = Vehicle.stock(job.brief(), Corner.TYPICAL);
        Vehicle fitted = Vehicle.fitted(job.brief(), job.plan(), Corner.TYPICAL);
        Case hard = new PulledInHard(11);

        Verdict verdict = Explorer.ofTypicalValues(job.brief(), job.plan(), stock, fitted)
                .decide(List.of(hard))
                .result(hard)
                .orElseThrow()
                .verdict();

        assertThat(verdict).isInstanceOfSatisfying(Verdict.Open.class, open -> {
            assertThat(open.because().key()).isEqualTo("open.between-supply-points");
            assertThat(((Volts) open.because().arguments().getFirst()).value()).isCloseTo(10.1, within(0.15));
        });
        assertThat(Explorer.ofTypicalValues(job.brief(), job.plan(), stock, fitted)
                        .decide(List.of(new PulledInHard(9.8)))
                        .result(hard)
                        .orElseThrow()
                        .verdict())
                .isInstanceOf(Verdict.Holds.class);
    }

    /** The reduction against plain trying: at volts drawn at chance no claim has less to spare than at both points beside it. */
    @ParameterizedTest
    @MethodSource("jobs")
    void whereNoContactMovesNothingIsTighterThanAtBothPoints(Jobs.Job job) {
        Plain plain = new Plain(job);
        Random chance = new Random(Sample.seeds(1, 1).findFirst().orElseThrow());
        int asked = 0;
        for (int k = 0; k < Sample.count(300, 3000); k++) {
            asked += plain.ask(chance);
        }
        Note.that("between supply points at chance: " + asked);
        assertThat(asked).isPositive();
    }

    static Stream<Jobs.Job> jobs() {
        return Stream.of(Jobs.simple(), Jobs.failSecure(), Jobs.vanJob());
    }

    private static final class Plain {
        private final Vehicle stock;
        private final Vehicle fitted;
        private final Space space;
        private final StockTable table;
        private final List<Case> cases;
        private final Concern concern;
        private final Jobs.Job job;
        private final Workbench bench = new Workbench();

        Plain(Jobs.Job job) {
            this.job = job;
            this.stock = Vehicle.stock(job.brief(), Corner.TYPICAL);
            this.fitted = Vehicle.fitted(job.brief(), job.plan(), Corner.TYPICAL);
            this.cases = Claim.all().stream()
                    .filter(Claim::isWalked)
                    .flatMap(claim -> claim.in(new Fitting(job.brief(), job.plan(), stock, fitted)).stream())
                    .filter(Claimed.ToShow.class::isInstance)
                    .map(claimed -> ((Claimed.ToShow) claimed).toShow())
                    .toList();
            Set<PartId> parts = Stream.concat(
                            stock.wired().network().parts().stream(), fitted.wired().network().parts().stream())
                    .map(part -> part.id())
                    .collect(Collectors.toSet());
            var controller = fitted.wired().controller().orElseThrow();
            this.space = Space.of(
                    job.brief().sheet(),
                    Condition.list(
                            job.brief().kit(), !controller.feedFuses().isEmpty(), controller.fuseOutIsUnplugged()),
                    parts,
                    Stream.concat(stock.wired().switches().stream(), fitted.wired().switches().stream())
                            .toList(),
                    job.brief().sheet().operables().stream().map(Operable::id).collect(Collectors.toSet()));
            this.table = StockTable.of(space, stock, job.brief().sheet());
            this.concern = new Concern(
                    space, new StepsTo(job.brief().sheet(), job.brief().kit()), cases);
        }

        private List<SupplyPoint> upwards() {
            return space.supplies().stream()
                    .sorted(Comparator.comparingDouble(
                            (SupplyPoint supply) -> supply.volts().value()))
                    .toList();
        }

        /** One condition and combination at one place between two neighbouring points; how many cases were asked. */
        int ask(Random chance) {
            int condition = chance.nextInt(space.conditions().size());
            int positions = chance.nextInt(space.positions().size());
            int lower = chance.nextInt(space.supplies().size() - 1);
            SupplyPoint below = upwards().get(lower);
            SupplyPoint above = upwards().get(lower + 1);
            double volts = below.volts().value()
                    + chance.nextDouble()
                            * (above.volts().value() - below.volts().value());
            int[] asked = concern.at(concern.under(condition), positions);
            if (asked.length == 0) {
                return 0;
            }
            At low = at(condition, positions, below, below.volts().value(), table.working());
            At high = at(condition, positions, above, above.volts().value(), table.working());
            At there = at(
                    condition,
                    positions,
                    below,
                    volts,
                    table.at(space, stock, job.brief().sheet(), below, volts));
            if (low.stand() != there.stand() || there.stand() != high.stand()) {
                return 0;
            }
            List<String> tighter = new ArrayList<>();
            for (int c : asked) {
                double least = Math.min(low.slack(c), high.slack(c));
                double here = there.slack(c);
                if (!Double.isNaN(least) && here < least - 1e-3 * Math.max(1, Math.abs(least))) {
                    tighter.add(cases.get(c).id() + " at " + volts + " V: " + low.slack(c) + ", " + here + ", "
                            + high.slack(c) + " in "
                            + space.conditions().get(condition).representative() + " "
                            + space.positions().get(positions));
                }
            }
            assertThat(tighter).isEmpty();
            return asked.length;
        }

        private At at(int condition, int positions, SupplyPoint near, double volts, Working working) {
            Key key = new Key(condition, space.supplies().indexOf(near), positions);
            Beside beside = new Beside(space, key, volts, stock, fitted, working, bench);
            Setting setting = new Walker(
                            space,
                            fitted.settings(),
                            near,
                            space.conditions().get(condition).representative())
                    .at(positions)
                    .emf(fitted.wired().battery(), volts);
            return new At(beside.solve(), bench.stand(fitted, bench.answers(fitted, setting)));
        }

        private final class At {
            private final Optional<List<List<Pair>>> pairs;
            private final long stand;

            At(Optional<List<List<Pair>>> pairs, long stand) {
                this.pairs = pairs;
                this.stand = stand;
            }

            long stand() {
                return stand;
            }

            double slack(int c) {
                return pairs.map(p -> Beside.slack(cases.get(c), p)).orElse(Double.NaN);
            }
        }
    }
}
