package org.loomproof.workshop.prover.testorder;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Situation;

class SequenceTest {

    @Test
    void testsAtOneDoorFollowEachOther() {
        List<HandTest> order = Sequence.of(
                List.of(
                        test("a", ControllerState.DISARMED, "front"),
                        test("b", ControllerState.DISARMED, "rear"),
                        test("c", ControllerState.DISARMED, "front"),
                        test("d", ControllerState.DISARMED, "rear")),
                20);
        assertThat(touches(order)).isEqualTo(2);
    }

    @Test
    void itIsArmedOnceForAllThatBeginsArmedAndEndsQuietly() {
        List<HandTest> order = Sequence.of(
                List.of(
                        test("a", ControllerState.ARMED, "front"),
                        test("b", ControllerState.DISARMED, "rear"),
                        test("c", ControllerState.ARMED, "hood"),
                        test("d", ControllerState.DISARMED, "trunk")),
                20);
        int armings = 0;
        ControllerState now = ControllerState.DISARMED;
        for (HandTest test : order) {
            armings += test.from() == ControllerState.ARMED && now != ControllerState.ARMED ? 1 : 0;
            now = test.from();
        }
        assertThat(armings).isEqualTo(1);
    }

    @Test
    void manyTestsAreOrderedToo() {
        List<HandTest> tests = new ArrayList<>();
        for (int k = 0; k < 24; k++) {
            tests.add(test("t" + k, ControllerState.DISARMED, "door-" + k % 4));
        }
        assertThat(touches(Sequence.of(tests, 20))).isEqualTo(4);
    }

    private static int touches(List<HandTest> order) {
        int touches = 0;
        Set<OperableId> last = Set.of();
        for (HandTest test : order) {
            for (OperableId each : test.touches()) {
                touches += last.contains(each) ? 0 : 1;
            }
            last = test.touches();
        }
        return touches;
    }

    private static HandTest test(String id, ControllerState from, String touched) {
        Situation situation =
                new Situation(new TreeMap<>(), SupplyPoint.REST, from, ControllerFeed.WHOLE, Moment.SETTLED);
        return new HandTest(
                id,
                from,
                List.of(),
                List.of(situation),
                Optional.empty(),
                Set.of(new OperableId(touched)),
                5,
                HandTest.Kind.BY_HAND);
    }
}
