package org.loomproof.network.corner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.network.TestNetwork.at;
import static org.loomproof.network.TestNetwork.id;
import static org.loomproof.network.TestNetwork.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.loomproof.network.RandomNetwork;
import org.loomproof.network.corner.WorstCase.Between;
import org.loomproof.network.corner.WorstCase.Method;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Contact;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.solve.Solver;

class CornerSearchTest {
    private static Between between(Network network, Setting setting, List<Uncertain> quantities, Node node) {
        return (Between) new CornerSearch(network).search(setting, quantities, Asked.volts(node));
    }

    /** C21's divider, 1 kΩ over 2.2 kΩ, at 5 % and 9 to 15 V: 9 V x 2090 / (2090 + 1050), by hand. */
    @Test
    void aDividersWorstIsAtItsCornersAndProven() {
        Network network = network()
                .battery("battery", "plus", "0", 12, 1e-3)
                .resistor("top", "plus", "out", 1000)
                .resistor("bottom", "out", "0", 2200)
                .build();
        Between found = between(
                network,
                network.atRest(),
                List.of(
                        Uncertain.tolerance(id("top"), 1000, 0.05),
                        Uncertain.tolerance(id("bottom"), 2200, 0.05),
                        Uncertain.volts(id("battery"), 9, 15)),
                at("out"));
        assertThat(found.method()).isEqualTo(Method.PROVEN_AT_VERTICES);
        assertThat(found.points()).isEqualTo(8);
        assertThat(found.least().value()).isCloseTo(9 * 2090.0 / 3140, within(1e-5));
        assertThat(found.greatest().value()).isCloseTo(15 * 2310.0 / 3260, within(1e-5));
        assertThat(found.least().at()).containsEntry("battery volts", 9.0).containsEntry("top ohms", 1050.0);
    }

    /** Looking everywhere in random straight networks finds nothing beyond what the vertices have. */
    @Test
    void nothingBetweenTheVerticesOfAStraightNetworkIsWorse() {
        for (long seed = 1; seed <= 6; seed++) {
            Network network = RandomNetwork.linear(seed, 25);
            List<Uncertain> quantities = new ArrayList<>();
            for (Part part : network.parts()) {
                if (part instanceof Resistor r && quantities.size() < 6) {
                    quantities.add(Uncertain.ohms(r.id(), 0.2 * r.ohms(), 5 * r.ohms()));
                }
            }
            Node node = network.nodes().get(network.nodes().size() / 2);
            Between found = between(network, network.atRest(), quantities, node);
            assertThat(found.method()).isEqualTo(Method.PROVEN_AT_VERTICES);
            SplittableRandom random = new SplittableRandom(seed);
            Solver solver = Solver.of(network);
            for (int k = 0; k < 300; k++) {
                Setting setting = network.atRest();
                for (Uncertain each : quantities) {
                    setting = each.change().apply(setting, random.nextDouble(each.low(), each.high()));
                }
                assertThat(solver.solve(setting).settledPoint().volts(node))
                        .as("seed %s", seed)
                        .isBetween(
                                found.least().value() - 1e-9, found.greatest().value() + 1e-9);
            }
        }
    }

    @Test
    void aDiodeOrAContactThatMovesMakesItASearchAndNoProof() {
        Network bent = network()
                .battery("battery", "plus", "0", 12, 1e-3)
                .resistor("r", "plus", "out", 100)
                .diode("d", "out", "0", DiodeModel.SILICON_1A)
                .build();
        Between found = between(bent, bent.atRest(), List.of(Uncertain.tolerance(id("r"), 100, 0.1)), at("out"));
        assertThat(found.method()).isEqualTo(Method.VERTICES_AND_DRAWN);
        Network moving = network()
                .battery("battery", "plus", "0", 12, 1e-3)
                .part(new Relay(
                        id("k"), at("plus"), at("0"), 90, 7, 2, List.of(Contact.make(at("plus"), at("out"))), 1e-3))
                .resistor("load", "out", "0", 100)
                .build();
        Between switched = between(moving, moving.atRest(), List.of(Uncertain.volts(id("battery"), 5, 9)), at("out"));
        assertThat(switched.method()).isEqualTo(Method.VERTICES_AND_DRAWN);
        assertThat(switched.least().value()).isCloseTo(0, within(1e-9));
        Between held = between(moving, moving.atRest(), List.of(Uncertain.volts(id("battery"), 8, 15)), at("out"));
        assertThat(held.method()).isEqualTo(Method.PROVEN_AT_VERTICES);
    }

