package org.loomproof.workshop.plan.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.read.GivenTexts;
import org.loomproof.workshop.brief.read.Slips;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;

/** A valid plan file with seeded slips gives a plan or problems, never an exception. */
class MangledPlanTest {

    private static final long SEED = 8;
    private static final int ROUNDS = Sample.count(400, 1500);

    @Test
    void aMangledPlanGivesAPlanInWhichEveryLeadIsDecidedOrProblems() {
        Random random = new Random(SEED);
        String valid = PlanTexts.byHand().text();
        for (int round = 0; round < ROUNDS; round++) {
            PlanTexts mangled = new PlanTexts(Slips.mangled(valid, random));
            switch (read(mangled, round)) {
                case Checked.Good<PlanFile>(PlanFile file) ->
                    assertThat(file.plan().hookups())
                            .hasSize(file.given().brief().kit().leads().size());
                case Checked.Bad<PlanFile>(List<Problem> problems) ->
                    assertThat(GivenTexts.lines(problems)).doesNotContain("");
            }
        }
    }

    private static Checked<PlanFile> read(PlanTexts mangled, int round) {
        try {
            return mangled.read();
        } catch (RuntimeException e) {
            throw new AssertionError("seed %d, round %d\n%s".formatted(SEED, round, mangled.text()), e);
        }
    }
}
