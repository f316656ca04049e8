package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomproof.workshop.fixture.APlan;
import org.loomproof.workshop.fixture.Jobs;

class AlarmBellTest {

    @Test
    void everySlipOnTheVanIsCaught() {
        Jobs.Job job = Jobs.vanJob();
        AlarmBell bell = AlarmBell.ring(job.brief(), job.plan());
        System.out.println(bell.summary("van"));
        assertThat(bell.missed()).isEmpty();
        assertThat(bell.notNeeded()).isEmpty();
        // K1 and K2, five diodes, three fuses, a sounder: each left out; each diode turned; each relay's contacts
        // and each coil swapped.
        assertThat(bell.tried()).isEqualTo(11 + 5 + 2 + 2);
        assertThat(bell.caught()).hasSize(bell.tried());
    }

    @Test
    void aPartThatDoesNothingIsNamedAsNotNeeded() {
        Jobs.Job job = Jobs.simple();
        APlan plan = Jobs.simplePlan().resistor("R9", 10_000).wire("W90", "R9 1", "body");
        AlarmBell bell = AlarmBell.ring(job.brief(), plan.forKit(job.brief().kit()));
        assertThat(bell.notNeeded()).containsExactly("R9");
        assertThat(bell.missed()).isEmpty();
    }
}
