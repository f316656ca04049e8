package org.loomproof.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.intake.kit.LeadNotes;
import org.loomproof.intake.kit.LeadReading;
import org.loomproof.intake.kit.LeadReading.PortKind;
import org.loomproof.testing.Note;

/**
 * Twenty lists of leads by somebody who had not seen the reader or its dictionaries, with what each lead is for beside them. Those at even places may be
 * looked at to mend the reader; the others are only scored, but for the first two, which were seen. A pole counts where the answer names one.
 * At the first reading, before anything was mended by them: of those looked at since role 46 of 60, colour 60 of 60, pole 26 of 37; of those held back role
 * 36 of 55, colour 52 of 55, pole 25 of 41.
 */
class KitCorpusTest {

    private static final List<String> FIELDS = List.of("role", "colour", "pole");
    private static final int FIRST_HELD_BACK = 5;

    @Test
    void listsThatMayBeLookedAtAreReadAsWellAsBefore() throws IOException {
        Map<String, int[]> right = scored(0, true);
        assertThat(share(right, "role")).isGreaterThanOrEqualTo(0.96);
        assertThat(share(right, "colour")).isGreaterThanOrEqualTo(0.99);
        assertThat(share(right, "pole")).isGreaterThanOrEqualTo(0.94);
    }

    @Test
    void heldBackListsAreReadAsWellAsBefore() throws IOException {
        Map<String, int[]> right = scored(FIRST_HELD_BACK, false);
        assertThat(share(right, "role")).isGreaterThanOrEqualTo(0.72);
        assertThat(share(right, "colour")).isGreaterThanOrEqualTo(0.94);
        assertThat(share(right, "pole")).isGreaterThanOrEqualTo(0.65);
    }

    @Test
    void aRatingIsOneThatTheListStatesAndAnyOtherIsAskedFor() throws IOException {
        for (CorpusFile.Sheet kit : CorpusFile.sheets("fresh/kits.txt")) {
            SourceLines source = lines(kit);
            for (LeadReading lead : LeadNotes.of(source).leads()) {
                String line = source.lines().get(lead.origin().line() - 1).folded();
                boolean states = line.matches("(?s).*\\d\\s*(?:m?a\\b|amp|milliamp).*");
                assertThat(lead.rating().isPresent() && !states).as(line).isFalse();
                boolean output = lead.port()
                        .filter(p -> p == PortKind.LOW_SIDE || p == PortKind.HIGH_SIDE)
                        .isPresent();
                boolean asked = lead.asks().stream().anyMatch(ask -> ask.key().equals("intake.ask.rating"));
                assertThat(output && lead.rating().isEmpty() && !asked).as(line).isFalse();
            }
        }
    }

    private static SourceLines lines(CorpusFile.Sheet kit) {
        return Notes.lines(kit.name(), kit.text().getBytes(StandardCharsets.UTF_8));
    }

    /** Right ones and all, by field. */
    private static Map<String, int[]> scored(int from, boolean tells) throws IOException {
        Map<String, List<String>> meanings = meanings();
        List<CorpusFile.Sheet> kits = CorpusFile.sheets("fresh/kits.txt");
        assertThat(kits).hasSize(20);
        Map<String, int[]> right = new TreeMap<>();
        for (int i = from; i < kits.size(); i += 2) {
            CorpusFile.Sheet kit = kits.get(i);
            List<LeadReading> left = new ArrayList<>(LeadNotes.of(lines(kit)).leads());
            for (String answer : kit.answers()) {
                String[] cells = (answer + ";;").split(";", -1);
                List<String> wanted = List.of(String.join("|", meanings.get(cells[0])), cells[1], cells[2]);
                List<String> got = taken(wanted, left);
                for (int f = 0; f < FIELDS.size(); f++) {
                    if (f == 2 && wanted.get(f).isEmpty()) {
                        continue;
                    }
                    int[] tally = right.computeIfAbsent(FIELDS.get(f), x -> new int[2]);
                    tally[0] += isRight(wanted, got, f) ? 1 : 0;
                    tally[1]++;
                    if (tells && !isRight(wanted, got, f)) {
                        System.out.println(kit.name() + " " + answer + ": " + FIELDS.get(f) + " read as " + got.get(f));
                    }
                }
            }
        }
        right.forEach((field, t) ->
                Note.that("kits " + (tells ? "looked at" : "held back") + " " + field + ": " + t[0] + " of " + t[1]));
        return right;
    }

    /** The lead most like the answer, which then answers no other. */
    private static List<String> taken(List<String> wanted, List<LeadReading> left) {
        Optional<LeadReading> best = Optional.empty();
        int most = 0;
        for (LeadReading lead : left) {
            int alike = alike(wanted, fields(lead));
            if (alike > most) {
                most = alike;
                best = Optional.of(lead);
            }
        }
        best.ifPresent(left::remove);
        return best.map(KitCorpusTest::fields).orElse(List.of("-", "-", "-"));
    }

    private static int alike(List<String> wanted, List<String> got) {
        return (isRight(wanted, got, 1) ? 4 : 0)
                + (isRight(wanted, got, 0) ? 2 : 0)
                + (!wanted.get(2).isEmpty() && isRight(wanted, got, 2) ? 1 : 0);
    }

    private static boolean isRight(List<String> wanted, List<String> got, int field) {
        return field == 0
                ? List.of(wanted.get(0).split("\\|", -1)).contains(got.get(0))
                : wanted.get(field).equals(got.get(field));
    }

    private static List<String> fields(LeadReading lead) {
        return List.of(
                lead.role().map(a -> a.value().word()).orElse("other"),
                lead.colour().map(a -> a.value().letters()).orElse(""),
                lead.port()
                        .map(port -> switch (port) {
                            case SUPPLY, HIGH_INPUT, HIGH_SIDE -> "pos";
                            case GROUND, LOW_INPUT, LOW_SIDE -> "neg";
                            case TO_EXTRA -> "";
                        })
                        .orElse(""));
    }

    private static double share(Map<String, int[]> right, String field) {
        int[] tally = right.getOrDefault(field, new int[] {0, 1});
        return tally[0] / (double) tally[1];
    }

    private static Map<String, List<String>> meanings() throws IOException {
        try (InputStream in = KitCorpusTest.class.getResourceAsStream("fresh/kit-meanings.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(line -> line.split(": ", 2))
                    .collect(Collectors.toMap(parts -> parts[0], parts -> List.of(parts[1].split(", ", -1))));
        }
    }
}
