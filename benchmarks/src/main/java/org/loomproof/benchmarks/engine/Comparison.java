package org.loomproof.benchmarks.engine;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.Meter;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.Switch;
import org.loomproof.network.part.Wire;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.SolveOutcome.Settled;
import org.loomproof.network.solve.Solver;
import org.loomproof.network.solve.SolverOptions;

/**
 * Ours and the reference on the same looms, turn by turn in the same minutes. Processor time of one thread against that of
 * one process; ours includes the check of Kirchhoff's law in every answer.
 */
final class Comparison {
    private static final double SAME_VOLTS = 1e-5;

    private final Path driver;
    private final Path folder;
    private final int rounds;

    private Comparison(Path driver, Path folder, int rounds) {
        this.driver = driver;
        this.folder = folder;
        this.rounds = rounds;
    }

    /** Arguments: the compiled driver, a folder for decks and answers, rounds, settings a sweep. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        int count = Integer.parseInt(arguments[3]);
        Comparison comparison =
                new Comparison(Path.of(arguments[0]), Path.of(arguments[1]), Integer.parseInt(arguments[2]));
        for (boolean large : new boolean[] {false, true}) {
            for (Loom.Shape shape : Loom.Shape.values()) {
                Network network = Loom.network(shape, large, 1);
                String name = shape.toString().toLowerCase(Locale.ROOT) + " "
                        + (network.nodes().size() - 1);
                comparison.compare(name + " walk", network, Loom.walk(network, count, 5));
                comparison.compare(name + " independent", network, Loom.draws(network, count, 5));
                comparison.compare(name + " single faults", network, faults(network));
            }
        }
    }

    /** Every conductor broken, one at a time, at 20 settings. */
    private static List<Setting> faults(Network network) {
        List<Setting> settings = new ArrayList<>();
        for (Setting base : Loom.walk(network, 20, 9)) {
            for (Part part : network.parts()) {
                boolean conductor = part instanceof Wire
                        || part instanceof Fuse
                        || part instanceof Switch
                        || part instanceof Resistor;
                if (conductor && !(part instanceof Meter)) {
                    settings.add(base.broken(part.id()));
                }
            }
        }
        return settings;
    }

    private void compare(String name, Network network, List<Setting> settings)
            throws IOException, InterruptedException {
        Solver solver = Solver.of(network, SolverOptions.USUAL.withoutOtherStablePoints());
        for (int warm = 0; warm < 5; warm++) {
            SweepTimer.microsPerSetting(solver, settings);
        }
        double[] ours = new double[rounds];
        double[] withLamps = new double[rounds];
        double[] withoutLamps = new double[rounds];
        for (int round = 0; round < rounds; round++) {
            ours[round] = SweepTimer.microsPerSetting(solver, settings);
            double lampless = reference(settings, new ReferenceDeck(network, false, ReferenceDeck.TIMED));
            double lamps = reference(settings, new ReferenceDeck(network, true, ReferenceDeck.TIMED));
            withLamps[round] = lamps / ours[round];
            withoutLamps[round] = lampless / ours[round];
        }
        reference(settings, new ReferenceDeck(network, true, ReferenceDeck.TIGHTEST));
        System.out.printf(
                Locale.ROOT,
                "%-26s ours %s us | ratio %s | ratio to lamp-free %s | %s%n",
                name,
                spread(ours),
                spread(withLamps),
                spread(withoutLamps),
                agreement(network, settings, solver));
    }

    private double reference(List<Setting> settings, ReferenceDeck deck) throws IOException, InterruptedException {
        Path deckFile = Files.write(folder.resolve("deck"), deck.lines());
        Path states = Files.write(folder.resolve("states"), deck.states(settings));
        Path vectors = Files.write(folder.resolve("vectors"), deck.vectors());
        Process process = new ProcessBuilder(
                        driver.toString(),
                        deckFile.toString(),
                        states.toString(),
                        vectors.toString(),
                        folder.resolve("answers").toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IllegalStateException("the driver failed: " + printed);
        }
        return Double.parseDouble(printed.lines().toList().getLast().strip());
    }

    /** How the answers of the last reference run agree with ours. */
    private String agreement(Network network, List<Setting> settings, Solver solver) throws IOException {
        List<String> answers = Files.readAllLines(folder.resolve("answers"));
        List<Node> nodes = network.nodes();
        int lost = 0;
        int apart = 0;
        int unsettled = 0;
        double worst = 0;
        for (int k = 0; k < settings.size(); k++) {
            SolveOutcome outcome = solver.solve(settings.get(k));
            if (answers.get(k).equals("lost")) {
                lost++;
            } else if (outcome instanceof Settled settled) {
                double most = difference(settled.point(), nodes, answers.get(k).split(" ", -1));
                worst = most <= SAME_VOLTS ? Math.max(worst, most) : worst;
                apart += most > SAME_VOLTS ? 1 : 0;
            } else {
                unsettled++;
            }
        }
        return String.format(
                Locale.ROOT,
                "%d settings: %d within 1e-5 V (worst %.1e), %d apart, %d chatter, reference lost %d",
                settings.size(),
                settings.size() - lost - apart - unsettled,
                worst,
                apart,
                unsettled,
                lost);
    }

    private static double difference(OperatingPoint point, List<Node> nodes, String[] answers) {
        double most = 0;
        for (int n = 1; n < nodes.size(); n++) {
            most = Math.max(most, Math.abs(point.volts(nodes.get(n)) - Double.parseDouble(answers[n - 1])));
        }
        return most;
    }

    /** Least, middle and most. */
    private static String spread(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return String.format(
                Locale.ROOT, "%.1f / %.1f / %.1f", sorted[0], sorted[sorted.length / 2], sorted[sorted.length - 1]);
    }
}
