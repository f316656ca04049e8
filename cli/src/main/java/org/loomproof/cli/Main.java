package org.loomproof.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.loomproof.workshop.words.MessageBundle;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command {@code loomproof}. Every word it prints comes from the message files. */
@Command(name = "loomproof", mixinStandardHelpOptions = true, synopsisSubcommandLabel = "COMMAND")
public final class Main implements Runnable {

    @Spec
    private CommandSpec spec;

    @SuppressWarnings("NullAway.Init") // picocli fills the field before it calls run
    private Main() {}

    /** The command line, printing to the given streams in the language of the messages. */
    static CommandLine commandLine(PrintWriter out, PrintWriter err, Messages messages) {
        return new CommandLine(new Main())
                .addSubcommand(new DemoCommand(messages))
                .addSubcommand(new PlanCommand(messages))
                .addSubcommand(new ProveCommand(messages))
                .addSubcommand(new PapersCommand(messages))
                .addSubcommand(new ChangesCommand(messages))
                .addSubcommand(new FaultsCommand(messages))
                .addSubcommand(new ReadingsCommand(messages))
                .addSubcommand(new ComebackCommand(messages))
                .addSubcommand(new DrainCommand(messages))
                .addSubcommand(new BlankCommand(messages))
                .addSubcommand(new ReadSheetCommand(messages))
                .addSubcommand(new ReadKitCommand(messages))
                .addSubcommand(new IdentifyCommand(messages))
                .addSubcommand(new ShockCommand(messages))
                .addSubcommand(new HelpCommand())
                .setResourceBundle(new MessageBundle(messages))
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setOut(out)
                .setErr(err)
                .setUsageHelpWidth(80)
                .setExitCodeExceptionMapper(Main::exitCodeFor);
    }

    private static int exitCodeFor(Throwable failure) {
        return failure instanceof CommandLine.ParameterException ? ExitCode.BAD_INPUT : ExitCode.OUR_FAULT;
    }

    /** Without a command there is nothing to do but say which there are. */
    @Override
    public void run() {
        CommandLine self = spec.commandLine();
        self.usage(self.getOut());
    }

    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int code = commandLine(out, err, Messages.in(Locale.getDefault())).execute(args);
        out.flush();
        err.flush();
        System.exit(code);
    }
}
