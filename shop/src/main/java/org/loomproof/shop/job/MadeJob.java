package org.loomproof.shop.job;

import java.util.List;
import org.loomproof.papers.Material;
import org.loomproof.papers.ShopFacts;
import org.loomproof.papers.folder.Paper;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.weigh.Search;

/**
 * A job that was planned and proven, with its papers.
 *
 * @param material what the papers were made from
 * @param shop what they took from the shop
 * @param search what was looked through to find the plan
 * @param papers as they would lie in a folder
 */
public record MadeJob(Material material, ShopFacts shop, Search search, List<Paper> papers) {
    public MadeJob {
        papers = List.copyOf(papers);
    }

    /** What was given, completed. */
    public Brief brief() {
        return material.brief();
    }

    /** Every lead decided. */
    public Plan plan() {
        return material.plan();
    }

    /** What was found. */
    public Proof proof() {
        return material.proof();
    }
}
