package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.fault.Mishap;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.damage.ColdLoom;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.words.Messages;

/**
 * The loom measured dead. That a coil reads its resistance, a fuse next to nothing, and a diode across a coil cannot be told by
 * a milliampere is Ohm's law; common practice, no published source.
 */
class ColdLoomTest {

    private static final Path FOLDER = ExampleFiles.root().resolve("circuits/horn-to-ground");
    private static final Plan PLAN = PlannedExamples.job(FOLDER).plan();
    private static final Brief BRIEF = ExamplesAreReadTest.brief(FOLDER).set(PLAN.settings());
    private static final Vehicle FITTED = Vehicle.fitted(BRIEF, PLAN, Corner.TYPICAL);
    private static final ColdLoom LOOM = new ColdLoom(BRIEF, PLAN, FITTED);

    private static String expected(String place) {
        return LOOM.signs().stream()
                .filter(sign -> sign.place().id().equals(place))
                .map(sign -> Messages.english().text(sign.words()))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> differing(String mishap) {
        Mishap it = Mishap.list(BRIEF, PLAN).stream()
                .filter(m -> m.id().equals(mishap))
                .findFirst()
                .orElseThrow();
        BitSet differing = LOOM.differing(Damage.of(it, PLAN, FITTED.wired()));
        return differing.stream()
                .mapToObj(k -> LOOM.signs().get(k).place().id())
                .toList();
    }

    @Test
    void aCoilReadsItsResistanceByItselfAndThroughItsFuse() {
        assertThat(expected("across K1")).isEqualTo("85 Ω");
        assertThat(expected("at P1-3")).isEqualTo("to the body open, to the plus clamp 85.2 Ω");
    }

    @Test
    void feedAndGroundReadNextToNothing() {
        assertThat(expected("at P1-1")).matches("to the body open, to the plus clamp \\d{1,2}\\.\\d mΩ");
        assertThat(expected("at P1-2")).matches("to the body \\d{1,2}\\.\\d mΩ, to the plus clamp open");
    }

    @Test
    void aFuseThatWasForgottenIsOpenWhereItShouldBe() {
        assertThat(differing("left-out FU1")).contains("at P1-1", "at P1-3", "across FU1", "at FU1 2");
        assertThat(differing("left-loose W3")).containsExactly("at P1-2");
    }

    @Test
    void aContactWeldedOrWiredToItsRestingSideTiesTheFeedToTheBody() {
        assertThat(differing("welded K1")).contains("at P1-1", "at P1-2");
        assertThat(differing("contacts-swapped K1")).contains("at P1-1", "at P1-2");
    }

    /** A milliampere leaves 85 mV on the coil beside it, and the diode never conducts: this takes the peak as it lets go. Which way round it sits is told at its own ends. */
    @Test
    void aDiodeAcrossACoilCannotBeToldThisWayUnlessItsRingIsFollowed() {
        assertThat(differing("left-out D1")).isEmpty();
        assertThat(differing("turned-round D1")).containsExactly("at D1 A", "at D1 K");
    }
}
