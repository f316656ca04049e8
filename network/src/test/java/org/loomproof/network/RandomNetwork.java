package org.loomproof.network;

import static org.loomproof.network.TestNetwork.at;
import static org.loomproof.network.TestNetwork.id;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Breakdown;
import org.loomproof.network.part.Capacitor;
import org.loomproof.network.part.Contact;
import org.loomproof.network.part.Diode;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Drive;
import org.loomproof.network.part.Fuse;
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
import org.loomproof.network.part.SelectorSwitch;
import org.loomproof.network.part.SelectorSwitch.Pole;
import org.loomproof.network.part.SteppedSwitch;
import org.loomproof.network.part.Suppressor;
import org.loomproof.network.part.Switch;
import org.loomproof.network.part.Wire;
import org.loomproof.network.part.Zener;

/**
 * Networks drawn from a seed, of every part kind, shaped as trees, chains, stars or meshes. Every node is tied to the
 * chassis by 10 MΩ or what is stated, so that each voltage is defined and comparable.
 */
public final class RandomNetwork {
    private static final List<DiodeModel> DIODES = List.of(
            DiodeModel.SILICON_1A,
            DiodeModel.SILICON_3A,
            DiodeModel.SILICON_SIGNAL,
            new DiodeModel(2e-8, 1.05, 0.05), // a Schottky of little leakage
            DiodeModel.LED_RED);

    private final SplittableRandom random;
    private final List<Part> parts = new ArrayList<>();
    private final List<Node> nodes = new ArrayList<>();
    private int made;

    private final double tieOhms;
    private final boolean breakdowns;

    private RandomNetwork(long seed, double tieOhms, boolean breakdowns) {
        this.tieOhms = tieOhms;
        this.breakdowns = breakdowns;
        random = new SplittableRandom(seed);
    }

    /** A network of about that many nodes. */
    public static Network of(long seed, int nodeCount) {
        return new RandomNetwork(seed, Meter.USUAL_OHMS, true).build(nodeCount, true);
    }

    /**
     * A network of about that many nodes, each tied to the chassis by so many ohms, without parts that break down: one in
     * seven of those with some is beyond the numerical reference.
     */
    public static Network of(long seed, int nodeCount, double tieOhms) {
        return new RandomNetwork(seed, tieOhms, false).build(nodeCount, true);
    }

    /** A network of resistors, wires, fuses, meters and batteries only. */
    public static Network linear(long seed, int nodeCount) {
        return new RandomNetwork(seed, Meter.USUAL_OHMS, false).build(nodeCount, false);
    }

    /** Switches and outputs thrown by chance, the battery at some voltage between cranking and charging. */
    public static Setting setting(Network network, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Setting setting = network.atRest();
        for (Part part : network.parts()) {
            boolean on = random.nextBoolean();
            setting = switch (part) {
                case Switch s when on -> setting.closed(s.id());
                case LowSideOutput o when on -> setting.on(o.id());
                case HighSideOutput o when on -> setting.on(o.id());
                case Motor m when on -> setting.stalled(m.id());
                case SelectorSwitch s -> setting.selected(s.id(), random.nextInt(s.positions()));
                case SteppedSwitch s ->
                    setting.selected(s.id(), random.nextInt(s.ohmsAt().size()));
                case Battery b when on -> setting.emf(b.id(), b.emfVolts() * random.nextDouble(0.75, 1.15));
                default -> setting;
            };
        }
        return setting;
    }

    private Network build(int nodeCount, boolean curved) {
        int shape = random.nextInt(4);
        Node plus = node();
        parts.add(new Battery(next("battery"), plus, Node.CHASSIS, 12.6, random.nextDouble(0.005, 0.05)));
        while (nodes.size() < nodeCount) {
            Node from = switch (shape) {
                case 0 -> any();
                case 1 -> nodes.getLast();
                case 2 -> nodes.get(random.nextInt(Math.min(3, nodes.size())));
                default -> random.nextInt(3) == 0 ? any() : nodes.getLast();
            };
            series(from, node(), curved);
        }
        int extra = shape == 3 ? nodeCount : nodeCount / 2;
        for (int k = 0; k < extra; k++) {
            if (curved) {
                load();
            } else {
                parts.add(new Resistor(next("load"), any(), random.nextBoolean() ? Node.CHASSIS : any(), ohms(1, 1e5)));
            }
        }
        for (Node each : List.copyOf(nodes)) {
            parts.add(new Meter(next("meter"), each, Node.CHASSIS, tieOhms));
        }
        return Network.builder().addAll(parts).build();
    }

