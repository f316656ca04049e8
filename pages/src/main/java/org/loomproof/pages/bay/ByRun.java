package org.loomproof.pages.bay;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.loomproof.book.card.Card;

/**
 * What is made of the plan that is kept with a job, and is asked for again and again.
 *
 * @param <T> what it is
 */
public final class ByRun<T> {

    /** Jobs in work at once in a large shop; the one that nobody looked at for longest goes first. */
    private static final int MOST_KEPT = 16;

    /** By the run that the plan came from: a job that is planned again has another. */
    private final Map<String, T> made = new LinkedHashMap<>();

    /** That of a job; nothing while it has no plan. Making takes a while and is done outside the lock; of two who make one at once the later one's is kept. */
    public Optional<T> of(Card job, Supplier<Optional<T>> make) {
        String run = job.get("run");
        return run.isEmpty() ? Optional.empty() : known(run).or(() -> make.get().map(one -> keep(run, one)));
    }

    private synchronized Optional<T> known(String run) {
        Optional<T> one = Optional.ofNullable(made.remove(run));
        one.ifPresent(known -> made.put(run, known));
        return one;
    }

    private synchronized T keep(String run, T one) {
        made.put(run, one);
        while (made.size() > MOST_KEPT) {
            made.remove(made.keySet().iterator().next());
        }
        return one;
    }
}
