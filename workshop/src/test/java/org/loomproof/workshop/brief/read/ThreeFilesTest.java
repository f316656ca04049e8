package org.loomproof.workshop.brief.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemKind;

class ThreeFilesTest {

    @TempDir
    Path folder;

    @BeforeEach
    void threeValidFiles() throws IOException {
        GivenTexts valid = GivenTexts.valid();
        Files.writeString(folder.resolve("sheet.yaml"), valid.sheet());
        Files.writeString(folder.resolve("kit.yaml"), valid.kit());
        Files.writeString(folder.resolve("order.yaml"), valid.order());
    }

    private Checked<ReadBrief> read() {
        return GivenTexts.reader()
                .read(folder.resolve("sheet.yaml"), folder.resolve("kit.yaml"), folder.resolve("order.yaml"));
    }

    private List<Problem> problems() {
        return switch (read()) {
            case Checked.Good<ReadBrief> good -> List.of();
            case Checked.Bad<ReadBrief>(List<Problem> problems) -> problems;
        };
    }

    @Test
    void threeFilesAreReadAsABrief() {
        assertThat(read()).isInstanceOf(Checked.Good.class);
    }

    @Test
    void aMissingSheetDoesNotHideWhatIsWrongInTheOtherFiles() throws IOException {
        Files.delete(folder.resolve("sheet.yaml"));
        Files.writeString(
                folder.resolve("kit.yaml"),
                GivenTexts.valid().withKit("8..16 V", "12 V").kit());
        assertThat(problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.FILE_NOT_FOUND, ProblemKind.WRONG_SHAPE);
    }

    @Test
    void aSheetGivenAsTheKitIsToldByItsFormatLine() throws IOException {
        Files.writeString(folder.resolve("kit.yaml"), GivenTexts.valid().sheet());
        assertThat(problems()).extracting(Problem::kind).containsExactly(ProblemKind.WRONG_FORMAT);
        assertThat(problems().getFirst().at().file()).endsWith("kit.yaml");
    }

    @Test
    void withoutAReadableSheetTheOrdersNamesOfItAreNotHeldAgainstTheOrder() throws IOException {
        Files.writeString(
                folder.resolve("sheet.yaml"),
                GivenTexts.valid().withSheet("ground: negative", "ground: none").sheet());
        Files.writeString(
                folder.resolve("order.yaml"),
                GivenTexts.valid().withOrder("watch: all", "watch: [side-door]").order());
        assertThat(problems()).hasSize(1);
    }
}
