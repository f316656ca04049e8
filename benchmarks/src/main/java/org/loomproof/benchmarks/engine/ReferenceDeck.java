package org.loomproof.benchmarks.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Contact;
import org.loomproof.network.part.Diode;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.Lamp;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Meter;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.RelayPosition;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.Switch;
import org.loomproof.network.part.Wire;
import org.loomproof.network.solve.OperatingPoint;

/**
 * A loom in the language of the simulator it is compared with. Switches are resistors whose value is altered, relays are its
 * own voltage-controlled switches with hysteresis, outputs are square-law transistors whose gate is altered.
 */
final class ReferenceDeck {
    /** Stands for an open contact; far above the 10 MΩ that tie every node. */
    private static final String OPEN = "1e15";

    /** How close the reference is asked to come when it is timed. */
    static final String TIMED = "reltol=1e-6 vntol=1e-9 abstol=1e-12";

    /** When its answers are compared. */
    static final String TIGHTEST = "reltol=1e-9 vntol=1e-9 abstol=1e-12";

    /** How a deck is written. */
    record Style(boolean lamps, boolean contactsHeld, String closeness) {
        /** Timed, with lamps as curved sources. */
        static final Style FULL = new Style(true, false, TIMED);

        /** Timed, with lamps as resistors of their hot resistance. */
        static final Style LAMP_FREE = new Style(false, false, TIMED);

        /** For comparing answers. */
        static final Style EXACT = new Style(true, false, TIGHTEST);

        /** For comparing answers with contacts held where ours are. */
        static final Style HELD = new Style(true, true, TIGHTEST);
    }

    private final Network network;
    private final Style style;
    private final List<String> lines = new ArrayList<>(List.of("loom"));
    private final Map<DiodeModel, String> models = new HashMap<>();

    /** Per part: its element, the value when on or whole, and the value when off or broken. */
    private final Map<PartId, String[]> altered = new HashMap<>();

    private int made;

    ReferenceDeck(Network network, Style style) {
        this.network = network;
        this.style = style;
        network.parts().forEach(this::add);
        lines.add(".options gmin=1e-12 " + style.closeness() + " itl1=500 temp=27 tnom=27");
        lines.add(".end");
    }

    List<String> lines() {
        return lines;
    }

    List<String> vectors() {
        return network.nodes().stream().skip(1).map(this::name).toList();
    }

    /** One line a setting: what to alter against the one before, and the operating point. Relays move as the reference has it. */
    List<String> states(List<Setting> settings) {
        Map<PartId, String> now = new HashMap<>();
        return settings.stream()
                .map(setting -> changes(setting, part -> isAsked(part, setting), now))
                .toList();
    }

    /** The same for points, with all contacts where they are at that point. */
    List<String> heldStates(List<OperatingPoint> points) {
        Map<PartId, String> now = new HashMap<>();
        return points.stream()
                .map(point -> changes(point.setting(), part -> isPassed(part, point), now))
                .toList();
    }

    private static boolean isAsked(Part part, Setting setting) {
        return !(part instanceof Switch || part instanceof LowSideOutput) || setting.isOn(part.id());
    }

    private static boolean isPassed(Part part, OperatingPoint point) {
        return switch (part) {
            case Relay relay -> point.relayPosition(relay.id()) == RelayPosition.PULLED_IN;
            case LowSideOutput output -> point.isAwake(output.id()) && isAsked(output, point.setting());
            default -> isAsked(part, point.setting());
        };
    }

    private String changes(Setting setting, Predicate<Part> isOn, Map<PartId, String> now) {
        List<String> commands = new ArrayList<>();
        for (Part part : network.parts()) {
            String[] values = altered.get(part.id());
            if (values != null) {
                String value = switch (setting.fault(part.id())) {
                    case NONE -> values[isOn.test(part) ? 1 : 2];
                    case BROKEN -> values[2];
                    case SHORTED -> Double.toString(Setting.SHORT_OHMS);
                };
                if (!value.equals(now.put(part.id(), value))) {
                    commands.add("alter " + values[0] + " = " + value);
                }
            }
        }
        commands.add("op");
        return String.join(";", commands);
    }

    private String name(Node node) {
        int index = network.indexOf(node);
        return index == 0 ? "0" : "n" + index;
    }

