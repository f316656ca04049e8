package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.workshop.prover.Proven.proven;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.fixture.Steps;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.words.Messages;

/** The handcart's coil hangs on the ignition, whose factory fuse is one of 30 A, by 0.2 m of wire W7 and a fuse of 2 A. */
class IgnitionTapFusedTest {

    private static final Jobs.Job HANDCART = Jobs.simple();
    private static final String TAP = "ignition-tap-fused W7";

    private static Jobs.Job fusedWith(double amps) {
        return HANDCART.with(Altered.part(HANDCART.plan(), new AddedPart.Fuse(new AddedPartId("F2"), new Amps(amps))));
    }

    @Test
    void aSmallFuseCloseByHoldsAndItsStubIsLeftToCare() {
        Proven proven = proven(HANDCART);
        assertThat(proven.holds(TAP).tightest().isKept()).isTrue();
        assertThat(proven.proof().residuals())
                .filteredOn(left -> left.id().startsWith("stub"))
                .singleElement()
                .satisfies(left -> assertThat(Messages.english().text(left.what()))
                        .startsWith("wire W7 is unfused for 0.2 m, from ignition to F2: a short to the body there"));
    }

    @Test
    void aTapWithoutAFuseOfItsOwnIsBroken() {
        Proven proven = proven(HANDCART.with(
                Altered.rewired(Altered.withoutWire(HANDCART.plan(), "W7"), "W6", "K1 86", "circuit ignition tap")));
        assertThat(proven.steps("ignition-tap-fused W6"))
                .containsExactly("turn the key to on", "follow wire W6 from where it joins ignition");
        assertThat(proven.proof().residuals()).extracting(left -> left.id()).noneMatch(id -> id.startsWith("stub"));
    }

    /** Common practice allows 0.3 m; half a metre is 0.2 m too much. */
    @Test
    void aFuseTooFarFromTheTapIsBroken() {
        Proven proven = proven(HANDCART.with(Altered.resized(HANDCART.plan(), "W7", 0.5, 1)));
        assertThat(proven.broken(TAP).worst().slack()).isCloseTo(-0.2, within(1e-9));
    }

    /** Of two equal fuses nobody can say which opens first; of 30 A and 40 A the factory's does. */
    @Test
    void aFuseThatIsNotSurelyFirstIsOpenAndOneThatIsLastIsBroken() {
        assertThat(proven(fusedWith(30)).open(TAP).settledBy())
                .extracting(Measurement::name)
                .containsExactly("rating-of ignition-fuse");
        assertThat(proven(fusedWith(15)).open(TAP).settledBy()).hasSize(1);
        assertThat(proven(fusedWith(40)).steps(TAP)).first().isEqualTo("turn the key to on");
    }

    /** An old car whose ignition has no fuse at all: then the tap's own is the only one. */
    @Test
    void whereTheSheetDrawsNoFactoryFuseItsOwnIsEnough() {
        Jobs.Job unfused = HANDCART.with(new Brief(
                AVehicle.named("old cart")
                        .door("driver-door")
                        .withConstantSupply("constant", 20)
                        .circuit(
                                "ignition",
                                CircuitRole.IGNITION,
                                new Level.Open(),
                                new Level.Supply(),
                                List.of("key"),
                                Access.MAY_BE_TAPPED,
                                List.of(
                                        Steps.supply(),
                                        Steps.contact("ignition-switch", "key", "on", "start"),
                                        Steps.here(),
                                        Steps.electronic("ignition-coil", 5),
                                        Steps.ground()))
                        .withStarter("starter", 1.2)
                        .withNegativeTrigger("dome", CircuitRole.DOOR_TRIGGER, 10, "driver-door")
                        .sheet(),
                HANDCART.brief().kit(),
                HANDCART.brief().order()));
        assertThat(proven(unfused).holds(TAP).tightest().slack()).isCloseTo(0.1, within(1e-9));
    }

    /** A tap on what is alive without the key is no tap on the ignition. */
    @Test
    void theConstantSupplyIsNotAskedAbout() {
        assertThat(proven(HANDCART).proof().results())
                .extracting(result -> result.id())
                .filteredOn(id -> id.startsWith("ignition-tap-fused"))
                .containsExactly(TAP);
    }
}
