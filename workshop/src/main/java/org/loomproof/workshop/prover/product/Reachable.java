package org.loomproof.workshop.prover.product;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomproof.workshop.prover.claim.ArmedAfterLight;
import org.loomproof.workshop.prover.claim.Fitting;
import org.loomproof.workshop.prover.claim.HeldLongEnough;
import org.loomproof.workshop.prover.claim.OpeningSeen;
import org.loomproof.workshop.prover.claim.QuietWhenClosed;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.words.Phrase;

/** What vehicle and controller come to together. */
public final class Reachable {

    private final Fitting fitting;
    private final Product product;
    private final Search search;
    private final long solves;

    private Reachable(Fitting fitting, Product product, Search search, long solves) {
        this.fitting = fitting;
        this.product = product;
        this.search = search;
        this.solves = solves;
    }

    /** Everything that can be reached; empty where nothing that the controller lies in was looked at. */
    public static Optional<Reachable> of(Fitting fitting, Sightings sightings) {
        long solves = sightings.complete();
        return sightings.overheard().map(table -> {
            Product product = new Product(table, fitting);
            return new Reachable(
                    fitting, product, Search.of(product, (from, step) -> true, Search.MOST_STATES), solves);
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
        boolean watches =
                proof.results().stream().anyMatch(result -> result.id().startsWith(OpeningSeen.NAME + " "));
        if (watches && HeldLongEnough.leavesUnsaid(fitting)) {
            bounds.add(Phrase.of("bound.reading-time"));
        }
        if (!search.isComplete()) {
            bounds.add(Phrase.of("bound.reach-stopped", search.size()));
        }
        return asSteppedThrough(proof).with(effort()).alsoBoundedBy(bounds);
    }

    /** What the claims about openings come to here too; where it is not what holds in every situation, they are open. */
    private Proof asSteppedThrough(Proof proof) {
        if (!search.isComplete()) {
            return proof.restated(result -> isAboutAlarm(result) ? open(result, "open.reach-stopped") : result);
        }
        Alarm alarm = new Alarm(product, fitting.brief());
        Set<String> missed = fitting.brief().order().watched().stream()
                .filter(opening -> product.moved().containsKey(opening))
                .filter(opening -> !alarm.surelyFollows(opening, search))
                .map(OpeningSeen::idOf)
                .collect(Collectors.toSet());
        Proof noticed =
                proof.restated(result -> missed.contains(result.id()) ? open(result, "open.alarm-not-sure") : result);
        boolean isQuiet = proof.results().stream()
                .filter(result -> isQuiet(result) || result.id().startsWith(ArmedAfterLight.NAME + " "))
                .allMatch(result -> result.verdict() instanceof Verdict.Holds);
        return isQuiet && alarm.unbidden().isPresent()
                ? noticed.restated(result -> isQuiet(result) ? open(result, "open.alarm-by-itself") : result)
                : noticed;
    }

    private static boolean isAboutAlarm(ClaimResult result) {
        return isQuiet(result) || result.id().startsWith(OpeningSeen.NAME + " ");
    }

    private static boolean isQuiet(ClaimResult result) {
        return result.id().startsWith(QuietWhenClosed.NAME + " ");
    }

    /** What holds is no longer said to; what is broken or open already stays so. */
    private static ClaimResult open(ClaimResult result, String because) {
        return result.verdict() instanceof Verdict.Holds
                ? result.with(new Verdict.Open(Phrase.of(because), List.of()))
                : result;
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
