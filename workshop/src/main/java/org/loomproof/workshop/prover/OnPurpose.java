package org.loomproof.workshop.prover;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.loomproof.workshop.brief.order.DeclaredChange;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.prover.claim.Claimed;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Explorer;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.words.Phrase;

/**
 * Judges what the order declares to change. Each case stands there three times: with what is declared allowed, as if nothing were
 * declared, and with twice as much allowed. What keeps the first and not the second is declared; what keeps both is no change to
 * sign for; what keeps the third alone goes further than the customer is told; what keeps none is not what was declared.
 */
final class OnPurpose {

    private final List<Claimed.ToShow> declared;
    private final Explorer asBefore;
    private final Explorer twice;
    private final Set<ElementId> changed = new HashSet<>();

    private OnPurpose(List<Claimed.ToShow> declared, Explorer asBefore, Explorer twice) {
        this.declared = declared;
        this.asBefore = asBefore;
        this.twice = twice;
    }

    /**
     * What is stated with a declared change in it, decided at the other limits.
     *
     * @param another an explorer of the same job that has decided nothing
     */
    static OnPurpose decide(List<Claimed> claimed, Supplier<Explorer> another) {
        List<Claimed.ToShow> declared = claimed.stream()
                .filter(each -> each instanceof Claimed.ToShow toShow
                        && toShow.onPurpose().isPresent())
                .map(Claimed.ToShow.class::cast)
                .toList();
        OnPurpose found = new OnPurpose(
                declared,
                another.get().decide(declared.stream().map(OnPurpose::asBefore).toList()),
                another.get().decide(declared.stream().map(OnPurpose::twice).toList()));
        declared.stream()
                .filter(each -> found.ofBefore(each)
                        .filter(Verdict.Broken.class::isInstance)
                        .isPresent())
                .forEach(each -> found.changed.add(change(each).of()));
        return found;
    }

    private static DeclaredChange change(Claimed.ToShow each) {
        return each.onPurpose().orElseThrow().change();
    }

    private static Case asBefore(Claimed.ToShow each) {
        return each.onPurpose().orElseThrow().asBefore();
    }

    private static Case twice(Claimed.ToShow each) {
        return each.onPurpose().orElseThrow().twice();
    }

    private Optional<Verdict> ofBefore(Claimed.ToShow each) {
        return asBefore.result(asBefore(each)).map(ClaimResult::verdict);
    }

    /** The result in the light of what is declared; the same for what no declaration touches. */
    ClaimResult judged(Claimed.ToShow each, ClaimResult result) {
        if (each.onPurpose().isEmpty()) {
            return result;
        }
        return switch (result.verdict()) {
            case Verdict.Holds holds -> allowed(each, result);
            case Verdict.Broken broken -> beyond(each, result, broken);
            case Verdict.Open open -> result;
            case Verdict.Declared before -> throw new IllegalStateException("judged before: " + result.id());
        };
    }

    private ClaimResult allowed(Claimed.ToShow each, ClaimResult result) {
        Optional<Verdict> before = ofBefore(each);
        if (before.isEmpty()) {
            return result;
        }
        return switch (before.get()) {
            case Verdict.Broken seen ->
                result.with(new Verdict.Declared(change(each), seen.worst().computed(), seen.witness()));
            case Verdict.Open open -> result.with(open);
            case Verdict.Holds holds ->
                changed.contains(change(each).of()) ? result.with(holds) : result.decidedWithoutPlan(nothingChanges());
            case Verdict.Declared other -> throw new IllegalStateException("judged before: " + result.id());
        };
    }

    private static Verdict nothingChanges() {
        return new Verdict.Open(Phrase.of("open.declared-and-no-change"), List.of());
    }

    private ClaimResult beyond(Claimed.ToShow each, ClaimResult result, Verdict.Broken broken) {
        return twice.result(twice(each))
                .map(ClaimResult::verdict)
                .map(verdict -> verdict instanceof Verdict.Broken other
                        ? result.with(other)
                        : result.with(new Verdict.Open(
                                Phrase.of(
                                        "open.more-than-declared",
                                        broken.worst().computed(),
                                        broken.worst().allowed()),
                                List.of())))
                .orElse(result);
    }

    /** The effort with what was looked at for it. */
    Proof.Effort and(Proof.Effort effort) {
        return declared.isEmpty() ? effort : effort.and(asBefore.effort()).and(twice.effort());
    }
}
