package org.loomproof.workshop.planner.search;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.ShopChoices;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.planner.coupling.Feed;
import org.loomproof.workshop.planner.coupling.Piece;
import org.loomproof.workshop.planner.coupling.Run;
import org.loomproof.workshop.planner.rule.Job;
import org.loomproof.workshop.planner.survey.Finder;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.sizing.FuseChoice;
import org.loomproof.workshop.sizing.Protection;
import org.loomproof.workshop.sizing.WireChoice;
import org.loomproof.workshop.trade.connector.ContactPlace;
import org.loomproof.workshop.trade.connector.Plugs;
import org.loomproof.workshop.trade.relay.Relays;
import org.loomproof.workshop.trade.wire.AllowedDrop;
import org.loomproof.workshop.trade.wire.Conductor;
import org.loomproof.workshop.trade.wire.ConductorHeat;
import org.loomproof.workshop.trade.wire.Conductors;
import org.loomproof.workshop.trade.wire.Copper;
import org.loomproof.workshop.trade.wire.Insulation;
import org.loomproof.workshop.trade.wire.Surroundings;
import org.loomproof.workshop.words.Phrase;

/**
 * Chooses fuses for all that hangs on them, and wires for their current, their drop and the fuse in front of them, in the
 * hottest air that the shop reckons with and in one bundle with everything else that carries current.
 */
final class Sizes {

    /** A wire without a fuse of its own is protected by the factory fuse or by the output that feeds it. */
    private static final Amps NO_FUSE = new Amps(0);

    /** A run is one of two that share the drop allowed: there and back, or before and behind a part. */
    private static final double SHARE_OF_DROP = 0.5;

    /**
     * Wire makers pair gauges with metric sizes up to a fifth larger than their copper (18 AWG, 0.82 mm², is sold as 1 mm²).
     */
    private static final double GAUGE_FOR_METRIC = 0.8;

    /** What carries less warms no bundle. Common practice, no published source. */
    private static final double WARMS_AMPS = 1;

    private final Job job;
    private final Ledger ledger;
    private final CarFeeds carFeeds;
    private final Amps throughController;
    private final Surroundings aroundAdded;
    private final Surroundings aroundLeads;
    private final Map<AddedPartId, Amps> ratings = new HashMap<>();
    private final Set<Phrase> cautions = new LinkedHashSet<>();

    /**
     * Sizes for what stands in the ledger.
     *
     * @param throughController what all outputs together draw through the controller's own supply
     */
    Sizes(Job job, Ledger ledger, Amps throughController) {
        this.job = job;
        this.ledger = ledger;
        this.carFeeds = new CarFeeds(job.brief().sheet(), ledger);
        this.throughController = throughController;
        ShopChoices shop = job.brief().order().shop();
        int loaded = Math.max(1, countLoaded());
        this.aroundAdded = new Surroundings(shop.insulation().orElse(Insulation.usual()), shop.hottest(), loaded);
        this.aroundLeads = new Surroundings(Insulation.usual(), shop.hottest(), loaded);
    }

    /** How many runs of the bundle carry current for long; stubs beside a part or a take-off lie in no bundle, and runs beyond a hinge in another. */
    private int countLoaded() {
        return (int) ledger.listRuns().stream()
                .filter(same -> lasts(same.getFirst()))
                .filter(same -> !isBeyond(same.getFirst().from())
                        && !isBeyond(same.getFirst().to()))
                .filter(same -> same.getFirst().length().value() > Feed.TAKE_OFF.value())
                .filter(same -> asked(same).value() >= WARMS_AMPS)
                .count();
    }

    /** Starters and lock motors run for seconds. */
    private static boolean lasts(Run run) {
        return switch (run.drop()) {
            case SIGNAL, LAMP -> true;
            case LOCK_MOTOR, STARTER_CUT -> false;
        };
    }

    private static Amps asked(List<Run> same) {
        return new Amps(same.stream().mapToDouble(r -> r.carries().value()).sum());
    }

