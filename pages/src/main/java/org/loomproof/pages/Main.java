package org.loomproof.pages;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.loomproof.pages.web.Quiet;
import org.loomproof.workshop.words.MessageBundle;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The commands around the job book: {@code serve}, {@code backup}, {@code restore}. */
@Command(name = "loomproof", mixinStandardHelpOptions = true, synopsisSubcommandLabel = "COMMAND")
public final class Main {

    static final int OUR_FAULT = 1;
    static final int BAD_INPUT = 2;

    private Main() {}

    static CommandLine commandLine(PrintWriter out, PrintWriter err, Messages messages) {
        return new CommandLine(new Main())
                .addSubcommand(new ServeCommand(messages))
                .addSubcommand(new BackupCommand(messages))
                .addSubcommand(new RestoreCommand(messages))
                .setResourceBundle(new MessageBundle(messages))
                .setOut(out)
                .setErr(err)
                .setUsageHelpWidth(80)
                .setExitCodeExceptionMapper(e -> e instanceof CommandLine.ParameterException ? BAD_INPUT : OUR_FAULT);
    }

    public static void main(String[] arguments) {
        Quiet.libraries();
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(commandLine(out, err, Messages.in(Locale.getDefault())).execute(arguments));
    }
}
