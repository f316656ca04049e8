package org.loomproof.workshop.planner.survey;

import java.util.List;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.sheet.Circuit;

/**
 * How much speaks for an entry, before a wire is cut by it: what a paper says is one piece, a reading in this car another, and
 * so is an entry of another origin that says the same of the same place. About one row of ten of any paper is wrong (common
 * practice, no published source), so one piece is not enough for a cut.
 */
final class Evidence {

    /** So many pieces are asked for before a wire is cut. */
    static final int FOR_A_CUT = 2;

    private Evidence() {}

    /** Independent pieces that speak for a circuit, among the entries that were found for its role. */
    static int count(Circuit circuit, List<Circuit> entries) {
        return switch (circuit.basis().certainty()) {
            case VERIFIED -> FOR_A_CUT;
            case STATED ->
                1
                        + (int) entries.stream()
                                .filter(other -> confirms(other, circuit))
                                .map(Circuit::origin)
                                .distinct()
                                .count();
            case GUESSED, ASSUMED -> 0;
        };
    }

    /** True when another origin says the same of the same place. */
    static boolean confirms(Circuit other, Circuit circuit) {
        return !other.id().equals(circuit.id())
                && other.basis().certainty().compareTo(Certainty.STATED) <= 0
                && !other.origin().isBlank()
                && !other.origin().equals(circuit.origin())
                && Finder.isSamePlace(other, circuit)
                && other.switching().isLike(circuit.switching());
    }
}
