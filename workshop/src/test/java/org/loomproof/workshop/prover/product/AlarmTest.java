package org.loomproof.workshop.prover.product;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Note;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.wiring.ControllerFeed;

/** An opening leads to the alarm, and nothing else does, stepped through with the controller's timers. */
class AlarmTest {

    private static final OperableId DOOR = new OperableId("driver-door");

    @Test
    void aDoorOfAnArmedHandcartLeadsToTheAlarmAndNothingElseDoes() {
        Reachable cart = SecondWayTest.reachable(Jobs.simple());
        Alarm alarm = new Alarm(cart.product(), Jobs.simple().brief());
        assertThat(alarm.surelyFollows(DOOR, cart.search())).isTrue();
        assertThat(alarm.unbidden()).isEmpty();
    }

    /** The simple kit is armed after 20 s: a light that lingers for 20 s at the most is out by then. */
    @ParameterizedTest
    @CsvSource({"5, 20, false", "5, 21, true", "25, 30, true"})
    void aLightThatOutlastsTheArmingSetsTheAlarmOff(double least, double most, boolean comes) {
        Jobs.Job cart = Jobs.simple();
        Figure<Seconds> lingers =
                new Figure<>(new Seconds(least), new Seconds(least), new Seconds(most), Figured.STATED);
        Brief brief = Altered.lingering(cart.brief(), "dome", lingers);
        Reachable lit = SecondWayTest.reachable(cart.with(brief));
        List<Step> steps = new Alarm(lit.product(), brief).unbidden().orElse(List.of());
        assertThat(!steps.isEmpty()).isEqualTo(comes);
        if (comes) {
            assertThat(steps)
                    .containsExactly(
                            new Step.Operates(DOOR, "open"),
                            new Step.Operates(DOOR, "closed"),
                            new Step.Controls(Deed.ARM),
                            new Step.Controls(Deed.ARMING_OVER),
                            new Step.Controls(Deed.NOTICES));
        }
    }

    static LongStream seeds() {
        return SecondWayTest.seeds();
    }

    /**
     * By a second way: where the alarm is said to follow surely, an armed cart with its door open is left to itself and whatever
     * comes next is drawn at chance; it always sounds. Where it is not, the claim that the door is seen does not hold either.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void leftToItselfItSounds(long seed) {
        Jobs.Job job = SecondWayTest.badlyJoined(seed);
        Reachable reachable = SecondWayTest.reachable(job);
        Product product = reachable.product();
        boolean follows = new Alarm(product, job.brief()).surelyFollows(DOOR, reachable.search());
        boolean isSeen = Prover.prove(job.brief(), job.plan()).results().stream()
                .filter(result -> result.id().equals("opening-seen driver-door"))
                .anyMatch(result -> result.verdict() instanceof Verdict.Holds);
        int played = 0;
        Random chance = new Random(seed);
        for (int k = 0; follows && k < reachable.search().size(); k++) {
            Product.Place at = reachable.search().place(k);
            Control control = product.control(at);
            if (control.isAwake(ControllerState.ARMED)
                    && control.feed() == ControllerFeed.WHOLE
                    && !control.spent()
                    && "open".equals(product.positions(at).get(DOOR))) {
                assertThat(sounds(product, at, chance)).as("%s", at).isTrue();
                played++;
            }
        }
        Note.that("seed " + seed + ": follows " + follows + ", claim holds " + isSeen + ", played " + played);
        assertThat(isSeen && !follows).isFalse();
        assertThat(follows && played == 0 && isSeen).isFalse();
    }

    /** A hundred draws are far more than the states that an armed car goes through by itself. */
    private static boolean sounds(Product product, Product.Place from, Random chance) {
        int state = product.number(from);
        for (int k = 0; k < 100; k++) {
            if (product.control(product.place(state)).isAwake(ControllerState.SOUNDING)) {
                return true;
            }
            List<Integer> next = new ArrayList<>();
            product.next(state, (step, to) -> {
                if (step instanceof Step.Darkens || (step instanceof Step.Controls(Deed deed) && comesByItself(deed))) {
                    next.add(to);
                }
            });
            if (next.isEmpty()) {
                return false;
            }
            state = next.get(chance.nextInt(next.size()));
        }
        return false;
    }

    private static boolean comesByItself(Deed deed) {
        return switch (deed) {
            case PULSES_OVER, FLASH, ARMING_OVER, WARNING_OVER, SOUNDING_OVER, SLEEPS, WAKES, NOTICES, IS_QUIET_AGAIN ->
                true;
            case ARM, AGAIN, DISARM, OVERRIDE, BLOW, FEED_SUPPLY_LOST, FEED_GROUND_LOST, FEED_FUSE_OUT, FEED_WHOLE ->
                false;
        };
    }
}
