package org.loomproof.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A plan, ours or edited by hand, proven as it stands. */
@Command(name = "prove", mixinStandardHelpOptions = true)
final class ProveCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "PLAN", descriptionKey = "plan")
    private Path plan;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    private final Messages messages;

    @SuppressWarnings("NullAway.Init") // picocli fills the fields before it calls the command
    ProveCommand(Messages messages) {
        this.messages = messages;
    }

    @Override
    public Integer call() {
        return new Desk(spec, messages).prove(plan, json);
    }
}
