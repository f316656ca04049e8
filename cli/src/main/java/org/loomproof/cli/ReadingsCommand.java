package org.loomproof.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What a meter must show at every circuit of a plan before anything is joined to it. */
@Command(name = "readings", mixinStandardHelpOptions = true)
final class ReadingsCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "PLAN", descriptionKey = "plan")
    private Path plan;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    private final Messages messages;

    @SuppressWarnings("NullAway.Init") // picocli fills the fields before it calls the command
    ReadingsCommand(Messages messages) {
        this.messages = messages;
    }

    @Override
    public Integer call() {
        return new Desk(spec, messages).expect(plan, json);
    }
}
