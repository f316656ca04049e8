package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.claim.Claim;
import org.loomproof.workshop.prover.claim.Claimed;
import org.loomproof.workshop.prover.claim.Fitting;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Situation;

/** The claims about one car, each asked again at those of its points of rest that somebody has come to. */
public final class ClaimAgain {
    private final Brief brief;
    private final Vehicle stock;
    private final Vehicle fitted;
    private final List<Area> areas;
    private final Map<String, Case> cases = new HashMap<>();
    private final Map<Area, Map<SupplyPoint, Working>> working = new HashMap<>();
    private final Workbench bench = new Workbench();

    /** The vehicles of a job, as planned or with something wrong. */
    public ClaimAgain(Brief given, Plan plan, Optional<Damage> damage) {
        this.brief = given.set(plan.settings());
        this.stock = Vehicle.stock(brief, Corner.TYPICAL);
        Plan inCar = damage.map(Damage::plan).orElse(plan);
        Vehicle asWired = Vehicle.fitted(brief, inCar, Corner.TYPICAL);
        this.fitted = damage.map(d -> d.vehicle(brief)).orElse(asWired);
        this.areas = Area.list(stock.wired(), asWired.wired(), fitted.wired());
        Fitting fitting = new Fitting(brief, inCar, stock, asWired);
        for (Claim claim : Claim.all()) {
            if (claim.isWalked()) {
                for (Claimed claimed : claim.in(fitting)) {
                    if (claimed instanceof Claimed.ToShow show) {
                        // What is declared is shown by what is asked of a car in which nothing is.
                        cases.put(
                                show.toShow().id(),
                                show.onPurpose()
                                        .map(Claimed.OnPurpose::asBefore)
                                        .orElse(show.toShow()));
                    }
                }
            }
        }
    }

    /** The car. */
    public Vehicle fitted() {
        return fitted;
    }

    /**
     * How a claim stands.
     *
     * @param slack how far inside its limit it is; negative where it is broken
     * @param seen what a meter shows of it
     */
    public record Found(double slack, List<Observation> seen) {}

    /** Whether a claim of that name is asked at all in this car. */
    public boolean isAsked(String claim) {
        return cases.containsKey(claim);
    }

    /** A claim at those points of rest of the situation that are met; empty where there are none, or it has nothing to say. */
    public Optional<Found> at(String claim, Situation situation, Predicate<OperatingPoint> isMet) {
        Case each = Optional.ofNullable(cases.get(claim)).orElseThrow();
        Area area = areas.stream()
                .filter(a -> a.parts().contains(each.about()))
                .findFirst()
                .orElseThrow();
        Vehicle stockThere = stock.restrictedTo(area);
        Vehicle fittedThere = fitted.restrictedTo(area);
        if (!(bench.answers(stockThere, stockThere.settings().of(situation)) instanceof Answers.AtRest stockAtRest)
                || !(bench.answers(fittedThere, fittedThere.settings().of(situation)) instanceof Answers.AtRest rest)) {
            return Optional.empty();
        }
        Working loads = working.computeIfAbsent(area, a -> new EnumMap<>(SupplyPoint.class))
                .computeIfAbsent(
                        situation.supply(),
                        supply -> StockTable.at(
                                Sweep.space(
                                        brief,
                                        stock,
                                        fitted,
                                        area,
                                        cases.values().stream()
                                                .filter(c -> area.parts().contains(c.about()))
                                                .toList()),
                                stockThere,
                                brief.sheet(),
                                supply));
        SortedMap<OperableId, String> positions = new TreeMap<>();
        brief.sheet().operables().forEach(o -> positions.put(o.id(), o.rest()));
        positions.putAll(situation.positions());
        Condition.Doing doing =
                new Condition.Doing(situation.controller(), situation.feed(), situation.moment(), situation.still());
        List<List<Pair>> pairs = new ArrayList<>();
        for (OperatingPoint point : rest.points()) {
            if (isMet.test(point)) {
                pairs.add(stockAtRest.points().stream()
                        .map(s -> new Pair(
                                positions,
                                situation.supply(),
                                situation.supply().volts().value(),
                                doing,
                                new Reading(stockThere, s),
                                new Reading(fittedThere, point),
                                loads,
                                bench))
                        .toList());
            }
        }
        double slack = pairs.isEmpty() ? Double.NaN : Beside.slack(each, pairs);
        return Double.isNaN(slack)
                ? Optional.empty()
                : Optional.of(new Found(slack, each.observations(Beside.deciding(each, pairs))));
    }
}
