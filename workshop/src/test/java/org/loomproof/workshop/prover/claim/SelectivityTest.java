package org.loomproof.workshop.prover.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.loomproof.network.part.TimeCurrentBand;
import org.loomproof.network.part.TimeCurrentBand.Edge;
import org.loomproof.network.part.TimeCurrentBand.Point;
import org.loomproof.workshop.trade.fuse.Fuses;
import org.loomproof.workshop.trade.fuse.OpeningBand;

/** The least ratio against the same bands asked at many currents. */
class SelectivityTest {

    private static boolean isTold(double ratio) {
        TimeCurrentBand band = new TimeCurrentBand(OpeningBand.list().stream()
                .map(row -> new Point(
                        row.multiple(), row.earliest().value(), row.latest().value()))
                .toList());
        return IntStream.rangeClosed(0, 20_000)
                .mapToDouble(k -> 1.35 * Math.pow(1000, k / 20_000.0))
                .allMatch(multiple ->
                        band.seconds(multiple, Edge.LATEST) < band.seconds(multiple / ratio, Edge.EARLIEST));
    }

    @Test
    void atTheLeastRatioTheSmallerFuseIsFirstAtEveryCurrent() {
        assertThat(isTold(Selectivity.leastRatio() + 0.01)).isTrue();
        assertThat(isTold(Selectivity.leastRatio() - 0.03)).isFalse();
    }

    /** Fuses are told apart at 1.6 to 1 at the least: IEC 60269 for gG fuses, from memory. */
    @Test
    void theBandsAloneDoNotDecide() {
        assertThat(Selectivity.leastRatio()).isGreaterThanOrEqualTo(Fuses.selectiveRatio());
        assertThat(Fuses.selectiveRatio()).isEqualTo(1.6);
    }
}
