package org.loomproof.benchmarks.engine;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.loomproof.benchmarks.engine.ReferenceDeck.Style;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.Switch;
import org.loomproof.network.part.Wire;

/**
 * Ours and the reference on the same looms, turn by turn in the same minutes: processor time of one thread against that of
 * one process. Ours includes the check of Kirchhoff's law in every answer.
 */
final class Comparison {
    /** Until what the compiler does is done: with fewer, looms of 75 nodes show compiling, not solving. Favours ours; see docs/performance.md. */
    private static final int WARM_UPS = 40;

    private final Path driver;
    private final Path folder;
    private final int rounds;

    /** Settings of each sweep, from its first on, that the reference is given. */
    private final int referenceSettings;

    private Comparison(Path driver, Path folder, int rounds, int referenceSettings) {
        this.driver = driver;
        this.folder = folder;
        this.rounds = rounds;
        this.referenceSettings = referenceSettings;
    }

    /**
     * Arguments: the compiled driver, a folder for decks and answers, rounds, settings a sweep, seed of the looms, settings that
     * the reference is given.
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Comparison comparison = new Comparison(
                Path.of(arguments[0]),
                Path.of(arguments[1]),
                Integer.parseInt(arguments[2]),
                Integer.parseInt(arguments[5]));
        int count = Integer.parseInt(arguments[3]);
        long seed = Long.parseLong(arguments[4]);
        System.out.println("least / median / most of the rounds; one thread, processor time; Kirchhoff's law is checked"
                + " within the timed part");
        for (boolean large : new boolean[] {false, true}) {
            for (Loom.Shape shape : Loom.Shape.values()) {
                Network network = large ? Loom.large(shape, seed) : Loom.small(shape, seed);
                String name = shape.toString().toLowerCase(Locale.ROOT) + " "
                        + (network.nodes().size() - 1);
                comparison.compare(name + " walk", network, Loom.walk(network, count, seed + 4));
                comparison.compare(name + " independent", network, Loom.draws(network, count, seed + 4));
                comparison.compare(name + " single faults", network, faults(network, seed));
            }
        }
    }

    /** Every conductor broken and every load shorted, one at a time, at 20 settings. */
    static List<Setting> faults(Network network, long seed) {
        List<Setting> settings = new ArrayList<>();
        for (Setting base : Loom.walk(network, 20, seed + 8)) {
            for (Part part : network.parts()) {
                if (part instanceof Wire
                        || part instanceof Fuse
                        || part instanceof Switch
                        || part instanceof Resistor) {
                    settings.add(base.broken(part.id()));
                }
                if (part instanceof Resistor) {
                    settings.add(base.shorted(part.id()));
                }
            }
        }
        return settings;
    }

    private void compare(String name, Network network, List<Setting> settings)
            throws IOException, InterruptedException {
        SweepTimer timer = new SweepTimer(network, settings);
        timer.warmUp(WARM_UPS);
        ReferenceDeck full = new ReferenceDeck(network, Style.FULL);
        ReferenceDeck lampFree = new ReferenceDeck(network, Style.LAMP_FREE);
        List<Setting> given = settings.subList(0, Math.min(settings.size(), referenceSettings));
        double[] twoThreads = new double[rounds];
        double[] ours = new double[rounds];
        double[] ratio = new double[rounds];
        double[] ratioLampFree = new double[rounds];
        for (int round = 0; round < rounds; round++) {
            ours[round] = timer.micros();
            ratio[round] = referenceMicros(full, given) / ours[round];
            double again = timer.micros();
            ratioLampFree[round] = referenceMicros(lampFree, given) / again;
            twoThreads[round] = timer.wallMicros(1) / timer.wallMicros(2);
        }
        Agreement agreement = Agreement.of(driver, folder, network, given, timer.outcomes());
        System.out.printf(
                Locale.ROOT,
                "%-26s ours %s us | ratio %s | to the lamp-free deck %s | two threads over one %s | %s%n",
                name,
                spread(ours),
                spread(ratio),
                spread(ratioLampFree),
                spread(twoThreads),
                agreement);
    }

    private double referenceMicros(ReferenceDeck deck, List<Setting> given) throws IOException, InterruptedException {
        return ReferenceRun.of(driver, folder, deck.lines(), deck.states(given), deck.vectors())
                .micros();
    }

    /** Least, middle and most. */
    static String spread(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return String.format(
                Locale.ROOT, "%.1f / %.1f / %.1f", sorted[0], sorted[sorted.length / 2], sorted[sorted.length - 1]);
    }
}
