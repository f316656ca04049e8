package org.loomproof.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A plan, ours or edited by hand, proven as it stands and written out for bench, bay and customer. */
@Command(name = "papers", mixinStandardHelpOptions = true)
final class PapersCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "PLAN", descriptionKey = "plan")
    private Path plan;

    @Mixin
    private PapersOptions papers;

    @Option(names = "--no-test-order", descriptionKey = "no-test-order")
    private boolean withoutTests;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    private final Messages messages;

    @SuppressWarnings("NullAway.Init") // picocli fills the fields before it calls the command
    PapersCommand(Messages messages) {
        this.messages = messages;
    }

    @Override
    public Integer call() {
        return new Desk(spec, messages).papers(plan, papers.wanted(), !withoutTests, json);
    }
}
