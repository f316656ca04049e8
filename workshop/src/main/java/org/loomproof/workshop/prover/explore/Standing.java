package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.Space;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * Where cases stand in one situation at a time, every figure at its typical value: fit to show, not to prove. Only what the work
 * touches is asked. Not for sharing between threads.
 */
public final class Standing {

    private final Brief brief;
    private final List<Place> places = new ArrayList<>();
    private final Workbench bench = new Workbench();

    /** An area with its cases, and what its loads get when they work, once somebody asked at that supply point. */
    private record Place(
            List<Case> cases, Space space, Vehicle stock, Vehicle shown, Map<SupplyPoint, Working> working) {}

    /**
     * How far inside what is allowed a case is.
     *
     * @param about the case
     * @param margin negative where it is broken
     */
    public record Stand(Case about, Margin margin) {}

    /**
     * What was found in a situation.
     *
     * @param stands of the cases that say something there, in their order
     * @param restless why others could not be asked
     */
    public record Found(List<Stand> stands, List<Phrase> restless) {
        public Found {
            stands = List.copyOf(stands);
            restless = List.copyOf(restless);
        }
    }

    /**
     * Cases about a vehicle.
     *
     * @param brief with the kit set as the plan says
     * @param stock the vehicle as it came
     * @param planned the vehicle with the plan carried out
     * @param shown the same, or what a mishap makes of it
     */
    public Standing(Brief brief, Vehicle stock, Vehicle planned, Vehicle shown, List<Case> cases) {
        this.brief = brief;
        for (Area area : Area.list(stock.wired(), planned.wired(), shown.wired())) {
            List<Case> here = cases.stream()
                    .filter(each -> area.parts().contains(each.about()))
                    .toList();
            if (area.touched() && !here.isEmpty()) {
                places.add(new Place(
                        here,
                        Sweep.space(brief, stock, shown, area, here),
                        stock.restrictedTo(area),
                        shown.restrictedTo(area),
                        new EnumMap<>(SupplyPoint.class)));
            }
        }
    }

    /** What is found there. */
    public Found at(Situation situation) {
        SortedMap<OperableId, String> positions = new TreeMap<>();
        brief.sheet().operables().forEach(each -> positions.put(each.id(), each.rest()));
        positions.putAll(situation.positions());
        Condition.Doing doing = Condition.Doing.in(situation);
        List<Stand> stands = new ArrayList<>();
        List<Phrase> restless = new ArrayList<>();
        for (Place place : places) {
            List<Case> asked = place.cases().stream()
                    .filter(each -> each.concerns(doing) && each.concerns(positions))
                    .toList();
            if (!asked.isEmpty()) {
                ask(place, asked, positions, doing, situation, stands, restless);
            }
        }
        return new Found(stands, restless);
    }

    private void ask(
            Place place,
            List<Case> asked,
            SortedMap<OperableId, String> positions,
            Condition.Doing doing,
            Situation situation,
            List<Stand> stands,
            List<Phrase> restless) {
        Answers stock = bench.answers(place.stock(), place.stock().settings().of(situation));
        Answers shown = bench.answers(place.shown(), place.shown().settings().of(situation));
        words(stock).ifPresent(restless::add);
        words(shown).ifPresent(restless::add);
        if (!(stock instanceof Answers.AtRest stockAtRest) || !(shown instanceof Answers.AtRest shownAtRest)) {
            return;
        }
        Working working = place.working()
                .computeIfAbsent(
                        situation.supply(),
                        supply -> StockTable.at(place.space(), place.stock(), brief.sheet(), supply));
        List<List<Pair>> pairs = shownAtRest.points().stream()
                .map(f -> stockAtRest.points().stream()
                        .map(s -> new Pair(
                                positions,
                                situation.supply(),
                                situation.supply().volts().value(),
                                doing,
                                new Reading(place.stock(), s),
                                new Reading(place.shown(), f),
                                working,
                                bench))
                        .toList())
                .toList();
        for (Case each : asked) {
            if (!Double.isNaN(Beside.slack(each, pairs))) {
                stands.add(new Stand(each, each.margin(Beside.deciding(each, pairs))));
            }
        }
    }

    private static Optional<Phrase> words(Answers answers) {
        return switch (answers) {
            case Answers.AtRest rest -> Optional.empty();
            case Answers.Chatters(Phrase words) -> Optional.of(words);
            case Answers.Lost(Phrase words) -> Optional.of(words);
        };
    }
}
