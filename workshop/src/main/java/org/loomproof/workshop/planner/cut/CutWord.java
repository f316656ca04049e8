package org.loomproof.workshop.planner.cut;

import java.util.List;
import org.loomproof.workshop.planner.grammar.Coil;
import org.loomproof.workshop.planner.grammar.Word.Buffering;

/**
 * One coupling of cut wires.
 *
 * <pre>
 * coupling = {wire} {drive}                        one drive a lead
 * wire     = {throw}                               from what works to what switches, at most one a lead
 * throw    = changeover contact in the wire, or beside it: 30, 87a, 87, of which two lie in the wire and one gives
 *            (supply | body | nothing)
 * drive    = (source [diode] | buffer output) to (supply | body), for all coils of the lead
 * </pre>
 *
 * @param wires the contacts in each wire, the one nearest to what works first
 * @param drives what works each lead's coils
 */
public record CutWord(List<List<Throw>> wires, List<Drive> drives) {

    public CutWord {
        wires = wires.stream().map(List::copyOf).toList();
        drives = List.copyOf(drives);
    }

    /** What works the coils of one lead. */
    public record Drive(Coil coil, Buffering buffer) {

        /** True where a diode stands between output and coils. */
        public boolean isolated() {
            return coil.isolated();
        }

        /** True where a buffer does. */
        public boolean buffered() {
            return buffer != Buffering.NONE;
        }

        private int parts() {
            return (isolated() ? 1 : 0) + (buffered() ? 1 : 0);
        }
    }

    /** How many relays a lead works. */
    public int relays(int lead) {
        return (int) wires.stream()
                .flatMap(List::stream)
                .filter(each -> each.lead() == lead)
                .count();
    }

    /** Relays, and what stands before their coils; clamps and fuses are the same for all words. */
    int parts() {
        return wires.stream().mapToInt(List::size).sum()
                + drives.stream().mapToInt(Drive::parts).sum();
    }
}
