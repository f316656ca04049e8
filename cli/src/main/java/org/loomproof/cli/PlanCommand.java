package org.loomproof.cli;

import java.util.concurrent.Callable;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Three files in, a proven plan and its papers out. */
@Command(name = "plan", mixinStandardHelpOptions = true)
final class PlanCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private ThreeFiles files;

    @Mixin
    private PapersOptions papers;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    private final Messages messages;

    @SuppressWarnings("NullAway.Init") // picocli fills the fields before it calls the command
    PlanCommand(Messages messages) {
        this.messages = messages;
    }

    @Override
    public Integer call() {
        return new Desk(spec, messages)
                .judge(
                        run -> run.plan(files.sheet(), files.kit(), files.order(), papers.wanted()),
                        json,
                        "./loomproof prove " + Desk.PLAN);
    }
}
