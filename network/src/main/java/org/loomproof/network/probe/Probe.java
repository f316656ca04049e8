package org.loomproof.network.probe;

import java.util.OptionalDouble;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.NetworkBuilder;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.SolveOutcome.Settled;
import org.loomproof.network.solve.Solver;

/**
 * An ohmmeter: batteries taken out, a test source put between two nodes, the resistance read from volts over amps. Made once
 * for two nodes, read at many settings.
 */
public final class Probe {
    /** The test source stays below a diode's knee, as ohmmeters do: 0.2 V behind 1 kΩ. Common practice, no published source. */
    public static final double TEST_VOLTS = 0.2;

    private static final double TEST_OHMS = 1e3;

    /** Above this the meter shows an open line. */
    public static final double OPEN_OHMS = 100e6;

    /** Below this it beeps. Common practice, no published source. */
    public static final double CONTINUITY_OHMS = 30;

    private static final PartId TEST_SOURCE = new PartId("(test source)");

    private final Network original;
    private final Node plus;
    private final Node minus;
    private final Network network;
    private final Solver solver;

    /** A meter on two nodes of a network, whose batteries it takes out. */
    public Probe(Network original, Node plus, Node minus) {
        this.original = original;
        this.plus = plus;
        this.minus = minus;
        NetworkBuilder builder = Network.builder();
        original.parts().stream().filter(part -> !(part instanceof Battery)).forEach(builder::add);
        network = builder.add(new Battery(TEST_SOURCE, plus, minus, TEST_VOLTS, TEST_OHMS))
                .build();
        solver = Solver.of(network);
    }

    /** Resistance between the two nodes, or empty for an open line or contacts that do not rest. */
    public OptionalDouble ohms(Setting setting) {
        SolveOutcome outcome = solver.solve(transferred(setting));
        if (!(outcome instanceof Settled settled)) {
            return OptionalDouble.empty();
        }
        OperatingPoint point = settled.point();
        double amps = -point.amps(TEST_SOURCE);
        double ohms = amps <= 0 ? Double.POSITIVE_INFINITY : point.volts(plus, minus) / amps;
        return ohms > OPEN_OHMS ? OptionalDouble.empty() : OptionalDouble.of(ohms);
    }

    /** Whether the two nodes are as good as joined. */
    public boolean hasContinuity(Setting setting) {
        OptionalDouble ohms = ohms(setting);
        return ohms.isPresent() && ohms.getAsDouble() < CONTINUITY_OHMS;
    }

    private Setting transferred(Setting setting) {
        if (!setting.network().equals(original)) {
            throw new IllegalArgumentException("the setting belongs to another network");
        }
        Setting moved = network.atRest();
        for (Part part : original.parts()) {
            if (!(part instanceof Battery)) {
                moved = moved.like(setting, part.id());
            }
        }
        return moved;
    }
}
