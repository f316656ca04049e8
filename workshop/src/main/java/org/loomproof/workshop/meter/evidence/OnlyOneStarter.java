package org.loomproof.workshop.meter.evidence;

import java.util.ArrayList;
import java.util.List;

/**
 * Several wires together, of which at most one is the starter wire. With that one bond between them the exact posterior of
 * each is a closed form: every way in which none is, and every way in which exactly one is.
 */
public final class OnlyOneStarter {

    private OnlyOneStarter() {}

    /**
     * The probability that each wire is the starter, given that at most one is.
     *
     * @param alone the same, each wire looked at by itself
     */
    public static List<Double> together(List<Double> alone) {
        int n = alone.size();
        double[] noneBefore = new double[n + 1];
        double[] noneAfter = new double[n + 1];
        noneBefore[0] = 1;
        noneAfter[n] = 1;
        for (int i = 0; i < n; i++) {
            noneBefore[i + 1] = noneBefore[i] * (1 - alone.get(i));
            noneAfter[n - 1 - i] = noneAfter[n - i] * (1 - alone.get(n - 1 - i));
        }
        double[] onlyThis = new double[n];
        double all = noneBefore[n];
        for (int i = 0; i < n; i++) {
            onlyThis[i] = alone.get(i) * noneBefore[i] * noneAfter[i + 1];
            all += onlyThis[i];
        }
        List<Double> together = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            // Two wires that are each certain cannot both be: then they share.
            together.add(all > 0 ? onlyThis[i] / all : 1.0 / n);
        }
        return together;
    }
}
