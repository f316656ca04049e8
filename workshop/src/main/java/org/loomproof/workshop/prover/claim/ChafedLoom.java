package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.prover.explore.Area;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.Space;
import org.loomproof.workshop.prover.state.StepsTo;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.trade.fuse.BladeLimits;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.trade.wire.ConductorHeat;
import org.loomproof.workshop.trade.wire.Insulation;
import org.loomproof.workshop.trade.wire.Surroundings;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.RangedFigure;
import org.loomproof.workshop.wiring.Situation;

/**
 * The added wires of one area while one end of any of them touches the body: how warm each gets before fuses have opened.
 *
 * <p>The fuse that surely opens first opens first; then it is asked again, until what is left is no more than a wire bears for
 * good. The least current is that of a tired battery before every figure at its upper end, the most that of the highest supply
 * before every figure at its lower end. A wire is as warm as its
 * insulation bears when it begins, and for so short a time it may get warmer by what insulation outlives for hours.
 */
final class ChafedLoom {

    /**
     * Insulation survives so many kelvins more than its class for hours: ISO 6722-1, thermal overload, from memory. What was read
     * for a short is more: 160 °C for polyvinyl chloride, where this allows 155 °C to wire of 105 °C.
     */
    private static final double OVERLOAD_KELVINS = 50;

    /** What stands at less is fed by nothing. */
    private static final double LIVE_VOLTS = 0.5;

    private final Fitting fitting;
    private final Area area;
    private final Map<PartId, AddedWire> wires = new LinkedHashMap<>();
    private final Map<PartId, Bearing> bearings = new HashMap<>();
    private final List<Node> places;
    private final Workbench bench = new Workbench();

    /** What a wire bears: for good, where it runs, and until it is harmed. */
    private record Bearing(Surroundings around, Amps lasting) {
        Celsius most() {
            return new Celsius(around.insulation().value() + OVERLOAD_KELVINS);
        }
    }

    /** The vehicle by which fuses are timed, and that by which wires are heated. */
    private record Measure(Shorts timing, SupplyPoint timedAt, Shorts heating, SupplyPoint heatedAt) {}

    /**
     * How a wire fares.
     *
     * @param place where something touches the body
     * @param amps the most that flows in it
     * @param lasting what it bears for good
     * @param warm how warm it gets; beyond all bounds where no fuse surely opens
     * @param most how warm it may get
     * @param opened the fuses that open
     */
    record Fare(
            AddedWire wire,
            Node place,
            Situation at,
            double amps,
            Amps lasting,
            double warm,
            Celsius most,
            List<PartId> opened) {

        boolean isUnharmed() {
            return warm <= most.value();
        }

        boolean isGuarded() {
            return Double.isFinite(warm);
        }

        private Fare worse(Fare other) {
            return other.warm > warm || (other.warm == warm && other.amps > amps) ? other : this;
        }
    }

    /**
     * What there is of a wire.
     *
     * @param worst with every figure against it
     * @param harmed the worst with typical figures, where it is harmed even then
     * @param soonest the same with the fewest steps
     */
    record Fares(Fare worst, Optional<Fare> harmed, Optional<Fare> soonest) {

        /** With those of a situation that takes no fewer steps. */
        private Fares and(Fares later) {
            return new Fares(
                    worst.worse(later.worst),
                    Stream.of(harmed, later.harmed).flatMap(Optional::stream).reduce(Fare::worse),
                    soonest.or(later::soonest));
        }
    }

    ChafedLoom(Fitting fitting, Area area) {
        this.fitting = fitting;
        this.area = area;
        for (AddedWire wire : fitting.plan().wires()) {
            var reach = fitting.fitted().wired().added().wires().get(wire.id());
            if (reach != null && area.parts().contains(reach.part())) {
                wires.put(reach.part(), wire);
                bearings.put(reach.part(), bearing(wire));
            }
        }
        this.places = wires.keySet().stream()
                .flatMap(part -> fitting.fitted().wired().network().part(part).pins().stream())
                .map(pin -> pin.node())
                .filter(node -> !node.equals(Node.CHASSIS)
                        && !node.equals(fitting.fitted().wired().post()))
                .distinct()
                .toList();
    }

