package org.loomproof.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.intake.decode.Decoder;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.problem.Checked;

/** Whatever bytes are given, there are entries whose origins stand in the text, or problems; never an exception. */
class HostileBytesTest {

    private static final String SIGNS = "red grn/blk door +-(),;|\t\n\n\"'*:. pin 12v ohm lock <td> %PDF ?ß\u00fc#=_/&";

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
            }
            case Checked.Bad<SourceLines>(var problems) -> assertThat(problems).isNotEmpty();
        }
    }
}
