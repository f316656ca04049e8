package org.loomproof.workshop.problem;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.words.Messages;

/** A problem as a reader sees it: the same words on the terminal, on a page and in a report. */
public final class ProblemText {

    private ProblemText() {}

    /** Place, what was found, what would do and what to do about it, in one line. */
    public static String line(Problem problem, Messages words) {
        List<String> parts = new ArrayList<>();
        parts.add(words.text("problem.kind." + problem.kind().id()));
        if (!problem.found().isEmpty()) {
            parts.add(words.text("problem.found", problem.found()));
        }
        parts.add(words.text(problem.wanted()));
        parts.add(words.text(problem.hint()));
        parts.removeIf(String::isBlank);
        return words.text("problem.line", place(problem.at(), words), String.join("; ", parts));
    }

    /** Each of the problems in a line. */
    public static List<String> lines(List<Problem> problems, Messages words) {
        return problems.stream().map(problem -> line(problem, words)).toList();
    }

    /** File, line, column and path, as far as there are any: {@code sheet.yaml:12:7 circuits[starter].rest}. */
    public static String place(Place at, Messages words) {
        String line = at.line() == 0 ? at.file() : at.file() + ":" + at.line();
        String spot = at.column() == 0 ? line : line + ":" + at.column();
        return at.path().isEmpty() ? spot : words.text("problem.place", spot, at.path());
    }
}
