package org.loomproof.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.loomproof.shop.notes.NewFile;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine.Model.CommandSpec;

/** What the commands that read notes share: the file written first, then the report, and the exit code. */
final class ReadingDesk {

    private final CommandSpec spec;
    private final Messages messages;
    private final boolean json;

    ReadingDesk(CommandSpec spec, Messages messages, boolean json) {
        this.spec = spec;
        this.messages = messages;
        this.json = json;
    }

    int problems(List<Problem> problems) {
        return new Desk(spec, messages).problems(problems, json);
    }

    /** Writes the files that are wanted and prints the report; nothing is printed when one cannot be written. */
    int show(List<String> report, Map<Path, String> files, boolean settled) {
        List<Problem> refused = NewFile.write(files);
        if (!refused.isEmpty()) {
            return problems(refused);
        }
        PrintWriter out = spec.commandLine().getOut();
        report.forEach(out::println);
        if (!json) {
            files.keySet().forEach(f -> out.println(messages.text("intake.report.file", f)));
        }
        out.flush();
        return settled ? 0 : ExitCode.STOPPED;
    }
}
