package org.loomproof.pages.door;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** How many requests a person or, of strangers, a place may send in a minute: far more than pages send by themselves. */
public final class Requests {

    /** Thirty a second, over a minute: twenty people who sign in behind one address, or a page that asks how far a proof is. */
    public static final int MOST_A_MINUTE = 1_800;

    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final int MOST_KEPT = 10_000;

    private record Count(Instant since, int requests) {}

    private final Map<String, Count> counts = new ConcurrentHashMap<>();
    private final Clock clock;

    public Requests(Clock clock) {
        this.clock = clock;
    }

    /** What is said to a request. */
    public enum Answer {
        WELCOME,
        FIRST_TOO_MANY,
        TOO_MANY
    }

    /** Counts a request. */
    public Answer count(String whom) {
        Instant now = clock.instant();
        if (counts.size() > MOST_KEPT) {
            counts.values().removeIf(count -> isOver(count, now));
        }
        Count count = counts.merge(
                whom,
                new Count(now, 1),
                (before, one) -> isOver(before, now) ? one : new Count(before.since(), before.requests() + 1));
        if (count.requests() <= MOST_A_MINUTE) {
            return Answer.WELCOME;
        }
        return count.requests() == MOST_A_MINUTE + 1 ? Answer.FIRST_TOO_MANY : Answer.TOO_MANY;
    }

    private static boolean isOver(Count count, Instant now) {
        return !count.since().plus(MINUTE).isAfter(now);
    }
}
