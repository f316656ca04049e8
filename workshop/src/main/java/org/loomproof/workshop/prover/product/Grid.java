package org.loomproof.workshop.prover.product;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.prover.product.Sightings.Table;
import org.loomproof.workshop.prover.state.Space;

/**
 * The combinations of positions that are stepped through. What is given to the controller never changes with the operables that
 * are left out, so that each combination here stands for all of theirs: an exact reduction.
 */
final class Grid {

    /** An operable that is moved, with its strides in this grid and in the table. */
    record Moved(OperableId operable, List<String> positions, int stride, int strideInTable) {

        int digit(int combination) {
            return combination / stride % positions.size();
        }

        int with(int combination, int digit) {
            return combination + (digit - digit(combination)) * stride;
        }
    }

    private final List<Moved> moved = new ArrayList<>();
    private final int size;
    private final long standsFor;

    Grid(Table table, Set<OperableId> always) {
        int strideInTable = 1;
        int stride = 1;
        long leftOut = 1;
        for (Space.Axis axis : table.space().axes().reversed()) {
            int positions = axis.positions().size();
            if (always.contains(axis.operable()) || matters(table, strideInTable, positions)) {
                moved.add(new Moved(axis.operable(), axis.positions(), stride, strideInTable));
                stride *= positions;
            } else {
                leftOut *= positions;
            }
            strideInTable *= positions;
        }
        this.size = stride;
        this.standsFor = leftOut;
    }

    private static boolean matters(Table table, int stride, int positions) {
        for (int at = 0; at < table.size(); at++) {
            // conditions and supply points are whole blocks of combinations, so that the stride holds in the flat table
            // too
            int digit = at / stride % positions;
            if (!table.isSame(at, at - digit * stride)) {
                return true;
            }
        }
        return false;
    }

    /** How many combinations there are. */
    int size() {
        return size;
    }

    /** How many combinations of the table each stands for. */
    long standsFor() {
        return standsFor;
    }

    /** What is moved. */
    List<Moved> moved() {
        return moved;
    }

    /** The place in the table of a combination, everything left out at rest. */
    int inTable(int combination) {
        int place = 0;
        for (Moved each : moved) {
            place += each.digit(combination) * each.strideInTable();
        }
        return place;
    }
}
