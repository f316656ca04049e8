package org.loomproof.network.law;

import java.util.List;
import java.util.Optional;
import org.loomproof.network.law.Term.Conductance;
import org.loomproof.network.law.Term.Junction;
import org.loomproof.network.law.Term.Stated;
import org.loomproof.network.part.Breakdown;
import org.loomproof.network.part.Suppressor;
import org.loomproof.network.part.Zener;

/**
 * Breakdown as a source of voltage behind the slope resistance, in series with a junction that lets current pass one way.
 * Source and junction together drop the breakdown voltage at the test current; below it the junction bends the curve down to
 * nothing.
 */
final class ZenerLaw {
    private static final int ANODE = 0;
    private static final int CATHODE = 1;
    private static final int INNER = 2;

    /** Drop of the junction at the test current: a bend of about 0.1 V, as zeners above 6 V have. From memory. */
    private static final double BEND_VOLTS = 0.6;

    private ZenerLaw() {}

    static PartEquations equations(Zener zener) {
        List<Term> reverse = breakdown(zener.breakdown(), CATHODE, ANODE, INNER);
        return new PartEquations(
                List.of(
                        new Junction(ANODE, CATHODE, ShockleyCurve.of(zener.forward()), When.ALWAYS),
                        reverse.get(0),
                        reverse.get(1)),
                1,
                Optional.empty());
    }

    static PartEquations equations(Suppressor suppressor) {
        List<Term> there = breakdown(suppressor.breakdown(), 0, 1, INNER);
        List<Term> back = breakdown(suppressor.breakdown(), 1, 0, INNER + 1);
        return new PartEquations(
                List.of(Conductance.ifShorted(), there.get(0), there.get(1), back.get(0), back.get(1)),
                2,
                Optional.empty());
    }

    private static List<Term> breakdown(Breakdown breakdown, int from, int to, int inner) {
        double emf = breakdown.volts() - breakdown.ohms() * breakdown.atAmps() - BEND_VOLTS;
        return List.of(
                new Conductance(from, inner, 1 / breakdown.ohms(), emf, When.ALWAYS, Stated.NOTHING),
                new Junction(inner, to, ShockleyCurve.through(BEND_VOLTS, breakdown.atAmps()), When.ALWAYS));
    }
}
