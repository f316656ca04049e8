package org.loomproof.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.loomproof.workshop.meter.advice.Costs;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Says what each wire of a file of readings is, and what to measure next. */
@Command(name = "identify", mixinStandardHelpOptions = true)
final class IdentifyCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Option(names = "--readings", required = true, paramLabel = "FILE", descriptionKey = "readings")
    private Path readings;

    @Option(names = "--sheet", paramLabel = "FILE", descriptionKey = "sheet")
    private @Nullable Path sheet;

    @Option(names = "--wrong-tap", paramLabel = "N", defaultValue = "10", descriptionKey = "wrong-tap")
    private double wrongTap;

    @Option(names = "--wrong-cut", paramLabel = "N", defaultValue = "200", descriptionKey = "wrong-cut")
    private double wrongCut;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    private final Messages messages;

    @SuppressWarnings("NullAway.Init") // picocli fills the fields before it calls the command
    IdentifyCommand(Messages messages) {
        this.messages = messages;
    }

    @Override
    public Integer call() {
        return new Desk(spec, messages).identify(readings, Optional.ofNullable(sheet), costs(), json);
    }

    private Costs costs() {
        try {
            return new Costs(wrongTap, wrongCut);
        } catch (IllegalArgumentException e) {
            throw new CommandLine.ParameterException(spec.commandLine(), messages.text("identify.wrong-costs"), e);
        }
    }
}
