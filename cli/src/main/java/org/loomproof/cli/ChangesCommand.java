package org.loomproof.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.loomproof.cli.report.ChangeReport;
import org.loomproof.shop.job.ChangeJson;
import org.loomproof.shop.job.JobRun;
import org.loomproof.workshop.goods.change.PlanChange;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What changes from one plan to the next. */
@Command(name = "changes", mixinStandardHelpOptions = true)
final class ChangesCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "OLD", descriptionKey = "old")
    private Path old;

    @Parameters(index = "1", paramLabel = "NEW", descriptionKey = "new")
    private Path next;

    @Option(names = "--prices", paramLabel = "FILE", descriptionKey = "prices")
    private @Nullable Path prices;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    private final Messages messages;

    @SuppressWarnings("NullAway.Init") // picocli fills the fields before it calls the command
    ChangesCommand(Messages messages) {
        this.messages = messages;
    }

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Checked<PlanChange> change = new JobRun(messages, stage -> {}).change(old, next, Optional.ofNullable(prices));
        return switch (change) {
            case Checked.Bad<PlanChange> bad -> new Desk(spec, messages).problems(bad.problems(), json);
            case Checked.Good<PlanChange>(var found) -> {
                if (json) {
                    out.print(new ChangeJson(messages).of(found));
                } else {
                    new ChangeReport(messages).lines(found, next.toString()).forEach(out::println);
                }
                out.flush();
                yield 0;
            }
        };
    }
}