    private void series(Node from, Node to, boolean curved) {
        parts.add(
                switch (random.nextInt(curved ? 8 : 4)) {
                    case 0, 1 -> new Wire(next("wire"), from, to, ohms(1e-3, 5e-2));
                    case 2 -> new Fuse(next("fuse"), from, to, ohms(2e-3, 2e-1), 10);
                    case 3 -> new Resistor(next("resistor"), from, to, ohms(0.1, 1e4));
                    case 4, 5 -> new Switch(next("switch"), from, to, ohms(1e-3, 2e-2));
                    case 6 -> new Diode(next("diode"), from, to, diode());
                    default -> new Diode(next("diode"), to, from, diode());
                });
    }

    private void load() {
        Node a = any();
        switch (random.nextInt(14)) {
            case 0 -> parts.add(new Resistor(next("load"), a, Node.CHASSIS, ohms(2, 1e5)));
            case 1, 2 ->
                parts.add(new Lamp(
                        next("lamp"),
                        a,
                        random.nextInt(4) == 0 ? any() : Node.CHASSIS,
                        13.5,
                        random.nextDouble(1.2, 21)));
            case 3 -> {
                Node led = node();
                parts.add(new Resistor(next("series"), a, led, ohms(300, 2e3)));
                parts.add(new Diode(next("led"), led, Node.CHASSIS, DiodeModel.LED_RED));
            }
            case 4 ->
                parts.add(new Relay(
                        next("relay"),
                        a,
                        Node.CHASSIS,
                        random.nextDouble(60, 300),
                        random.nextDouble(6, 8.4),
                        random.nextDouble(1, 3),
                        List.of(Contact.changeover(any(), any(), node())),
                        ohms(1e-3, 1e-2)));
            case 5 ->
                parts.add(new LowSideOutput(
                        next("low"), a, any(), Node.CHASSIS, drive(), random.nextBoolean(), random.nextBoolean()));
            case 6 ->
                parts.add(new HighSideOutput(
                        next("high"), a, any(), Node.CHASSIS, drive(), random.nextBoolean(), random.nextBoolean()));
            case 7 ->
                parts.add(new LogicInput(
                        next("input"),
                        a,
                        any(),
                        Node.CHASSIS,
                        random.nextBoolean() ? OptionalDouble.of(ohms(1e3, 47e3)) : OptionalDouble.empty(),
                        random.nextBoolean() ? OptionalDouble.of(ohms(1e4, 1e5)) : OptionalDouble.empty(),
                        2,
                        4,
                        random.nextBoolean()));
            case 8 -> parts.add(new Diode(next("diode"), a, any(), diode()));
            case 9 ->
                parts.add(
                        !breakdowns
                                ? new Diode(next("diode"), a, any(), diode())
                                : random.nextBoolean()
                                        ? new Zener(next("zener"), Node.CHASSIS, a, DiodeModel.SILICON_1A, breakdown())
                                        : new Suppressor(next("suppressor"), a, any(), breakdown()));
            case 10 -> parts.add(new Inductor(next("inductor"), a, Node.CHASSIS, ohms(1e-3, 0.5), ohms(5, 500)));
            case 11 ->
                parts.add(new Motor(
                        next("motor"), a, Node.CHASSIS, ohms(0.5, 5), 1e-3, 12, random.nextDouble(0.2, 1.5), 0.05));
            case 12 -> {
                Node pulsed = node();
                parts.add(new PulsedSource(
                        next("pulsed"), pulsed, Node.CHASSIS, 5, 0, 200, random.nextDouble(), ohms(50, 500)));
                parts.add(new Capacitor(next("capacitor"), pulsed, any(), ohms(1e-9, 1e-4)));
            }
            default -> parts.add(severalPositions(a));
        }
    }

    private Part severalPositions(Node a) {
        return random.nextBoolean()
                ? new SelectorSwitch(
                        next("selector"),
                        List.of(Pole.of(a, any(), any(), any()), Pole.of(any(), node(), any(), any())),
                        ohms(1e-3, 2e-2))
                : new SteppedSwitch(
                        next("stepped"),
                        a,
                        Node.CHASSIS,
                        List.of(
                                OptionalDouble.empty(),
                                OptionalDouble.of(ohms(10, 1e4)),
                                OptionalDouble.of(ohms(10, 1e4))));
    }

    private Breakdown breakdown() {
        return new Breakdown(random.nextDouble(4.7, 27), ohms(1e-3, 1e-2), ohms(0.1, 10));
    }

    private Drive drive() {
        return new Drive(
                ohms(0.05, 2), random.nextInt(3) == 0 ? random.nextDouble(0.1, 0.9) : 0, random.nextDouble(0.2, 3));
    }

    private DiodeModel diode() {
        return DIODES.get(random.nextInt(DIODES.size()));
    }

    private double ohms(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    private Node any() {
        return nodes.get(random.nextInt(nodes.size()));
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
