package org.loomproof.shop.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.loomproof.papers.Papers;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.weigh.Search;

/** How a run ended. */
public sealed interface JobOutcome {

    /** The input could not be used; nothing was written. */
    record BadInput(List<Problem> problems) implements JobOutcome {
        public BadInput {
            problems = List.copyOf(problems);
        }
    }

    /**
     * A plan and its proof.
     *
     * @param brief what was given, completed
     * @param plan every lead decided
     * @param proof what was found
     * @param search what was looked through to find the plan
     * @param folder where the papers went, when any were written
     * @param files their names in the folder, sorted
     */
    record Judged(Brief brief, Plan plan, Proof proof, Search search, Optional<Path> folder, List<String> files)
            implements JobOutcome {
        public Judged {
            files = List.copyOf(files);
        }

        /** Where the plan was written, when it was. */
        public Optional<Path> planFile() {
            return folder.map(f -> f.resolve(Papers.PLAN));
        }

        /** Where the proof report was written, when it was. */
        public Optional<Path> proofReport() {
            return folder.map(f -> f.resolve(Papers.PROOF_REPORT));
        }
    }
}
