package org.loomproof.benchmarks.engine;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.loomproof.benchmarks.engine.ReferenceDeck.Style;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Node;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.SolveOutcome.Settled;

/**
 * How our answers agree with the reference's at its tightest setting. Where they differ by more than {@link #SAME_VOLTS} it is
 * asked again with all contacts held where ours are.
 *
 * @param worstVolts largest difference at any node among those that agree
 * @param otherContacts settings, by number, whose answers agree once contacts are held
 * @param apart settings that differ even so
 * @param restless settings at which our contacts never come to rest
 * @param lost settings at which the reference lost its way
 */
record Agreement(
        int settings,
        double worstVolts,
        List<Integer> otherContacts,
        List<Integer> apart,
        List<Integer> restless,
        List<Integer> lost) {
    static final double SAME_VOLTS = 1e-5;

    static Agreement of(Path driver, Path folder, Network network, List<Setting> settings, List<SolveOutcome> outcomes)
            throws IOException, InterruptedException {
        ReferenceDeck free = new ReferenceDeck(network, Style.EXACT);
        List<List<double[]>> answers = ReferenceRun.of(
                        driver, folder, free.lines(), free.states(settings), free.vectors())
                .answers();
        List<Integer> restless = new ArrayList<>();
        List<Integer> lost = new ArrayList<>();
        List<Integer> unlike = new ArrayList<>();
        List<OperatingPoint> unlikePoints = new ArrayList<>();
        double worst = 0;
        for (int k = 0; k < settings.size(); k++) {
            if (!(outcomes.get(k) instanceof Settled(OperatingPoint point, var ignored))) {
                restless.add(k);
                continue;
            }
            double most = answers.get(k).isEmpty()
                    ? Double.POSITIVE_INFINITY
                    : difference(point, answers.get(k).getFirst());
            if (most <= SAME_VOLTS) {
                worst = Math.max(worst, most);
            } else {
                unlike.add(k);
                unlikePoints.add(point);
            }
        }
        ReferenceDeck held = new ReferenceDeck(network, Style.HELD);
        List<List<double[]>> again = ReferenceRun.of(
                        driver, folder, held.lines(), held.heldStates(unlikePoints), held.vectors())
                .answers();
        List<Integer> otherContacts = new ArrayList<>();
        List<Integer> apart = new ArrayList<>();
        for (int k = 0; k < unlike.size(); k++) {
            OperatingPoint point = unlikePoints.get(k);
            if (again.get(k).isEmpty()) {
                lost.add(unlike.get(k));
                continue;
            }
            double most = difference(point, again.get(k).getFirst());
            if (most <= SAME_VOLTS) {
                worst = Math.max(worst, most);
                otherContacts.add(unlike.get(k));
            } else {
                apart.add(unlike.get(k));
            }
        }
        return new Agreement(settings.size(), worst, otherContacts, apart, restless, lost);
    }

    private static double difference(OperatingPoint point, double[] volts) {
        List<Node> nodes = point.network().nodes();
        double most = 0;
        for (int n = 1; n < nodes.size(); n++) {
            most = Math.max(most, Math.abs(point.volts(nodes.get(n)) - volts[n - 1]));
        }
        return most;
    }

    @Override
    public String toString() {
        int alike = settings - otherContacts.size() - apart.size() - restless.size() - lost.size();
        return String.format(
                Locale.ROOT,
                "%d settings: %d within %.0e V (worst %.1e)%s%s%s%s",
                settings,
                alike,
                SAME_VOLTS,
                worstVolts,
                listed("another relay answer, alike with contacts held", otherContacts),
                listed("APART", apart),
                listed("contacts never at rest", restless),
                listed("reference lost", lost));
    }

    private static String listed(String what, List<Integer> numbers) {
        return numbers.isEmpty() ? "" : String.format("; %d %s %s", numbers.size(), what, numbers);
    }
}
