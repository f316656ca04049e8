package org.loomproof.workshop.prover.product;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.fixture.Jobs;

/** The steps to a state are real ones, none of them too many, and a search that stops says so. */
class SearchTest {

    private static final Step ARM = new Step.Controls(Deed.ARM);
    private static final Step WAKES = new Step.Controls(Deed.WAKES);
    private static final Reachable SIMPLE = SecondWayTest.reachable(Jobs.simple());

    /** A controller that has lost its supply stays asleep. */
    private static final Search STAYS_ASLEEP =
            Search.of(SIMPLE.product(), (from, step) -> !step.equals(WAKES), Search.MOST_STATES);

    private static List<Step> stepsToTheAlarm(Search search) {
        int k = 0;
        while (!SIMPLE.product().control(search.place(k)).isAwake(ControllerState.SOUNDING)) {
            k++;
        }
        return search.stepsTo(k);
    }

    @Test
    void theAlarmTakesArmingAndADoor() {
        assertThat(stepsToTheAlarm(STAYS_ASLEEP))
                .containsExactlyInAnyOrder(
                        ARM,
                        new Step.Controls(Deed.ARMING_OVER),
                        new Step.Operates(new OperableId("driver-door"), "open"),
                        new Step.Controls(Deed.NOTICES),
                        new Step.Controls(Deed.WARNING_OVER));
    }

    /** The kit does not say what it does then. */
    @Test
    void orASupplyThatReturns() {
        assertThat(stepsToTheAlarm(SIMPLE.search())).hasSize(4).endsWith(new Step.Controls(Deed.FEED_WHOLE), WAKES);
    }

    @Test
    void noStepToSoundingCanBeDropped() {
        List<Step> steps = stepsToTheAlarm(STAYS_ASLEEP);
        assertThat(endsSounding(steps)).isTrue();
        for (int k = 0; k < steps.size(); k++) {
            List<Step> fewer = new ArrayList<>(steps);
            fewer.remove(k);
            assertThat(endsSounding(fewer)).as("without %s", steps.get(k)).isFalse();
        }
    }

    /** Whether the steps, one after another, can be taken from the start and end in the alarm. */
    private static boolean endsSounding(List<Step> steps) {
        List<Integer> states = List.of(SIMPLE.product().start());
        for (Step wanted : steps) {
            List<Integer> after = new ArrayList<>();
            for (int state : states) {
                SIMPLE.product().next(state, (step, next) -> {
                    if (step.equals(wanted)) {
                        after.add(next);
                    }
                });
            }
            states = after;
        }
        return states.stream()
                .anyMatch(state ->
                        SIMPLE.product().control(SIMPLE.product().place(state)).isAwake(ControllerState.SOUNDING));
    }

    @Test
    void aSearchThatStopsIsNotComplete() {
        int all = SIMPLE.search().size();
        assertThat(Search.of(SIMPLE.product(), (from, step) -> true, all).isComplete())
                .isTrue();
        Search stopped = Search.of(SIMPLE.product(), (from, step) -> true, all - 1);
        assertThat(stopped.isComplete()).isFalse();
        assertThat(stopped.size()).isEqualTo(all - 1);
    }

    @Test
    void aStepThatIsForbiddenIsNotTaken() {
        Search neverArmed = Search.of(
                SIMPLE.product(), (from, step) -> !step.equals(ARM) && !step.equals(WAKES), Search.MOST_STATES);
        for (int k = 0; k < neverArmed.size(); k++) {
            assertThat(SIMPLE.product().control(neverArmed.place(k)).isAwake(ControllerState.ARMED))
                    .isFalse();
        }
        assertThat(neverArmed.isComplete()).isTrue();
    }
}