    private Bearing bearing(AddedWire wire) {
        var shop = fitting.brief().order().shop();
        Celsius insulation =
                wire.lead().isPresent() ? Insulation.usual() : shop.insulation().orElse(Insulation.usual());
        Surroundings around = new Surroundings(insulation, shop.hottest(), 1);
        return new Bearing(around, ConductorHeat.mayCarry(wire.size(), around));
    }

    /** Every wire that a short somewhere sends more through than it bears for good, in the order of the plan. */
    Map<AddedWire, Fares> fares() {
        Map<AddedWire, Fares> fares = new LinkedHashMap<>();
        if (places.isEmpty()) {
            return fares;
        }
        Vehicle vehicle = fitting.fitted().restrictedTo(area);
        Measure worst = new Measure(
                shorts(corner(Corner.Taken.HIGH)), SupplyPoint.LOW, shorts(corner(Corner.Taken.LOW)), SupplyPoint.HIGH);
        Shorts asStated = shorts(Corner.TYPICAL);
        Measure typical = new Measure(asStated, SupplyPoint.REST, asStated, SupplyPoint.REST);
        LiveWay way = new LiveWay(vehicle.wired());
        Map<Node, Set<Set<PartId>>> seen = new HashMap<>();
        for (Situation situation : situations()) {
            OperatingPoint point = bench.settled(
                            vehicle.wired(), vehicle.settings().of(situation))
                    .orElse(null);
            if (point == null) {
                continue;
            }
            for (Node place : places) {
                if (Math.abs(point.volts(place)) > LIVE_VOLTS
                        && seen.computeIfAbsent(place, p -> new HashSet<>()).add(way.from(place, point))) {
                    ask(place, situation, Shorts.standing(point), worst, typical)
                            .forEach((wire, fare) -> fares.merge(wire, fare, Fares::and));
                }
            }
        }
        return inOrder(fares);
    }

    private Map<AddedWire, Fares> inOrder(Map<AddedWire, Fares> fares) {
        Map<AddedWire, Fares> ordered = new LinkedHashMap<>();
        for (AddedWire wire : wires.values()) {
            Fares found = fares.get(wire);
            if (found != null) {
                ordered.put(wire, found);
            }
        }
        return ordered;
    }

    private Map<AddedWire, Fares> ask(
            Node place, Situation situation, Shorts.Standing stand, Measure worst, Measure typical) {
        List<Fare> against = fares(place, situation, stand, worst);
        List<Fare> asStated =
                against.stream().allMatch(Fare::isUnharmed) ? List.of() : fares(place, situation, stand, typical);
        Map<AddedWire, Fares> found = new LinkedHashMap<>();
        for (Fare fare : against) {
            Optional<Fare> harmed = asStated.stream()
                    .filter(each -> each.wire().equals(fare.wire()) && !each.isUnharmed())
                    .findFirst();
            found.put(fare.wire(), new Fares(fare, harmed, harmed));
        }
        return found;
    }

    private List<Fare> fares(Node place, Situation situation, Shorts.Standing stand, Measure measure) {
        Set<PartId> opened = new HashSet<>();
        List<PartId> order = new ArrayList<>();
        Map<PartId, Fare> fares = new LinkedHashMap<>();
        Situation timed = situation.suppliedBy(measure.timedAt());
        Situation heated = situation.suppliedBy(measure.heatedAt());
        while (true) {
            Optional<OperatingPoint> least = measure.timing().at(place, timed, stand, opened);
            Optional<OperatingPoint> most = measure.heating().at(place, heated, stand, opened);
            Optional<Opening> next = least.flatMap(few -> most.flatMap(many -> first(measure.timing(), few, many)));
            List<PartId> stressed = stressed(most);
            if (stressed.isEmpty()) {
                return List.copyOf(fares.values());
            }
            next.ifPresent(opening -> order.add(opening.fuse()));
            for (PartId part : stressed) {
                fares.put(part, heated(part, place, situation, most, next, fares.get(part), order));
            }
            if (next.isEmpty()) {
                return List.copyOf(fares.values());
            }
            opened.add(next.get().fuse());
        }
    }

    /** Added wires with more in them than they bear for good; all of them when nobody can say. */
    private List<PartId> stressed(Optional<OperatingPoint> point) {
        return wires.keySet().stream()
                .filter(part -> point.map(found -> Math.abs(found.amps(part))
                                > bears(part).lasting().value())
                        .orElse(true))
                .toList();
    }

