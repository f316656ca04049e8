package org.loomproof.pages.door;

import java.time.Clock;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.loomproof.book.card.CardId;

/** Which code of their phone somebody signed in with last: neither it nor an older one does again (RFC 6238, section 5.2). */
public final class UsedCodes {

    private final Map<CardId, Long> last = new ConcurrentHashMap<>();
    private final Clock clock;

    public UsedCodes(Clock clock) {
        this.clock = clock;
    }

    Instant now() {
        return clock.instant();
    }

    /** Uses the code of a step; false when it, or a later one, was used before. */
    boolean use(CardId person, long step) {
        boolean[] isNew = {false};
        last.compute(person, (id, before) -> {
            isNew[0] = before == null || before < step;
            return isNew[0] ? Long.valueOf(step) : before;
        });
        return isNew[0];
    }
}