    /**
     * What all couplings ask of a run together; the lead that feeds the controller carries all it feeds as well, and its ground
     * lead all it sinks.
     */
    private Amps carries(List<Run> same) {
        Run run = same.getFirst();
        double besides = run.behind().filter(this::feedsController).isPresent() ? throughController.value() : 0;
        double sunk = isOn(run, Port.Ground.class)
                ? ledger.listRuns().stream()
                        .filter(other -> isOn(other.getFirst(), Port.LowSide.class))
                        .mapToDouble(other -> asked(other).value())
                        .sum()
                : 0;
        return new Amps(asked(same).value() + besides + sunk);
    }

    private boolean isOn(Run run, Class<? extends Port> port) {
        return leadOf(run).filter(lead -> port.isInstance(lead.port())).isPresent();
    }

    private boolean feedsController(AddedPartId fuse) {
        return ledger.named(fuse).stream()
                .anyMatch(piece -> piece instanceof Piece.Fuse said && said.feedsController());
    }

    /** What the sizes chosen ask to beware of. */
    Set<Phrase> cautions() {
        ratings.keySet().stream().sorted().toList().forEach(this::checkShorts);
        checkReserves();
        ledger.listRuns().forEach(this::checkLead);
        return cautions;
    }

    /** Everything that hangs on one supply together must leave its factory fuse in peace. */
    private void checkReserves() {
        Map<CircuitId, Double> asked = new TreeMap<>();
        for (AddedPartId fuse : ratings.keySet().stream().sorted().toList()) {
            ledger.behind(fuse).stream()
                    .flatMap(run -> run.from() instanceof End.Tap(var circuit) ? Stream.of(circuit) : Stream.empty())
                    .distinct()
                    .forEach(circuit -> asked.merge(circuit, carriedBy(fuse).value(), Double::sum));
        }
        asked.forEach((circuit, amps) -> job.finder()
                .reserve(job.brief().sheet().circuit(circuit))
                .filter(left -> amps > left.value())
                .ifPresent(left -> cautions.add(Phrase.of(
                        "caution.no-reserve", circuit, new Amps(amps), new Amps(Math.max(0, left.value()))))));
    }

    /** The kit's lead is as thick as it is. */
    private void checkLead(List<Run> same) {
        leadOf(same.getFirst())
                .filter(lead -> lasts(same.getFirst()))
                .filter(lead -> carries(same).value()
                        > ConductorHeat.mayCarry(lead.size().typical(), aroundLeads)
                                .value())
                .ifPresent(lead -> cautions.add(Phrase.of(
                        "caution.lead-too-thin",
                        lead.id(),
                        carries(same),
                        ConductorHeat.mayCarry(lead.size().typical(), aroundLeads))));
    }

    /** The fuse of that local name: for all it carries; when no wire behind it bears that, the largest that the wire bears. */
    Amps rating(AddedPartId fuse) {
        Amps known = ratings.get(fuse);
        if (known == null) {
            known = choose(fuse);
            ratings.put(fuse, known);
        }
        return known;
    }

    private Amps choose(AddedPartId fuse) {
        Amps carries = carriedBy(fuse);
        Amps ceiling = leastCeilingBehind(fuse);
        Optional<Amps> fitting = FuseChoice.rating(carries, ceiling);
        if (fitting.isEmpty()) {
            String key = countFed(fuse) > 1 ? "caution.fuse-too-small" : "caution.fuse-too-small-for-one";
            cautions.add(Phrase.of(key, ledger.number(fuse), carries, ceiling));
        }
        Amps chosen = fitting.orElseGet(() -> FuseChoice.largestUnder(ceiling));
        compareWithFactoryFuse(fuse, chosen);
        return chosen;
    }

    /** How many factory circuits a fuse feeds: only several could have a fuse each. */
    private long countFed(AddedPartId fuse) {
        return ledger.behind(fuse).stream()
                .map(Run::to)
                .filter(End.Tap.class::isInstance)
                .distinct()
                .count();
    }

