package org.loomproof.papers.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Sample;

/**
 * The guide to the couplings says what the planner does today. {@code -Dloomproof.write=true -Dloomproof.long=true} writes it
 * anew, drawings and all.
 */
class CouplingsGuideTest {

    private static final boolean WRITE = Boolean.getBoolean("loomproof.write");

    @BeforeAll
    static void isWrittenAnewWhenAskedTo() throws IOException {
        if (!WRITE) {
            return;
        }
        Map<String, CouplingsGuide.Shown> first = new LinkedHashMap<>();
        for (Path example : CouplingsGuide.examples()) {
            CouplingsGuide.couplingsOf(example).forEach(shown -> first.putIfAbsent(shown.key(), shown));
        }
        Files.createDirectories(CouplingsGuide.DRAWINGS);
        try (Stream<Path> old = Files.list(CouplingsGuide.DRAWINGS)) {
            for (Path file : old.toList()) {
                Files.delete(file);
            }
        }
        StringBuilder guide = new StringBuilder(CouplingsGuide.head());
        List<String> keys = new ArrayList<>(first.keySet());
        keys.sort(String::compareTo);
        for (String key : keys) {
            CouplingsGuide.Shown shown = Objects.requireNonNull(first.get(key));
            guide.append(CouplingsGuide.section(shown));
            Files.writeString(CouplingsGuide.DRAWINGS.resolve(shown.file()), shown.drawing());
        }
        Files.writeString(CouplingsGuide.GUIDE, guide.toString().stripTrailing() + "\n");
    }

    @ParameterizedTest
    @MethodSource("someExamples")
    void theSectionsOfAnExampleAreWhatItGivesToday(Path example) throws IOException {
        String guide = Files.readString(CouplingsGuide.GUIDE);
        for (CouplingsGuide.Shown shown : CouplingsGuide.couplingsOf(example)) {
            String place = "](../../examples/" + shown.example() + "/README.md)";
            String section = CouplingsGuide.section(shown);
            String heading = section.substring(0, section.indexOf('\n') + 1);
            assertThat(guide)
                    .as("to be written anew: see the head of docs/guide/couplings.md")
                    .contains(heading);
            int at = guide.indexOf(heading);
            String there = guide.substring(at, Math.min(guide.length(), at + section.length()));
            if (there.contains(place)) {
                assertThat(there.strip())
                        .as("to be written anew: see the head of docs/guide/couplings.md")
                        .isEqualTo(section.strip());
                assertThat(CouplingsGuide.DRAWINGS.resolve(shown.file())).hasContent(shown.drawing());
            }
        }
    }

    static List<Path> someExamples() {
        return Sample.of(CouplingsGuide.examples(), 4);
    }
}
