package org.loomproof.network.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assumptions;

/** Runs Debian's ngspice over many decks in one process and reads what it prints. */
final class NumericalReference {
    private static final String PROGRAM = "ngspice";
    private static final Pattern PRINTED =
            Pattern.compile("^(\\S+) = (-?[0-9.]+e[-+][0-9]+)\\s*$", Pattern.CASE_INSENSITIVE);

    private NumericalReference() {}

    static boolean isInstalled() {
        String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
        return List.of(path.split(":")).stream().anyMatch(folder -> Files.isExecutable(Path.of(folder, PROGRAM)));
    }

    /** Skips the test with a line where the reference is missing; fails it when CI=true. */
    static void assumeInstalled() {
        boolean installed = isInstalled();
        if (!installed) {
            assertThat(System.getenv("CI"))
                    .as("ngspice must be there when CI=true")
                    .isNotEqualTo("true");
            System.out.println("ngspice is not installed: comparison with it left out");
        }
        Assumptions.assumeTrue(installed);
    }

    /** For each deck what was printed, by lower-case name; empty where it did not converge. */
    static List<Map<String, Double>> solve(Path folder, List<Deck> decks) {
        try {
            StringBuilder script = new StringBuilder("all decks\n.control\nset numdgt=12\nset width=200\n");
            for (int k = 0; k < decks.size(); k++) {
                Path file = folder.resolve("deck" + k + ".cir");
                Files.writeString(file, decks.get(k).text());
                script.append("echo deck ").append(k).append('\n');
                decks.get(k)
                        .commands(file.toString())
                        .forEach(line -> script.append(line).append('\n'));
            }
            script.append("echo deck end\nquit 0\n.endc\n.end\n");
            Path main = folder.resolve("all.cir");
            Files.writeString(main, script);
            Path output = folder.resolve("output.txt");
            Process process = new ProcessBuilder(PROGRAM, "-b", main.toString())
                    .redirectError(ProcessBuilder.Redirect.DISCARD) // merged, it would cut printed lines in two
                    .redirectOutput(output.toFile())
                    .start();
            process.waitFor();
            return read(Files.readAllLines(output, StandardCharsets.ISO_8859_1), decks.size());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<Map<String, Double>> read(List<String> lines, int count) {
        List<Map<String, Double>> results = new ArrayList<>();
        Map<String, Double> current = new HashMap<>();
        for (String line : lines) {
            Matcher printed = PRINTED.matcher(line.strip());
            if (line.startsWith("deck ")) {
                current = new HashMap<>();
                results.add(current);
            } else if (printed.matches()) {
                current.put(printed.group(1).toLowerCase(Locale.ROOT), Double.valueOf(printed.group(2)));
            }
        }
        if (results.size() != count + 1) {
            throw new IllegalStateException("the reference stopped after deck " + results.size() + " of " + count + ": "
                    + lines.subList(Math.max(0, lines.size() - 5), lines.size()));
        }
        return results.subList(0, count);
    }
}