    private void add(Part part) {
        int k = made++;
        switch (part) {
            case Battery p -> {
                lines.add("v" + k + " x" + k + " " + name(p.minus()) + " dc " + p.emfVolts());
                lines.add("rb" + k + " " + name(p.plus()) + " x" + k + " " + p.innerOhms());
            }
            case Resistor p -> resistor(p.id(), p.a(), p.b(), p.ohms());
            case Wire p -> resistor(p.id(), p.a(), p.b(), p.ohms());
            case Fuse p -> resistor(p.id(), p.a(), p.b(), p.coldOhms());
            case Meter p -> lines.add("r" + k + " " + name(p.a()) + " " + name(p.b()) + " " + p.ohms());
            case Switch p -> resistor(p.id(), p.a(), p.b(), p.closedOhms());
            case Diode p -> diode(p.anode(), p.cathode(), p.model());
            case Lamp p -> lamp(p, k);
            case Relay p -> relay(p, k);
            case LowSideOutput p -> output(p, k);
            default -> throw new IllegalArgumentException("no such part in a loom: " + part);
        }
    }

    private void resistor(PartId id, Node a, Node b, double ohms) {
        String element = "r" + made++;
        altered.put(id, new String[] {element, Double.toString(ohms), OPEN});
        lines.add(element + " " + name(a) + " " + name(b) + " " + ohms);
    }

    private void diode(Node anode, Node cathode, DiodeModel model) {
        String known = models.computeIfAbsent(model, m -> {
            String fresh = "dm" + models.size();
            lines.add(".model " + fresh + " d(is=" + m.saturationAmps() + " n=" + m.emission() + " rs=" + m.seriesOhms()
                    + ")");
            return fresh;
        });
        lines.add("d" + made++ + " " + name(anode) + " " + name(cathode) + " " + known);
    }

    private void lamp(Lamp p, int k) {
        String a = name(p.a());
        String b = name(p.b());
        if (!style.lamps()) {
            lines.add("r" + k + " " + a + " " + b + " " + p.hotOhms());
            return;
        }
        double floor = Math.pow(p.coldToHotOhms(), 13.0 / 3);
        double perSquare = (1 - floor) / (p.ratedVolts() * p.ratedVolts());
        String across = b.equals("0") ? "v(" + a + ")" : "v(" + a + "," + b + ")";
        lines.add("b" + k + " " + a + " " + b + " i = " + across + "/" + p.hotOhms() + "*pow(" + floor + "+" + perSquare
                + "*" + across + "*" + across + "," + -3.0 / 13 + ")");
    }

    private void relay(Relay p, int k) {
        String coil = name(p.coilPlus()) + " " + name(p.coilMinus());
        lines.add("rc" + k + " " + coil + " " + p.coilOhms());
        if (style.contactsHeld()) {
            Contact only = p.contacts().getFirst();
            resistor(p.id(), only.common(), only.make().orElseThrow(), p.contactOhms());
            return;
        }
        double middle = (p.pullInVolts() + p.dropOutVolts()) / 2;
        lines.add(".model sm" + k + " sw(vt=" + middle + " vh=" + (p.pullInVolts() - middle) + " ron=" + p.contactOhms()
                + " roff=" + OPEN + ")");
        for (Contact contact : p.contacts()) {
            contact.make()
                    .ifPresent(end -> lines.add("s" + made++ + " " + name(contact.common()) + " " + name(end) + " "
                            + coil + " sm" + k + " off"));
        }
    }

    private void output(LowSideOutput p, int k) {
        double over = 2 * p.drive().onOhms() * p.drive().limitAmps();
        altered.put(p.id(), new String[] {"vg" + k, Double.toString(over), "-1"});
        lines.add("vg" + k + " g" + k + " " + name(p.ground()) + " dc -1");
        lines.add(".model mm" + k + " nmos(level=1 vto=0 kp=" + 1 / (p.drive().onOhms() * over)
                + " lambda=1e-3 is=1e-60)");
        lines.add("m" + k + " " + name(p.output()) + " g" + k + " " + name(p.ground()) + " " + name(p.ground()) + " mm"
                + k + " w=1 l=1");
        if (p.bodyDiode()) {
            diode(p.ground(), p.output(), DiodeModel.BODY);
        }
    }
}
