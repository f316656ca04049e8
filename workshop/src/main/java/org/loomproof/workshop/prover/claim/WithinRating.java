package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.explore.Area;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.wire.Conductors;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.words.Phrase;

/** Nothing added, and no output, ever carries more for long than it may. Pulses are not looked at. */
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
            Rated.output(fitting, connect.lead()).ifPresent(rated -> all.add(show(List.of(rated), "lead", wired)));
        }
        Rated.parts(fitting).forEach(rated -> all.add(show(List.of(rated), "part", wired)));
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
                    byArea.computeIfAbsent(area, a -> new ArrayList<>()).add(wire(wire, reach));
                }
            }
        }
        return byArea.values();
    }

    private static Rated wire(AddedWire wire, Reach reach) {
        Amps ceiling = Conductors.fuseCeiling(wire.size());
        return new Rated(reach, "", wire.id().toString(), ceiling, ceiling, Severity.FIRE_OR_LOSS_OF_CONTROL);
    }

    private Claimed show(List<Rated> rated, String kind, Wired wired) {
        boolean isOne = !kind.startsWith("wires");
        String id = name() + " " + (isOne ? rated.getFirst().title() : kind);
        Phrase statement = isOne ? statement(rated.getFirst(), wired) : Phrase.of("claim.wires-within-rating");
        return new Claimed.ToShow(new RatingCase(id, statement, rated));
    }

    private static Phrase statement(Rated rated, Wired wired) {
        Amps most = rated.lasting();
        return rated.terminal().isEmpty()
                ? Phrase.of("claim.within-rating", wired.words(rated.part()), most)
                : Phrase.of("claim.terminal-within-rating", wired.words(rated.part()), rated.terminal(), most);
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

        private static double usedPercent(Rated rated, Pair pair) {
            return 100 * rated.carriedAmps(pair.fitted()) / rated.lasting().value();
        }

        @Override
        public double slack(Pair pair) {
            double most = 0;
            for (Rated each : rated) {
                most = Math.max(most, usedPercent(each, pair));
            }
            return 100 - most;
        }

        private Rated busiest(Pair pair) {
            return rated.stream()
                    .max(Comparator.comparingDouble(each -> usedPercent(each, pair)))
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
                    Phrase.of("margin.at-most-amps", busiest.lasting()));
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
