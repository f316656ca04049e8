package org.loomproof.benchmarks.engine;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One sweep by the reference in a process of its own.
 *
 * @param micros processor microseconds a setting: altering what changed, and the operating point
 * @param answers the voltages asked for, per setting; empty where it lost its way
 */
record ReferenceRun(double micros, List<Optional<double[]>> answers) {
    /**
     * Runs the compiled driver.
     *
     * @param folder for the files that go between
     * @param states one line of commands a setting, from {@link ReferenceDeck}
     */
    static ReferenceRun of(Path driver, Path folder, ReferenceDeck deck, List<String> states)
            throws IOException, InterruptedException {
        if (states.isEmpty()) {
            return new ReferenceRun(0, List.of());
        }
        Path answers = folder.resolve("answers");
        Process process = new ProcessBuilder(
                        driver.toString(),
                        Files.write(folder.resolve("deck"), deck.lines()).toString(),
                        Files.write(folder.resolve("states"), states).toString(),
                        Files.write(folder.resolve("vectors"), deck.vectors()).toString(),
                        answers.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IllegalStateException("the driver failed: " + printed);
        }
        return new ReferenceRun(
                Double.parseDouble(printed.lines().toList().getLast().strip()),
                Files.readAllLines(answers).stream().map(ReferenceRun::read).toList());
    }

    private static Optional<double[]> read(String line) {
        return line.equals("lost")
                ? Optional.empty()
                : Optional.of(Arrays.stream(line.split(" ", -1))
                        .mapToDouble(Double::parseDouble)
                        .toArray());
    }
}
