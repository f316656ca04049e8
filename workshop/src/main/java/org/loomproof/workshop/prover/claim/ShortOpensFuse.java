package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomproof.network.part.Node;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.plan.WireId;
import org.loomproof.workshop.prover.explore.Area;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.prover.verdict.Residual;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.trade.fuse.Fuses;
import org.loomproof.workshop.trade.wire.Conductors;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * A wire that was added and chafes through to the body, wherever along its run, opens a fuse before it or any other added wire
 * is harmed. What an output lets through is not limited by anything the kit says, so nothing rests on it.
 *
 * <p>Between its two ends a wire is heated by no more than at the nearer one and no longer than at the farther one; both ends of
 * every wire are asked, and each wire is reckoned with the greater current and the longer time. A piece of wire up to a fuse of
 * its own near the take-off is told as what is left, where no fuse of the car guards it.
 */
final class ShortOpensFuse implements Claim {

    /** A gauge stands in for the metric size it is sold as: 18 AWG, 0.82 mm², for 1 mm². */
    private static final double AS_THICK = 0.8;

    @Override
    public String name() {
        return "short-opens-fuse";
    }

    @Override
    public boolean isWalked() {
        return false;
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        List<Claimed> all = new ArrayList<>();
        Area.list(fitting.stock().wired(), fitting.fitted().wired()).stream()
                .filter(Area::touched)
                .forEach(area -> new ChafedLoom(fitting, area)
                        .fares()
                        .forEach((wire, fares) -> all.add(claimed(fitting, wire, fares))));
        return all;
    }

    private Claimed claimed(Fitting fitting, AddedWire wire, ChafedLoom.Fares fares) {
        if (!fares.worst().isUnharmed() && isStub(fitting, wire)) {
            return left("residual.unfused", wire);
        }
        if (!fares.worst().isGuarded()
                && isAsUnfusedAsBefore(fitting, wire, fares.worst().at())) {
            return left("residual.unfused-as-before", wire);
        }
        return new Claimed.Decided(new ClaimResult(
                name() + " " + wire.id(),
                Phrase.of("claim.short-opens-fuse", wire.id()),
                verdict(fitting, fares),
                List.of()));
    }

    private static Claimed left(String key, AddedWire wire) {
        return new Claimed.Left(new Residual("unfused " + wire.id(), Phrase.of(key, wire.id(), wire.length())));
    }

    /** Lengthens, no thinner, a factory wire that the stock vehicle itself feeds without a fuse. */
    private static boolean isAsUnfusedAsBefore(Fitting fitting, AddedWire wire, Situation at) {
        return Stream.of(wire.from(), wire.to())
                .flatMap(end -> cut(end).stream())
                .anyMatch(circuit -> isAsThick(fitting, wire, circuit) && isUnfused(fitting, wire, circuit, at));
    }

    private static boolean isAsThick(Fitting fitting, AddedWire wire, CircuitId circuit) {
        return fitting.brief().sheet().circuit(circuit).size().stream()
                .allMatch(
                        size -> wire.size().value() >= AS_THICK * size.typical().value());
    }

    private static boolean isUnfused(Fitting fitting, AddedWire wire, CircuitId circuit, Situation at) {
        Node node = Objects.requireNonNull(
                fitting.stock().wired().factory().before().get(circuit), circuit::toString);
        Shorts stock = new Shorts(fitting.stock(), fitting.plan(), List.of(node));
        Situation before = FactoryWireFused.stock(at.positions());
        double bears = Conductors.fuseCeiling(wire.size()).value();
        return stock.at(node, before)
                        .filter(point -> Math.abs(point.amps(stock.contact(node))) > bears)
                        .isPresent()
                && stock.guard(node, before, stock.contact(node), bears).isEmpty();
    }