    /** A short at the far end of everything behind a fuse must still open it; all that lies behind is taken as one thin run. */
    private void checkShorts(AddedPartId fuse) {
        Amps chosen = rating(fuse);
        List<List<Run>> behind = ledger.listRuns().stream()
                .filter(same -> same.getFirst().behind().equals(Optional.of(fuse)))
                .toList();
        double length = behind.stream()
                .mapToDouble(same -> same.getFirst().length().value())
                .sum();
        behind.stream()
                .map(this::size)
                .min(Comparator.comparingDouble(SquareMillimetres::value))
                .filter(thinnest -> !Protection.opensOnAnyShort(chosen, thinnest, new Metres(length)))
                .ifPresent(thinnest -> cautions.add(Phrase.of(
                        "caution.short-too-weak",
                        ledger.number(fuse),
                        chosen,
                        Protection.longestRun(chosen, thinnest))));
    }

    private Amps carriedBy(AddedPartId fuse) {
        double carries = ledger.named(fuse).stream()
                .mapToDouble(piece ->
                        piece instanceof Piece.Fuse said ? said.carries().value() : 0)
                .sum();
        return new Amps(feedsController(fuse) ? carries + throughController.value() : carries);
    }

    /**
     * The kit's leads and the factory's wires cannot be made thicker: the thinnest lead behind a fuse bounds it, and the fuse
     * by which the factory protects a wire that it feeds.
     */
    private Amps leastCeilingBehind(AddedPartId fuse) {
        double thickest =
                Protection.ceiling(listBought().getLast().area(), aroundAdded).value();
        DoubleStream leads = ledger.behind(fuse).stream()
                .flatMap(run -> leadOf(run).stream())
                .mapToDouble(lead ->
                        Protection.ceiling(lead.size().typical(), aroundLeads).value());
        DoubleStream factory = ledger.behind(fuse).stream()
                .flatMap(run -> run.to() instanceof End.Tap(var circuit) ? Stream.of(circuit) : Stream.empty())
                .flatMap(circuit -> Finder.findLeastFuseAmps(job.brief().sheet().circuit(circuit)).stream())
                .mapToDouble(Double::doubleValue);
        return new Amps(DoubleStream.concat(leads, factory).min().orElse(thickest));
    }

    /** Of two fuses in a row the smaller opens first: ours should. */
    private void compareWithFactoryFuse(AddedPartId fuse, Amps chosen) {
        for (Run run : ledger.behind(fuse)) {
            if (run.from() instanceof End.Tap(var circuit)) {
                Finder.findFuseAmps(job.brief().sheet().circuit(circuit))
                        .filter(factory -> factory <= chosen.value())
                        .ifPresent(factory -> cautions.add(Phrase.of(
                                "caution.factory-fuse", ledger.number(fuse), chosen, circuit, new Amps(factory))));
            }
        }
    }

    /** What each contact of a pole's connector may carry: all of them are alike, and the busiest decides. */
    Amps contact(Piece.Pole pole) {
        double carries = 0;
        double thickest = 0;
        for (List<Run> same : ledger.listRuns()) {
            if (isAt(same.getFirst(), pole.connector())) {
                double fuse = same.getFirst()
                        .behind()
                        .map(this::rating)
                        .orElse(NO_FUSE)
                        .value();
                carries = Math.max(carries, Math.max(fuse, carries(same).value()));
                thickest = Math.max(thickest, size(same).value());
            }
        }
        return Plugs.contactFor(new Amps(carries), new SquareMillimetres(thickest));
    }

    private boolean isAt(Run run, String connector) {
        return Stream.of(run.from(), run.to())
                .anyMatch(end -> findPole(end)
                        .filter(pole -> pole.connector().equals(connector))
                        .isPresent());
    }

