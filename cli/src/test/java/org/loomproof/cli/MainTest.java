package org.loomproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.words.Messages;

class MainTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true), Messages.english())
                .execute(args);
    }

    @Test
    void withoutACommandItSaysWhichThereAre() {
        assertThat(run()).isZero();
        assertThat(out.toString()).contains("vehicle sheet", "Commands:", "help");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void helpIsTheSameHoweverItIsAskedFor() {
        assertThat(run("help")).isZero();
        String asked = out.toString();
        out.getBuffer().setLength(0);
        assertThat(run("--help")).isZero();
        assertThat(out.toString()).isEqualTo(asked);
    }

    @Test
    void anUnknownCommandIsBadInput() {
        assertThat(run("prov")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("prov");
    }
}
