package org.loomproof.benchmarks;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.intake.decode.Decoder;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.workshop.problem.Checked;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Wiring notes of 5 MB, far more than anybody has of one vehicle, from bytes to entries. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(1)
public class NotesTime {

    private static final int SIZE_BYTES = 5_000_000;

    private final byte[] table = repeated(
            "12V constant\tred/white\t+\tignition switch harness\nDoor trigger\tgrey/black\t(-)\tdriver kick panel\n");
    private final byte[] prose = repeated(
            "The horn is the green wire with a black stripe at the steering column, negative.\nTürkontakt: braun-weiß, minus, A-Säule links\n\n");

    /** Aim: under 10 s. */
    @Benchmark
    public int table() {
        return entries(table);
    }

    /** Aim: under 10 s. */
    @Benchmark
    public int prose() {
        return entries(prose);
    }

    private static int entries(byte[] bytes) {
        return switch (new Decoder().decode("notes", bytes)) {
            case Checked.Good<SourceLines>(SourceLines lines) ->
                ReadNotes.of(lines).entries().size();
            case Checked.Bad<SourceLines>(var problems) -> throw new IllegalStateException(problems.toString());
        };
    }

    private static byte[] repeated(String text) {
        String all = text.repeat(SIZE_BYTES / text.getBytes(StandardCharsets.UTF_8).length);
        return all.getBytes(StandardCharsets.UTF_8);
    }
}
