package org.loomproof.pages.door;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * How often a secret may be guessed: a few times at once, then only after a wait that doubles with each further failure. Counted by
 * whatever is being guessed at and from where; a success forgets.
 */
public final class Attempts {

    /** Slips of the hand that are free. */
    public static final int FREE = 5;

    private static final Duration FIRST_WAIT = Duration.ofSeconds(30);
    private static final Duration LONGEST_WAIT = Duration.ofMinutes(15);
    private static final int MOST_KEPT = 10_000;

    private record Failures(int count, Instant last) {
        Instant nextTry() {
            if (count < FREE) {
                return Instant.MIN;
            }
            Duration wait = FIRST_WAIT.multipliedBy(1L << Math.min(count - FREE, 10));
            return last.plus(wait.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : wait);
        }
    }

    private final Map<String, Failures> failures = new ConcurrentHashMap<>();
    private final Clock clock;

    public Attempts(Clock clock) {
        this.clock = clock;
    }

    /**
     * Counts an attempt as failed until {@link #succeeded} is told, so that many at once do not slip through together.
     *
     * @return false when it must not even be looked at
     */
    public boolean begin(String what) {
        Instant now = clock.instant();
        if (failures.size() > MOST_KEPT) {
            failures.values().removeIf(f -> f.last().plus(LONGEST_WAIT).isBefore(now));
        }
        boolean[] may = {false};
        failures.compute(what, (key, before) -> {
            if (before != null && before.nextTry().isAfter(now)) {
                return before;
            }
            may[0] = true;
            return new Failures(before == null ? 1 : before.count() + 1, now);
        });
        return may[0];
    }

    /** Forgets the failures. */
    public void succeeded(String what) {
        failures.remove(what);
    }
}
