package org.loomproof.pages.bay;

import java.nio.file.Path;
import org.loomproof.shop.job.TextRun;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.read.ReadBrief;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.weigh.Weigher;
import org.loomproof.workshop.words.Messages;

/** The bakery's van with its plan, which is made once. */
final class BayVan {

    private static final Path JOB = Path.of("..", "examples", "bakery-van");

    private static final class Once {
        private static final Brief BRIEF = brief();
        private static final BayJob JOB =
                new BayJob(BRIEF, new Weigher().weigh(BRIEF).plan());
    }

    private BayVan() {}

    static BayJob planned() {
        return Once.JOB;
    }

    private static Brief brief() {
        return switch (new TextRun(Messages.english())
                .briefs()
                .read(JOB.resolve("sheet.yaml"), JOB.resolve("kit.yaml"), JOB.resolve("order.yaml"))) {
            case Checked.Good<ReadBrief>(ReadBrief good) -> good.brief();
            case Checked.Bad<ReadBrief>(var problems) -> throw new AssertionError(problems.toString());
        };
    }
}
