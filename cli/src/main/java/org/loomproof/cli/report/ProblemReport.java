package org.loomproof.cli.report;

import java.util.List;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemText;
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
        problems.forEach(problem -> lines.wrap(ProblemText.line(problem, messages), "  "));
        lines.cut(messages.text("problems.count", problems.size()));
        return lines.all();
    }
}
