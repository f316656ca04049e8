package org.loomproof.workshop.prover.reach;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ZoneTest {

    @Test
    void clocksThatStartTogetherStayTogether() {
        Zone later = Zone.start(2).later();
        assertThat(later.atLeast(1, 5).atMost(2, 4).isEmpty()).isTrue();
        assertThat(later.atLeast(1, 5).atMost(2, 5).isEmpty()).isFalse();
    }

    @Test
    void aClockSetBackIsBehindTheOtherByWhatHadPassed() {
        // The second is set back when both show 3 to 4; when it shows 2, the first shows 5 to 6.
        Zone back = Zone.start(2)
                .later()
                .atLeast(1, 3)
                .atMost(1, 4)
                .reset(2)
                .later()
                .atLeast(2, 2)
                .atMost(2, 2);
        assertThat(back.atMost(1, 4.9).isEmpty()).isTrue();
        assertThat(back.atLeast(1, 6.1).isEmpty()).isTrue();
        assertThat(back.atLeast(1, 5).atMost(1, 5).isEmpty()).isFalse();
        assertThat(back.atLeast(1, 6).atMost(1, 6).isEmpty()).isFalse();
    }

    @Test
    void aFreedClockShowsAnything() {
        Zone freed = Zone.start(2).later().atLeast(1, 3).free(2);
        assertThat(freed.atMost(2, 0).isEmpty()).isFalse();
        assertThat(freed.atLeast(2, 100).atMost(1, 3).isEmpty()).isFalse();
    }

    @Test
    void aZoneLiesInAWiderOne() {
        Zone wide = Zone.start(1).later().atMost(1, 10);
        Zone narrow = wide.atLeast(1, 2).atMost(1, 3);
        assertThat(wide.holds(narrow)).isTrue();
        assertThat(narrow.holds(wide)).isFalse();
    }

    @Test
    void whatNoBoundTellsApartBecomesOne() {
        Zone far = Zone.start(1).later().atLeast(1, 50);
        assertThat(far.coarse(20).atMost(1, 20).isEmpty()).isFalse();
        assertThat(far.coarse(20).atMost(1, 19).isEmpty()).isTrue();
    }
}
