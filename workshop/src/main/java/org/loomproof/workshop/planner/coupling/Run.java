package org.loomproof.workshop.planner.coupling;

import java.util.Optional;
import java.util.stream.Stream;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/**
 * A length of wire of a coupling before it has a size. Two couplings that ask for the same run share it, and their currents
 * add up.
 *
 * @param from one end, with local part names
 * @param to the other
 * @param length one way
 * @param carries what flows for long
 * @param drop what it is for, which says how many volts it may lose
 * @param behind the fuse that protects it, by its local name
 * @param noThinnerThan the factory wire that it lengthens
 */
public record Run(
        End from,
        End to,
        Metres length,
        Amps carries,
        AllowedDrop drop,
        Optional<AddedPartId> behind,
        Optional<SquareMillimetres> noThinnerThan) {

    /** The same between other ends, behind another fuse. */
    public Run between(End one, End other, Optional<AddedPartId> fuse) {
        return new Run(one, other, length, carries, drop, fuse, noThinnerThan);
    }

    /** Whether both lead to one terminal of a part. */
    public boolean meetsAtPart(Run other) {
        return Stream.of(from, to)
                .filter(End.OfPart.class::isInstance)
                .anyMatch(end -> end.equals(other.from) || end.equals(other.to));
    }
}
