package org.loomproof.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command {@code loomproof}. Every word it prints about itself comes from {@code messages.properties}. */
@Command(
        name = "loomproof",
        resourceBundle = "org.loomproof.cli.messages",
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND",
        subcommands = HelpCommand.class)
public final class Main implements Runnable {

    @Spec
    private CommandSpec spec;

    @SuppressWarnings("NullAway.Init") // picocli fills the field before it calls run
    private Main() {}

    /** The command line, printing to the given streams. */
    static CommandLine commandLine(PrintWriter out, PrintWriter err) {
        return new CommandLine(new Main())
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
        int code = commandLine(out, err).execute(args);
        out.flush();
        err.flush();
        System.exit(code);
    }
}
