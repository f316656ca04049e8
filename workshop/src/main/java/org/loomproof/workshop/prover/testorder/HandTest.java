package org.loomproof.workshop.prover.testorder;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.prover.damage.Sign;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * One thing to try at the finished car.
 *
 * @param id stable, such as {@code open-when-armed driver-door}
 * @param from what the controller does when it begins
 * @param steps what to do, in order, from there
 * @param situations those that are met on the way and in which something is to be seen, each with a charged battery
 * @param metered what the meter shows; empty where everything that can be seen and heard is looked at
 * @param touches what is operated
 * @param seconds how long it takes by itself; common practice, no published source
 * @param kind how much it takes
 */
public record HandTest(
        String id,
        ControllerState from,
        List<Phrase> steps,
        List<Situation> situations,
        Optional<Sign> metered,
        Set<OperableId> touches,
        int seconds,
        Kind kind) {

    public HandTest {
        steps = List.copyOf(steps);
        situations = List.copyOf(situations);
        touches = Set.copyOf(touches);
    }

    /** Whether the test looks at the sign. */
    public boolean looksAt(Sign sign) {
        return metered.map(sign::equals).orElse(!sign.takesMeter());
    }

    /** How much a test takes. */
    public enum Kind {
        /** Hand, eye and ear. */
        BY_HAND,
        /** Something is unplugged or put in override besides. */
        INTERVENING,
        /** A meter. */
        WITH_METER,
        /** A meter on a dead loom: the battery off and the controller's plugs pulled. */
        BATTERY_OFF;

        /** As they are done: what is measured dead comes before the controller's plugs go in. */
        public static List<Kind> inOrder() {
            return List.of(BATTERY_OFF, BY_HAND, INTERVENING, WITH_METER);
        }

        /** The word used in files, such as {@code by-hand}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
