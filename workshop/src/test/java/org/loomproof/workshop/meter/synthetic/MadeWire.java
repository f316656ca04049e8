package org.loomproof.workshop.meter.synthetic;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Predicate;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.NetworkBuilder;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.Lamp;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.Switch;
import org.loomproof.network.probe.Probe;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.Solver;
import org.loomproof.workshop.meter.advice.MeterTest;
import org.loomproof.workshop.meter.reading.Step;
import org.loomproof.workshop.meter.role.WireRole;

/** One made-up wire: its own network, what works its contacts, and how lively its voltage is. */
final class MadeWire {

    static final Node POST = new Node("post");
    static final Node WIRE = new Node("wire under the probe");
    private static final PartId BATTERY = new PartId("battery");
    private static final PartId LEAK = new PartId("leak");
    private static final PartId PROBE = new PartId("probe");
    private static final PartId HUNG = new PartId("hung");
    private static final PartId LINK = new PartId("link");

    final WireRole role;
    private final Random random;
    private final NetworkBuilder builder = Network.builder();
    private final List<Worked> contacts = new ArrayList<>();
    private final List<PartId> modules = new ArrayList<>();
    private final boolean sleeps;
    private Predicate<Step> lively = s -> false;
    private double swing;
    private int names;
    private boolean built;
    private Network network =
            Network.builder().add(new Resistor(PROBE, WIRE, Node.CHASSIS, 1)).build();

    private record Worked(PartId part, Predicate<Step> closed) {}

    MadeWire(WireRole role, Random random) {
        this.role = role;
        this.random = random;
        this.sleeps = random.nextDouble() < 0.4;
        builder.add(new Battery(BATTERY, POST, Node.CHASSIS, 12.6, 0.004));
        // A little of everything a loom leaks: the orders of magnitude reach half as far again as the tool's.
        builder.add(new Resistor(LEAK, POST, WIRE, spread(5e6, 5e10)));
        builder.add(new Resistor(PROBE, WIRE, Node.CHASSIS, 10e6));
        builder.add(new Switch(LINK, WIRE, new Node("hook"), 1e-3));
        builder.add(new Resistor(HUNG, new Node("hook"), Node.CHASSIS, 1000));
    }

    private PartId name(String what) {
        return new PartId(what + names++);
    }

    Node node(String name) {
        return new Node(name);
    }

    /** From the tool's range, half as wide again, by orders of magnitude. */
    double spread(double low, double high) {
        double middle = (Math.log(low) + Math.log(high)) / 2;
        double half = 0.75 * (Math.log(high) - Math.log(low));
        return Math.exp(middle + (2 * random.nextDouble() - 1) * half);
    }

    boolean happens(double share) {
        return random.nextDouble() < share;
    }

    /** Through a fuse, its holder and a joint. */
    MadeWire fuse(Node a, Node b) {
        builder.add(new Fuse(name("fuse"), a, b, spread(0.003, 0.05), 20));
        return this;
    }

    MadeWire ohms(Node a, Node b, double low, double high) {
        builder.add(new Resistor(name("ohms"), a, b, spread(low, high)));
        return this;
    }

    MadeWire lamp(Node a, Node b, double low, double high) {
        builder.add(new Lamp(name("lamp"), a, b, 13.5, spread(low, high)));
        return this;
    }

    MadeWire contact(Node a, Node b, Predicate<Step> closed) {
        PartId id = name("contact");
        builder.add(new Switch(id, a, b, spread(0.005, 0.1)));
        contacts.add(new Worked(id, closed));
        return this;
    }

    /** A module's own supply behind its pull-up; it may go when the module sleeps. */
    MadeWire module(Node to, double lowVolts, double highVolts, double lowOhms, double highOhms) {
        PartId id = name("module");
        Node own = node(id + " own");
        builder.add(new Battery(id, own, Node.CHASSIS, Math.min(12, spread(lowVolts, highVolts)), 0.5));
        modules.add(id);
        return ohms(own, to, lowOhms, highOhms);
    }

    /** Messages or pulses of that height from peak to peak while something is so. */
    MadeWire moving(double peakToPeak, Predicate<Step> when) {
        swing = peakToPeak;
        lively = when;
        return this;
    }

    boolean isLively(Step step) {
        return lively.test(step);
    }

    double swing() {
        return swing;
    }

    /** Whether that done to this wire could hurt a person, a module or a signal. That a voltmeter may not know a restraint wire is left aside. */
    boolean isHurtBy(MeterTest.Kind kind) {
        boolean isDelicate = role == WireRole.RESTRAINT || role == WireRole.DATA;
        return switch (kind) {
            case VOLTS, ALTERNATING -> false;
            case RESISTOR -> isDelicate || role == WireRole.TACHOMETER;
            case OHMS -> isDelicate || role == WireRole.TACHOMETER || !modules.isEmpty();
            case TEST_LAMP -> true;
        };
    }

    private Network network() {
        if (!built) {
            network = builder.build();
            built = true;
        }
        return network;
    }

    private Setting setting(Step step) {
        Setting setting = network().atRest();
        for (Worked each : contacts) {
            setting = each.closed.test(step) ? setting.closed(each.part) : setting.open(each.part);
        }
        if (step.asleep() && sleeps) {
            for (PartId module : modules) {
                setting = setting.emf(module, 0);
            }
        }
        return setting;
    }

    /** Volts at the probe. */
    double volts(Step step, double battery, double meterOhms) {
        Setting setting = setting(step).emf(BATTERY, battery).ohms(PROBE, meterOhms);
        if (step.resistorOhms().isPresent()) {
            setting = setting.closed(LINK).ohms(HUNG, step.resistorOhms().getAsDouble());
        }
        SolveOutcome outcome = Solver.of(network()).solve(setting);
        return outcome.settledPoint().volts(WIRE);
    }

    /** True when only probe and leakage hold the wire. */
    boolean floats(Step step) {
        if (step.resistorOhms().isPresent()) {
            return false;
        }
        return Solver.of(network())
                .solve(setting(step).broken(PROBE).broken(LEAK))
                .settledPoint()
                .isFloating(WIRE);
    }

    OptionalDouble bodyOhms(Step step) {
        return new Probe(network(), WIRE, Node.CHASSIS)
                .ohms(setting(step).broken(PROBE).broken(LEAK));
    }
}
