package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.workshop.prover.Proven.proven;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.fixture.Steps;

/**
 * An output that acts while a hand holds the car's own switch the other way: a lock wire that the switch grounds to lock and gives
 * the supply through 47 Ω to unlock, with a module that pulls it up to 5 V through 1 kΩ, and an output that grounds it to lock.
 */
class FactorySwitchTest {

    private static final String OUTPUT = "within-rating lock";

    /** Hand-worked: 14.8 V / (47 Ω + 1 Ω of the output) = 0.308 A from the switch, (5 - 0.3) V / 1 kΩ = 4.7 mA from the module: 0.313 A. */
    private static final double FIGHTING_AMPS = 14.8 / 48 + 4.7 / 1000;

    @Test
    void whatRunsWhileTheSwitchIsHeldTheOtherWayIsHeldToTheOutputsRating() {
        Proven proven = proven(lockWire(0.3));
        assertThat(proven.broken(OUTPUT).worst().slack()).isCloseTo(100 - 100 * FIGHTING_AMPS / 0.3, within(0.5));
        assertThat(proven.steps(OUTPUT)).anyMatch(step -> step.contains("lock-switch") && step.contains("unlock"));
    }

    @Test
    void anOutputThatBearsTheFightHoldsWithWhatItHasToSpareThere() {
        assertThat(proven(lockWire(0.35)).holds(OUTPUT).tightest().slack())
                .isCloseTo(100 - 100 * FIGHTING_AMPS / 0.35, within(0.5));
    }

    /** Straight to the supply, without the 47 Ω: the fight is a short through the output, and a fuse in the way does not save it. */
    @Test
    void aSwitchThatGivesTheFullSupplyIsNoMatchForAnyOutput() {
        assertThat(proven(lockWire(0.5, 0.01)).broken(OUTPUT).worst().slack()).isLessThan(-1000);
    }

    private static Jobs.Job lockWire(double ratingAmps) {
        return lockWire(ratingAmps, 47);
    }

    private static Jobs.Job lockWire(double ratingAmps, double unlockOhms) {
        Kit kit = AKit.simple()
                .lowSide("lock", LeadRole.LOCK, ratingAmps, Set.of(ControllerState.ARMING))
                .kit();
        Brief brief = new Brief(
                Jobs.handcart()
                        .control("lock-switch", "rest", "lock", "unlock")
                        .circuit(
                                "lock-wire",
                                CircuitRole.LOCK,
                                new Level.Supply(),
                                new Level.Ground(),
                                List.of("lock-switch"),
                                Access.MAY_BE_TAPPED,
                                List.of(
                                        Steps.supply(),
                                        Steps.fuse("lock-fuse", 15),
                                        Steps.contact("unlock-contact", "lock-switch", "unlock"),
                                        Steps.resistor("unlock-resistor", unlockOhms),
                                        Steps.here()),
                                List.of(
                                        Steps.here(),
                                        Steps.contact("lock-contact", "lock-switch", "lock"),
                                        Steps.ground()),
                                List.of(Steps.here(), Steps.moduleInput("lock-module", 1000)))
                        .sheet(),
                kit,
                AnOrder.forWishes(Wish.STARTER_INTERRUPT, Wish.SIREN, Wish.LOCKS)
                        .watching("driver-door")
                        .order());
        return new Jobs.Job(
                brief,
                Jobs.simplePlan()
                        .wire("W40", "lead lock", "circuit lock-wire tap", 1, 0.75)
                        .connect("lock", Wish.LOCKS, "lock-wire", "", "W40")
                        .forKit(kit));
    }
}
