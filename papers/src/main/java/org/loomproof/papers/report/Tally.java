package org.loomproof.papers.report;

import org.loomproof.papers.page.Mark;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;

/** How many of each, and what follows for the job. */
record Tally(int holding, int broken, int open, int declared, int refused, int waiting) {

    static Tally of(Plan plan, Proof proof) {
        int holding = 0;
        int broken = 0;
        int open = 0;
        int declared = 0;
        for (ClaimResult result : proof.results()) {
            switch (result.verdict()) {
                case Verdict.Holds v -> holding++;
                case Verdict.Broken v -> broken++;
                case Verdict.Open v -> open++;
                case Verdict.Declared v -> declared++;
            }
        }
        int waiting = (int)
                plan.hookups().stream().filter(Hookup.Hold.class::isInstance).count();
        return new Tally(holding, broken, open, declared, plan.refusals().size(), waiting);
    }

    /** The worst of it. A refusal alone does not spoil the rest. */
    Mark mark() {
        if (broken > 0) {
            return Mark.BROKEN;
        }
        if (open > 0 || waiting > 0 || holding == 0) {
            return Mark.OPEN;
        }
        if (refused > 0) {
            return Mark.REFUSED;
        }
        return declared > 0 ? Mark.DECLARED : Mark.HOLDS;
    }

    /** The key of the sentence that answers: may this be built? */
    String answer() {
        return switch (mark()) {
            case BROKEN -> "proof-report.answer-broken";
            case OPEN -> "proof-report.answer-open";
            case REFUSED -> "proof-report.answer-refused";
            case DECLARED -> "proof-report.answer-declared";
            case HOLDS -> "proof-report.answer-holds";
            case WAITING, CAUTION -> throw new IllegalStateException("no answer for " + mark());
        };
    }
}
