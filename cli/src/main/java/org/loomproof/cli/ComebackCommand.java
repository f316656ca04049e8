package org.loomproof.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A finished car came back: what is behind it, and what to measure next. */
@Command(name = "comeback", mixinStandardHelpOptions = true)
final class ComebackCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "PLAN", descriptionKey = "plan")
    private Path plan;

    @Option(names = "--symptoms", required = true, paramLabel = "WORDS", split = ",", descriptionKey = "symptoms")
    private List<String> symptoms;

    @Option(names = "--now-and-then", descriptionKey = "now-and-then")
    private boolean nowAndThen;

    @Option(names = "--readings", paramLabel = "FILE", descriptionKey = "taken")
    private @Nullable Path readings;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    private final Messages messages;

    @SuppressWarnings("NullAway.Init") // picocli fills the fields before it calls the command
    ComebackCommand(Messages messages) {
        this.messages = messages;
    }

    @Override
    public Integer call() {
        return new Desk(spec, messages).comeback(plan, symptoms, nowAndThen, Optional.ofNullable(readings), json);
    }
}
