package org.loomproof.network.reference;

import static org.loomproof.network.TestNetwork.at;
import static org.loomproof.network.TestNetwork.id;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Breakdown;
import org.loomproof.network.part.Capacitor;
import org.loomproof.network.part.Contact;
import org.loomproof.network.part.Diode;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Drive;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.Inductor;
import org.loomproof.network.part.Lamp;
import org.loomproof.network.part.LogicInput;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Meter;
import org.loomproof.network.part.Motor;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.PulsedSource;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.Switch;
import org.loomproof.network.part.Wire;
import org.loomproof.network.part.Zener;
import org.loomproof.network.time.Timeline;
import org.loomproof.network.time.Waveform;

/**
 * A network drawn from a seed in which something goes on for {@value #END} s: feeds of wires and switches, and at their ends
 * coils with clamps, motors, lamps, outputs, capacitors. Switches and outputs are thrown at moments drawn too, and the supply
 * dips as it does while an engine is cranked.
 */
public final class RandomCourse {
    private static final double END = 0.04;

    private static final double TIE_OHMS = 100e3;

    private final SplittableRandom random;
    private final List<Part> parts = new ArrayList<>();
    private final List<Node> nodes = new ArrayList<>();
    private final List<PartId> thrown = new ArrayList<>();
    private int made;

    private RandomCourse(long seed) {
        random = new SplittableRandom(seed);
    }

    /** A course with so many loads; about twice as many nodes. */
    public static Course of(long seed, int loads) {
        return new RandomCourse(seed).draw(loads);
    }

    private Course draw(int loads) {
        Node plus = node();
        PartId battery = id("battery");
        parts.add(new Battery(battery, plus, Node.CHASSIS, 12.6, uniform(0.01, 0.05)));
        for (int k = 0; k < 2 + loads / 4; k++) {
            feed(any());
        }
        for (int k = 0; k < loads; k++) {
            load(any());
        }
        for (Node each : List.copyOf(nodes)) {
            parts.add(new Meter(next("meter"), each, Node.CHASSIS, TIE_OHMS));
        }
        Network network = Network.builder().addAll(parts).build();
        Map<PartId, Waveform> supplies = new HashMap<>();
        Timeline timeline = Timeline.settled(network.atRest());
        if (random.nextInt(3) > 0) {
            double dip = uniform(0.010, 0.020);
            Waveform shape =
                    Waveform.of(dip, 12.6, dip + 2e-3, uniform(6, 9), dip + 8e-3, uniform(8, 10), dip + 14e-3, 12.6);
            supplies.put(battery, shape);
            timeline = timeline.supply(battery, shape);
        }
        List<Course.Thrown> throwing = new ArrayList<>();
        double t = 1e-3;
        while (t < END - 2e-3) {
            PartId each = thrown.get(random.nextInt(thrown.size()));
            boolean output = !(network.part(each) instanceof Switch);
            timeline = timeline.then(
                    t,
                    s -> output
                            ? s.isOn(each) ? s.off(each) : s.on(each)
                            : s.isOn(each) ? s.open(each) : s.closed(each));
            throwing.add(new Course.Thrown(t, each));
            t += uniform(0.5e-3, 8e-3);
        }
        return new Course(timeline, throwing, supplies, END);
    }

    /** A wire, a switch or a diode on the way, with a capacitor at its end so that a coil cut off there has a way to go. */
    private void feed(Node from) {
        Node end = node();
        switch (random.nextInt(4)) {
            case 0 -> parts.add(new Wire(next("wire"), from, end, logarithmic(2e-3, 5e-2)));
            case 1, 2 -> parts.add(toThrow(new Switch(next("switch"), from, end, logarithmic(2e-3, 5e-2))));
            default -> parts.add(new Diode(next("diode"), from, end, DiodeModel.SILICON_3A));
        }
        parts.add(
                new Capacitor(next("capacitor"), end, Node.CHASSIS, logarithmic(1e-6, 470e-6), logarithmic(0.02, 0.5)));
    }

