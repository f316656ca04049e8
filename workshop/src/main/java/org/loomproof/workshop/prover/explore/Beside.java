package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.Space;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/** Stock and fitted vehicle side by side in one situation. */
public record Beside(
        Space space, Key key, double supplyVolts, Vehicle stock, Vehicle fitted, Working working, Workbench bench) {

    /** The two at a supply point. */
    public Beside(Space space, Key key, Vehicle stock, Vehicle fitted, Working working, Workbench bench) {
        this(space, key, space.supplies().get(key.supply()).volts().value(), stock, fitted, working, bench);
    }

    /** The pairs of every answer of the fitted vehicle with every answer of the stock vehicle. */
    public List<List<Pair>> pairs(Answers.AtRest stockAtRest, Answers.AtRest fittedAtRest) {
        SortedMap<OperableId, String> positions = space.positions().get(key.positions());
        List<List<Pair>> all = new ArrayList<>();
        for (OperatingPoint f : fittedAtRest.points()) {
            List<Pair> withEachStock = new ArrayList<>();
            for (OperatingPoint s : stockAtRest.points()) {
                withEachStock.add(new Pair(
                        positions,
                        supply(),
                        supplyVolts,
                        doing(),
                        new Reading(stock, s),
                        new Reading(fitted, f),
                        working,
                        bench));
            }
            all.add(withEachStock);
        }
        return all;
    }

    /** The same of whatever the two come to; empty where one of them does not come to rest. */
    public Optional<List<List<Pair>>> pairsAtRest(Answers stockAnswers, Answers fittedAnswers) {
        return stockAnswers instanceof Answers.AtRest s && fittedAnswers instanceof Answers.AtRest f
                ? Optional.of(pairs(s, f))
                : Optional.empty();
    }

    private SupplyPoint supply() {
        return space.supplies().get(key.supply());
    }

    private Condition.Doing doing() {
        return space.conditions().get(key.condition()).representative();
    }

    /** Every answer of the fitted vehicle must do, beside that answer of the stock vehicle which suits it best. */
    public static double slack(Case each, List<List<Pair>> pairs) {
        double least = Double.NaN;
        for (List<Pair> withEachStock : pairs) {
            double best = Double.NaN;
            for (Pair pair : withEachStock) {
                double slack = each.slack(pair);
                best = Double.isNaN(best) || slack > best ? slack : best;
            }
            least = Double.isNaN(least) || best < least ? best : least;
        }
        return least;
    }

    /** Solves both vehicles here; empty when one of them does not come to rest. */
    Optional<List<List<Pair>>> solve() {
        return pairsAtRest(bench.answers(stock, at(stock, Condition.IDLE)), bench.answers(fitted, at(fitted, doing())));
    }

    private Setting at(Vehicle vehicle, Condition.Doing doing) {
        return vehicle.settings()
                .of(doing.with(space.positions().get(key.positions()), supply()))
                .emf(vehicle.wired().battery(), supplyVolts);
    }

    /** The slack of a case here; NaN when it says nothing or nothing comes to rest. */
    double slack(Case each) {
        return solve().map(pairs -> slack(each, pairs)).orElse(Double.NaN);
    }

    /** The pair that decides a case: the least of the fitted vehicle's answers, beside the stock answer that suits it. */
    public static Pair deciding(Case each, List<List<Pair>> pairs) {
        return pairs.stream()
                .map(withEachStock -> best(each, withEachStock))
                .min(Comparator.comparingDouble(Judged::slack))
                .orElseThrow()
                .pair();
    }

    private record Judged(Pair pair, double slack) {}

    private static Judged best(Case each, List<Pair> withEachStock) {
        return withEachStock.stream()
                .map(pair -> new Judged(pair, each.slack(pair)))
                .filter(judged -> !Double.isNaN(judged.slack()))
                .max(Comparator.comparingDouble(Judged::slack))
                .orElseGet(() -> new Judged(withEachStock.getFirst(), Double.POSITIVE_INFINITY));
    }
}
