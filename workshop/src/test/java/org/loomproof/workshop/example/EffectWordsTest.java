package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.claim.Claim;
import org.loomproof.workshop.prover.claim.Claimed;
import org.loomproof.workshop.prover.claim.Fitting;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** Whatever a fault may break has a sentence for being broken. */
class EffectWordsTest {

    @ParameterizedTest
    @MethodSource("examples")
    void everyClaimThatAFaultMayBreakSaysWhatComesOfIt(Path folder) {
        Plan plan = PlannedExamples.job(folder).plan();
        Brief brief = ExamplesAreReadTest.brief(folder).set(plan.settings());
        Fitting fitting = new Fitting(
                brief, plan, Vehicle.stock(brief, Corner.TYPICAL), Vehicle.fitted(brief, plan, Corner.TYPICAL));
        for (Claim claim : Claim.all()) {
            if (claim.isWalked()) {
                for (Claimed each : claim.in(fitting)) {
                    if (each instanceof Claimed.ToShow(var toShow, var onPurpose)) {
                        Phrase said = toShow.statement();
                        Phrase effect = new Phrase(said.key().replaceFirst("^claim\\.", "effect."), said.arguments());
                        assertThat(Messages.english().text(effect))
                                .as(toShow.id())
                                .isNotBlank();
                    }
                }
            }
        }
    }

    /** The terminal counts claims by their kind: one without a kind would end the report. */
    @Test
    void everyClaimHasAKindOnTheTerminal() {
        assertThat(Claim.all())
                .allSatisfy(claim -> assertThat(Messages.english().text("claim-kind." + claim.name()))
                        .isNotBlank());
    }

    static List<Path> examples() throws IOException {
        return ExampleFiles.list();
    }
}
