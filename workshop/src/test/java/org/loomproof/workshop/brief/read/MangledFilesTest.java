package org.loomproof.workshop.brief.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.complete.SheetCompletion;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemText;
import org.loomproof.workshop.words.Messages;

/** Valid files with seeded slips: each gives a brief or problems with places, never an exception. */
class MangledFilesTest {

    private static final long SEED = 7;
    private static final int ROUNDS = Sample.count(800, 3000);
    private static final Messages ENGLISH = Messages.english();

    private final BriefReader reader = new BriefReader(GivenTexts.usual(), new SheetCompletion(GivenTexts.usual()));

    @Test
    void aMangledFileGivesABriefOrProblemsAndEveryProblemCanBeTold() {
        Random random = new Random(SEED);
        GivenTexts valid = GivenTexts.valid();
        int bad = 0;
        for (int round = 0; round < ROUNDS; round++) {
            int which = random.nextInt(3);
            SourceText sheet =
                    new SourceText("sheet.yaml", which == 0 ? Slips.mangled(valid.sheet(), random) : valid.sheet());
            SourceText kit = new SourceText("kit.yaml", which == 1 ? Slips.mangled(valid.kit(), random) : valid.kit());
            SourceText order =
                    new SourceText("order.yaml", which == 2 ? Slips.mangled(valid.order(), random) : valid.order());
            if (read(sheet, kit, order, round) instanceof Checked.Bad<ReadBrief>(List<Problem> problems)) {
                bad++;
                for (Problem problem : problems) {
                    assertThat(ProblemText.line(problem, ENGLISH))
                            .as("seed %d, round %d", SEED, round)
                            .isNotBlank();
                    assertThat(problem.at().file()).endsWith(".yaml");
                }
            }
        }
        // Most slips are noticed; some only change a name or a note.
        assertThat(bad).isGreaterThan(ROUNDS / 2);
    }

    private Checked<ReadBrief> read(SourceText sheet, SourceText kit, SourceText order, int round) {
        try {
            return reader.read(sheet, kit, order);
        } catch (RuntimeException e) {
            throw new AssertionError(
                    "seed %d, round %d\n%s\n%s\n%s".formatted(SEED, round, sheet.text(), kit.text(), order.text()), e);
        }
    }
}
