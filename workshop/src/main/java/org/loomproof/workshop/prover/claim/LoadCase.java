package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.words.Phrase;

/** What the cases about one factory load have in common. */
abstract class LoadCase implements Case {

    /** A load works when it gets more than this share of the most it ever gets at that supply point. */
    static final double WORKS_SHARE = 0.05;

    /** A current that does nothing anywhere in a vehicle: the leak of a good insulation. Common practice, no published source. */
    static final double NEGLIGIBLE_AMPS = 1e-5;

    private final String id;
    private final Phrase statement;
    final ElementId load;
    private final PartId part;

    LoadCase(String claim, ElementId load, Fitting fitting) {
        this.id = claim + " " + load;
        this.load = load;
        this.part = reach(fitting.stock().wired(), load).part();
        this.statement = Phrase.of("claim." + claim, fitting.stock().wired().words(part));
    }

    private static Reach reach(Wired wired, ElementId load) {
        return Objects.requireNonNull(wired.factory().loads().get(load), () -> "no load " + load);
    }

    @Override
    public final String id() {
        return id;
    }

    @Override
    public final Phrase statement() {
        return statement;
    }

    @Override
    public final PartId about() {
        return part;
    }

    final double amps(Reading reading) {
        return Math.abs(signedAmps(reading));
    }

    final double signedAmps(Reading reading) {
        return reading.amps(reach(reading.wired(), load));
    }

    final double volts(Reading reading) {
        return Math.abs(reading.volts(reach(reading.wired(), load)));
    }

    /** True where the load works in the stock vehicle. */
    final boolean worksInStock(Pair pair) {
        double working = pair.working().amps(pair.supply(), load);
        return working > 0 && amps(pair.stock()) > WORKS_SHARE * working;
    }

    @Override
    public List<Observation> observations(Pair pair) {
        Phrase words = pair.fitted().words(part);
        List<Observation> seen = new ArrayList<>();
        seen.add(new Observation(
                Phrase.of("meter.volts-across", words),
                Shown.volts(volts(pair.fitted())).toString()));
        seen.add(new Observation(
                Phrase.of("meter.amps-through", words),
                Shown.amps(amps(pair.fitted())).toString()));
        seen.add(new Observation(
                Phrase.of("meter.amps-through-before", words),
                Shown.amps(amps(pair.stock())).toString()));
        seen.addAll(controllerSupply(pair));
        return seen;
    }

    /** What the controller lives on, where it has a say. */
    static List<Observation> controllerSupply(Pair pair) {
        return pair.fitted().hasController()
                ? List.of(new Observation(
                        Phrase.of("meter.controller-supply"),
                        Shown.volts(pair.fitted().controllerVolts()).toString()))
                : List.of();
    }

    /** What was seen, and what the controller lives on. */
    static List<Observation> withControllerSupply(Pair pair, Observation... seen) {
        List<Observation> all = new ArrayList<>(List.of(seen));
        all.addAll(controllerSupply(pair));
        return all;
    }
}
