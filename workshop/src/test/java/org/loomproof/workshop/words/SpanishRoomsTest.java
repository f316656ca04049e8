package org.loomproof.workshop.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.text.ChoiceFormat;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** What a technician reads on the pages of a job is all there in Spanish, with the same figures in each sentence. */
class SpanishRoomsTest {

    /** The rooms that are whole in Spanish, but for what is {@link #NOT_ON_PAGES}. */
    static final List<String> ROOMS =
            List.of("problem", "plan", "proof", "fault", "readings", "papers", "intake", "meter", "book");

    /** What files and the terminal alone say, in English whoever reads the pages. */
    private static final Pattern NOT_ON_PAGES = Pattern.compile("plan\\.file\\..*|intake\\.(file|report)\\..*");

    /** Words that are the same in both languages. */
    private static final Set<String> SAME =
            Set.of("bay-sheet.panel", "end.part", "quote.work-line", "schematic.heading-short");

    /** A hole with its format; what a choice says is words and no format. */
    private static final Pattern HOLE = Pattern.compile("\\{(\\d+)(,choice|,[a-z]+(,[^{}]*)?)?");

    private static final Pattern WORD = Pattern.compile("\\p{L}{3,}");

    private static final Map<String, String> SPANISH = patterns("es");

    @ParameterizedTest
    @FieldSource("ROOMS")
    void everySentenceIsInTheSpanishFile(String room) {
        Map<String, String> sentences = english(room);
        sentences.values().removeIf(pattern -> !hasWords(pattern));
        assertThat(sentences).isNotEmpty();
        assertThat(sentences.keySet()).allMatch(SPANISH::containsKey);
    }

    @ParameterizedTest
    @FieldSource("ROOMS")
    void noSentenceIsEnglishStill(String room) {
        Map<String, String> alike = said(room);
        alike.entrySet()
                .removeIf(said -> !hasWords(said.getValue()) || !said.getValue().equals(SPANISH.get(said.getKey())));
        assertThat(alike.keySet()).isSubsetOf(SAME);
    }

    @ParameterizedTest
    @FieldSource("ROOMS")
    void everySentenceHasTheSameArgumentsInTheSameFormats(String room) {
        said(room).forEach((key, pattern) -> {
            String spanish = Objects.requireNonNull(SPANISH.get(key));
            assertThat(holes(spanish)).as(key).isEqualTo(holes(pattern));
            assertThat(limits(spanish)).as(key).isEqualTo(limits(pattern));
        });
    }

    @ParameterizedTest
    @FieldSource("ROOMS")
    void everySentenceIsSaidWithNothingOfItsPatternLeft(String room) {
        Object[] arguments = {10.0, 20.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0};
        said(room).forEach((key, pattern) -> {
            String spanish = Objects.requireNonNull(SPANISH.get(key));
            assertThat(new MessageFormat(spanish, Locale.of("es")).format(arguments))
                    .as(key)
                    .doesNotContain("{", "}", "''");
        });
    }

    @Test
    void aLostArgumentFormatOrChoiceIsSeen() {
        assertThat(holes("{0} V")).isNotEqualTo(holes("{0} {1} V"));
        assertThat(holes("{0} V")).isNotEqualTo(holes("{0,number,0.0} V"));
        assertThat(holes("{0,choice,1#uno|1<{0} más}")).isEqualTo(holes("{0,choice,1#one|1<{0} more}"));
        assertThat(limits("{0,choice,0#uno|1<{0} más}")).isNotEqualTo(limits("{0,choice,1#one|1<{0} more}"));
    }

    private static Map<String, String> english(String room) {
        Map<String, String> patterns = patterns("en/" + room);
        patterns.keySet().removeIf(key -> NOT_ON_PAGES.matcher(key).matches());
        return patterns;
    }

    /** The English patterns of a room of which there are Spanish ones. */
    private static Map<String, String> said(String room) {
        Map<String, String> patterns = english(room);
        patterns.keySet().retainAll(SPANISH.keySet());
        return patterns;
    }

    private static Set<String> holes(String pattern) {
        return HOLE.matcher(pattern).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }

    /** Where the choices of a pattern change from one saying to the next. */
    private static List<List<Double>> limits(String pattern) {
        return Arrays.stream(new MessageFormat(pattern, Locale.ENGLISH).getFormats())
                .filter(ChoiceFormat.class::isInstance)
                .map(ChoiceFormat.class::cast)
                .map(choice -> Arrays.stream(choice.getLimits()).boxed().toList())
                .toList();
    }

    private static boolean hasWords(String pattern) {
        return WORD.matcher(HOLE.matcher(pattern).replaceAll("")).find();
    }

    private static Map<String, String> patterns(String file) {
        try (InputStream in = Messages.class.getResourceAsStream(file + ".properties")) {
            Properties properties = new Properties();
            properties.load(new InputStreamReader(Objects.requireNonNull(in, file), StandardCharsets.UTF_8));
            Map<String, String> patterns = new TreeMap<>();
            properties.stringPropertyNames().forEach(key -> patterns.put(key, properties.getProperty(key)));
            return patterns;
        } catch (IOException e) {
            throw new AssertionError(file, e);
        }
    }
}
