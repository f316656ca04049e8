package org.loomproof.intake.decode;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;

/** Text from a picture of paper, by the program tesseract where it is installed. */
final class PictureText {

    private static final int LONGEST_SECONDS = 120;

    private static final Set<String> LANGUAGES = Set.of("eng", "deu", "spa", "fra");

    private final String program;

    PictureText(String program) {
        this.program = program;
    }

    /** The languages of ours that are installed, joined as the program wants them; empty when it cannot be asked. */
    private String languages() throws IOException {
        Process process = new ProcessBuilder(program, "--list-langs")
                .redirectErrorStream(true)
                .start();
        try (BufferedReader said = process.inputReader(StandardCharsets.UTF_8)) {
            return said.lines()
                    .map(String::strip)
                    .filter(LANGUAGES::contains)
                    .sorted(Comparator.comparing((String l) -> !l.equals("eng")).thenComparing(l -> l))
                    .collect(Collectors.joining("+"));
        } catch (UncheckedIOException e) {
            return "";
        } finally {
            process.destroyForcibly();
        }
    }

    /** How the reading of a picture ended. */
    sealed interface Outcome {
        record Text(String text) implements Outcome {}

        record NotInstalled() implements Outcome {}

        record Failed() implements Outcome {}
    }

    /** PNG, JPEG or TIFF, by their first bytes. */
    static boolean isPicture(byte[] bytes) {
        if (bytes.length < 4) {
            return false;
        }
        int head = ((bytes[0] & 0xFF) << 24) | ((bytes[1] & 0xFF) << 16) | ((bytes[2] & 0xFF) << 8) | (bytes[3] & 0xFF);
        return head == 0x89504E47 || head >>> 8 == 0xFFD8FF || head == 0x49492A00 || head == 0x4D4D002A;
    }

    Outcome read(byte[] picture) {
        try {
            Path folder = Files.createTempDirectory("loomproof-picture");
            try {
                return read(Files.write(folder.resolve("picture"), picture), folder.resolve("text"));
            } finally {
                for (String name : new String[] {"picture", "text.txt", "said"}) {
                    Files.deleteIfExists(folder.resolve(name));
                }
                Files.delete(folder);
            }
        } catch (IOException e) {
            return new Outcome.Failed();
        }
    }

    private Outcome read(Path picture, Path text) throws IOException {
        Process process;
        try {
            // Page mode 6, one block of text, and spaces between words kept: columns are found behind by their gaps.
            List<String> command = new ArrayList<>(List.of(
                    program, picture.toString(), text.toString(), "--psm", "6", "-c", "preserve_interword_spaces=1"));
            String languages = languages();
            if (!languages.isEmpty()) {
                command.addAll(List.of("-l", languages));
            }
            ProcessBuilder builder = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(picture.resolveSibling("said").toFile());
            // Its threads wait for each other busily: on a machine with other work one alone is many times as fast.
            builder.environment().put("OMP_THREAD_LIMIT", "1");
            process = builder.start();
        } catch (IOException e) {
            return new Outcome.NotInstalled();
        }
        try {
            if (process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS) && process.exitValue() == 0) {
                return new Outcome.Text(Files.readString(Path.of(text + ".txt"), StandardCharsets.UTF_8));
            }
            return new Outcome.Failed();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return new Outcome.Failed();
        } finally {
            process.destroyForcibly();
        }
    }
}
