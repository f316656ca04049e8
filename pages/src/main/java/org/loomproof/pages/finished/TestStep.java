package org.loomproof.pages.finished;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.Work;

/**
 * One step by which a finished car is passed.
 *
 * @param id stable for one plan
 * @param phase when it is done
 * @param number of the test on paper, from 1; 0 for what is no test of the order
 * @param from what the controller does when it begins, as the end of a message's key; empty text where it does not matter
 * @param todo what to do; none where the phase says it
 * @param expected what a car fitted as planned shows
 * @param noted how it ended last; empty while nobody has done it
 */
public record TestStep(
        String id,
        Phase phase,
        int number,
        String from,
        List<String> todo,
        List<String> expected,
        Optional<Noted> noted) {

    public TestStep {
        todo = List.copyOf(todo);
        expected = List.copyOf(expected);
    }

    /** When a step is done, in that order. */
    public enum Phase {
        BATTERY_OFF,
        BY_HAND,
        INTERVENING,
        WITH_METER,
        /** What no test notices is looked at. */
        LOOK,
        PANELS,
        /** Some tests once more with the panels back. */
        AGAIN,
        LAST,
        SLEEP;

        /** The end of its messages' keys. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** How it ended last. */
    public Optional<Work.TestResult> result() {
        return noted.map(n -> (Work.TestResult) n.work());
    }

    /** True when it passed, or a named person has said why it is left out. */
    public boolean isClosed() {
        return result().filter(r -> r.result() != Work.TestResult.Result.FAILED).isPresent();
    }

    /** {@code open}, {@code passed}, {@code failed} or {@code waived}. */
    public String state() {
        return result().map(r -> r.result().name().toLowerCase(Locale.ROOT)).orElse("open");
    }
}
