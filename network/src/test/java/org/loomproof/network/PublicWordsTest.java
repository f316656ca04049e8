package org.loomproof.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The engine is a library of its own: whatever of it is public says in words what it is, in what units. */
class PublicWordsTest {
    private static final Path SOURCES = Path.of("src/main/java");
    private static final Pattern TYPE = Pattern.compile(
            "\\s*public (?:(?:static|final|sealed|non-sealed|abstract) )*(?:class|record|interface|enum) .*");
    private static final Pattern METHOD = Pattern.compile("\\s*public .*\\) (?:throws .*)?\\{");
    private static final Pattern COMPACT_CONSTRUCTOR = Pattern.compile("\\s*public \\w+ \\{");
    private static final Pattern PARAMETER = Pattern.compile("\\b(?:double|int|long|boolean) (\\w+)");

    @Test
    void whatIsPublicIsExplained() {
        List<String> silent = new ArrayList<>();
        for (Path file : sources()) {
            List<String> lines = lines(file);
            for (int at = 0; at < lines.size(); at++) {
                String line = lines.get(at);
                boolean isPublic =
                        TYPE.matcher(line).matches() || METHOD.matcher(line).matches();
                if (isPublic && !COMPACT_CONSTRUCTOR.matcher(line).matches() && !isExplained(lines, at)) {
                    silent.add(file.getFileName() + ":" + (at + 1) + " " + line.strip());
                }
            }
        }
        assertThat(silent).as("public, and without a word of explanation").isEmpty();
    }

    /** A number that is a component of a public record is told by its name: its unit is in it, or what it counts is said. */
    @Test
    void numbersOfRecordsAreToldOneByOne() {
        List<String> silent = new ArrayList<>();
        for (Path file : sources()) {
            List<String> lines = lines(file);
            for (int at = 0; at < lines.size(); at++) {
                if (lines.get(at).matches("public record .*")) {
                    String words = wordsBefore(lines, at);
                    Matcher number = PARAMETER.matcher(header(lines, at));
                    while (number.find()) {
                        if (!words.contains("@param " + number.group(1) + " ")) {
                            silent.add(file.getFileName() + " " + number.group(1));
                        }
                    }
                }
            }
        }
        assertThat(silent).as("components without a line of their own").isEmpty();
    }

    private static String header(List<String> lines, int from) {
        StringBuilder header = new StringBuilder();
        for (int at = from; at < lines.size(); at++) {
            header.append(lines.get(at)).append(' ');
            if (lines.get(at).endsWith("{")) {
                break;
            }
        }
        return header.toString();
    }

    private static String wordsBefore(List<String> lines, int at) {
        int first = at;
        while (first > 0 && !lines.get(first - 1).isBlank() && !lines.get(first).startsWith("/**")) {
            first--;
        }
        return String.join("\n", lines.subList(first, at)) + "\n";
    }

    private static boolean isExplained(List<String> lines, int at) {
        int before = at - 1;
        while (lines.get(before).strip().startsWith("@")) {
            if (lines.get(before).strip().equals("@Override")) {
                return true;
            }
            before--;
        }
        return lines.get(before).strip().endsWith("*/");
    }

    private static List<Path> sources() {
        try (Stream<Path> all = Files.walk(SOURCES)) {
            List<Path> found = all.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .toList();
            assertThat(found).hasSizeGreaterThan(100);
            return found;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
