package org.loomproof.pages.bay;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.Card;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.desk.Planning;
import org.loomproof.papers.Papers;
import org.loomproof.shop.job.TextRun;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.plan.file.PlanFile;
import org.loomproof.workshop.plan.file.PlanFileReader;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.words.Messages;

/** The cars of the jobs that somebody looks at, each made from the plan that is kept with its job. */
public final class TriedCars {

    /** Jobs in work at once in a large shop; the one that nobody looked at for longest goes first. */
    private static final int MOST_KEPT = 16;

    /** By the run that the plan came from: a job that is planned again has another. */
    private final Map<String, TriedCar> cars = new LinkedHashMap<>();

    /** The car of a job; nothing while it has no plan. */
    public Optional<TriedCar> of(Card job, OpenBook book) {
        String run = job.get("run");
        return run.isEmpty()
                ? Optional.empty()
                : known(run).or(() -> read(job, book).map(car -> keep(run, car)));
    }

    /** Reading takes a while and is done outside the lock; of two who read at once the later one's is kept. */
    private static Optional<TriedCar> read(Card job, OpenBook book) {
        Messages english = Messages.english();
        return new Planning(book, english).paper(job, Papers.PLAN).flatMap(bytes -> {
            SourceText text = new SourceText(Papers.PLAN, new String(bytes, StandardCharsets.UTF_8));
            return switch (new PlanFileReader(new TextRun(english).briefs(), english).read(text)) {
                case Checked.Good<PlanFile>(PlanFile file) ->
                    Optional.of(new TriedCar(file.given().brief(), file.plan()));
                case Checked.Bad<PlanFile>(var problems) ->
                    throw new IllegalStateException(
                            "a plan of our own cannot be read: " + problems.size() + " problems");
            };
        });
    }

    private synchronized Optional<TriedCar> known(String run) {
        Optional<TriedCar> car = Optional.ofNullable(cars.remove(run));
        car.ifPresent(c -> cars.put(run, c));
        return car;
    }

    private synchronized TriedCar keep(String run, TriedCar car) {
        cars.put(run, car);
        while (cars.size() > MOST_KEPT) {
            cars.remove(cars.keySet().iterator().next());
        }
        return car;
    }
}
