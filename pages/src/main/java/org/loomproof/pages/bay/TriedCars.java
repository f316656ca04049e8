package org.loomproof.pages.bay;

import java.util.Optional;
import org.loomproof.book.card.Card;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.desk.Planning;
import org.loomproof.workshop.words.Messages;

/** The cars of the jobs that somebody looks at, each made from the plan that is kept with its job. */
public final class TriedCars {

    private final ByRun<TriedCar> cars = new ByRun<>();

    /** The car of a job; nothing while it has no plan. */
    public Optional<TriedCar> of(Card job, OpenBook book) {
        return cars.of(
                job,
                () -> new Planning(book, Messages.english())
                        .planFile(job)
                        .map(file -> new TriedCar(file.given().brief(), file.plan())));
    }
}
