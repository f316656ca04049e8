package org.loomproof.workshop.brief.path;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.text.FigureReader;
import org.loomproof.workshop.brief.text.FormatLine;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.brief.text.Problems;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.ProblemText;
import org.loomproof.workshop.trade.template.PartDefaults;
import org.loomproof.workshop.words.Messages;

/** Reads a path that stands in for one that a circuit does not state, written in the words of a sheet. */
public final class TemplatePath {

    private TemplatePath() {}

    /**
     * The paths of the template. Every figure in them is assumed, and its place names the entry of the circuit it stands in
     * for.
     *
     * @param template a mapping with {@code path} and, where needed, {@code branches}
     * @param circuit the circuit that does not say how current runs; nameless parts are named after it
     * @param operables what the switches of the template may be operated by
     * @param usual figures that the template leaves out
     * @throws IllegalStateException when the template is faulty: it is our own text
     */
    public static List<List<PathStep>> read(
            SourceText template, Circuit circuit, List<Operable> operables, PartDefaults usual) {
        Problems problems = new Problems(template.name());
        Place stated = circuit.basis().place();
        Optional<MappingCursor> entries = FormatLine.root(template, problems);
        List<List<PathStep>> paths = entries.map(in -> {
                    FigureReader figures = FigureReader.standingInFor(stated, usual);
                    List<List<PathStep>> read =
                            new PathReader(circuit.id(), figures, new SheetNames(operables)).read(in);
                    in.close();
                    return read;
                })
                .orElse(List.of());
        if (!problems.isEmpty()) {
            Messages words = Messages.english();
            throw new IllegalStateException(problems.inOrder().stream()
                    .map(problem -> ProblemText.line(problem, words))
                    .collect(Collectors.joining("\n")));
        }
        return paths;
    }
}
