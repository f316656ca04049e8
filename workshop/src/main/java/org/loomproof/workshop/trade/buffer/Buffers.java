package org.loomproof.workshop.trade.buffer;

import java.util.List;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/** The buffers that can be bought. */
public final class Buffers {
    private static final List<BufferType> TYPES = Table.read(Buffers.class, "buffers.csv").listRows().stream()
            .map(Buffers::type)
            .toList();

    private Buffers() {}

    /** The buffer that works on ground at its input, or on supply. */
    public static BufferType workingOn(boolean ground) {
        return TYPES.stream()
                .filter(t -> t.worksOnGround() == ground)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("buffers.csv lacks one of two kinds"));
    }

    private static BufferType type(Row row) {
        return new BufferType(
                row.text("name"),
                row.text("works_on").equals("ground"),
                new Ohms(row.number("input_ohm")),
                new Volts(row.number("switches_at_v")),
                new Volts(row.number("lets_go_at_v")),
                new Ohms(row.number("closed_ohm")),
                new Amps(row.number("rating_a")));
    }
}
