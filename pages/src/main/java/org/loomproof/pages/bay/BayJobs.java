package org.loomproof.pages.bay;

import java.util.Optional;
import org.loomproof.book.card.Card;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.desk.Planning;
import org.loomproof.workshop.words.Messages;

/** The work of the jobs that somebody is at, each made from the plan that is kept with its job. */
public final class BayJobs {

    private final ByRun<BayJob> jobs = new ByRun<>();

    /** The work of a job; nothing while it has no plan. */
    public Optional<BayJob> of(Card job, OpenBook book) {
        return jobs.of(
                job,
                () -> new Planning(book, Messages.english())
                        .planFile(job)
                        .map(file -> new BayJob(file.given().brief(), file.plan())));
    }
}
