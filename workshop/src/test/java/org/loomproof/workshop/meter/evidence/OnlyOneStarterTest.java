package org.loomproof.workshop.meter.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.loomproof.testing.Sample;

class OnlyOneStarterTest {

    private static final Offset<Double> SAME = Offset.offset(1e-12);

    @Test
    void theClosedFormIsTheSumOverAllWorlds() {
        Random random = new Random(Sample.seed());
        for (int round = 0; round < 200; round++) {
            List<Double> alone = new ArrayList<>();
            for (int k = random.nextInt(1, 9); k > 0; k--) {
                alone.add(random.nextDouble());
            }
            List<Double> together = OnlyOneStarter.together(alone);
            List<Double> counted = counted(alone);
            for (int k = 0; k < alone.size(); k++) {
                assertThat(together.get(k)).isEqualTo(counted.get(k), SAME);
            }
        }
    }

    private static List<Double> counted(List<Double> alone) {
        double[] sums = new double[alone.size()];
        double all = 0;
        for (int world = 0; world < 1 << alone.size(); world++) {
            if (Integer.bitCount(world) <= 1) {
                double p = 1;
                for (int k = 0; k < alone.size(); k++) {
                    p *= (world >> k & 1) > 0 ? alone.get(k) : 1 - alone.get(k);
                }
                all += p;
                for (int k = 0; k < alone.size(); k++) {
                    sums[k] += (world >> k & 1) > 0 ? p : 0;
                }
            }
        }
        List<Double> shares = new ArrayList<>();
        for (double each : sums) {
            shares.add(each / all);
        }
        return shares;
    }

    @Test
    void oneWireStandsAsItStoodAndTwoThatAreCertainShare() {
        assertThat(OnlyOneStarter.together(List.of(0.7)).getFirst()).isEqualTo(0.7, SAME);
        assertThat(OnlyOneStarter.together(List.of(1.0, 1.0))).containsExactly(0.5, 0.5);
        assertThat(OnlyOneStarter.together(List.of(0.99, 0.02)).getLast()).isLessThan(0.01);
    }
}
