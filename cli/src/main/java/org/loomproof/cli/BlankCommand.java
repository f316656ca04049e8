package org.loomproof.cli;

import java.util.concurrent.Callable;
import org.loomproof.shop.job.JobRun;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints a plan in which nothing is decided yet, to be written by hand and then proven. */
@Command(name = "blank", mixinStandardHelpOptions = true)
final class BlankCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private ThreeFiles files;

    private final Messages messages;

    @SuppressWarnings("NullAway.Init") // picocli fills the fields before it calls the command
    BlankCommand(Messages messages) {
        this.messages = messages;
    }

    @Override
    public Integer call() {
        JobRun run = new JobRun(messages, stage -> {});
        return switch (run.blank(files.sheet(), files.kit(), files.order())) {
            case Checked.Bad<String> bad -> new Desk(spec, messages).problems(bad.problems(), false);
            case Checked.Good<String> good -> {
                spec.commandLine().getOut().print(good.value());
                spec.commandLine().getOut().flush();
                yield 0;
            }
        };
    }
}
