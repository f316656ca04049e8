package org.loomproof.workshop.prover.product;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.prover.claim.Fitting;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.words.Phrase;

/** What vehicle and controller come to together. */
public final class Reachable {

    private final Product product;
    private final Search search;
    private final long solves;

    private Reachable(Product product, Search search, long solves) {
        this.product = product;
        this.search = search;
        this.solves = solves;
    }

    /** Everything that can be reached; empty where nothing that the controller lies in was looked at. */
    public static Optional<Reachable> of(Fitting fitting, Sightings sightings) {
        long solves = sightings.complete();
        return sightings.overheard().map(table -> {
            Product product = new Product(table, fitting);
            return new Reachable(product, Search.of(product, (from, step) -> true, Search.MOST_STATES), solves);
        });
    }

    Product product() {
        return product;
    }

    Search search() {
        return search;
    }

    /** The proof with what was reached, and the limits of that. */
    public Proof told(Proof proof) {
        List<Phrase> bounds = new ArrayList<>();
        if (!search.isComplete()) {
            bounds.add(Phrase.of("bound.reach-stopped", search.size()));
        }
        return proof.with(effort()).alsoBoundedBy(bounds);
    }

    private Proof.Reached effort() {
        long unsettled = 0;
        for (int k = 0; k < search.size(); k++) {
            unsettled += product.given(search.place(k)).isUnsettled() ? 1 : 0;
        }
        return new Proof.Reached(
                search.size(),
                search.size() * product.standsFor(),
                search.transitions(),
                solves,
                unsettled,
                search.isComplete() && product.isWhole());
    }
}