    private Optional<Piece.Pole> findPole(End end) {
        return end instanceof End.OfPart(var part, var terminal)
                        && ledger.named(part).getFirst() instanceof Piece.Pole pole
                ? Optional.of(pole)
                : Optional.empty();
    }

    /**
     * What is left to the wires of the volts allowed: the contact of a cut starter wire takes its part, most where the solenoid
     * is coldest and asks for most. Wires that are as cold lose no more by that current than they lose warm.
     */
    private double forWires(AllowedDrop drop, Amps current) {
        return drop.volts().value()
                - switch (drop) {
                    case SIGNAL, LAMP, LOCK_MOTOR -> 0;
                    case STARTER_CUT ->
                        current.value()
                                / Copper.temperatureFactor(
                                        job.brief().order().shop().coldest())
                                * (Relays.usual().contact().value()
                                        + ContactPlace.RELAY_SOCKET.typical().value());
                };
    }

    /** The size of a run, named as often as couplings ask for it: the kit's own for a lead, else what it must bear. */
    SquareMillimetres size(List<Run> same) {
        Run run = same.getFirst();
        Amps added = run.behind().or(() -> beside(run)).map(this::rating).orElse(NO_FUSE);
        Amps fuse = new Amps(Math.max(added.value(), carFeeds.fuse(run).value()));
        Volts allowed = new Volts(forWires(run.drop(), carries(same)) * SHARE_OF_DROP);
        return leadOf(run)
                .map(lead -> lead.size().typical())
                .orElseGet(() -> WireChoice.choose(
                                listNoThinnerThan(carFeeds.wire(run)),
                                new WireChoice.Run(carries(same), lasts(run), run.length(), allowed, fuse),
                                aroundAdded)
                        .area());
    }

    /** The fuse that feeds a terminal of a part to which the run leads: a short of the run is drawn through it. */
    private Optional<AddedPartId> beside(Run run) {
        return ledger.listRuns().stream()
                .map(List::getFirst)
                .filter(other -> other.behind().isPresent() && run.meetsAtPart(other))
                .findFirst()
                .flatMap(Run::behind)
                .or(() -> beforePole(run));
    }

    /** The same for a run beyond a pole, which goes on from those before it. */
    private Optional<AddedPartId> beforePole(Run run) {
        return Stream.of(run.from(), run.to())
                .filter(end -> isBeyond(end))
                .flatMap(end -> findPole(end).stream())
                .flatMap(pole -> ledger.listRuns().stream()
                        .map(List::getFirst)
                        .filter(before -> Stream.of(before.from(), before.to())
                                .anyMatch(new End.OfPart(pole.name(), "1")::equals)))
                .flatMap(before -> before.behind().or(() -> beside(before)).stream())
                .findFirst();
    }

    /** True at the half of a connector that moves. */
    private boolean isBeyond(End end) {
        return findPole(end).isPresent() && end instanceof End.OfPart(var part, var terminal) && terminal.equals("2");
    }

    private Optional<Lead> leadOf(Run run) {
        return Stream.of(run.from(), run.to())
                .flatMap(end -> end instanceof End.OfLead(var lead) ? Stream.of(lead) : Stream.empty())
                .map(job.brief().kit()::lead)
                .findFirst();
    }

    private List<Conductor> listNoThinnerThan(Optional<SquareMillimetres> least) {
        List<Conductor> bought = listBought();
        // A gauge stands in for the metric size it is sold as when it is at most this much thinner.
        double area = least.map(SquareMillimetres::value).orElse(0.0) * GAUGE_FOR_METRIC;
        List<Conductor> fitting =
                bought.stream().filter(c -> c.area().value() >= area).toList();
        return fitting.isEmpty() ? List.of(bought.getLast()) : fitting;
    }

    private List<Conductor> listBought() {
        List<Conductor> all = switch (job.brief().order().shop().sizes()) {
            case AWG -> Conductors.listGauges();
            case MM2 -> Conductors.listMetric();
        };
        return all.stream().filter(Conductor::bought).toList();
    }
}
