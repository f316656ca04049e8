package org.loomproof.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.intake.decode.Decoder;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.intake.kit.KitText;
import org.loomproof.intake.kit.LeadNotes;
import org.loomproof.intake.kit.LeadReading;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.words.Messages;

/** Whatever bytes are given, there are entries whose origins stand in the text, or problems; never an exception. */
class HostileBytesTest {

    private static final String SIGNS = "red grn/blk door +-(),;|\t\n\n\"'*:. pin 12v ohm lock <td> %PDF ?ß\u00fc#=_/&";

    /** What a reading keeps grows with the source and not with its square; the first is what a kit file says in any case. */
    private static final int MOST_FIXED_CHARACTERS = 2_000;

    private static final int MOST_CHARACTERS_A_BYTE = 400;

    @Test
    void whatIsKeptGrowsWithTheTextAndNotWithItsSquare() {
        long[] kept = new long[2];
        for (int i = 0; i < 2; i++) {
            StringBuilder text = new StringBuilder();
            Random random = new Random(5);
            while (text.length() < (i + 1) * 20_000) {
                text.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
            }
            SourceLines lines = Notes.lines("long", text.toString().getBytes(StandardCharsets.UTF_8));
            kept[i] = ReadNotes.of(lines).entries().stream()
                            .mapToLong(e -> Stream.of(e.notes(), e.leftOver())
                                            .flatMap(List::stream)
                                            .mapToLong(Passage::length)
                                            .sum()
                                    + e.name().length())
                            .sum()
                    + LeadNotes.of(lines).leads().stream()
                            .flatMap(l -> l.leftOver().stream())
                            .mapToLong(Passage::length)
                            .sum();
        }
        assertThat(kept[0]).isPositive();
        assertThat(kept[1]).isLessThan(3 * kept[0]);
    }

    static LongStream seeds() {
        return Sample.seeds(200, 5000);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyBytesGiveEntriesOrProblems(long seed) {
        Random random = new Random(seed);
        byte[] bytes = new byte[random.nextInt(600)];
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = (byte) (seed % 3 == 0 ? random.nextInt(256) : SIGNS.charAt(random.nextInt(SIGNS.length())));
        }
        switch (new Decoder().decode("seed " + seed, bytes)) {
            case Checked.Good<SourceLines>(SourceLines lines) -> {
                for (Entry entry : ReadNotes.of(lines).entries()) {
                    assertThat(entry.origin().line()).isPositive();
                    assertThat(entry.sure()).isBetween(0.0, 1.0);
                }
                LeadNotes leads = LeadNotes.of(lines);
                assertThat(leads.leads())
                        .allSatisfy(l -> assertThat(l.origin().line()).isPositive());
                assertThat(leads.leads()).extracting(LeadReading::id).doesNotHaveDuplicates();
                assertThat(new KitText(Messages.english()).write(leads, "leads", "box"))
                        .hasSizeLessThan(MOST_FIXED_CHARACTERS + MOST_CHARACTERS_A_BYTE * bytes.length);
            }
            case Checked.Bad<SourceLines>(var problems) -> assertThat(problems).isNotEmpty();
        }
    }
}