    private static Optional<CircuitId> cut(End end) {
        return switch (end) {
            case End.CutBefore(var circuit) -> Optional.of(circuit);
            case End.CutAfter(var circuit) -> Optional.of(circuit);
            case End.Tap tap -> Optional.empty();
            case End.OfLead lead -> Optional.empty();
            case End.OfPart part -> Optional.empty();
            case End.Body body -> Optional.empty();
        };
    }

    /** A short piece from a factory wire to nothing but a fuse. */
    private static boolean isStub(Fitting fitting, AddedWire wire) {
        return wire.length().value() <= Fuses.takeOffLength().value()
                && Stream.of(wire.from(), wire.to()).anyMatch(end -> end instanceof End.Tap)
                && Stream.of(wire.from(), wire.to())
                        .anyMatch(end -> end instanceof End.OfPart part
                                && fitting.plan()
                                        .findPart(part.part())
                                        .filter(AddedPart.Fuse.class::isInstance)
                                        .isPresent());
    }

    private static Verdict verdict(Fitting fitting, ChafedLoom.Fares fares) {
        ChafedLoom.Fare worst = fares.worst();
        if (worst.isUnharmed()) {
            return new Verdict.Holds(margin(fitting, worst), worst.at());
        }
        return fares.harmed()
                .map(harmed -> broken(fitting, harmed, fares.soonest().orElseThrow()))
                .orElseGet(() -> open(fitting, worst));
    }

    private static Verdict broken(Fitting fitting, ChafedLoom.Fare harmed, ChafedLoom.Fare soonest) {
        List<Phrase> steps =
                ByFigures.steps(fitting, soonest.at(), Phrase.of("step.chafed-wire", nearest(fitting, soonest)));
        Observation seen = new Observation(
                Phrase.of("meter.amps-in", soonest.wire().id()),
                Shown.amps(soonest.amps()).toString());
        return new Verdict.Broken(margin(fitting, harmed), new Witness(steps, soonest.at(), List.of(seen)));
    }

    private static Verdict open(Fitting fitting, ChafedLoom.Fare worst) {
        Margin margin = margin(fitting, worst);
        return new Verdict.Open(
                Phrase.of("open.short-not-sure", margin.computed(), margin.allowed()),
                List.of(new Measurement(
                        "protection-of " + worst.wire().id(),
                        Phrase.of("measure.short", worst.wire().id()))));
    }

    /** The wire that ends where something touches the body: the harmed one itself, if it ends there. */
    private static WireId nearest(Fitting fitting, ChafedLoom.Fare fare) {
        return Stream.concat(Stream.of(fare.wire()), fitting.plan().wires().stream())
                .filter(wire -> {
                    var reach = fitting.fitted().wired().added().wires().get(wire.id());
                    return reach != null
                            && fitting.fitted().wired().network().part(reach.part()).pins().stream()
                                    .anyMatch(pin -> pin.node().equals(fare.place()));
                })
                .map(AddedWire::id)
                .findFirst()
                .orElseThrow();
    }

    private static Margin margin(Fitting fitting, ChafedLoom.Fare fare) {
        if (Double.isInfinite(fare.amps())) {
            // No point was found at which everything rests: as bad as no guard at all.
            return new Margin(
                    -fare.lasting().value(),
                    "A",
                    Phrase.of("margin.amps-not-known", fare.wire().id()),
                    Phrase.of("margin.bears-for-good", fare.lasting()));
        }
        if (!fare.isGuarded()) {
            return new Margin(
                    fare.lasting().value() - fare.amps(),
                    "A",
                    Phrase.of("margin.no-fuse-opens", fare.wire().id(), Shown.amps(fare.amps())),
                    Phrase.of("margin.bears-for-good", fare.lasting()));
        }
        List<Phrase> fuses = fare.opened().stream()
                .map(fuse -> fitting.fitted().wired().words(fuse))
                .toList();
        return new Margin(
                fare.most().value() - fare.warm(),
                "K",
                Phrase.of("margin.warm-until-open", fare.wire().id(), new Celsius(fare.warm()), fuses),
                Phrase.of("margin.survives", fare.most()));
    }
}
