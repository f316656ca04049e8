package org.loomproof.benchmarks.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Contact;
import org.loomproof.network.part.Diode;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Drive;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.Lamp;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Meter;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.Switch;
import org.loomproof.network.part.Wire;

/**
 * A made-up loom of a stated shape and size: fused and switched lamps, relays with their loads, door triggers behind
 * isolation diodes, indicators, and a controller's outputs. Every node is tied to the chassis by 10 MΩ.
 */
final class Loom {
    /** Where a new branch is taken off. */
    enum Shape {
        TREE,
        STAR,
        CHAIN,
        MESH
    }

    /** How many of each a loom has. Each relay also has a clamp diode, each output a body diode, each trigger a lamp. */
    private record Size(
            int lamps, int relays, int triggers, int outputs, int indicators, int heaters, int nodes, int scale) {
        int takeOffs() {
            return lamps + 2 * relays + triggers + outputs + indicators + heaters;
        }

        int ownNodes() {
            return 2 + 2 * lamps + 4 * relays + 3 * triggers + 2 * outputs + 2 * indicators + heaters;
        }
    }

    private static final Size SMALL = new Size(7, 6, 3, 8, 1, 0, 75, 1);
    private static final Size LARGE = new Size(10, 8, 14, 10, 9, 17, 290, 1);

    private final SplittableRandom random;
    private final Shape shape;
    private final Size size;
    private final List<Part> parts = new ArrayList<>();

    /** Where the next branches are taken off. */
    private final List<Node> takeOffs = new ArrayList<>();

    private final Node bus;
    private int nodes;
    private int made;

    private Loom(Shape shape, Size size, long seed) {
        this.shape = shape;
        this.size = size;
        this.random = new SplittableRandom(seed);
        Node plus = node();
        parts.add(new Battery(id("battery"), plus, Node.CHASSIS, 12.6, 0.012 / size.scale()));
        bus = node();
        parts.add(new Fuse(id("main"), plus, bus, 0.002 / size.scale(), 80 * size.scale()));
    }

    /** 75 nodes, 6 relays, 18 diodes, 10 lamps and 8 outputs. */
    static Network small(Shape shape, long seed) {
        return new Loom(shape, SMALL, seed).build();
    }

    /** 290 nodes, 8 relays, 41 diodes, 24 lamps and 10 outputs. */
    static Network large(Shape shape, long seed) {
        return new Loom(shape, LARGE, seed).build();
    }

    /** So many nodes, of which a quarter or so end in a curved part: for cost against size. */
    static Network ofNodes(Shape shape, int nodeCount, long seed) {
        int units = Math.max(1, nodeCount / 36);
        Size size =
                new Size(2 * units, units, units, 2 * units, units, 2 * units, nodeCount, Math.max(1, nodeCount / 150));
        return new Loom(shape, size, seed).build();
    }

    /** 290 nodes with so many each of lamps, triggers, outputs and indicators; the rest are heaters. */
    static Network ofCurves(Shape shape, int each, long seed) {
        return new Loom(shape, new Size(each, 2, each, each, each, 60 - 4 * each, 290, 1), seed).build();
    }

    private Network build() {
        runs(Math.max(0, size.nodes() - size.ownNodes()));
        int most = Math.max(Math.max(size.lamps(), size.relays()), Math.max(size.triggers(), size.outputs()));
        most = Math.max(most, Math.max(size.indicators(), size.heaters()));
        for (int k = 0; k < most; k++) {
            if (k < size.lamps()) {
                lamp();
            }
            if (k < size.relays()) {
                relay();
            }
            if (k < size.triggers()) {
                trigger();
            }
            if (k < size.outputs()) {
                output();
            }
            if (k < size.indicators()) {
                indicator();
            }
            if (k < size.heaters()) {
                heater();
            }
        }
        for (int n = 0; n < nodes; n++) {
            parts.add(new Meter(id("tie"), new Node("n" + n), Node.CHASSIS));
        }
        return Network.builder().addAll(parts).build();
    }

    /** Lays out the runs of wire between the bus and the take-offs. */
    private void runs(int count) {
        if (shape == Shape.STAR) {
            for (int k = 0; k < size.takeOffs(); k++) {
                Node end = bus;
                for (int joint = k; joint < count; joint += size.takeOffs()) {
                    end = run(end);
                }
                takeOffs.add(end);
            }
            return;
        }
        List<Node> splices = new ArrayList<>(List.of(bus));
        for (int k = 0; k < count; k++) {
            splices.add(run(shape == Shape.CHAIN ? splices.getLast() : any(splices)));
        }
        for (int k = 0; shape == Shape.MESH && k < size.nodes() / 6; k++) {
            parts.add(new Resistor(id("strap"), any(splices), any(splices), ohms(0.05, 20)));
        }
        for (int k = 0; k < size.takeOffs(); k++) {
            takeOffs.add(shape == Shape.CHAIN ? splices.get(k * splices.size() / size.takeOffs()) : any(splices));
        }
    }

