package org.loomproof.workshop.weigh;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.words.Phrase;

/** Writes into the winner what else was weighed for a lead, and why it lost. */
final class Losers {

    private Losers() {}

    /** Why a loser lost, by the first count in which it is worse. */
    enum Worse {
        BROKEN,
        REFUSED,
        HELD,
        OPEN,
        DECLARED,
        TIGHTER,
        MORE_PARTS,
        LATER
    }

    static Worse isWorse(Score loser, Score winner) {
        if (loser.broken() > winner.broken()) {
            return Worse.BROKEN;
        }
        if (loser.refused() > winner.refused()) {
            return Worse.REFUSED;
        }
        if (loser.held() > winner.held()) {
            return Worse.HELD;
        }
        if (loser.open() > winner.open()) {
            return Worse.OPEN;
        }
        if (loser.declared() > winner.declared()) {
            return Worse.DECLARED;
        }
        if (loser.tight() > winner.tight()) {
            return Worse.TIGHTER;
        }
        return loser.parts() > winner.parts() || loser.joints() > winner.joints() ? Worse.MORE_PARTS : Worse.LATER;
    }

    /**
     * The winner with the reason kept at its one lead that the loser decides otherwise, or at all of them where they belong to one
     * coupling; more than that tells nothing of any.
     */
    static Plan tell(Plan winner, Plan loser, Proof proof, Worse worse) {
        List<Hookup> differing = winner.hookups().stream()
                .filter(h -> !isSameWay(h, loser.findHookup(h.lead()).orElseThrow()))
                .toList();
        if (differing.size() != 1 && !areOneCoupling(differing, loser)) {
            return winner;
        }
        List<Hookup> hookups = winner.hookups().stream()
                .map(h -> differing.contains(h)
                        ? withReason(h, reason(loser.findHookup(h.lead()).orElseThrow(), proof, worse))
                        : h)
                .toList();
        return winner.withHookups(hookups);
    }

    /** Leads that serve one wish together, such as both of a lock: one does not lose without the other. */
    private static boolean areOneCoupling(List<Hookup> differing, Plan loser) {
        return differing.stream()
                        .map(h -> loser.findHookup(h.lead()).orElseThrow())
                        .map(h -> h instanceof Hookup.Connect connect
                                ? List.of(connect.serves(), connect.coupling())
                                : List.of(h.lead()))
                        .distinct()
                        .count()
                == 1;
    }

    /** Numbers of parts shift when another lead is decided otherwise; the way a lead is joined does not. */
    private static boolean isSameWay(Hookup one, Hookup other) {
        return one.because().equals(other.because()) && one.getClass().equals(other.getClass());
    }

    private static Phrase reason(Hookup lost, Proof proof, Worse worse) {
        Phrase way = lost instanceof Hookup.Connect connect ? Phrase.of(connect.coupling()) : Phrase.of("weigh.aside");
        return switch (worse) {
            case BROKEN ->
                firstOf(proof, Verdict.Broken.class)
                        .map(c -> Phrase.of("weigh.lost.broken", way, c))
                        .orElse(Phrase.of("weigh.lost.later", way));
            case OPEN ->
                firstOf(proof, Verdict.Open.class)
                        .map(c -> Phrase.of("weigh.lost.open", way, c))
                        .orElse(Phrase.of("weigh.lost.later", way));
            case DECLARED ->
                firstOf(proof, Verdict.Declared.class)
                        .map(c -> Phrase.of("weigh.lost.declared", way, c))
                        .orElse(Phrase.of("weigh.lost.later", way));
            case REFUSED -> Phrase.of("weigh.lost.refused", way);
            case HELD -> Phrase.of("weigh.lost.held", way);
            case TIGHTER -> Phrase.of("weigh.lost.tighter", way);
            case MORE_PARTS -> Phrase.of("weigh.lost.more-parts", way);
            case LATER -> Phrase.of("weigh.lost.later", way);
        };
    }

    private static Optional<Phrase> firstOf(Proof proof, Class<? extends Verdict> kind) {
        return proof.results().stream()
                .filter(r -> kind.isInstance(r.verdict()))
                .map(ClaimResult::statement)
                .findFirst();
    }

    private static Hookup withReason(Hookup hookup, Phrase reason) {
        List<Phrase> reasons = new ArrayList<>(hookup.insteadOf());
        reasons.add(reason);
        return switch (hookup) {
            case Hookup.Connect c ->
                new Hookup.Connect(
                        c.lead(), c.serves(), c.circuits(), c.coupling(), c.parts(), c.wires(), c.because(), reasons);
            case Hookup.Trim t -> new Hookup.Trim(t.lead(), t.because(), reasons);
            case Hookup.CapAndKeep c -> new Hookup.CapAndKeep(c.lead(), c.because(), reasons);
            case Hookup.Hold h -> new Hookup.Hold(h.lead(), h.serves(), h.until(), h.because(), reasons);
        };
    }
}
