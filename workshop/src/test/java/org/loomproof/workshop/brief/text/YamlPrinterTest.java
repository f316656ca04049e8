package org.loomproof.workshop.brief.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

class YamlPrinterTest {

    /** What a general YAML library makes of the text, every value as a string. */
    private static Object loaded(String text) {
        return new Load(LoadSettings.builder().setSchema(new FailsafeSchema()).build()).loadFromString(text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plain",
                "two words",
                "a: b",
                "a #b",
                "- a",
                "-20 C",
                "yes",
                "null",
                "~",
                "[a]",
                "{a}",
                "it's",
                "\"quoted\"",
                " lead",
                "trail ",
                "8..12 W",
                "0.3 Ω",
                "S1 +",
                "*a",
                "&a",
                "!a",
                "%a",
                "@a",
                "a, b",
                "line\nline\n",
                "line\n\n  indented\nlast\n",
                " first\nlast\n",
                "no end\nhere",
                "ends twice\n\n",
                "tab\there",
                "return\r\nhere\r\n",
                "nul\u0000",
                "\u2028",
                "\uD83D\uDE9A van",
                "back\\slash",
                "\n",
                "#",
                "a:",
                "?",
                "one line\n"
            })
    void anyTextReadsBackToTheLetter(String text) {
        Map<String, Object> entries = new LinkedHashMap<>();
        entries.put("value", text);
        entries.put("list", List.of(text, Map.of("key", text)));
        assertThat(loaded(YamlPrinter.print(entries))).isEqualTo(entries);
    }

    @Test
    void textsOfAnyCharactersReadBackToTheLetter() {
        long seed = 20261126;
        Random random = new Random(seed);
        String alphabet = "ab :#-\n\r\t\"'\\{}[],&*!|>%@`?~=\u00e9\u00a0\u0085\u2028\uFEFF\u0001 ";
        for (int i = 0; i < 5000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(1, 12); n > 0; n--) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            Map<String, Object> entries = Map.of("outer", List.of(Map.of("inner", text.toString())));
            assertThat(loaded(YamlPrinter.print(entries)))
                    .as("seed %d, case %d", seed, i)
                    .isEqualTo(entries);
        }
    }

    @Test
    void whatFitsALineStandsOnItAndWhatDoesNotIsIndented() {
        Map<String, Object> wire = new LinkedHashMap<>();
        wire.put("id", "W1");
        wire.put("note", "");
        wire.put("to", "K1 85");
        Map<String, Object> entries = new LinkedHashMap<>();
        entries.put("wires", List.of(wire, Map.of("because", "word ".repeat(30).strip())));
        entries.put("empty", List.of());
        assertThat(YamlPrinter.print(entries))
                .isEqualTo("wires:\n  - {id: W1, to: K1 85}\n  - because: "
                        + "word ".repeat(30).strip() + "\n");
    }
}
