package org.loomproof.shop.job;

import java.util.List;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;

/** How a job that could be read ended, in the order of precedence. Bad input and our own faults have codes of their own. */
public enum Answer {
    /** At least one wish was turned down. */
    REFUSED(4),
    /** At least one claim is broken. */
    BROKEN(3),
    /** At least one claim is open, or a lead is on hold. */
    OPEN(5),
    /** Every claim holds, or holds but for what the order declares to change. */
    PROVEN(0);

    private final int code;

    Answer(int code) {
        this.code = code;
    }

    /** The exit code of the command, and the number in saved results. */
    public int code() {
        return code;
    }

    /** The gravest answer that applies. */
    public static Answer of(Plan plan, Proof proof) {
        List<Verdict> verdicts =
                proof.results().stream().map(ClaimResult::verdict).toList();
        if (!plan.refusals().isEmpty()) {
            return REFUSED;
        }
        if (verdicts.stream().anyMatch(Verdict.Broken.class::isInstance)) {
            return BROKEN;
        }
        boolean undecided = verdicts.stream().anyMatch(Verdict.Open.class::isInstance)
                || plan.hookups().stream().anyMatch(Hookup.Hold.class::isInstance);
        return undecided ? OPEN : PROVEN;
    }
}