    private Bearing bears(PartId part) {
        Bearing bearing = bearings.get(part);
        if (bearing == null) {
            throw new IllegalArgumentException(part + " is no wire of this area");
        }
        return bearing;
    }

    private Fare heated(
            PartId part,
            Node place,
            Situation situation,
            Optional<OperatingPoint> point,
            Optional<Opening> next,
            @Nullable Fare before,
            List<PartId> opened) {
        AddedWire wire = wires.get(part);
        if (wire == null) {
            throw new IllegalArgumentException(part + " is no wire of this area");
        }
        Bearing bears = bears(part);
        double amps = point.map(found -> Math.abs(found.amps(part))).orElse(Double.POSITIVE_INFINITY);
        double from = before == null ? bears.around().insulation().value() : before.warm();
        double warm = next.isEmpty() || point.isEmpty()
                ? Double.POSITIVE_INFINITY
                : ConductorHeat.after(
                                wire.size(),
                                bears.around(),
                                new Celsius(from),
                                new Amps(amps),
                                next.get().within())
                        .value();
        return new Fare(
                wire,
                place,
                situation,
                before == null ? amps : Math.max(amps, before.amps()),
                bears.lasting(),
                warm,
                bears.most(),
                List.copyOf(opened));
    }

    private record Opening(PartId fuse, Seconds within) {}

    /** The fuse that has surely opened before every other. */
    private static Optional<Opening> first(Shorts shorts, OperatingPoint least, OperatingPoint most) {
        return shorts.ratings().entrySet().stream()
                .flatMap(fuse ->
                        BladeLimits.longest(fuse.getValue(), amps(least, fuse.getKey()), amps(most, fuse.getKey()))
                                .map(within -> new Opening(fuse.getKey(), within))
                                .stream())
                .min(Comparator.comparingDouble(opening -> opening.within().value()));
    }

    private static Amps amps(OperatingPoint point, PartId part) {
        return new Amps(Math.abs(point.amps(part)));
    }

    private Corner corner(Corner.Taken end) {
        Corner corner = Corner.TYPICAL;
        for (RangedFigure figure : fitting.fitted().wired().ranged()) {
            corner = corner.with(figure.key(), end);
        }
        return corner;
    }

    private Shorts shorts(Corner corner) {
        Vehicle vehicle = corner.equals(Corner.TYPICAL)
                ? fitting.fitted()
                : Vehicle.fitted(fitting.brief(), fitting.plan(), corner);
        return new Shorts(vehicle.restrictedTo(area), fitting.plan(), places);
    }

    /**
     * The situations of the area, those with the fewest steps first. What works nothing but contacts to the body, such as a
     * door, feeds no short; it is moved by itself, for the relay that it may work.
     */
    private List<Situation> situations() {
        StepsTo stepsTo = new StepsTo(fitting.brief().sheet(), fitting.brief().kit());
        Space space = Space.of(
                fitting.brief().sheet(),
                Condition.list(fitting.brief().kit(), false, false),
                area.parts(),
                fitting.fitted().wired().switches(),
                Set.of());
        List<Space.Axis> toBody = space.axes().stream()
                .filter(axis -> worksToBody(axis.operable()))
                .toList();
        List<SortedMap<OperableId, String>> apart = space.positions().stream()
                .filter(positions -> toBody.stream()
                                .filter(axis -> !axis.positions().getFirst().equals(positions.get(axis.operable())))
                                .count()
                        <= 1)
                .toList();
        List<Situation> all = new ArrayList<>();
        for (Condition condition : space.conditions()) {
            Condition.Doing doing = condition.representative();
            if (doing.feed() == ControllerFeed.WHOLE) {
                for (SortedMap<OperableId, String> positions : apart) {
                    all.add(doing.with(positions, SupplyPoint.REST));
                }
            }
        }
        all.sort(Comparator.comparingInt(
                situation -> stepsTo.count(situation.positions()) + stepsTo.count(Condition.Doing.in(situation))));
        return all;
    }

    private boolean worksToBody(OperableId operable) {
        return fitting.fitted().wired().switches().stream()
                .filter(each ->
                        each.operatedBy().equals(operable) && area.parts().contains(each.part()))
                .allMatch(each -> fitting.fitted().wired().network().part(each.part()).pins().stream()
                        .anyMatch(pin -> pin.node().equals(Node.CHASSIS)));
    }
}
