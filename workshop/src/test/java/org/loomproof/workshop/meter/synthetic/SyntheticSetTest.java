package org.loomproof.workshop.meter.synthetic;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.meter.role.WireRole;

/**
 * What the tool is worth on wires that it did not make up itself: another generator's networks, with ranges half as wide again as
 * the tool assumes, slips, slow meters, sleeping modules, and a sheet for every other wire, one row in ten of it wrong. In full
 * 5,000 wires; a seeded sample else, whose limits are wider by three times its own spread.
 */
class SyntheticSetTest {

    private static final int IN_FULL = 5_000;
    private static final int SAMPLED = 160;

    /** Of so many wires one is also given to the oracle, who tries every set of readings. */
    private static final int ORACLE_EVERY = 9;

    private static final List<Trial> TRIALS = new ArrayList<>();

    @BeforeAll
    static void measure() {
        Random random = new Random(Sample.seed());
        Measurer measurer = new Measurer(random);
        int wires = Sample.count(SAMPLED, IN_FULL);
        for (int i = 0; i < wires; i++) {
            TRIALS.add(measurer.measure(draw(random), i % 2 == 0, i % ORACLE_EVERY == 0));
        }
    }

    private static WireRole draw(Random random) {
        double at = random.nextDouble()
                * List.of(WireRole.values()).stream()
                        .mapToDouble(WireRole::usualness)
                        .sum();
        for (WireRole role : WireRole.values()) {
            at -= role.usualness();
            if (at < 0) {
                return role;
            }
        }
        return WireRole.NONE_OF_THESE;
    }

    /** How often an answer that is called so sure is right: what is said and what is so, by tenths. */
    private static Reliability reliability(boolean onSheet, boolean advised) {
        Reliability reliability = new Reliability();
        TRIALS.stream()
                .filter(t -> t.onSheet() == onSheet)
                .map(t -> advised ? t.advised() : t.shuffled())
                .forEach(answer -> reliability.add(answer.sure(), answer.isRight()));
        return reliability;
    }

    @Test
    void ofTheCasesCalledSoSureSoManyAreRight() {
        Reliability all = new Reliability();
        for (boolean onSheet : new boolean[] {false, true}) {
            for (boolean advised : new boolean[] {false, true}) {
                Reliability one = reliability(onSheet, advised);
                all.addAll(one);
                Note.that("wires by the meter, %s, %s: %s"
                        .formatted(
                                onSheet ? "with a sheet" : "without a sheet",
                                advised ? "tests as advised" : "tests in any order and number",
                                one));
                assertThat(one.gap()).as(one.toString()).isLessThan(limit(one));
            }
        }
        Note.that("wires by the meter, all: " + all);
        assertThat(all.gap()).isLessThan(limit(all));
        assertThat(all.top()).as(all.toString()).isLessThan(limit(all));
        assertThat(all.binsFurtherOutThan(0.1)).as(all.toString()).isEmpty();
    }

    /** Five points; chance alone takes a sample further. */
    private static double limit(Reliability of) {
        return TRIALS.size() < IN_FULL ? 0.05 + 3 * of.spread() : 0.05;
    }

    @Test
    void mostWiresAreKnownAndThoseCalledCertainAreRight() {
        Map<WireRole, int[]> byRole = new EnumMap<>(WireRole.class);
        int right = 0;
        int certain = 0;
        int certainAndRight = 0;
        for (Trial trial : TRIALS) {
            boolean isRight = trial.advised().isRight();
            int[] counts = byRole.computeIfAbsent(trial.role(), r -> new int[2]);
            counts[0]++;
            counts[1] += isRight ? 1 : 0;
            right += isRight ? 1 : 0;
            certain += trial.advised().isCertain() ? 1 : 0;
            certainAndRight += trial.advised().isCertain() && isRight ? 1 : 0;
        }
        double n = TRIALS.size();
        StringBuilder roles = new StringBuilder();
        byRole.forEach((role, counts) -> roles.append(", %s %d/%d".formatted(role.word(), counts[1], counts[0])));
        Note.that("wires by the meter: %d wires, %.1f %% right, %.1f %% called certain, of these %.1f %% right%s"
                .formatted(
                        TRIALS.size(), 100 * right / n, 100 * certain / n, 100.0 * certainAndRight / certain, roles));
        double spread = Math.sqrt(0.15 * 0.85 / n);
        assertThat(right / n).isGreaterThan(0.85 - 3 * spread);
        assertThat(certainAndRight / (double) certain).isGreaterThan(0.92 - 3 * spread);
    }

    @Test
    void theAdvisedOrderNeedsFewerTestsThanAFixedOneAndNoFewerThanTheOracle() {
        List<Trial> both = TRIALS.stream()
                .filter(t ->
                        !t.onSheet() && t.advised().isCertain() && t.fixed().isCertain())
                .toList();
        double advised =
                both.stream().mapToInt(t -> t.advised().tests()).average().orElseThrow();
        double fixed = both.stream().mapToInt(t -> t.fixed().tests()).average().orElseThrow();
        double advisedSeconds =
                both.stream().mapToDouble(t -> t.advised().seconds()).average().orElseThrow();
        double fixedSeconds =
                both.stream().mapToDouble(t -> t.fixed().seconds()).average().orElseThrow();
        List<Trial> bounded = both.stream().filter(t -> t.fewest().isPresent()).toList();
        double fewest =
                bounded.stream().mapToInt(t -> t.fewest().getAsInt()).average().orElseThrow();
        double beside =
                bounded.stream().mapToInt(t -> t.advised().tests()).average().orElseThrow();
        Note.that(
                ("wires by the meter: to certainty %.2f tests and %.0f s as advised, %.2f and %.0f in a fixed order (%d wires);"
                                + " %.2f as advised where no set of readings does with fewer than %.2f (%d wires)")
                        .formatted(
                                advised,
                                advisedSeconds,
                                fixed,
                                fixedSeconds,
                                both.size(),
                                beside,
                                fewest,
                                bounded.size()));
        assertThat(advised).isLessThan(0.8 * fixed);
        assertThat(advisedSeconds).isLessThan(fixedSeconds);
        assertThat(beside).isGreaterThanOrEqualTo(fewest);
        assertThat(beside).isLessThan(3 * fewest);
    }

    @Test
    void nothingIsProposedThatHurtsTheWireItIs() {
        List<String> hurt = TRIALS.stream().flatMap(t -> t.hurts().stream()).toList();
        Note.that("wires by the meter: of %d proposed tests %d could hurt the wire that it was %s"
                .formatted(TRIALS.stream().mapToInt(Trial::proposed).sum(), hurt.size(), hurt));
        assertThat(hurt.size()).isLessThanOrEqualTo(TRIALS.size() / 200);
    }
}
