package org.loomproof.workshop.plan.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.read.GivenTexts;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemKind;

/** What the guide shows is read as a reader would try it, and every kind of problem has its entry. */
class GuideTest {

    private static final Path DOCS = Path.of("..", "docs");
    private static final Pattern BLOCK = Pattern.compile("(?s)```yaml\n(.*?)```");

    /** The page's first snippet is a whole file; each further one replaces the sections that it names. */
    private static List<String> files(String page) throws IOException {
        List<String> files = new ArrayList<>();
        Matcher blocks = BLOCK.matcher(Files.readString(DOCS.resolve("guide/" + page)));
        while (blocks.find()) {
            String snippet = blocks.group(1);
            files.add(snippet.startsWith("format:") ? snippet : replaced(files.getFirst(), snippet));
        }
        return files;
    }

    private static String replaced(String file, String snippet) {
        String kept = file;
        for (String line : snippet.lines().toList()) {
            if (line.matches("[a-z].*")) {
                String key = line.substring(0, line.indexOf(':'));
                kept = kept.replaceAll("(?m)^" + key + ":.*\n(?:[ #].*\n)*", "");
            }
        }
        return kept + snippet;
    }

    private static void assertGood(Checked<?> checked, String text) {
        if (checked instanceof Checked.Bad<?>(List<Problem> problems)) {
            throw new AssertionError(GivenTexts.lines(problems) + "\n" + text);
        }
    }

    @Test
    void theSheetsOfTheGuideAreRead() throws IOException {
        List<String> files = files("sheet.md");
        assertThat(files).hasSize(3);
        for (String text : files) {
            assertGood(GivenTexts.reader().readSheet(new SourceText("sheet.md", text)), text);
        }
    }

    @Test
    void theKitOfTheGuideIsRead() throws IOException {
        List<String> files = files("kit.md");
        assertThat(files).hasSize(1);
        assertGood(GivenTexts.reader().readKit(new SourceText("kit.md", files.getFirst())), files.getFirst());
    }

    @Test
    void theOrdersOfTheGuideAreReadAgainstTheSheetOfTheGuide() throws IOException {
        List<String> sheets = files("sheet.md");
        String circuits = "circuits:\n";
        // The circuits of the second snippet stand behind those of the first: orders speak of both.
        String sheetText =
                sheets.getFirst() + sheets.get(1).substring(sheets.get(1).indexOf(circuits) + circuits.length());
        Checked<Sheet> sheet = GivenTexts.reader().readSheet(new SourceText("sheet.md", sheetText));
        Optional<Sheet> known = sheet instanceof Checked.Good<Sheet>(Sheet good) ? Optional.of(good) : Optional.empty();
        List<String> files = files("order.md");
        assertThat(files).hasSize(3);
        for (String text : files) {
            assertGood(GivenTexts.reader().readOrder(new SourceText("order.md", text), known), text);
        }
    }

    @Test
    void thePlanOfTheGuideIsReadOnceItsInputsStandBelowIt() throws IOException {
        String text = files("plan.md").getFirst() + PlanTexts.inputs();
        assertGood(new PlanTexts(text).read(), text);
    }

    @Test
    void everyKindOfProblemHasAnEntryThatStartsWithItsWords() throws IOException {
        String page = Files.readString(DOCS.resolve("problems.md"));
        List<String> headings = page.lines()
                .filter(line -> line.startsWith("## "))
                .map(line -> line.substring(3))
                .toList();
        assertThat(headings)
                .containsExactlyInAnyOrderElementsOf(
                        Arrays.stream(ProblemKind.values()).map(ProblemKind::id).toList());
        for (String id : headings) {
            String words = PlanTexts.ENGLISH.text("problem.kind." + id);
            assertThat(page.toLowerCase(Locale.ROOT))
                    .as(id)
                    .contains("## " + id + "\n\n\"" + words.toLowerCase(Locale.ROOT) + "\":");
        }
    }

    @Test
    void theLineThatThePageShowsIsTheOneThatIsTold() throws IOException {
        String told = GivenTexts.valid()
                .withSheet("ground: negative", "ground: negitive")
                .problems()
                .getFirst();
        assertThat(Files.readString(DOCS.resolve("problems.md"))).contains("    " + told + "\n");
    }
}
