package org.loomproof.workshop.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class MessagesTest {

    /** A key given in full where a phrase is made or a message asked for. */
    private static final Pattern KEY = Pattern.compile(
            "(?:Phrase\\.of|[mM]essages\\.text|words\\.(?:of|text))\\(\\s*\"([a-z0-9-]+(?:\\.[a-z0-9-]+)+)\"\\s*[,)]");

    private final Messages english = Messages.english();

    @Test
    void everyKeyGivenInFullAnywhereHasAMessage() {
        Set<String> missing = new TreeSet<>();
        int found = 0;
        for (Path source : sources()) {
            Matcher matcher = KEY.matcher(read(source));
            while (matcher.find()) {
                found++;
                if (!english.knows(matcher.group(1))) {
                    missing.add(matcher.group(1) + " in " + source.getFileName());
                }
            }
        }
        assertThat(missing).isEmpty();
        assertThat(found).as("keys found: the pattern still fits the code").isGreaterThan(200);
    }

    @Test
    void anotherLanguageIsOneFile() {
        Messages esperanto = Messages.in(Locale.of("eo"));
        assertThat(esperanto.text("decision.connect")).isEqualTo("konekti");
        assertThat(esperanto.text("decision.trim")).isEqualTo(english.text("decision.trim"));
    }

    @Test
    void aLanguageWithoutAFileIsEnglishNumbersIncluded() {
        assertThat(Messages.in(Locale.GERMANY).text("report.took", 1234.5))
                .isEqualTo(english.text("report.took", 1234.5));
    }

    @Test
    void listsAndNestedPhrasesAreRenderedAndPathsAreOneWord() {
        assertThat(english.text("report.until", List.of("a", Phrase.of("decision.trim"))))
                .endsWith("a, trim");
        assertThat(english.text("report.papers", Path.of("one", "two")))
                .endsWith(Path.of("one", "two").toString());
    }

    @Test
    void aKeyWithoutAMessageIsOurOwnMistake() {
        assertThatThrownBy(() -> english.text("no.such.key")).hasMessageContaining("no.such.key");
    }

    private static List<Path> sources() {
        try (Stream<Path> all = Files.walk(Path.of(".."))) {
            return all.filter(p -> p.toString().contains("src/main/java")
                            && p.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path source) {
        try {
            return Files.readString(source);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
