package org.loomproof.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.loomproof.workshop.meter.shock.Wanted;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Finds the setting of a shock sensor from blows of a known strength, and says which blow comes next. */
@Command(name = "shock", mixinStandardHelpOptions = true)
final class ShockCommand implements Callable<Integer> {

    private static final double PERCENT = 100;

    @Spec
    private CommandSpec spec;

    @Option(names = "--blows", required = true, paramLabel = "FILE", descriptionKey = "blows")
    private Path blows;

    @Option(names = "--knocks-a-day", paramLabel = "N", defaultValue = "20", descriptionKey = "knocks-a-day")
    private double knocksADay;

    @Option(names = "--false-a-month", paramLabel = "N", defaultValue = "1", descriptionKey = "false-a-month")
    private double falseAMonth;

    @Option(names = "--noticed", paramLabel = "PERCENT", defaultValue = "95", descriptionKey = "noticed")
    private double noticed;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    private final Messages messages;

    @SuppressWarnings("NullAway.Init") // picocli fills the fields before it calls the command
    ShockCommand(Messages messages) {
        this.messages = messages;
    }

    @Override
    public Integer call() {
        return new Desk(spec, messages).shock(blows, wanted(), json);
    }

    private Wanted wanted() {
        try {
            return new Wanted(knocksADay, falseAMonth, noticed / PERCENT);
        } catch (IllegalArgumentException e) {
            throw new CommandLine.ParameterException(spec.commandLine(), messages.text("shock.wrong-wanted"), e);
        }
    }
}
