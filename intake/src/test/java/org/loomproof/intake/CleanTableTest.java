package org.loomproof.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.intake.sheet.CleanTable;
import org.loomproof.intake.sheet.TableEntries;
import org.loomproof.testing.Sample;

/** The clean table. */
class CleanTableTest {

    private static final String SIGNS = "ab ,;\"'\n\r\t|ü€\\#=-+ \u2028😀";

    static LongStream seeds() {
        return Sample.seeds(200, 5000);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyRowsReadBackWithoutLoss(long seed) {
        Random random = new Random(seed);
        int[] signs = SIGNS.codePoints().toArray();
        List<CleanTable.Row> rows = new ArrayList<>();
        for (int i = random.nextInt(5); i > 0; i--) {
            List<String> cells = new ArrayList<>();
            for (int c = 0; c < CleanTable.listColumns().size(); c++) {
                StringBuilder cell = new StringBuilder();
                for (int k = random.nextInt(8); k > 0; k--) {
                    cell.appendCodePoint(signs[random.nextInt(signs.length)]);
                }
                cells.add(cell.toString());
            }
            rows.add(new CleanTable.Row(cells));
        }
        assertThat(CleanTable.read(CleanTable.write(rows))).contains(rows);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aTableOfOursIsReadAsTheNotesWereUnderstood(long seed) {
        ReadNotes first = marked(Notes.read(new Dresser(seed, false).sheet(seed).text()), new Random(seed));
        String table = CleanTable.write(
                first.entries().stream().map(e -> CleanTable.row(e, "n")).toList());
        List<Entry> again = TableEntries.of(Notes.lines("table.csv", table.getBytes(StandardCharsets.UTF_8)))
                .orElseThrow()
                .entries();
        assertThat(again).hasSameSizeAs(first.entries());
        for (int i = 0; i < again.size(); i++) {
            assertThat(values(again.get(i)))
                    .as(table)
                    .isEqualTo(values(first.entries().get(i)));
        }
    }

    /** The same notes, each entry doubted or said to be absent, or both, as chance has it. */
    private static ReadNotes marked(ReadNotes notes, Random chance) {
        List<Entry> marked = notes.entries().stream()
                .map(e -> new Entry(
                        e.name(),
                        e.role(),
                        e.colour(),
                        e.colourAsWritten(),
                        e.size(),
                        e.behaviour(),
                        e.spot(),
                        e.steering(),
                        e.validity(),
                        chance.nextBoolean(),
                        chance.nextBoolean(),
                        e.notes(),
                        e.leftOver(),
                        e.origin()))
                .toList();
        return new ReadNotes(marked, notes.loose(), notes.findings());
    }

    private static List<Object> values(Entry e) {
        return List.of(
                e.role().map(a -> a.value().role()),
                e.colour().map(a -> a.value()),
                e.behaviour().map(a -> a.value()),
                e.size().map(a -> a.value()),
                e.colourAsWritten(),
                e.steering(),
                e.validity(),
                e.doubted(),
                e.absent(),
                e.name(),
                e.spot().map(a -> a.value()));
    }

    @Test
    void whatIsNoTableOfOursIsNotTakenForOne() {
        assertThat(CleanTable.read("circuit,role\n1,2\n")).isEmpty();
        assertThat(CleanTable.read(CleanTable.write(List.of()) + "one,two\n")).isEmpty();
    }
}
