package org.loomproof.workshop.prover.claim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.WireId;
import org.loomproof.workshop.prover.explore.Area;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.Space;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.fuse.BladeLimits;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.trade.wire.ConductorHeat;
import org.loomproof.workshop.trade.wire.Conductors;
import org.loomproof.workshop.trade.wire.Copper;
import org.loomproof.workshop.trade.wire.Insulation;
import org.loomproof.workshop.trade.wire.Surroundings;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Situation;

/**
 * The same warmths by a second way: the whole vehicle in every situation, at every end of every wire, nothing taken over from
 * one situation for another, and the wire heated in small steps of time.
 */
class ChafedLoomTest {

    @Test
    void everySituationAndSmallStepsOfTimeGiveTheSameWarmths() {
        for (Jobs.Job job : List.of(Jobs.simple(), Jobs.failSecure())) {
            Fitting fitting = fitting(job);
            Map<WireId, Double> found = new HashMap<>();
            Area.list(fitting.stock().wired(), fitting.fitted().wired()).stream()
                    .filter(Area::touched)
                    .forEach(area -> new ChafedLoom(fitting, area)
                            .fares()
                            .forEach((wire, fares) ->
                                    found.put(wire.id(), fares.worst().warm())));
            Map<WireId, Double> bySteps = new BySteps(fitting).warmths();
            assertThat(found.keySet()).isEqualTo(bySteps.keySet()).isNotEmpty();
            found.forEach((wire, warm) -> assertThat(warm)
                    .as(wire.toString())
                    .isCloseTo(Objects.requireNonNull(bySteps.get(wire)), within(0.3)));
        }
    }

    private static Fitting fitting(Jobs.Job job) {
        return new Fitting(
                job.brief(),
                job.plan(),
                Vehicle.stock(job.brief(), Corner.TYPICAL),
                Vehicle.fitted(job.brief(), job.plan(), Corner.TYPICAL));
    }

    private static final class BySteps {

        private static final int STEPS = 4000;

        private final Fitting fitting;
        private final Map<PartId, AddedWire> wires = new HashMap<>();
        private final Set<Node> places = new LinkedHashSet<>();
        private final Workbench bench = new Workbench();

        BySteps(Fitting fitting) {
            this.fitting = fitting;
            var network = fitting.fitted().wired().network();
            fitting.fitted().wired().added().wires().forEach((id, reach) -> {
                wires.put(
                        reach.part(),
                        fitting.plan().wires().stream()
                                .filter(wire -> wire.id().equals(id))
                                .findFirst()
                                .orElseThrow());
                network.part(reach.part()).pins().forEach(pin -> places.add(pin.node()));
            });
            places.remove(Node.CHASSIS);
            places.remove(fitting.fitted().wired().post());
        }

        private Shorts shorts(Corner.Taken end) {
            Corner corner = Corner.TYPICAL;
            for (var figure : fitting.fitted().wired().ranged()) {
                corner = corner.with(figure.key(), end);
            }
            return new Shorts(Vehicle.fitted(fitting.brief(), fitting.plan(), corner), fitting.plan(), places);
        }

        Map<WireId, Double> warmths() {
            Shorts least = shorts(Corner.Taken.HIGH);
            Shorts most = shorts(Corner.Taken.LOW);
            Map<WireId, Double> warmths = new HashMap<>();
            for (Situation situation : situations()) {
                OperatingPoint before = bench.settled(
                                fitting.fitted().wired(),
                                fitting.fitted().settings().of(situation))
                        .orElseThrow();
                for (Node place : places) {
                    heat(place, situation, Shorts.standing(before), least, most)
                            .forEach((wire, warm) -> warmths.merge(wire, warm, Math::max));
                }
            }
            return warmths;
        }

        private Map<WireId, Double> heat(
                Node place, Situation situation, Shorts.Standing stand, Shorts least, Shorts most) {
            Map<WireId, Double> warm = new HashMap<>();
            Set<PartId> opened = new HashSet<>();
            while (true) {
                OperatingPoint few = least.at(place, at(situation, SupplyPoint.LOW), stand, opened)
                        .orElseThrow();
                OperatingPoint many = most.at(place, at(situation, SupplyPoint.HIGH), stand, opened)
                        .orElseThrow();
                Map<PartId, Double> times = new TreeMap<>(java.util.Comparator.comparing(PartId::toString));
                least.ratings()
                        .forEach((fuse, rating) -> BladeLimits.longest(
                                        rating, new Amps(Math.abs(few.amps(fuse))), new Amps(Math.abs(many.amps(fuse))))
                                .ifPresent(time -> times.put(fuse, time.value())));
                var first = times.entrySet().stream().min(Map.Entry.comparingByValue());
                boolean isAny = false;
                for (var wire : wires.entrySet()) {
                    double amps = Math.abs(many.amps(wire.getKey()));
                    if (amps > lasting(wire.getValue())) {
                        isAny = true;
                        double from = warm.getOrDefault(wire.getValue().id(), 105.0);
                        warm.put(
                                wire.getValue().id(),
                                first.isEmpty()
                                        ? Double.POSITIVE_INFINITY
                                        : stepped(
                                                wire.getValue(),
                                                from,
                                                amps,
                                                first.get().getValue()));
                    }
                }
                if (!isAny || first.isEmpty()) {
                    return warm;
                }
                opened.add(first.get().getKey());
            }
        }

        private double lasting(AddedWire wire) {
            return ConductorHeat.mayCarry(wire.size(), around()).value();
        }

        private Surroundings around() {
            return new Surroundings(
                    Insulation.usual(), fitting.brief().order().shop().hottest(), 1);
        }

        /** Heat in by the current, out in proportion to the rise over the air, as much as goes in at the lasting current. */
        private double stepped(AddedWire wire, double from, double amps, double seconds) {
            double copper = Conductors.leastCopper(wire.size()).value();
            double perAmp = Copper.resistivity()
                    * Copper.temperatureFactor(Insulation.usual())
                    / (copper * copper * Insulation.heatPerVolume());
            double lasting = lasting(wire);
            double air = around().ambient().value();
            double loss = lasting * lasting * perAmp / (Insulation.usual().value() - air);
            double warm = from;
            for (int k = 0; k < STEPS; k++) {
                warm += (amps * amps * perAmp - loss * (warm - air)) * seconds / STEPS;
            }
            return warm;
        }

        private static Situation at(Situation situation, SupplyPoint supply) {
            return new Situation(
                    situation.positions(),
                    supply,
                    situation.controller(),
                    situation.feed(),
                    situation.moment(),
                    situation.still());
        }

        private List<Situation> situations() {
            Space space = Space.of(
                    fitting.brief().sheet(),
                    Condition.list(fitting.brief().kit(), false, false),
                    Set.of(),
                    Set.of(),
                    fitting.brief().sheet().operables().stream()
                            .map(Operable::id)
                            .collect(Collectors.toSet()));
            return space.conditions().stream()
                    .map(Condition::representative)
                    .filter(doing -> doing.feed() == ControllerFeed.WHOLE)
                    .flatMap(doing -> space.positions().stream()
                            .map(positions -> new Situation(
                                    positions,
                                    SupplyPoint.REST,
                                    doing.state(),
                                    doing.feed(),
                                    doing.moment(),
                                    doing.still())))
                    .toList();
        }
    }
}
