package org.loomproof.shop.job;

import java.util.List;
import org.loomproof.papers.folder.Paper;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.weigh.Search;

/**
 * A job that was planned and proven, with its papers.
 *
 * @param brief what was given, completed
 * @param plan every lead decided
 * @param proof what was found
 * @param search what was looked through to find the plan
 * @param papers as they would lie in a folder
 */
public record MadeJob(Brief brief, Plan plan, Proof proof, Search search, List<Paper> papers) {
    public MadeJob {
        papers = List.copyOf(papers);
    }
}
