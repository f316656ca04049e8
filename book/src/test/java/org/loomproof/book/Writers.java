package org.loomproof.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.spi.ToolProvider;

/**
 * Starts {@link KilledWriter}s as programs of their own and kills them.
 *
 * @param classes their class path, of archives only, so that Java may keep what it loaded from them
 * @param kept where it keeps that: the next start takes half as long
 */
record Writers(String classes, Path kept) {

    /** From Java 25 on what is kept holds linked classes too, which takes a sixth off the work of a start. */
    private static final boolean LINKED = Runtime.version().feature() >= 25;

    /** Packs what they need into a folder. */
    static Writers in(Path folder) {
        List<String> archives = new ArrayList<>();
        for (String entry : System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"))
                .split(File.pathSeparator, -1)) {
            archives.add(Files.isDirectory(Path.of(entry)) ? packed(Path.of(entry), folder, archives.size()) : entry);
        }
        return new Writers(String.join(File.pathSeparator, archives), folder.resolve("writer.jsa"));
    }

    private static String packed(Path classes, Path folder, int number) {
        Path archive = folder.resolve("classes-" + number + ".jar");
        if (!Files.exists(archive)) {
            ToolProvider jar = ToolProvider.findFirst("jar").orElseThrow();
            int code = jar.run(
                    System.out, System.err, "-c", "-0", "-f", archive.toString(), "-C", classes.toString(), ".");
            assertThat(code).isZero();
        }
        return archive.toString();
    }

    /** Has one write into a book until it has answered so often, and kills it (SIGKILL) so many microseconds later. */
    List<String> answersUntilKilled(Path file, String kind, int enough, int micros) {
        try {
            Process writer = started(file, kind);
            List<String> answers = new ArrayList<>();
            try (BufferedReader reader = writer.inputReader(StandardCharsets.UTF_8)) {
                String line = reader.readLine();
                while (line != null) {
                    answers.add(line);
                    if (answers.size() == enough) {
                        boolean ended = writer.waitFor(micros, TimeUnit.MICROSECONDS);
                        assertThat(ended).as("only a kill ends a writer").isFalse();
                        writer.toHandle().destroyForcibly(); // by its handle: what it answered stays readable
                    }
                    line = reader.readLine();
                }
            }
            writer.waitFor();
            assertThat(answers).as("the writer opened the book and wrote").hasSizeGreaterThanOrEqualTo(enough);
            return answers;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The first one ends by itself, once it has written what it loaded. */
    private Process started(Path file, String kind) throws IOException, InterruptedException {
        synchronized (Writers.class) {
            if (!Files.exists(kept)) {
                Process first =
                        program(file, "none", (LINKED ? "-XX:AOTCacheOutput=" : "-XX:ArchiveClassesAtExit=") + kept);
                first.getInputStream().transferTo(OutputStream.nullOutputStream());
                assertThat(first.waitFor()).isZero();
                assertThat(kept).exists();
            }
        }
        return program(file, kind, (LINKED ? "-XX:AOTCache=" : "-XX:SharedArchiveFile=") + kept);
    }

    private Process program(Path file, String kind, String archive) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        archive,
                        "-Xlog:disable", // what it could not keep is nobody's concern, and would stand among the
                        // answers
                        "-cp",
                        classes,
                        KilledWriter.class.getName(),
                        file.toString(),
                        kind)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }
}