    private Node run(Node from) {
        Node end = node();
        double most = shape == Shape.CHAIN ? 2e-3 : 1e-2;
        parts.add(new Wire(id("run"), from, end, ohms(most / 10, most) / size.scale()));
        return end;
    }

    /** Settings in an order in which each differs from the one before by a few thrown switches and outputs. */
    static List<Setting> walk(Network network, int count, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Part> thrown = network.parts().stream()
                .filter(part -> part instanceof Switch || part instanceof LowSideOutput)
                .toList();
        Setting setting = network.atRest();
        for (Part part : thrown) {
            setting = random.nextBoolean() ? toggled(setting, part) : setting;
        }
        List<Setting> settings = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            settings.add(setting);
            int throwsNow = 1 + random.nextInt(3);
            for (int t = 0; t < throwsNow; t++) {
                setting = toggled(setting, thrown.get(random.nextInt(thrown.size())));
            }
        }
        return settings;
    }

    /** Settings drawn independently: each differs from the one before in half of all switches. */
    static List<Setting> draws(Network network, int count, long seed) {
        List<Setting> settings = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            settings.add(walk(network, 1, seed + k).getFirst());
        }
        return settings;
    }

    private static Setting toggled(Setting setting, Part part) {
        boolean on = setting.isOn(part.id());
        return switch (part) {
            case Switch s -> on ? setting.open(s.id()) : setting.closed(s.id());
            default -> on ? setting.off(part.id()) : setting.on(part.id());
        };
    }

    private void lamp() {
        Node end = switched(takeOff());
        parts.add(new Lamp(id("lamp"), end, ground(), 13.5, random.nextDouble(5, 21)));
    }

    private void relay() {
        Node coil = switched(takeOff());
        Node low = node();
        parts.add(new Wire(id("coil ground"), low, Node.CHASSIS, ohms(0.01, 0.05)));
        parts.add(new Diode(id("clamp"), low, coil, DiodeModel.SILICON_1A));
        Node common = fused(takeOff());
        Node made = node();
        parts.add(new Relay(id("relay"), coil, low, 85, 8, 1.2, List.of(Contact.make(common, made)), 2e-3));
        parts.add(new Resistor(id("motor"), made, Node.CHASSIS, ohms(2, 12)));
    }

    private void trigger() {
        Node feed = fused(takeOff());
        Node door = node();
        parts.add(new Lamp(id("interior"), feed, door, 13.5, 10));
        parts.add(new Switch(id("door"), door, Node.CHASSIS, 0.02));
        Node input = node();
        parts.add(new Diode(id("isolation"), input, door, DiodeModel.SILICON_1A));
        parts.add(new Resistor(id("pull-up"), bus, input, 10e3));
    }

    private void output() {
        Node feed = fused(takeOff());
        Node lead = node();
        parts.add(new Resistor(id("load"), feed, lead, ohms(15, 150)));
        parts.add(new LowSideOutput(
                id("output"), lead, bus, Node.CHASSIS, new Drive(ohms(0.3, 1.2), 0, 0.3), true, false));
    }

    private void indicator() {
        Node feed = switched(takeOff());
        Node lit = node();
        parts.add(new Resistor(id("series"), feed, lit, 560));
        parts.add(new Diode(id("led"), lit, Node.CHASSIS, DiodeModel.LED_RED));
    }

    private void heater() {
        Node end = switched(takeOff());
        parts.add(new Resistor(id("heater"), end, Node.CHASSIS, ohms(3, 300)));
    }

    /** Take-offs in chance order, so that no kind of branch sits at one end of a chain. */
    private Node takeOff() {
        return takeOffs.remove(random.nextInt(takeOffs.size()));
    }

    private Node fused(Node from) {
        Node to = node();
        parts.add(new Fuse(id("fuse"), from, to, ohms(5e-3, 3e-2), 10));
        return to;
    }

    private Node switched(Node from) {
        Node to = node();
        parts.add(new Switch(id("switch"), from, to, ohms(1e-3, 2e-2)));
        return to;
    }

    private Node ground() {
        Node point = node();
        parts.add(new Wire(id("ground"), point, Node.CHASSIS, ohms(5e-3, 5e-2)));
        return point;
    }

    private Node any(List<Node> among) {
        return among.get(random.nextInt(among.size()));
    }

    private double ohms(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    private Node node() {
        return new Node("n" + nodes++);
    }

    private PartId id(String kind) {
        return new PartId(kind + " " + made++);
    }
}
