package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.words.Messages;

/** Claims that figures decide: each holds as the example stands, and breaks with one figure changed. */
class ClaimsByFiguresTest {

    private static final Path VAN = ExampleFiles.root().resolve("bakery-van");
    private static final Path HELD = ExampleFiles.root().resolve("circuits/locks-held-wire");

    @TempDir
    private Path folder;

    /** The verdict on the example's own plan with one text of one file changed. */
    private Verdict verdict(Path example, String claim, String file, String from, String to) {
        Brief brief = ReworkedExample.brief(example, folder, (each, text) -> {
            assertThat(!each.equals(file) || text.contains(from))
                    .as("%s in %s", from, file)
                    .isTrue();
            return each.equals(file) ? text.replace(from, to) : text;
        });
        return Prover.prove(brief, PlannedExamples.job(example).plan()).results().stream()
                .filter(result -> result.id().equals(claim))
                .findFirst()
                .orElseThrow()
                .verdict();
    }

    private static List<String> steps(Witness witness) {
        return witness.steps().stream().map(Messages.english()::text).toList();
    }

    /**
     * Hand-worked: 22 mA of the sheet and 14 mA of the kit; at -10 °C 21.5 % of 80 Ah may be taken, 17.2 Ah / 0.036 A = 478 h,
     * 19.9 days (the pull-ups of the inputs add microamps).
     */
    @Test
    void theBatteryOutlastsTheParking() {
        assertThat(verdict(VAN, "outlasts-parking battery", "order.yaml", "18 days", "19 days"))
                .isInstanceOfSatisfying(
                        Verdict.Holds.class,
                        holds -> assertThat(holds.tightest().slack()).isCloseTo(0.9, within(0.05)));
        assertThat(verdict(VAN, "outlasts-parking battery", "order.yaml", "18 days", "20 days"))
                .isInstanceOfSatisfying(
                        Verdict.Broken.class,
                        broken -> assertThat(steps(broken.witness()))
                                .containsExactly("arm and wait 20 s", "leave it standing for 20 days"));
    }

    @Test
    void aRangeInWhichTheBatteryMayGiveOutIsOpenAndNamesTheReading() {
        assertThat(verdict(
                        VAN,
                        "outlasts-parking battery",
                        "sheet.yaml",
                        "sleep-current: 22 mA",
                        "sleep-current: 10..32 mA"))
                .isInstanceOfSatisfying(
                        Verdict.Open.class,
                        open -> assertThat(open.settledBy())
                                .extracting(Measurement::name)
                                .containsExactly("reading-of sleep-current"));
    }

    /** A pump needs its two to three seconds; three tenths of that leave the doors where they were. Common practice. */
    @Test
    void aPumpWantsALongPulse() {
        assertThat(verdict(HELD, "pulse-long-enough P1-4", "kit.yaml", "pulse: 3.5 s", "pulse: 3 s"))
                .isInstanceOf(Verdict.Holds.class);
        assertThat(verdict(HELD, "pulse-long-enough P1-4", "kit.yaml", "pulse: 3.5 s", "pulse: 0.8 s"))
                .isInstanceOfSatisfying(
                        Verdict.Broken.class,
                        broken -> assertThat(steps(broken.witness()))
                                .containsExactly("arm", "watch what lead P1-4 moves"));
        assertThat(verdict(HELD, "pulse-long-enough P1-4", "kit.yaml", ", pulse: 3.5 s", ""))
                .isInstanceOf(Verdict.Open.class);
    }

    /** The wire of a light that lingers shows an open door until it is dark. Common practice, no published source. */
    @ParameterizedTest
    @CsvSource({
        "arming-delay: 24 s, Holds",
        "arming-delay: 23 s, Open",
        "arming-delay: 20 s, Broken",
        "arming-delay: 22..26 s, Open"
    })
    void aLightIsOutBeforeTheKitIsArmed(String delay, String verdict) {
        Path lingers = ExampleFiles.root().resolve("circuits/dome-that-lingers");
        assertThat(verdict(lingers, "armed-after-light P1-1 dome", "kit.yaml", "arming-delay: 30 s", delay)
                        .getClass()
                        .getSimpleName())
                .isEqualTo(verdict);
    }

    /** UN R116 and its kin, read: sound 25 to 30 s, light 25 s to 5 min, 100 to 118 dB(A) at 2 m. */
    @ParameterizedTest
    @CsvSource({
        "sounding-time, sounding-time: 28 s, sounding-time: 30 s, Holds",
        "sounding-time, sounding-time: 28 s, sounding-time: 31 s, Broken",
        "sounding-time, sounding-time: 28 s, sounding-time: 24 s, Broken",
        "sounding-time, sounding-time: 28 s, sounding-time: 27..31 s, Open",
        "flashing-time, sounding-time: 28 s, sounding-time: 31 s, Holds",
        "flashing-time, sounding-time: 28 s, sounding-time: 24 s, Broken",
        "siren, sound: 110 dB, sound: 118 dB, Holds",
        "siren, sound: 110 dB, sound: 119 dB, Broken",
        "siren, sound: 110 dB, sound: 99 dB, Broken",
        "siren, ', sound: 110 dB', '', Open"
    })
    void soundAndLightAreThoseOfTheRuleSet(String what, String from, String to, String verdict) {
        assertThat(verdict(VAN, "within-rule-set " + what, "kit.yaml", from, to)
                        .getClass()
                        .getSimpleName())
                .isEqualTo(verdict);
    }

    @Test
    void anAlarmThatSoundsTooLongIsHeardInTwoSteps() {
        assertThat(verdict(
                        VAN, "within-rule-set sounding-time", "kit.yaml", "sounding-time: 28 s", "sounding-time: 40 s"))
                .isInstanceOfSatisfying(
                        Verdict.Broken.class,
                        broken -> assertThat(steps(broken.witness()))
                                .containsExactly("arm and wait 20 s", "make it sound", "listen until it is silent"));
    }
}