    private void load(Node from) {
        switch (random.nextInt(9)) {
            case 0 ->
                parts.add(new Lamp(next("lamp"), from, Node.CHASSIS, 13.5, uniform(3, 21), 0.08, uniform(0.01, 0.1)));
            case 1 -> {
                Node end = switched(from);
                parts.add(new Motor(
                        next("motor"),
                        end,
                        Node.CHASSIS,
                        uniform(0.6, 3),
                        0,
                        12,
                        uniform(0.3, 2),
                        uniform(5e-3, 40e-3)));
            }
            case 2, 3 -> coil(from);
            case 4 -> {
                Node end = node();
                parts.add(new Resistor(next("series"), from, end, logarithmic(10, 10e3)));
                parts.add(new Capacitor(next("filter"), end, Node.CHASSIS, logarithmic(1e-8, 1e-5), 0.1));
                parts.add(new LogicInput(
                        next("input"),
                        end,
                        nodes.getFirst(),
                        Node.CHASSIS,
                        OptionalDouble.empty(),
                        OptionalDouble.of(47e3),
                        2,
                        4,
                        true));
            }
            case 5 -> {
                Node pulsed = node();
                parts.add(new PulsedSource(
                        next("pulsed"), pulsed, Node.CHASSIS, 5, 0, uniform(100, 300), uniform(0.2, 0.8), 100));
                Node end = node();
                parts.add(new Resistor(next("series"), pulsed, end, logarithmic(1e3, 20e3)));
                parts.add(new Capacitor(next("filter"), end, Node.CHASSIS, logarithmic(1e-8, 1e-6), 0.1));
            }
            case 6 -> {
                Node end = node();
                Drive drive = new Drive(uniform(0.1, 1), 0, uniform(0.5, 3));
                parts.add(toThrow(
                        new LowSideOutput(next("low"), end, nodes.getFirst(), Node.CHASSIS, drive, true, false)));
                parts.add(new Inductor(next("solenoid"), from, end, logarithmic(5e-3, 0.2), uniform(8, 60)));
                parts.add(clamp(end, from));
            }
            case 7 -> {
                Node end = node();
                Drive drive = new Drive(uniform(0.1, 1), 0, uniform(0.5, 3));
                parts.add(toThrow(new HighSideOutput(next("high"), end, from, Node.CHASSIS, drive, true, false)));
                parts.add(new Resistor(next("load"), end, Node.CHASSIS, uniform(8, 60)));
                parts.add(new Capacitor(next("across"), end, Node.CHASSIS, logarithmic(1e-7, 1e-5), 0.1));
            }
            default -> {
                Node end = switched(from);
                parts.add(new Resistor(next("load"), end, Node.CHASSIS, uniform(5, 200)));
            }
        }
    }

    private void coil(Node from) {
        Node low = node();
        Node load = node();
        double ohms = uniform(60, 120);
        parts.add(new Relay(
                        next("relay"),
                        from,
                        low,
                        ohms,
                        uniform(5.5, 7.5),
                        uniform(1, 3),
                        List.of(Contact.changeover(from, load, node())),
                        logarithmic(2e-3, 2e-2))
                .timed(uniform(0.05, 0.4), uniform(1e-3, 4e-3), uniform(0.5e-3, 2e-3)));
        parts.add(clamp(low, from));
        parts.add(toThrow(new Switch(next("switch"), low, Node.CHASSIS, uniform(0.1, 0.5))));
        parts.add(new Resistor(next("load"), load, Node.CHASSIS, uniform(5, 200)));
    }

    /** What lets a coil's current go on from one node to another: a diode, a resistor, or a zener to the chassis. */
    private Part clamp(Node from, Node to) {
        return switch (random.nextInt(3)) {
            case 0 -> new Diode(next("clamp"), from, to, DiodeModel.SILICON_1A);
            case 1 -> new Resistor(next("clamp"), from, to, logarithmic(100, 680));
            default ->
                new Zener(
                        next("clamp"),
                        Node.CHASSIS,
                        from,
                        DiodeModel.SILICON_1A,
                        new Breakdown(uniform(27, 40), 0.01, uniform(0.5, 3)));
        };
    }

    private Node switched(Node from) {
        Node end = node();
        parts.add(toThrow(new Switch(next("switch"), from, end, logarithmic(2e-3, 5e-2))));
        return end;
    }

    private Part toThrow(Part part) {
        thrown.add(part.id());
        return part;
    }

    private double uniform(double low, double high) {
        return random.nextDouble(low, high);
    }

    private double logarithmic(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    private Node any() {
        return nodes.get(random.nextInt(Math.min(nodes.size(), 6)));
    }

    private Node node() {
        Node node = at("n" + nodes.size());
        nodes.add(node);
        return node;
    }

    private PartId next(String kind) {
        return id(kind + made++);
    }
}
