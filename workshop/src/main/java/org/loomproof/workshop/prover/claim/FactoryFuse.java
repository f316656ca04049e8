package org.loomproof.workshop.prover.claim;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.words.Phrase;

/** A fuse of the factory, with what is known of its rating. */
record FactoryFuse(Phrase words, Figure<Amps> rating) {

    /** The sheet's fuse that a part of the network stands for; empty where it stands for none. */
    static Optional<FactoryFuse> of(Fitting fitting, Wired wired, PartId part) {
        Phrase words = wired.words(part);
        return words.arguments().isEmpty() ? Optional.empty() : named(fitting, words);
    }

    private static Optional<FactoryFuse> named(Fitting fitting, Phrase words) {
        String name = Objects.requireNonNull(words.arguments().getFirst()).toString();
        return fitting.brief().sheet().circuits().stream()
                .flatMap(circuit -> circuit.paths().stream())
                .flatMap(List::stream)
                .filter(step -> step instanceof PathStep.Fuse fuse
                        && fuse.id().toString().equals(name))
                .map(step -> new FactoryFuse(words, ((PathStep.Fuse) step).rating()))
                .findFirst();
    }

    /** What to read to know it better, by the words of what is to be compared. */
    Measurement read(String key) {
        return new Measurement("rating-of " + words.arguments().getFirst(), Phrase.of(key, words));
    }
}
