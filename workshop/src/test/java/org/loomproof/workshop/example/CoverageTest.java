package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The lists of what a technician meets, and of what the prover is to show, name what exists, and count truly what has none yet. */
class CoverageTest {

    private static final Pattern NAMED = Pattern.compile("`([^`]+)`");
    private static final Pattern A_TEST = Pattern.compile("([A-Z]\\w*Test)\\.(\\w+)");
    private static final String NONE = "none yet";

    private static final Path HOME = ExampleFiles.root().resolveSibling("");

    @ParameterizedTest
    @ValueSource(strings = {"coverage.md", "prover-coverage.md"})
    void whatTheListNamesExists(String list) throws IOException {
        List<Path> tests = testSources();
        for (String shownBy : shownBy(list)) {
            Matcher named = NAMED.matcher(shownBy);
            int count = 0;
            while (named.find()) {
                count++;
                assertThat(exists(named.group(1), tests))
                        .as("%s", named.group(1))
                        .isTrue();
            }
            assertThat(count > 0 || shownBy.equals(NONE)).as("%s", shownBy).isTrue();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"coverage.md", "prover-coverage.md"})
    void itsCountsAreTrue(String list) throws IOException {
        List<String> rows = shownBy(list);
        long open = rows.stream().filter(NONE::equals).count();
        assertThat(Files.readString(file(list)))
                .contains(
                        "Of %d rows %d are shown and %d are not yet.".formatted(rows.size(), rows.size() - open, open));
    }

    private static Path file(String list) {
        return HOME.resolve("docs/internals").resolve(list);
    }

    /** The right column of every row. */
    private static List<String> shownBy(String list) throws IOException {
        List<String> right = new ArrayList<>();
        for (String line : Files.readAllLines(file(list))) {
            String[] cells = line.split("\\|", -1);
            if (cells.length == 4
                    && !cells[2].isBlank()
                    && !cells[2].startsWith("-")
                    && !cells[2].strip().equals("shown by")) {
                right.add(cells[2].strip());
            }
        }
        assertThat(right).isNotEmpty();
        return right;
    }

    private static boolean exists(String name, List<Path> tests) throws IOException {
        Matcher test = A_TEST.matcher(name);
        if (!test.matches()) {
            return Files.isRegularFile(ExampleFiles.root().resolve(name).resolve("expected.yaml"));
        }
        for (Path source : tests) {
            if (source.endsWith(test.group(1) + ".java")
                    && Files.readString(source).contains("void " + test.group(2) + "(")) {
                return true;
            }
        }
        return false;
    }

    private static List<Path> testSources() throws IOException {
        List<Path> sources = new ArrayList<>();
        for (String module : List.of("workshop", "papers", "cli")) {
            try (Stream<Path> files = Files.walk(HOME.resolve(module).resolve("src/test/java"))) {
                files.filter(file -> file.toString().endsWith("Test.java")).forEach(sources::add);
            }
        }
        return sources;
    }
}
