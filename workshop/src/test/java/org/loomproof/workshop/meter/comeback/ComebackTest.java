package org.loomproof.workshop.meter.comeback;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.prover.Mishaps;
import org.loomproof.workshop.words.Messages;

class ComebackTest {

    private static final Jobs.Job CART = Jobs.simple();
    private static final Comeback COMEBACK =
            Comeback.of(CART.brief(), CART.plan(), Mishaps.of(CART).proof());
    private static final Messages WORDS = Messages.english();

    private static Checked<List<Taken>> read(String... lines) {
        return new TakenReader(COMEBACK)
                .read(new SourceText("r.csv", "wire,step,value,unit,battery\n" + String.join("\n", lines) + "\n"));
    }

    private static List<Taken> taken(String... lines) {
        return ((Checked.Good<List<Taken>>) read(lines)).value();
    }

    private static String likeliest(Finding finding) {
        return WORDS.text(ComebackWords.of(finding.suspects().getFirst()));
    }

    @Test
    void everyStepIsReadAsItIsWritten() {
        LookWords words = COMEBACK.words();
        assertThat(COMEBACK.looks())
                .isNotEmpty()
                .allSatisfy(look -> assertThat(
                                words.read("  " + words.word(look.when()).toUpperCase(Locale.ROOT)))
                        .contains(look.when()));
        assertThat(words.accepted()).doesNotHaveDuplicates();
        assertThat(words.read("asleep")).isEmpty();
    }

    @Test
    void symptomsAloneNeverSettleAnything() {
        for (Symptom symptom : Symptom.values()) {
            Finding finding = COMEBACK.find(EnumSet.of(symptom), false, List.of());
            assertThat(finding.isSettled()).as(symptom.word()).isFalse();
            assertThat(WORDS.knows("symptom." + symptom.word())).isTrue();
        }
    }

    @Test
    void probabilitiesAreShared() {
        Finding finding = COMEBACK.find(EnumSet.of(Symptom.NO_START), false, List.of());
        assertThat(finding.suspects().stream().mapToDouble(Suspect::probability).sum())
                .isBetween(0.999, 1.001);
        assertThat(finding.suspects()).isSortedAccordingTo((a, b) -> Double.compare(b.probability(), a.probability()));
    }

    /** The starter wire runs W9 from the cut to K1 30 and W10 from 87a back: volts at 87a and none behind the cut is W10. */
    @Test
    void anOpenWireIsFoundBetweenTheLastVoltsAndTheFirstNone() {
        List<Taken> taken = new ArrayList<>(taken(
                "K1 30,disarmed + key start,12.3,V,12.5",
                "K1 87a,disarmed + key start,12.2,V,12.5",
                "starter after,disarmed + key start,0.02,V,12.5"));
        Finding finding = COMEBACK.find(EnumSet.of(Symptom.NO_START), false, taken);
        assertThat(likeliest(finding)).matches("wire W\\d+ or one of its joints is open.*");
        assertThat(finding.suspects().getFirst().probability()).isGreaterThan(0.6);
    }

    /** Where all is as planned while measured, it is not one of ours, unless it comes and goes. */
    @Test
    void aCarThatMeasuresSoundHasItsTroubleElsewhere() {
        List<Taken> taken = taken(
                "K1 87a,disarmed + key start,12.2,V,12.5",
                "starter after,disarmed + key start,12.1,V,12.5",
                "starter,disarmed + key start,12.3,V,12.5");
        Finding always = COMEBACK.find(EnumSet.of(Symptom.NO_START), false, taken);
        assertThat(always.suspects().getFirst().causes().getFirst().isElsewhere())
                .isTrue();
        Finding comesAndGoes = COMEBACK.find(EnumSet.of(Symptom.NO_START), true, taken);
        assertThat(probabilityElsewhere(comesAndGoes)).isLessThan(probabilityElsewhere(always));
        assertThat(comesAndGoes.isSettled()).isFalse();
    }

    private static double probabilityElsewhere(Finding finding) {
        return finding.suspects().stream()
                .filter(s -> s.causes().size() == 1 && s.causes().getFirst().isElsewhere())
                .mapToDouble(Suspect::probability)
                .sum();
    }

    @Test
    void theNextLookSplitsAndIsNoneThatWasTaken() {
        List<Taken> taken = new ArrayList<>();
        Set<Look> asked = new HashSet<>();
        Finding finding = COMEBACK.find(EnumSet.of(Symptom.NO_START), false, taken);
        while (finding.next().isPresent() && taken.size() < 20) {
            NextLook next = finding.next().get();
            assertThat(asked.add(next.look())).isTrue();
            assertThat(next.answers()).hasSizeGreaterThan(1);
            assertThat(next.answers().stream()
                            .mapToDouble(NextLook.Answer::probability)
                            .sum())
                    .isBetween(0.9, 1.001);
            taken.add(new Taken(next.look(), next.answers().getFirst().low(), 12.6));
            finding = COMEBACK.find(EnumSet.of(Symptom.NO_START), false, taken);
        }
        assertThat(taken).hasSizeBetween(1, 12);
    }

    @Test
    void everyProblemOfAFileIsTold() {
        Checked<List<Taken>> read =
                read("K9 30,disarmed,12,V,", "K1 30,asleep,12,V,", "K1 30,disarmed,12,ohm,", "K1 30,disarmed,much,V,");
        assertThat(read).isInstanceOf(Checked.Bad.class);
        // Lines that cannot be read are told first; once they can, what they speak of is looked at.
        assertThat(((Checked.Bad<List<Taken>>) read).problems())
                .extracting(p -> p.kind())
                .containsExactly(ProblemKind.NOT_ONE_OF, ProblemKind.NOT_A_NUMBER);
        assertThat(((Checked.Bad<List<Taken>>) read("K9 30,disarmed,12,V,", "K1 30,disarmed,12,ohm,")).problems())
                .extracting(p -> p.kind())
                .containsExactly(ProblemKind.UNKNOWN_REFERENCE, ProblemKind.WRONG_UNIT);
    }

    @Test
    void whatIsFoundInTheBatterysOwnLineServesTheOthers() {
        assertThat(taken("battery,disarmed,11.9,V,", "K1 30,disarmed,11.8,V,"))
                .singleElement()
                .satisfies(t -> {
                    assertThat(t.batteryVolts()).isEqualTo(11.9);
                    assertThat(t.volts()).isEqualTo(11.8);
                });
    }
}