    @Test
    void temperatureThatMovesSeveralResistancesIsSearched() {
        Network network = network()
                .battery("battery", "plus", "0", 12, 1e-3)
                .resistor("wire", "plus", "out", 0.5)
                .resistor("return", "low", "0", 0.2)
                .resistor("load", "out", "low", 6)
                .build();
        Uncertain celsius = Uncertain.copperCelsius(Map.of(id("wire"), 0.5, id("return"), 0.2), -40, 90);
        Between found = (Between)
                new CornerSearch(network).search(network.atRest(), List.of(celsius), Asked.volts(at("out"), at("low")));
        assertThat(found.method()).isEqualTo(Method.VERTICES_AND_DRAWN);
        double hot = 0.7 * (1 + 0.00393 * 70);
        assertThat(found.least().value()).isCloseTo(12 * 6 / (6 + hot + 1e-3), within(1e-6));
    }

    @Test
    void moreQuantitiesThanCanBeEnumeratedAreDrawnAndItIsSaid() {
        var parts = network().battery("battery", "n0", "0", 12, 1e-3);
        IntStream.range(0, 15).forEach(k -> parts.resistor("r" + k, "n" + k, "n" + (k + 1), 10));
        Network network = parts.resistor("end", "n15", "0", 10).build();
        List<Uncertain> quantities = IntStream.range(0, 15)
                .mapToObj(k -> Uncertain.tolerance(id("r" + k), 10, 0.1))
                .toList();
        assertThat(between(network, network.atRest(), quantities, at("n15")).method())
                .isEqualTo(Method.DRAWN);
    }

    @Test
    void valuesAtWhichContactsChatterAreTold() {
        Network network = network()
                .battery("battery", "plus", "0", 12, 1e-3)
                .part(new Relay(
                        id("k"), at("coil"), at("0"), 90, 7, 2, List.of(Contact.rest(at("plus"), at("coil"))), 1e-3))
                .build();
        assertThat(new CornerSearch(network)
                        .search(
                                network.atRest(),
                                List.of(Uncertain.volts(id("battery"), 5, 12)),
                                Asked.volts(at("coil"))))
                .isInstanceOfSatisfying(
                        WorstCase.NoPoint.class, none -> assertThat(none.at()).containsEntry("battery volts", 12.0));
    }

    /** C01: 12 V behind 2 Ω give a load most, V^2 / 4 R = 18 W, at 2 Ω; at 0.5 Ω and 8 Ω, the vertices, 11.52 W either. */
    @Test
    void mostPowerLiesBetweenTheVerticesAndIsEnclosed() {
        Network network = network()
                .battery("battery", "plus", "0", 12, 2)
                .resistor("load", "plus", "0", 5)
                .build();
        Between found = watts(network, List.of(Uncertain.ohms(id("load"), 0.5, 8)));
        assertThat(found.method()).isEqualTo(Method.ENCLOSED_BY_INTERVALS);
        assertThat(found.greatest().value()).isCloseTo(18, within(0.02)).isLessThanOrEqualTo(18 + 1e-9);
        assertThat(found.greatest().at().get("load ohms")).isCloseTo(2, within(0.2));
        assertThat(found.bounds().high()).isBetween(18.0, 18.02);
        assertThat(found.least().value()).isCloseTo(11.52, within(1e-9));
        assertThat(found.bounds().low()).isCloseTo(11.52, within(0.02));
    }

