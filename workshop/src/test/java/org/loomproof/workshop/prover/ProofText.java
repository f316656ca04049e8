package org.loomproof.workshop.prover;

import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.words.Messages;

/** A proof as a few lines a result, for a person who reads a failed test. */
public final class ProofText {

    private ProofText() {}

    /** Only the results that do not hold. */
    public static String notHolding(Proof proof) {
        return of(new Proof(
                proof.results().stream()
                        .filter(r -> !(r.verdict() instanceof Verdict.Holds))
                        .toList(),
                proof.effort(),
                proof.bounds()));
    }

    public static String of(Proof proof) {
        Messages words = Messages.english();
        StringBuilder out = new StringBuilder();
        for (ClaimResult result : proof.results()) {
            out.append(result.id())
                    .append(" | ")
                    .append(words.text(result.statement()))
                    .append('\n');
            switch (result.verdict()) {
                case Verdict.Holds holds ->
                    out.append("   holds: ")
                            .append(words.text(holds.tightest().computed()))
                            .append("; ")
                            .append(words.text(holds.tightest().allowed()))
                            .append("; slack ")
                            .append(holds.tightest().slack())
                            .append(" at ")
                            .append(holds.deciding());
                case Verdict.Broken broken -> {
                    out.append("   BROKEN: ")
                            .append(words.text(broken.worst().computed()))
                            .append("; ")
                            .append(words.text(broken.worst().allowed()));
                    broken.witness()
                            .steps()
                            .forEach(step -> out.append("\n      - ").append(words.text(step)));
                    for (Observation seen : broken.witness().seen()) {
                        out.append("\n      see ")
                                .append(words.text(seen.at()))
                                .append(": ")
                                .append(seen.reads());
                    }
                }
                case Verdict.Declared declared -> out.append("   declared: ").append(words.text(declared.found()));
                case Verdict.Open open -> out.append("   open: ").append(words.text(open.because()));
            }
            out.append('\n');
        }
        return out.append(proof.effort()).toString();
    }
}
