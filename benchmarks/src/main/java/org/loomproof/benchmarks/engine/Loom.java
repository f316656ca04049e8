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

    private final SplittableRandom random;
    private final Shape shape;
    private final List<Part> parts = new ArrayList<>();
    private final List<Node> splices = new ArrayList<>();
    private final Node bus;
    private int nodes;
    private int made;

    private Loom(Shape shape, long seed) {
        this.shape = shape;
        this.random = new SplittableRandom(seed);
        Node plus = node();
        parts.add(new Battery(id("battery"), plus, Node.CHASSIS, 12.6, 0.012));
        bus = node();
        parts.add(new Fuse(id("main"), plus, bus, 0.002, 80));
        splices.add(bus);
    }

    /**
     * Builds one.
     *
     * @param large about 290 nodes, 8 relays, 41 diodes, 24 lamps, 10 outputs; otherwise about 75, 6, 18, 10 and 8
     */
    static Network network(Shape shape, boolean large, long seed) {
        Loom loom = new Loom(shape, seed);
        return large ? loom.build(24, 8, 14, 10, 9, 290) : loom.build(9, 6, 3, 8, 1, 75);
    }

    private Network build(int lamps, int relays, int triggers, int outputs, int indicators, int nodeCount) {
        for (int k = 0; k < Math.max(Math.max(lamps, relays), Math.max(triggers, Math.max(outputs, indicators))); k++) {
            if (k < lamps) {
                lamp();
            }
            if (k < relays) {
                relay();
            }
            if (k < triggers) {
                trigger();
            }
            if (k < outputs) {
                output();
            }
            if (k < indicators) {
                indicator();
            }
        }
        while (nodes < nodeCount) {
            heater();
        }
        if (shape == Shape.MESH) {
            for (int k = 0; k < nodeCount / 6; k++) {
                parts.add(new Resistor(id("strap"), splice(), splice(), ohms(0.05, 20)));
            }
        }
        for (int n = 0; n < nodes; n++) {
            parts.add(new Meter(id("tie"), new Node("n" + n), Node.CHASSIS));
        }
        return Network.builder().addAll(parts).build();
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

    private Node takeOff() {
        Node from = switch (shape) {
            case STAR -> bus;
            case CHAIN -> splices.getLast();
            case TREE, MESH -> splice();
        };
        if (shape == Shape.STAR) {
            return from;
        }
        Node splice = node();
        parts.add(new Wire(id("run"), from, splice, ohms(1e-3, 1e-2)));
        splices.add(splice);
        return splice;
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

    private Node splice() {
        return splices.get(random.nextInt(splices.size()));
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
