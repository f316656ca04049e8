package org.loomproof.benchmarks;

import java.io.File;
import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Warmup;

/** From pressing return to the prompt again, as a person waits for it: shell, virtual machine and all. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3)
@Measurement(iterations = 20)
@Fork(1)
public class CommandStart {

    /** Aim: under 500 ms. */
    @Benchmark
    public int help() throws IOException, InterruptedException {
        return run("help");
    }

    private static int run(String... arguments) throws IOException, InterruptedException {
        File home = new File(System.getProperty("loomproof.home", "."));
        String[] command = new String[arguments.length + 1];
        command[0] = new File(home, "loomproof").getAbsolutePath();
        System.arraycopy(arguments, 0, command, 1, arguments.length);
        int code = new ProcessBuilder(command)
                .directory(home)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
        if (code != 0) {
            throw new IllegalStateException(String.join(" ", command) + " ended with exit code " + code);
        }
        return code;
    }
}
