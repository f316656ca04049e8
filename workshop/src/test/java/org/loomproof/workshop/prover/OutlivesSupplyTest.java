package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.workshop.prover.Proven.proven;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.Survival;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.plan.Measurement;

/** The simple kit works from 8 to 16 V. Profiles of ISO 16750-2: READ, see docs/sources.md; reversed MEMORY. */
class OutlivesSupplyTest {

    private static final Jobs.Job HANDCART = Jobs.simple();

    private static Jobs.Job surviving(Survival survival) {
        Kit kit = AKit.simple().surviving(survival).kit();
        return HANDCART.with(
                new Brief(HANDCART.brief().sheet(), kit, HANDCART.brief().order()));
    }

    private static Survival bears(double cranking, double loadDump, double reversed) {
        return new Survival(
                Optional.of(Figured.volts(cranking)),
                Optional.of(Figured.volts(loadDump)),
                Optional.of(Figured.volts(reversed)));
    }

    /**
     * 8 V at the posts, less some millivolts of 12 mA in fuse and wire, is 2 V over the 6 V that the controller bears; 35 V of the
     * dump leave 5 V of 40 V; 14 V the wrong way round are just borne.
     */
    @Test
    void aKitThatSaysWhatItBearsHoldsByTheFigures() {
        Proven proven = proven(surviving(bears(6, 40, 14)));
        assertThat(proven.holds("outlives-supply cranking").tightest().slack()).isCloseTo(2, within(0.02));
        assertThat(proven.holds("outlives-supply load-dump").tightest().slack()).isCloseTo(5, within(0.02));
        assertThat(proven.holds("outlives-supply reversed").tightest().slack()).isCloseTo(0, within(1e-9));
    }

    @Test
    void aControllerThatBearsLessIsBroken() {
        Proven proven = proven(surviving(bears(8.5, 30, 12)));
        assertThat(proven.steps("outlives-supply cranking"))
                .containsExactly(
                        "turn the key to start",
                        "battery at 9 V (cranking)",
                        "crank the engine and watch whether the controller starts anew");
        assertThat(proven.broken("outlives-supply load-dump").worst().slack()).isCloseTo(-5, within(0.02));
        assertThat(proven.broken("outlives-supply reversed").worst().slack()).isCloseTo(-2, within(1e-9));
    }

    /** Nobody's word is no proof: what is to be asked for is named. */
    @Test
    void aKitThatSaysNothingLeavesItOpenAndIsAsked() {
        Proven proven = proven(surviving(Survival.UNSAID));
        for (String event : new String[] {"cranking", "load-dump", "reversed"}) {
            assertThat(proven.open("outlives-supply " + event).settledBy())
                    .extracting(Measurement::name)
                    .containsExactly("figure-of outlives-supply " + event);
        }
    }

    /** A controller that works down to 6 V by its supply range needs no further word on cranking. */
    @Test
    void whereTheSupplyRangeIsWideEnoughNobodyNeedBeAsked() {
        Kit simple = AKit.simple().surviving(Survival.UNSAID).kit();
        Kit wide = new Kit(
                simple.name(),
                Figured.volts(6),
                Figured.volts(36),
                simple.survives(),
                simple.standby(),
                simple.leads(),
                simple.options(),
                simple.extras(),
                simple.behaviour());
        Proven proven = proven(HANDCART.with(
                new Brief(HANDCART.brief().sheet(), wide, HANDCART.brief().order())));
        proven.holds("outlives-supply cranking");
        proven.holds("outlives-supply load-dump");
        proven.open("outlives-supply reversed");
    }

    /** What lies between counts: a supply lead of 400 m of 0.5 mm² takes 12 mA · 14.8 Ω = 0.18 V, and 8 V become 7.8 V. */
    @Test
    void theWayToTheControllerCounts() {
        Jobs.Job far = surviving(bears(7.9, 40, 14));
        proven(far).holds("outlives-supply cranking");
        proven(far.with(Altered.resized(far.plan(), "W1", 400, 0.5))).broken("outlives-supply cranking");
    }
}
