package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.explore.Area;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.wire.Conductors;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.words.Phrase;

/** Nothing added, and no output, ever carries more for long than it may. Pulses and inrush are not looked at. */
final class WithinRating implements Claim {

    @Override
    public String name() {
        return "within-rating";
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        Wired wired = fitting.fitted().wired();
        List<Claimed> all = new ArrayList<>();
        for (Hookup.Connect connect : fitting.connected()) {
            outputRating(fitting, connect.lead()).ifPresent(rated -> all.add(show(List.of(rated), "lead", wired)));
        }
        for (AddedPart part : fitting.plan().parts()) {
            for (Rated rated : rated(wired, part)) {
                all.add(show(List.of(rated), "part", wired));
            }
        }
        wiresByArea(fitting)
                .forEach(
                        wires -> all.add(show(wires, "wires " + wires.getFirst().name(), wired)));
        return all;
    }

    /** The added wires, those together that can matter to each other. */
    private static Collection<List<Rated>> wiresByArea(Fitting fitting) {
        Wired wired = fitting.fitted().wired();
        List<Area> areas = Area.list(fitting.stock().wired(), wired);
        Map<Area, List<Rated>> byArea = new LinkedHashMap<>();
        for (AddedWire wire : fitting.plan().wires()) {
            Reach reach = wired.added().wires().get(wire.id());
            for (Area area : areas) {
                if (reach != null && area.parts().contains(reach.part())) {
                    byArea.computeIfAbsent(area, a -> new ArrayList<>())
                            .add(new Rated(
                                    reach,
                                    "",
                                    wire.id().toString(),
                                    Conductors.fuseCeiling(wire.size()).value(),
                                    Severity.FIRE_OR_LOSS_OF_CONTROL));
                }
            }
        }
        return byArea.values();
    }

    /**
     * Something that carries current.
     *
     * @param reach where its current is counted
     * @param terminal the terminal's number where one part has several; else empty
     * @param name its id
     * @param amps the most it may carry for long
     * @param over what it comes to when it carries more
     */
    private record Rated(Reach reach, String terminal, String name, double amps, Severity over) {

        PartId part() {
            return reach.part();
        }

        double usedPercent(Reading reading) {
            return 100 * carriedAmps(reading) / amps;
        }

        double carriedAmps(Reading reading) {
            return Math.abs(reading.amps(reach));
        }

        String title() {
            return terminal.isEmpty() ? name : name + " " + terminal;
        }
    }

    private Claimed show(List<Rated> rated, String kind, Wired wired) {
        boolean isOne = !kind.startsWith("wires");
        String id = name() + " " + (isOne ? rated.getFirst().title() : kind);
        Phrase statement = isOne ? statement(rated.getFirst(), wired) : Phrase.of("claim.wires-within-rating");
        return new Claimed.ToShow(new RatingCase(id, statement, rated));
    }

    private static Phrase statement(Rated rated, Wired wired) {
        Amps most = new Amps(rated.amps());
        return rated.terminal().isEmpty()
                ? Phrase.of("claim.within-rating", wired.words(rated.part()), most)
                : Phrase.of("claim.terminal-within-rating", wired.words(rated.part()), rated.terminal(), most);
    }

    private static Optional<Rated> outputRating(Fitting fitting, LeadId id) {
        Lead lead = fitting.brief().kit().lead(id);
        Optional<Amps> rating = switch (lead.port()) {
            case Port.LowSide port -> Optional.of(port.rating().low());
            case Port.HighSide port -> Optional.of(port.rating().low());
            case Port.Supply port -> Optional.empty();
            case Port.Ground port -> Optional.empty();
            case Port.Input port -> Optional.empty();
            case Port.ToExtra port -> Optional.empty();
        };
        return rating.map(amps -> {
            Reach reach = fitting.output(id).orElseThrow();
            return new Rated(reach, "", id.toString(), amps.value(), Severity.UNPROTECTED);
        });
    }

    private static List<Rated> rated(Wired wired, AddedPart part) {
        Reach reach = Objects.requireNonNull(wired.added().parts().get(part.id()));
        String name = part.id().toString();
        return switch (part) {
            case AddedPart.Relay r ->
                List.of(
                        new Rated(
                                reach.into("87"), "87", name, r.makeRating().value(), Severity.FIRE_OR_LOSS_OF_CONTROL),
                        new Rated(
                                reach.into("87a"),
                                "87a",
                                name,
                                r.breakRating().value(),
                                Severity.FIRE_OR_LOSS_OF_CONTROL));
            case AddedPart.Buffer b ->
                List.of(new Rated(reach.into("30"), "out", name, b.rating().value(), Severity.FIRE_OR_LOSS_OF_CONTROL));
            case AddedPart.Junction d ->
                List.of(new Rated(reach, "", name, d.rating().value(), Severity.FIRE_OR_LOSS_OF_CONTROL));
            case AddedPart.Fuse f ->
                List.of(new Rated(reach, "", name, f.rating().value(), Severity.NUISANCE));
            case AddedPart.Pole p ->
                List.of(new Rated(reach, "", name, p.rating().value(), Severity.FIRE_OR_LOSS_OF_CONTROL));
            case AddedPart.Resistor r -> List.of();
            case AddedPart.Load l ->
                l.forward().isPresent()
                        ? List.of(new Rated(reach, "", name, l.draws().value(), Severity.NUISANCE))
                        : List.of();
            case AddedPart.StandbyBattery b -> List.of();
            case AddedPart.Sender s -> List.of();
            case AddedPart.PinSwitch p -> List.of();
        };
    }

    private record RatingCase(String id, Phrase statement, List<Rated> rated) implements Case {

        @Override
        public PartId about() {
            return rated.getFirst().part();
        }

        @Override
        public boolean concerns(ControllerState state, ControllerFeed feed) {
            return true;
        }

        @Override
        public double slack(Pair pair) {
            double most = 0;
            for (Rated each : rated) {
                most = Math.max(most, each.usedPercent(pair.fitted()));
            }
            return 100 - most;
        }

        private Rated busiest(Pair pair) {
            return rated.stream()
                    .max(Comparator.comparingDouble(each -> each.usedPercent(pair.fitted())))
                    .orElseThrow();
        }

        @Override
        public Severity severity(Pair pair) {
            return busiest(pair).over();
        }

        @Override
        public Margin margin(Pair pair) {
            Rated busiest = busiest(pair);
            return new Margin(
                    slack(pair),
                    "%",
                    Phrase.of("margin.carries", busiest.title(), Shown.amps(busiest.carriedAmps(pair.fitted()))),
                    Phrase.of("margin.at-most-amps", new Amps(busiest.amps())));
        }

        @Override
        public List<Observation> observations(Pair pair) {
            Rated busiest = busiest(pair);
            return LoadCase.withControllerSupply(
                    pair,
                    new Observation(
                            Phrase.of("meter.amps-in", busiest.title()),
                            Shown.amps(busiest.carriedAmps(pair.fitted())).toString()));
        }
    }
}
