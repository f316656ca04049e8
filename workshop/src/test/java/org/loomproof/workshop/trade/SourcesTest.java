package org.loomproof.workshop.trade;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.trade.table.Status;

/** The data files and the page of sources say the same. */
class SourcesTest {

    private static final Path PAGE = Path.of("../docs/sources.md");
    private static final Path FILES = Path.of("src/main/resources/org/loomproof/workshop");
    private static final Path CODE = Path.of("src/main/java/org/loomproof/workshop");

    /** How the publications that this trade leans on are designated. */
    private static final Pattern DESIGNATION = Pattern.compile(String.join(
            "|",
            "\\b(?:ISO|IEC|ASTM|DIN|NBS Circular|SAE) [A-Z]?\\d[\\d-]*\\d",
            "\\bUL \\d+[A-Z]?(?:-\\d+)?",
            "\\bNASA-STD-\\d[\\d.]*\\d",
            "\\bFAA AC \\d[\\d.]*-\\d[A-Z]",
            "\\b\\d+ CFR \\d[\\d.]*\\d",
            "\\bUN R\\d+",
            "\\bTM \\d[\\dP&-]*\\d",
            "\\bSR \\d[\\d.]*\\d",
            "\\bSCPS\\d+"));

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> files(Path folder, String... endings) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> Stream.of(endings).anyMatch(file.toString()::endsWith))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Where each publication is named: in the remarks and rows of data files, and in the code that works with them. */
    private static Map<String, Set<String>> named() {
        Map<String, Set<String>> places = new TreeMap<>();
        Stream<Path> code = Stream.of("trade", "sizing", "planner", "standby", "prover", "quantity", "brief", "wiring")
                .flatMap(room -> files(CODE.resolve(room), ".java").stream());
        Stream.concat(files(FILES, ".csv", ".yaml").stream(), code)
                .forEach(file -> lines(file)
                        .forEach(line -> DESIGNATION
                                .matcher(line)
                                .results()
                                .forEach(found -> places.computeIfAbsent(found.group(), name -> new TreeSet<>())
                                        .add(file.getFileName().toString()))));
        return places;
    }

    @Test
    void everyPublicationThatDataFilesAndCodeNameStandsOnThePage() {
        String page = String.join("\n", lines(PAGE));
        Map<String, Set<String>> missing = new TreeMap<>(named());
        assertThat(missing).hasSizeGreaterThan(20);
        missing.keySet().removeIf(page::contains);
        assertThat(missing).isEmpty();
    }

    /** The rows of the page that name a data file, and the marks that stand in the file itself. */
    @Test
    void everyDataFileFromAPublishedSourceStandsOnThePageWithTheMarksOfItsRows() {
        List<String> page = lines(PAGE);
        List<String> wrong = files(FILES, ".csv").stream()
                .flatMap(file -> Stream.of(Status.READ, Status.MEMORY)
                        .filter(mark -> lines(file).stream()
                                .anyMatch(line -> !line.startsWith("#")
                                        && List.of(line.split(",", -1)).contains(mark.word())))
                        .filter(mark -> page.stream()
                                .filter(row -> row.contains(file.getFileName().toString()))
                                .noneMatch(row -> row.contains(mark.name())))
                        .map(mark -> file.getFileName() + " has rows marked " + mark.word()))
                .toList();
        assertThat(wrong).isEmpty();
    }
}
