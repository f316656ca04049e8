package org.loomproof.workshop.brief.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemKind;

/** Whatever is fed to the reader gives a problem with a place; nothing is thrown and nothing runs away. */
class HostileTextTest {

    private static final String FORMAT = "loomproof sheet 1";

    @TempDir
    Path folder;

    private static List<Problem> problems(String text) {
        Problems problems = new Problems("sheet.yaml");
        FormatLine.open(new SourceText("sheet.yaml", text), FORMAT, problems);
        return problems.inOrder();
    }

    private static Problem only(String text) {
        assertThat(problems(text)).hasSize(1);
        return problems(text).getFirst();
    }

    private List<Problem> ofFile(byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve("sheet.yaml"), bytes);
        return switch (TextFile.read(file)) {
            case Checked.Good<SourceText>(SourceText text) -> problems(text.text());
            case Checked.Bad<SourceText>(List<Problem> found) -> found;
        };
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void aFileOfTenMegabytesIsTooLargeAndOneByteLessIsRead() throws IOException {
        byte[] bytes = new byte[TextFile.SIZE_LIMIT_BYTES];
        Arrays.fill(bytes, (byte) '#');
        assertThat(ofFile(bytes)).extracting(Problem::kind).containsExactly(ProblemKind.FILE_TOO_LARGE);
        for (int i = 100; i < bytes.length; i += 100) {
            bytes[i] = '\n';
        }
        byte[] less = Arrays.copyOf(bytes, bytes.length - 1);
        assertThat(ofFile(less)).extracting(Problem::kind).containsExactly(ProblemKind.WRONG_FORMAT);
    }

    @Test
    void aLineThatWouldKeepTheYamlReaderBusyIsStoppedBeforeIt() {
        Problem problem = only("format: loomproof sheet 1\n# " + "x".repeat(YamlTree.LINE_LIMIT) + "\n");
        assertThat(problem.kind()).isEqualTo(ProblemKind.FILE_TOO_LARGE);
        assertThat(problem.at().line()).isEqualTo(2);
    }

    @Test
    void flowListsNestedADeepHundredThousandTimesAreStopped() {
        assertThat(only("a: " + "[".repeat(100_000)).kind()).isEqualTo(ProblemKind.TOO_DEEP);
    }

