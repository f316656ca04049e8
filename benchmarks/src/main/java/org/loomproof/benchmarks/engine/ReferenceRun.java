package org.loomproof.benchmarks.engine;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * What the reference did with one deck, in a process of its own.
 *
 * @param micros processor microseconds a run, all its commands together
 * @param answers per run its points, each with what was asked for; none where the reference lost its way
 */
record ReferenceRun(double micros, List<List<double[]>> answers) {
    /**
     * Runs the compiled driver.
     *
     * @param folder for the files that go between
     * @param deck its lines
     * @param runs one line of commands a run, separated by semicolons, the last of which analyses
     * @param vectors what to ask for after each run
     */
    static ReferenceRun of(Path driver, Path folder, List<String> deck, List<String> runs, List<String> vectors)
            throws IOException, InterruptedException {
        if (runs.isEmpty()) {
            return new ReferenceRun(0, List.of());
        }
        Path answers = folder.resolve("answers");
        Process process = new ProcessBuilder(
                        driver.toString(),
                        Files.write(folder.resolve("deck"), deck).toString(),
                        Files.write(folder.resolve("commands"), runs).toString(),
                        Files.write(folder.resolve("vectors"), vectors).toString(),
                        answers.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IllegalStateException("the driver failed: " + printed);
        }
        return new ReferenceRun(
                Double.parseDouble(printed.lines().toList().getLast().strip()),
                read(ByteBuffer.wrap(Files.readAllBytes(answers)).order(ByteOrder.nativeOrder()), vectors.size()));
    }

    private static List<List<double[]>> read(ByteBuffer buffer, int wanted) {
        List<List<double[]>> runs = new ArrayList<>();
        while (buffer.hasRemaining()) {
            int count = (int) buffer.getDouble();
            List<double[]> points = new ArrayList<>(count);
            for (int p = 0; p < count; p++) {
                double[] point = new double[wanted];
                for (int k = 0; k < wanted; k++) {
                    point[k] = buffer.getDouble();
                }
                points.add(point);
            }
            runs.add(points);
        }
        return runs;
    }
}
