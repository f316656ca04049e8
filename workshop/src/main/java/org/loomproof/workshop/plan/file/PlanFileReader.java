package org.loomproof.workshop.plan.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.read.BriefReader;
import org.loomproof.workshop.brief.read.ReadBrief;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.brief.text.FormatLine;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.brief.text.Problems;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.brief.text.TextFile;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** Reads a plan file and the three texts it carries. Problems of the plan come first, then those of its inputs. */
public final class PlanFileReader {

    private final BriefReader briefs;
    private final Messages words;

    /** @param words gives the couplings that a plan may name */
    public PlanFileReader(BriefReader briefs, Messages words) {
        this.briefs = briefs;
        this.words = words;
    }

    /** The plan in the file, or every problem in it. */
    public Checked<PlanFile> read(Path file) {
        return switch (TextFile.read(file)) {
            case Checked.Good<SourceText>(SourceText text) -> read(text);
            case Checked.Bad<SourceText>(List<Problem> problems) -> new Checked.Bad<>(problems);
        };
    }

    /** The plan in the text, or every problem in it. */
    public Checked<PlanFile> read(SourceText text) {
        Problems problems = new Problems(text.name());
        Optional<MappingCursor> entries = FormatLine.open(text, PlanFileWriter.FORMAT, problems);
        if (entries.isEmpty()) {
            return new Checked.Bad<>(problems.inOrder());
        }
        MappingCursor in = entries.get();
        Optional<Checked<ReadBrief>> given = inputs(in.mapping("inputs"));
        Optional<ReadBrief> brief = given.flatMap(checked ->
                checked instanceof Checked.Good<ReadBrief>(ReadBrief good) ? Optional.of(good) : Optional.empty());
        Plan plan = new PlanEntries(in, brief.map(ReadBrief::brief), words).plan();
        List<Problem> all = new ArrayList<>(problems.inOrder());
        if (given.isPresent() && given.get() instanceof Checked.Bad<ReadBrief>(List<Problem> ofInputs)) {
            all.addAll(ofInputs);
        }
        return all.isEmpty() && brief.isPresent()
                ? new Checked.Good<>(new PlanFile(brief.get(), plan))
                : new Checked.Bad<>(all);
    }

    /**
     * The plan in a text that says only what was decided.
     *
     * @param given what it was decided for
     */
    public Checked<PlanFile> readDecided(SourceText text, ReadBrief given) {
        Problems problems = new Problems(text.name());
        Optional<Plan> plan = FormatLine.open(text, PlanFileWriter.FORMAT, problems)
                .map(in -> new PlanEntries(in, Optional.of(given.brief()), words).plan());
        List<Problem> all = problems.inOrder();
        return all.isEmpty() && plan.isPresent()
                ? new Checked.Good<>(new PlanFile(given, plan.get()))
                : new Checked.Bad<>(all);
    }

    /** The brief in the three texts; empty, with a problem noted, when a text is not there. */
    private Optional<Checked<ReadBrief>> inputs(MappingCursor in) {
        Optional<SourceText> sheet = input(in.mapping("sheet"));
        Optional<SourceText> kit = input(in.mapping("kit"));
        Optional<SourceText> order = input(in.mapping("order"));
        in.close();
        return sheet.isPresent() && kit.isPresent() && order.isPresent()
                ? Optional.of(briefs.read(sheet.get(), kit.get(), order.get()))
                : Optional.empty();
    }

    private static Optional<SourceText> input(MappingCursor in) {
        String name = in.text("name");
        String sum = in.text("sha256");
        Optional<String> text = in.need("text").flatMap(Cursor::wholeText);
        in.close();
        text.map(TextSum::of)
                .filter(actual -> !actual.equals(sum))
                .ifPresent(actual -> in.find("sha256")
                        .ifPresent(at -> at.problem(
                                ProblemKind.CHANGED_INPUT,
                                Phrase.of("problem.wanted.sum-of-text", actual),
                                Phrase.of("problem.hint.changed-input"))));
        return text.map(content -> new SourceText(name, content));
    }
}