    @Test
    void blocksNestedDeeperThanAnyOfOurFormatsAreStopped() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 200; i++) {
            text.append(" ".repeat(i)).append("a:\n");
        }
        Problem problem = only(text.toString());
        assertThat(problem.kind()).isEqualTo(ProblemKind.TOO_DEEP);
        assertThat(problem.at().line()).isEqualTo(YamlTree.DEPTH_LIMIT);
    }

    @Test
    void aliasesThatStandForBillionsOfEntriesAreStopped() {
        StringBuilder text = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 12; i++) {
            text.append(
                    "a%d: &a%d [%s]\n".formatted(i, i, "*a%d, ".formatted(i - 1).repeat(10)));
        }
        assertThat(only(text.toString()).kind()).isEqualTo(ProblemKind.TOO_MANY_ALIASES);
    }

    @Test
    void anAliasOfWhatIsAroundItCannotBeFollowed() {
        assertThat(only("a: &a [*a]").kind()).isEqualTo(ProblemKind.TOO_MANY_ALIASES);
    }

    @Test
    void anAliasOfNothingIsNoYaml() {
        assertThat(problems("a: *nowhere")).hasSize(1);
    }

    @Test
    void aModestAliasIsReadAsWhatItStandsFor() {
        assertThat(problems("format: loomproof sheet 1\nsize: &s 1 mm2\nother: *s\n"))
                .isEmpty();
    }

    @Test
    void moreEntriesThanAnyVehicleHasAreStopped() {
        assertThat(only("a:\n" + "- x\n".repeat(300_000)).kind()).isEqualTo(ProblemKind.FILE_TOO_LARGE);
    }

    @Test
    void bytesThatAreNotUtf8AreToldWithTheirLine() throws IOException {
        byte[] bytes = utf8("format: loomproof sheet 1\nvehicle: x\n");
        bytes[bytes.length - 2] = (byte) 0xC3;
        Problem problem = ofFile(bytes).getFirst();
        assertThat(problem.kind()).isEqualTo(ProblemKind.NOT_UTF8);
        assertThat(problem.at().line()).isEqualTo(2);
    }

    @Test
    void aFileInUtf16IsToldToBeSavedAsUtf8() throws IOException {
        List<Problem> problems = ofFile("format: loomproof sheet 1".getBytes(StandardCharsets.UTF_16));
        assertThat(problems).extracting(Problem::kind).containsExactly(ProblemKind.NOT_UTF8);
        assertThat(problems.getFirst().hint().key()).isEqualTo("problem.hint.utf-16");
    }

    @Test
    void aByteOrderMarkOfUtf8IsPassedOver() throws IOException {
        assertThat(ofFile(utf8("\uFEFFformat: loomproof sheet 1\n"))).isEmpty();
    }

    @Test
    void aBinaryFileIsNoText() throws IOException {
        List<Problem> problems = ofFile(new byte[] {'P', 'K', 3, 4, 0, 0, 8});
        assertThat(problems.getFirst().hint().key()).isEqualTo("problem.hint.binary");
    }

    @Test
    void aControlCharacterIsToldWithItsPlace() {
        Problem problem = only("format: loomproof sheet 1\nname: a\u0007b\n");
        assertThat(problem.kind()).isEqualTo(ProblemKind.NOT_YAML);
        assertThat(problem.found()).isEqualTo("U+0007");
        assertThat(problem.at().line()).isEqualTo(2);
        assertThat(problem.at().column()).isEqualTo(8);
    }

    @Test
    void aTabForIndentationIsNamed() {
        Problem problem = only("vehicle:\n\tname: x\n");
        assertThat(problem.kind()).isEqualTo(ProblemKind.NOT_YAML);
        assertThat(problem.hint().key()).isEqualTo("problem.hint.tab");
        assertThat(problem.at().line()).isEqualTo(2);
    }

    @Test
    void anEmptyFileAFileOfCommentsAndAFileOfNothingAreEmpty() {
        for (String text : List.of("", "\n\n", "# later\n", "---\n", "~")) {
            assertThat(only(text).kind()).as(text).isEqualTo(ProblemKind.WRONG_FORMAT);
        }
    }

    @Test
    void aSecondDocumentIsRefused() {
        Problem problem = only("format: loomproof sheet 1\n---\nformat: loomproof sheet 1\n");
        assertThat(problem.kind()).isEqualTo(ProblemKind.NOT_YAML);
        assertThat(problem.at().line()).isEqualTo(2);
    }

    @Test
    void aFolderAndAFileThatIsNotThereCannotBeRead() {
        assertThat(TextFile.read(folder)).isInstanceOf(Checked.Bad.class);
        assertThat(TextFile.read(folder.resolve("none.yaml"))).isInstanceOf(Checked.Bad.class);
    }

    @Test
    void aListOrAWordInPlaceOfEntriesHasTheWrongShape() {
        assertThat(only("- a\n- b\n").kind()).isEqualTo(ProblemKind.WRONG_SHAPE);
        assertThat(only("hello").kind()).isEqualTo(ProblemKind.WRONG_SHAPE);
    }

    @Test
    void aKeyThatIsAListAndAValueWithATagAreRefused() {
        assertThat(problems("? [a, b]\n: c\nformat: loomproof sheet 1\n"))
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.WRONG_SHAPE);
        assertThat(problems("format: !!str loomproof sheet 1\n"))
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.NOT_YAML);
    }

    @Test
    void whatIsFoundIsShortenedToALineWithoutControlCharacters() {
        Problem problem = only("format: \"" + "long\\u0007".repeat(100) + "\"");
        assertThat(problem.found()).hasSizeLessThanOrEqualTo(48).endsWith("…").doesNotContain("\u0007");
    }

    @Test
    void moreProblemsThanAnybodyReadsAreCounted() {
        StringBuilder text = new StringBuilder("format: loomproof sheet 1\n");
        for (int i = 0; i < 2000; i++) {
            text.append("same: x\n");
        }
        List<Problem> problems = problems(text.toString());
        assertThat(problems).hasSize(Problems.MOST_LISTED + 1);
        assertThat(problems.getLast().kind()).isEqualTo(ProblemKind.MORE_PROBLEMS);
        assertThat(problems.getLast().found()).isEqualTo("1499");
    }
}
