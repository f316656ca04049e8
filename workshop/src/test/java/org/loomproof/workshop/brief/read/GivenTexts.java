package org.loomproof.workshop.brief.read;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemText;
import org.loomproof.workshop.trade.template.PartDefaults;
import org.loomproof.workshop.words.Messages;

/** The three texts of a small valid job, to be changed in one place and read. */
public record GivenTexts(String sheet, String kit, String order) {

    private static final Messages ENGLISH = Messages.english();

    public static GivenTexts valid() {
        return new GivenTexts(resource("sheet.yaml"), resource("kit.yaml"), resource("order.yaml"));
    }

    static String resource(String name) {
        try (InputStream in = Objects.requireNonNull(GivenTexts.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public GivenTexts withSheet(String before, String after) {
        return new GivenTexts(changed(sheet, before, after), kit, order);
    }

    public GivenTexts withKit(String before, String after) {
        return new GivenTexts(sheet, changed(kit, before, after), order);
    }

    public GivenTexts withOrder(String before, String after) {
        return new GivenTexts(sheet, kit, changed(order, before, after));
    }

    private static String changed(String text, String before, String after) {
        if (!text.contains(before)) {
            throw new IllegalArgumentException("the text does not contain: " + before);
        }
        int at = text.indexOf(before);
        return text.substring(0, at) + after + text.substring(at + before.length());
    }

    public static PartDefaults usual() {
        return new UsualForTests();
    }

    public static BriefReader reader() {
        return new BriefReader(new UsualForTests(), UnaryOperator.identity());
    }

    public Checked<ReadBrief> read() {
        return reader().read(
                        new SourceText("sheet.yaml", sheet),
                        new SourceText("kit.yaml", kit),
                        new SourceText("order.yaml", order));
    }

    public ReadBrief good() {
        return switch (read()) {
            case Checked.Good(ReadBrief brief) -> brief;
            case Checked.Bad<ReadBrief>(List<Problem> problems) -> throw new AssertionError(lines(problems));
        };
    }

    /** The problems as a reader sees them, one line each. */
    public List<String> problems() {
        return switch (read()) {
            case Checked.Good<ReadBrief> good -> List.of();
            case Checked.Bad(List<Problem> problems) -> lines(problems);
        };
    }

    public static List<String> lines(List<Problem> problems) {
        return problems.stream().map(p -> ProblemText.line(p, ENGLISH)).toList();
    }
}
