package org.loomproof.workshop.prover.claim;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.prover.explore.WorkedLoads;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.words.Phrase;

/** A load of the car gets most of the volts that its own switch gives it, the same way round, while the output is on. */
final class FactoryWork extends Work {

    private final ElementId load;
    private final List<CircuitId> circuits;

    FactoryWork(String claim, Fitting fitting, Hookup.Connect connect, Acting acting, ElementId load) {
        super(
                claim + " " + load,
                Phrase.of(
                        "claim.factory-load-works",
                        fitting.stock()
                                .wired()
                                .words(reach(fitting.stock().wired(), load).part()),
                        connect.lead()),
                reach(fitting.stock().wired(), load).part(),
                acting);
        this.load = load;
        this.circuits = connect.circuits();
    }

    private static Reach reach(Wired wired, ElementId load) {
        return Objects.requireNonNull(wired.factory().loads().get(load));
    }

    @Override
    Reach reach(Reading fitted) {
        return reach(fitted.wired(), load);
    }

    @Override
    OptionalDouble ownVolts(Pair pair) {
        double least = WorkedLoads.LEAST_SHARE * pair.supplyVolts();
        return circuits.stream()
                .map(circuit -> pair.working().worked(circuit, load, pair.supply()))
                .filter(own -> own.isPresent() && Math.abs(own.getAsDouble()) > least)
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    @Override
    double byHandVolts(Pair pair) {
        return pair.stock().volts(reach(pair.stock().wired(), load));
    }

    /** Where no switch of the car ever works the load, the battery's volts stand in. */
    @Override
    double wholeVolts(Pair pair) {
        double most = pair.working().volts(pair.supply(), load);
        double supply = pair.supplyVolts();
        return most < WorkedLoads.LEAST_SHARE * supply ? supply : most;
    }
}
