package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.fault.Slip;
import org.loomproof.workshop.prover.FaultProof;
import org.loomproof.workshop.prover.MishapResult;
import org.loomproof.workshop.prover.verdict.Severity;

/**
 * How many faults and slips of each example the computed order of tests notices: {@code fault-coverage.csv} beside this test
 * holds what was found, and what must be found again. No slip and nothing dangerous is left to the eye. The figures count what
 * touches a claim.
 */
class FaultCoverageTest {

    private static final String KNOWN = "fault-coverage.csv";

    /** One row: the example, noticed and all of the dangerous, of the faults, of the slips, and the slips nobody notices. */
    record Row(String example, String dangerous, String faults, String slips, String left) {

        static Row of(String line) {
            String[] cells = line.split(",", -1);
            return new Row(cells[0], cells[1], cells[2], cells[3], cells[4]);
        }

        @Override
        public String toString() {
            return String.join(",", example, dangerous, faults, slips, left);
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theTestsNoticeWhatTheyNoticedBefore(Row known) {
        Row found = found(ExampleFiles.root().resolve(known.example()));
        Note.that("noticed: " + found);
        assertThat(found).isEqualTo(known);
    }

    @Test
    void everyExampleHasItsRow() throws IOException {
        assertThat(all())
                .extracting(Row::example)
                .containsExactlyElementsOf(ExampleFiles.list().stream()
                        .map(folder -> ExampleFiles.root().relativize(folder).toString())
                        .toList());
    }

    @Test
    void noSlipAndNothingDangerousIsLeftToTheEye() throws IOException {
        for (Row row : all()) {
            assertThat(row.left()).as(row.example()).isEmpty();
            assertThat(isAll(row.slips())).as(row.example()).isTrue();
            assertThat(isAll(row.dangerous())).as(row.example()).isTrue();
        }
    }

    @Test
    void theDocumentTellsTheSumsOfTheFile() throws IOException {
        List<Row> rows = all();
        String told = "the tests notice every slip (%s) and everything dangerous (%s), and %s of %s faults"
                .formatted(
                        spaced(sum(rows, Row::slips, 0)),
                        spaced(sum(rows, Row::dangerous, 0)),
                        spaced(sum(rows, Row::faults, 0)),
                        spaced(sum(rows, Row::faults, 1)));
        assertThat(Files.readString(ExampleFiles.root().resolve("../docs/internals/prover.md")))
                .containsIgnoringWhitespaces(told);
    }

    private static int sum(List<Row> rows, Function<Row, String> share, int part) {
        return rows.stream()
                .mapToInt(row -> Integer.parseInt(share.apply(row).split("/", -1)[part]))
                .sum();
    }

    private static String spaced(int number) {
        return String.format(Locale.ROOT, "%,d", number).replace(',', ' ');
    }

    private static boolean isAll(String share) {
        String[] parts = share.split("/", -1);
        return parts[0].equals(parts[1]);
    }

    static List<Row> rows() throws IOException {
        return Sample.of(all(), 3);
    }

    private static List<Row> all() throws IOException {
        try (InputStream in = Objects.requireNonNull(FaultCoverageTest.class.getResourceAsStream(KNOWN))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(Row::of)
                    .toList();
        }
    }

    static Row found(Path folder) {
        FaultProof proof = PlannedExamples.faults(folder);
        Tally dangerous = new Tally();
        Tally faults = new Tally();
        Tally slips = new Tally();
        for (int k = 0; k < proof.results().size(); k++) {
            MishapResult result = proof.results().get(k);
            if (result.severity() != Severity.NONE) {
                Tally kind = result.mishap() instanceof Slip ? slips : faults;
                kind.add(result, proof.isNoticed(k));
                if (result.severity() == Severity.FIRE_OR_LOSS_OF_CONTROL) {
                    dangerous.add(result, proof.isNoticed(k));
                }
            }
        }
        return new Row(
                ExampleFiles.root().relativize(folder).toString(),
                dangerous.share(),
                faults.share(),
                slips.share(),
                String.join(" | ", slips.left));
    }

    private static final class Tally {
        private int all;
        private final List<String> left = new ArrayList<>();

        void add(MishapResult result, boolean noticed) {
            all++;
            if (!noticed) {
                left.add(result.mishap().id());
            }
        }

        String share() {
            return (all - left.size()) + "/" + all;
        }
    }
}