    /** The same with a supply of 9 to 15 V: 15^2 / 8 = 28.125 W, and 9^2 x 8 / 10^2 = 6.48 W. */
    @Test
    void mostPowerOverSupplyAndLoadIsEnclosed() {
        Network network = network()
                .battery("battery", "plus", "0", 12, 2)
                .resistor("load", "plus", "0", 5)
                .build();
        Between found =
                watts(network, List.of(Uncertain.ohms(id("load"), 0.5, 8), Uncertain.volts(id("battery"), 9, 15)));
        assertThat(found.method()).isEqualTo(Method.ENCLOSED_BY_INTERVALS);
        assertThat(found.bounds().high()).isBetween(28.125, 28.16);
        assertThat(found.greatest().value()).isBetween(28.09, 28.125 + 1e-9);
        assertThat(found.bounds().low()).isBetween(6.46, 6.48);
    }

    /** Behind a diode nothing is proven: the peak is found by looking and climbing, and no bound is claimed. */
    @Test
    void mostPowerBehindADiodeIsLookedForWithoutABound() {
        Network network = network()
                .battery("battery", "plus", "0", 12, 2)
                .diode("d", "plus", "out", DiodeModel.SILICON_3A)
                .resistor("load", "out", "0", 5)
                .build();
        Between found = watts(network, List.of(Uncertain.ohms(id("load"), 0.5, 8)));
        assertThat(found.method()).isEqualTo(Method.VERTICES_AND_DRAWN);
        assertThat(found.bounds()).isEqualTo(WorstCase.Bounds.NONE);
        Solver solver = Solver.of(network);
        double best = 0;
        for (double ohms = 0.5; ohms <= 8; ohms += 0.001) {
            best = Math.max(
                    best,
                    solver.solve(network.atRest().ohms(id("load"), ohms))
                            .settledPoint()
                            .watts(id("load")));
        }
        assertThat(found.greatest().value())
                .isCloseTo(best, within(1e-4 * best))
                .isGreaterThan(13);
        assertThat(found.greatest().at().get("load ohms")).isBetween(1.5, 2.5);
    }

    /** A power in random straight networks: nothing drawn lies beyond the bounds. */
    @Test
    void noPowerLiesBeyondItsBounds() {
        for (long seed = 1; seed <= 4; seed++) {
            Network network = RandomNetwork.linear(seed, 15);
            List<Uncertain> quantities = network.parts().stream()
                    .filter(Resistor.class::isInstance)
                    .limit(3)
                    .map(part ->
                            Uncertain.ohms(part.id(), 0.1 * ((Resistor) part).ohms(), 10 * ((Resistor) part).ohms()))
                    .toList();
            Part first = network.parts().stream()
                    .filter(Resistor.class::isInstance)
                    .findFirst()
                    .orElseThrow();
            Between found =
                    (Between) new CornerSearch(network).search(network.atRest(), quantities, Asked.watts(first));
            assertThat(found.method()).isEqualTo(Method.ENCLOSED_BY_INTERVALS);
            SplittableRandom random = new SplittableRandom(seed);
            Solver solver = Solver.of(network);
            for (int k = 0; k < 200; k++) {
                Setting setting = network.atRest();
                for (Uncertain each : quantities) {
                    setting = each.change().apply(setting, random.nextDouble(each.low(), each.high()));
                }
                assertThat(solver.solve(setting).settledPoint().watts(first.id()))
                        .as("seed %s", seed)
                        .isBetween(found.bounds().low() - 1e-9, found.bounds().high() + 1e-9);
            }
        }
    }

    private static Between watts(Network network, List<Uncertain> quantities) {
        Part load = network.part(id("load"));
        return (Between) new CornerSearch(network).search(network.atRest(), quantities, Asked.watts(load));
    }
}
