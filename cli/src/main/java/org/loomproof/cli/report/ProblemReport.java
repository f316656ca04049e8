package org.loomproof.cli.report;

import java.util.List;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.words.Messages;

/** Every problem of the input, each with its place, what was found, what is accepted, and a hint. */
public final class ProblemReport {

    private final Messages messages;

    /** Words come from these messages. */
    public ProblemReport(Messages messages) {
        this.messages = messages;
    }

    /** The problems, in the order given, and how many there are. */
    public List<String> lines(List<Problem> problems) {
        Lines lines = new Lines();
        for (Problem problem : problems) {
            lines.wrap(
                    messages.text(
                            "problems.at", place(problem.at()), problem.at().path()),
                    "  ");
            lines.wrap("  " + messages.text("problems.found", problem.found(), problem.wanted()), "    ");
            String hint = messages.text(problem.hint());
            if (!hint.isEmpty()) {
                lines.wrap("  " + hint, "    ");
            }
        }
        lines.cut(messages.text("problems.count", problems.size()));
        return lines.all();
    }

    private static String place(Place place) {
        return place.line() == 0 ? place.file() : place.file() + ":" + place.line() + ":" + place.column();
    }
}
