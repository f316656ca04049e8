package org.loomproof.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What every single fault and slip of a plan comes to, and the order in which the finished car is tested. */
@Command(name = "faults", mixinStandardHelpOptions = true)
final class FaultsCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "PLAN", descriptionKey = "plan")
    private Path plan;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    @Option(names = "--all", descriptionKey = "all")
    private boolean all;

    @Option(names = "--pairs", descriptionKey = "pairs")
    private boolean pairs;

    private final Messages messages;

    @SuppressWarnings("NullAway.Init") // picocli fills the fields before it calls the command
    FaultsCommand(Messages messages) {
        this.messages = messages;
    }

    @Override
    public Integer call() {
        return new Desk(spec, messages).tryFaults(plan, pairs, json, all);
    }
}
