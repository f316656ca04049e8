package org.loomproof.workshop.plan.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.complete.SheetCompletion;
import org.loomproof.workshop.brief.read.BriefReader;
import org.loomproof.workshop.brief.read.GivenTexts;
import org.loomproof.workshop.brief.read.ReadBrief;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.Planner;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.trade.template.PartDefaults;
import org.loomproof.workshop.trade.template.TradeDefaults;

/** Candidates the planner makes of an example, in full all of them, can be written, read back and written again to the same bytes. */
class PlannedExamplesTest {

    private static final PartDefaults USUAL = TradeDefaults.read();
    private static final BriefReader BRIEFS = new BriefReader(USUAL, new SheetCompletion(USUAL));

    static Stream<Path> examples() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("..", "examples"))) {
            return files.filter(file -> file.endsWith("sheet.yaml")).map(Path::getParent).sorted().toList().stream();
        }
    }

    private static <T> T good(Checked<T> checked) {
        return switch (checked) {
            case Checked.Good<T>(T value) -> value;
            case Checked.Bad<T>(List<Problem> problems) ->
                throw new AssertionError(String.join("\n", GivenTexts.lines(problems)));
        };
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyPlanOfAnExampleSurvivesBeingWrittenAndRead(Path folder) {
        ReadBrief given = good(
                BRIEFS.read(folder.resolve("sheet.yaml"), folder.resolve("kit.yaml"), folder.resolve("order.yaml")));
        PlanFileWriter writer = new PlanFileWriter(PlanTexts.ENGLISH);
        PlanFileReader reader = new PlanFileReader(BRIEFS, PlanTexts.ENGLISH);
        List<Plan> plans = Planner.plan(given.brief()).plans();
        assertThat(plans).isNotEmpty();
        for (Plan plan : Sample.of(plans, 2)) {
            String once = writer.write(new PlanFile(given, plan));
            PlanFile again = good(reader.read(new SourceText("plan.yaml", once)));
            assertThat(again.plan().parts()).isEqualTo(plan.parts());
            assertThat(again.plan().wires()).isEqualTo(plan.wires());
            assertThat(again.plan().hookups()).hasSameSizeAs(plan.hookups());
            assertThat(writer.write(again)).isEqualTo(once);
        }
    }
}
