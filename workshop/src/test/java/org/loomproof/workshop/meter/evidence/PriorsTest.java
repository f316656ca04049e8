package org.loomproof.workshop.meter.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.meter.advice.Harm;
import org.loomproof.workshop.meter.advice.MeterTest;
import org.loomproof.workshop.meter.role.WireModels;
import org.loomproof.workshop.meter.role.WireRole;
import org.loomproof.workshop.meter.synthetic.Papers;

class PriorsTest {

    private static final int DRAWN = 400_000;

    private final Fleet fleet = new Fleet(WireModels.usual());
    private final Sheet sheet = sheet();

    private static Sheet sheet() {
        Sheet empty = AVehicle.named("van").sheet();
        List<Circuit> all =
                Arrays.stream(CircuitRole.values()).map(Papers::entry).toList();
        return new Sheet(empty.vehicle(), empty.operables(), all);
    }

    private Belief named(CircuitRole said, Certainty certainty) {
        return Priors.named(fleet, sheet, Papers.entry(said), Priors.trust(certainty));
    }

    /**
     * Wires are drawn and written down, one row in ten as anything at all: an entry is worth about what the rows that say so are worth,
     * though the tool takes wrong rows to name something alike more often.
     */
    @Test
    void anEntryIsWorthAsMuchAsDrawnPapersSay() {
        for (WireRole role : List.of(WireRole.HORN, WireRole.BRAKE, WireRole.FUEL_PUMP, WireRole.IGNITION)) {
            CircuitRole said = role.circuits().getFirst();
            assertThat(named(said, Certainty.STATED).chance(role))
                    .as(role.word())
                    .isCloseTo(shareOfRows(said, role), within(0.06));
        }
        // Seldom named rightly, and as often wrongly as any other: not nine in ten.
        assertThat(named(CircuitRole.RESTRAINT, Certainty.STATED).chance(WireRole.RESTRAINT))
                .isCloseTo(shareOfRows(CircuitRole.RESTRAINT, WireRole.RESTRAINT), within(0.25))
                .isLessThan(0.7);
    }

    /** Of the rows that say so, how many are of such a wire. */
    private static double shareOfRows(CircuitRole wanted, WireRole of) {
        CircuitRole[] circuits = CircuitRole.values();
        List<WireRole> roles = Arrays.stream(WireRole.values())
                .filter(role -> !role.circuits().isEmpty())
                .toList();
        double sum = roles.stream().mapToDouble(WireRole::usualness).sum();
        int rows = 0;
        int right = 0;
        Random random = new Random(5);
        for (int k = 0; k < DRAWN; k++) {
            double at = random.nextDouble() * sum;
            int which = 0;
            while (at >= roles.get(which).usualness()) {
                at -= roles.get(which++).usualness();
            }
            List<CircuitRole> own = roles.get(which).circuits();
            CircuitRole said = random.nextInt(10) == 0
                    ? circuits[random.nextInt(circuits.length)]
                    : own.get(random.nextInt(own.size()));
            rows += said == wanted ? 1 : 0;
            right += said == wanted && roles.get(which) == of ? 1 : 0;
        }
        return right / (double) rows;
    }

    @Test
    void whatIsAlikeIsTakenForEachOtherSooner() {
        Belief ignition = named(CircuitRole.IGNITION, Certainty.STATED);
        double second = ignition.chance(WireRole.SECOND_IGNITION) / WireRole.SECOND_IGNITION.usualness();
        double horn = ignition.chance(WireRole.HORN) / WireRole.HORN.usualness();
        assertThat(second).isGreaterThan(2 * horn);
    }

    /** However seldom such wires are, what a paper calls a restraint is left alone by its probability too, down to a guess. */
    @Test
    void whatAPaperCallsARestraintIsStillLeftAlone() {
        for (CircuitRole role : List.of(CircuitRole.RESTRAINT, CircuitRole.HIGH_VOLTAGE)) {
            for (Certainty certainty : List.of(Certainty.VERIFIED, Certainty.STATED, Certainty.GUESSED)) {
                assertThat(Harm.isSafe(MeterTest.Kind.VOLTS, named(role, certainty)))
                        .as(role + " " + certainty)
                        .isFalse();
            }
        }
    }

    @Test
    void theSurerAnEntryTheMoreItIsBelieved() {
        double[] chances = Arrays.stream(Certainty.values())
                .sorted((a, b) -> Double.compare(Priors.trust(a), Priors.trust(b)))
                .mapToDouble(certainty -> named(CircuitRole.HORN, certainty).chance(WireRole.HORN))
                .toArray();
        assertThat(chances).isSorted().doesNotHaveDuplicates();
    }
}
