package org.loomproof.workshop.brief.path;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.brief.text.FigureReader;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/** Reads {@code path} and {@code branches} of one circuit. */
public final class PathReader {

    private final StepReader steps;
    private final SheetNames names;

    public PathReader(CircuitId circuit, FigureReader figures, SheetNames names) {
        this.steps = new StepReader(circuit.value(), figures, names);
        this.names = names;
    }

    /** The paths of the circuit, the one with {@code here} first; none when the circuit does not say how current runs. */
    public List<List<PathStep>> read(MappingCursor circuit) {
        Optional<Cursor> path = circuit.find("path");
        List<Cursor> branches = circuit.items("branches");
        if (path.isEmpty()) {
            if (!branches.isEmpty()) {
                circuit.missing("path", Phrase.of("problem.wanted.path"));
            }
            return List.of();
        }
        List<List<PathStep>> paths = new ArrayList<>();
        paths.add(one(path.get(), true));
        for (Cursor branch : branches) {
            paths.add(one(branch, false));
        }
        return paths;
    }

    private List<PathStep> one(Cursor path, boolean isMain) {
        List<Cursor> items = path.items();
        List<PathStep> read = new ArrayList<>();
        for (Cursor item : items) {
            steps.read(item).ifPresent(read::add);
        }
        // Order can only be judged when every step could be read.
        if (read.size() == items.size()) {
            checkEnds(path, items, read);
            checkHere(path, items, read, isMain);
            Shortcuts.check(items, read);
        }
        return read;
    }

    private void checkEnds(Cursor path, List<Cursor> items, List<PathStep> read) {
        if (read.size() < 2) {
            path.problem(ProblemKind.WRONG_SHAPE, Phrase.of("problem.wanted.two-steps"));
            return;
        }
        checkEnd(items.getFirst(), read.getFirst(), false);
        checkEnd(items.getLast(), read.getLast(), true);
        for (int i = 0; i < read.size() - 1; i++) {
            if (read.get(i) instanceof PathStep.Input) {
                items.get(i).problem(ProblemKind.WRONG_SHAPE, Phrase.of("problem.wanted.input-last"));
            }
        }
    }

    private void checkEnd(Cursor item, PathStep step, boolean last) {
        switch (step) {
            case PathStep.Point point -> item.mapping().find("point").ifPresent(names::end);
            case PathStep.Supply supply -> {}
            case PathStep.Ground ground -> {}
            case PathStep.Here here -> {}
            case PathStep.Part part -> {
                // An input in the middle has a problem of its own.
                if (!(part instanceof PathStep.Input)) {
                    String wanted = last ? "problem.wanted.place-ends" : "problem.wanted.place-starts";
                    item.problem(ProblemKind.WRONG_SHAPE, Phrase.of(wanted));
                }
            }
        }
    }

    private static void checkHere(Cursor path, List<Cursor> items, List<PathStep> read, boolean isMain) {
        List<Cursor> heres = new ArrayList<>();
        for (int i = 0; i < read.size(); i++) {
            if (read.get(i) instanceof PathStep.Here) {
                heres.add(items.get(i));
            }
        }
        if (isMain && heres.isEmpty()) {
            path.missing(Phrase.of("problem.wanted.here"), Phrase.of("problem.hint.here"));
        }
        for (Cursor again : heres.stream().skip(1).toList()) {
            again.problem(ProblemKind.DUPLICATE_ID, Phrase.of("problem.wanted.here-once"));
        }
    }
}
