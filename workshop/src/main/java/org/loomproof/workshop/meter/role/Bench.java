package org.loomproof.workshop.meter.role;

import java.util.List;
import java.util.OptionalDouble;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Meter;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.probe.Probe;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.Solver;
import org.loomproof.network.solve.SolverOptions;

/**
 * A meter on one node of a car's network: the meter's input resistance, what leaks into the wire from its live neighbours in
 * the loom, and a resistor that may hang from the wire to the body.
 */
final class Bench {

    /**
     * Leakage from live neighbours through insulation, dirt and damp: what makes an unconnected wire show a ghost of a few volts
     * to a meter of 10 MΩ. Common practice, no published source.
     */
    static final double LEAST_LEAK_OHMS = 5e6;

    static final double MOST_LEAK_OHMS = 5e10;

    private static final PartId METER = new PartId("(meter)");
    private static final PartId LEAK = new PartId("(leak)");
    private static final PartId AID = new PartId("(resistor)");
    private static final double ANY_OHMS = 1e3;

    private final Node wire;
    private final Network network;
    private final Solver solver;
    private final Probe probe;
    private final boolean isPole;

    Bench(List<Part> car, Node post, Node wire, double leakOhms) {
        this.wire = wire;
        this.isPole = wire.equals(post) || wire.equals(Node.CHASSIS);
        var builder =
                Network.builder().addAll(car).add(new Resistor(AID, wire, new Node("(end of resistor)"), ANY_OHMS));
        builder.add(new Meter(new PartId("(resistor's ground)"), new Node("(end of resistor)"), Node.CHASSIS, 1e-6));
        if (!isPole) {
            builder.add(new Meter(METER, wire, Node.CHASSIS)).add(new Resistor(LEAK, post, wire, leakOhms));
        }
        this.network = builder.build();
        this.solver = Solver.of(network, SolverOptions.USUAL.withoutOtherStablePoints());
        this.probe = new Probe(network, wire, Node.CHASSIS);
    }

    Network network() {
        return network;
    }

    /** A setting with the meter and, if there is one, the resistor in place. */
    Setting with(Setup setup) {
        Setting setting = network.atRest();
        if (!isPole) {
            setting = setting.ohms(METER, setup.meterOhms());
        }
        return setup.resistorOhms().isPresent()
                ? setting.ohms(AID, setup.resistorOhms().getAsDouble())
                : setting.broken(AID);
    }

    /** Volts on the wire; not a number when contacts come to no rest. */
    double volts(Setting setting) {
        SolveOutcome outcome = solver.solve(setting);
        return outcome instanceof SolveOutcome.Settled(OperatingPoint point, List<OperatingPoint> others)
                ? point.volts(wire)
                : Double.NaN;
    }

    /** Whether nothing but meter and leakage holds the wire. */
    boolean floats(Setting setting) {
        if (isPole) {
            return false;
        }
        SolveOutcome outcome = solver.solve(setting.broken(METER).broken(LEAK));
        return outcome instanceof SolveOutcome.Settled(OperatingPoint point, List<OperatingPoint> others)
                && point.isFloating(wire);
    }

    /** What an ohmmeter shows from the wire to the body, batteries out; empty for an open line. */
    OptionalDouble ohms(Setting setting) {
        if (wire.equals(Node.CHASSIS)) {
            return OptionalDouble.of(0.05);
        }
        return probe.ohms(isPole ? setting : setting.broken(METER).broken(LEAK));
    }
}
