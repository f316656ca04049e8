package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.wire.Conductors;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * What protects a factory conductor in the stock vehicle.
 *
 * @param circuit whose wire it is
 * @param fuses those that a short of it is drawn through
 * @param limits their ratings, or else what its cross-section bears; empty where neither is known
 * @param unfused what is operated where the stock vehicle itself feeds a short without a fuse: no feed makes that worse
 */
record FactoryGuard(
        CircuitId circuit, Set<PartId> fuses, List<Limit> limits, Set<SortedMap<OperableId, String>> unfused) {

    /** The most that the thinnest wire that is bought may be fused with: less current than this is no feed to speak of. */
    private static final double THINNEST_AMPS =
            Conductors.fuseCeiling(Conductors.listMetric().getFirst().area()).value();

    /** A rating that protects it, as far as it is known. */
    record Limit(Phrase words, Amps low, Amps high) {}

    FactoryGuard {
        fuses = Set.copyOf(fuses);
        limits = List.copyOf(limits);
        unfused = Set.copyOf(unfused);
    }

    /** By a short of the wire in the stock vehicle, with one thing moved at a time. */
    static FactoryGuard of(Fitting fitting, Shorts stock, Node wire, CircuitId id) {
        List<Limit> limits = new ArrayList<>();
        Set<PartId> fuses = new HashSet<>();
        Set<SortedMap<OperableId, String>> unfused = new HashSet<>();
        for (SortedMap<OperableId, String> positions : FactoryWireFused.moved(fitting)) {
            Optional<OperatingPoint> point = stock.at(wire, FactoryWireFused.stock(positions));
            double amps = point.map(found -> Math.abs(found.amps(stock.contact(wire))))
                    .orElse(0.0);
            Optional<Shorts.Guard> guard = amps > THINNEST_AMPS
                    ? stock.guard(wire, FactoryWireFused.stock(positions), stock.contact(wire), THINNEST_AMPS)
                    : Optional.empty();
            guard.ifPresent(fuse -> fuses.add(fuse.part()));
            guard.flatMap(fuse -> FactoryFuse.of(fitting, fitting.stock().wired(), fuse.part()))
                    .map(fuse -> new Limit(
                            Phrase.of("margin.that-of", fuse.words()),
                            fuse.rating().low(),
                            fuse.rating().high()))
                    .ifPresent(limits::add);
            if (guard.isEmpty() && amps > THINNEST_AMPS) {
                unfused.add(positions);
            }
        }
        Circuit circuit = fitting.brief().sheet().circuit(id);
        if (limits.isEmpty()) {
            circuit.size()
                    .map(size -> new Limit(
                            Phrase.of("margin.wire-bears", id, size.typical()),
                            Conductors.fuseCeiling(size.low()),
                            Conductors.fuseCeiling(size.high())))
                    .ifPresent(limits::add);
        }
        return new FactoryGuard(id, fuses, limits.stream().distinct().toList(), unfused);
    }

    /** True where the stock vehicle feeds a short of it without a fuse in that situation. */
    boolean isUnfused(Situation situation) {
        return unfused.contains(situation.positions());
    }

    /** The limit that is least sure to be high. */
    Limit least() {
        return limits.stream()
                .min(Comparator.comparingDouble(limit -> limit.low().value()))
                .orElseThrow();
    }

    /** The limit that may be highest. */
    Limit most() {
        return limits.stream()
                .max(Comparator.comparingDouble(limit -> limit.high().value()))
                .orElseThrow();
    }

    /** A current that it bears for long whatever brings it. */
    double bearsAnyhow() {
        return limits.isEmpty() ? THINNEST_AMPS : least().low().value();
    }

    /** What would tell more. */
    Measurement ask() {
        return new Measurement("protection-of " + circuit, Phrase.of("measure.protection", circuit));
    }
}
