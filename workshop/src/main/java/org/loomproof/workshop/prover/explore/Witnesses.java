package org.loomproof.workshop.prover.explore;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.prover.state.StepsTo;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.wiring.Situation;

/**
 * How to see a broken case in the car. Where contacts may stand in more than one way, it depends on what they did before: then the
 * steps are told in an order that leads to where the case is broken, with what is seen there. Where no order does, as of a relay
 * that would have to be let go of in between, they are told in the usual one.
 */
public final class Witnesses {

    private final StepsTo stepsTo;
    private final Workbench bench;

    /** Witnesses of one vehicle. */
    public Witnesses(StepsTo stepsTo, Workbench bench) {
        this.stepsTo = stepsTo;
        this.bench = bench;
    }

    /**
     * The witness of a case.
     *
     * @param pairs every answer of the fitted vehicle in that situation beside every answer of the stock vehicle
     * @param settings how a situation on the way sets the fitted vehicle
     */
    public Witness of(Case each, List<List<Pair>> pairs, Situation situation, Function<Situation, Setting> settings) {
        if (pairs.size() > 1) {
            for (List<StepsTo.Stage> order : stepsTo.orders(situation)) {
                Optional<List<List<Pair>>> there = end(pairs.getFirst(), order, settings);
                if (there.isPresent() && Beside.slack(each, there.get()) < 0) {
                    return new Witness(
                            order.stream()
                                    .flatMap(stage -> stage.words().stream())
                                    .toList(),
                            situation,
                            each.observations(Beside.deciding(each, there.get())));
                }
            }
        }
        return new Witness(stepsTo.list(situation), situation, each.observations(Beside.deciding(each, pairs)));
    }

    /** Where those steps lead, beside every answer of the stock vehicle; empty where something chatters on the way. */
    private Optional<List<List<Pair>>> end(
            List<Pair> withEachStock, List<StepsTo.Stage> order, Function<Situation, Setting> settings) {
        Vehicle fitted = withEachStock.getFirst().fitted().vehicle();
        Optional<OperatingPoint> now = bench.settled(fitted.wired(), settings.apply(StepsTo.atRest()));
        for (StepsTo.Stage stage : order) {
            now = now.flatMap(before -> bench.after(fitted.wired(), settings.apply(stage.after()), before));
        }
        return now.map(point -> List.of(withEachStock.stream()
                .map(pair -> pair.with(new Reading(fitted, point)))
                .toList()));
    }
}
