package org.loomproof.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.intake.decode.Origin;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.testing.Sample;

/** Nothing is dropped silently: each line that holds a letter or digit is an entry's, a note that an entry carries, or told as loose. */
class EveryLineTest {

    private static final List<String> SCRAPS = List.of(
            "door trigger",
            "red/blk",
            "(-)",
            "+",
            "Colour",
            "Function",
            "Pin",
            "|",
            "\t",
            "\n",
            "\n",
            "\n\n",
            ",",
            ";",
            ":",
            " - ",
            "   ",
            "ignition",
            "12V",
            "kick panel:",
            "same",
            "*",
            "1)",
            "note",
            "wuzzle",
            "The horn is black.",
            "and",
            "LHD",
            "===",
            "??",
            "n/a",
            "see");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "corpus/tables.txt",
                "corpus/lines.txt",
                "corpus/prose.txt",
                "corpus/english.txt",
                "corpus/german.txt",
                "corpus/spanish.txt",
                "corpus/french.txt",
                "corpus/odd.txt",
                "fresh/fresh-english.txt",
                "fresh/fresh-german.txt",
                "fresh/fresh-spanish.txt",
                "fresh/fresh-french.txt",
                "fresh/fresh-messy.txt"
            })
    void everyLineOfTheCorpusIsAccountedFor(String file) throws IOException {
        for (CorpusFile.Sheet sheet : CorpusFile.sheets(file)) {
            assertAccountedFor(sheet.name(), sheet.text());
        }
    }

    static LongStream seeds() {
        return Sample.seeds(200, 4000);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyLineOfADressedSheetAndOfRandomScrapsIsAccountedFor(long seed) {
        assertAccountedFor(
                "dressed " + seed, new Dresser(seed, false).sheet(seed).text());
        Random random = new Random(seed);
        StringBuilder scraps = new StringBuilder();
        for (int i = random.nextInt(80); i >= 0; i--) {
            scraps.append(SCRAPS.get(random.nextInt(SCRAPS.size()))).append(random.nextBoolean() ? " " : "");
        }
        assertAccountedFor("scraps " + seed, scraps.toString());
    }

    @Test
    void theNamesOfColumnsAreToldTooEvenWithoutARow() {
        assertAccountedFor("header", "Circuit\tColour\tPolarity\nIgnition\tred\t+\n\nCircuit\tColour\tPolarity\n");
    }

    private static void assertAccountedFor(String name, String text) {
        SourceLines source = Notes.lines(name, text.getBytes(StandardCharsets.UTF_8));
        ReadNotes notes = ReadNotes.of(source);
        Set<Integer> told = new TreeSet<>();
        for (Entry entry : notes.entries()) {
            add(entry.origin(), told);
            Stream.of(entry.notes(), entry.leftOver()).flatMap(List::stream).forEach(p -> add(p, told));
        }
        notes.loose().forEach(p -> add(p, told));
        for (Passage line : source.lines()) {
            if (line.text().codePoints().anyMatch(Character::isLetterOrDigit)) {
                assertThat(told)
                        .as("%s, line %s: %s", name, line.origin().line(), line.text())
                        .contains(line.origin().line());
            }
        }
    }

    private static void add(Passage passage, Set<Integer> told) {
        if (!passage.isBlank()) {
            add(passage.origin(), told);
        }
    }

    private static void add(Origin origin, Set<Integer> told) {
        for (int line = origin.line(); line <= origin.lastLine(); line++) {
            told.add(line);
        }
    }
}
