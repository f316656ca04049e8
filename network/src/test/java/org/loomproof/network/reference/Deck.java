package org.loomproof.network.reference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
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
import org.loomproof.network.part.SteppedSwitch;
import org.loomproof.network.part.Suppressor;
import org.loomproof.network.part.Switch;
import org.loomproof.network.part.Wire;
import org.loomproof.network.part.Zener;

/** One network at one setting with given contacts, in the reference's language. Written from the parts alone. */
final class Deck {
    private final Network network;
    private final Setting setting;
    private final Set<PartId> passed;
    private final StringBuilder text = new StringBuilder();
    private final Map<DiodeModel, String> models = new HashMap<>();

    /** What to ask for, by part whose current into its first pin it is. */
    private final Map<PartId, String> currents = new LinkedHashMap<>();

    private int made;

    private Deck(Network network, Setting setting, Set<PartId> passed) {
        this.network = network;
        this.setting = setting;
        this.passed = passed;
        text.append("network\n");
        network.parts().forEach(this::add);
        text.append(".options gmin=1e-12 reltol=1e-8 vntol=1e-10 abstol=1e-13 itl1=2000 temp=27 tnom=27\n.end\n");
    }

    static Deck of(Network network, Setting setting, Set<PartId> passed) {
        return new Deck(network, setting, passed);
    }

    String text() {
        return text.toString();
    }

    Map<PartId, String> currents() {
        return currents;
    }

    static String name(Network network, Node node) {
        int index = network.indexOf(node);
        return index == 0 ? "0" : "n" + index;
    }

    private String name(Node node) {
        return name(network, node);
    }

    private void line(Object... words) {
        text.append(Arrays.stream(words).map(Object::toString).collect(Collectors.joining(" ")))
                .append('\n');
    }

    private String inner() {
        return "x" + made++;
    }

    private void add(Part part) {
        boolean on = setting.isOn(part.id());
        boolean drives = on && passed.contains(part.id());
        switch (part) {
            case Battery p -> source(p, p.plus(), p.minus(), p.emfVolts(), p.innerOhms());
            case Resistor p -> resistor(p, p.a(), p.b(), p.ohms());
            case Wire p -> resistor(p, p.a(), p.b(), p.ohms());
            case Fuse p -> resistor(p, p.a(), p.b(), p.coldOhms());
            case Meter p -> resistor(p, p.a(), p.b(), p.ohms());
            case Switch p -> {
                if (on) {
                    resistor(p, p.a(), p.b(), p.closedOhms());
                }
            }
            case Diode p -> currents.put(p.id(), "@" + diode(name(p.anode()), name(p.cathode()), p.model()) + "[id]");
            case Capacitor p -> {}
            case Inductor p -> resistor(p, p.a(), p.b(), p.windingOhms());
            case Zener p -> {
                diode(name(p.anode()), name(p.cathode()), p.forward());
                breakdown(p.cathode(), p.anode(), p.breakdown());
            }
            case Suppressor p -> {
                breakdown(p.a(), p.b(), p.breakdown());
                breakdown(p.b(), p.a(), p.breakdown());
            }
            case Motor p -> {
                double running = p.ratedVolts() / p.runAmps();
                resistor(
                        p,
                        p.a(),
                        p.b(),
                        on ? p.armatureOhms() * (1 + 1e-4 / (1 + 1e-4 * p.armatureOhms() * p.loadSiemens())) : running);
            }
            case PulsedSource p -> source(p, p.plus(), p.minus(), p.averageVolts(), p.innerOhms());
            case SelectorSwitch p ->
                p.poles()
                        .forEach(pole -> pole.throwAt()
                                .get(setting.selected(network.indexOf(p.id())))
                                .ifPresent(end -> resistor(pole.common(), end, p.closedOhms())));
            case SteppedSwitch p ->
                p.ohmsAt()
                        .get(setting.selected(network.indexOf(p.id())))
                        .ifPresent(step -> resistor(p, p.a(), p.b(), step));
            case Lamp p -> lamp(p);
            case Relay p -> relay(p);
            case LowSideOutput p -> {
                if (drives) {
                    channel(name(p.output()), name(p.ground()), p.drive());
                }
                diodeIf(p.bodyDiode(), p.ground(), p.output(), DiodeModel.BODY);
                diodeIf(p.clampToSupply(), p.output(), p.supply(), DiodeModel.BODY);
            }
            case HighSideOutput p -> {
                if (drives) {
                    channel(name(p.supply()), name(p.output()), p.drive());
                }
                diodeIf(p.bodyDiode(), p.output(), p.supply(), DiodeModel.BODY);
                diodeIf(p.clampToGround(), p.ground(), p.output(), DiodeModel.BODY);
            }
            case LogicInput p -> {
                p.pullUpOhms().ifPresent(ohms -> resistor(p.input(), p.supply(), ohms));
                p.pullDownOhms().ifPresent(ohms -> resistor(p.input(), p.ground(), ohms));
                diodeIf(p.protectionDiodes(), p.input(), p.supply(), DiodeModel.PROTECTION);
                diodeIf(p.protectionDiodes(), p.ground(), p.input(), DiodeModel.PROTECTION);
            }
        }
    }

    private void source(Part part, Node plus, Node minus, double builtVolts, double innerOhms) {
        double stated = setting.stated(network.indexOf(part.id()));
        String inside = inner();
        line("v" + made, inside, name(minus), "dc", Double.isNaN(stated) ? builtVolts : stated);
        currents.put(part.id(), "i(v" + made + ")");
        line("rb" + made, name(plus), inside, innerOhms);
    }

    private void breakdown(Node from, Node to, Breakdown curve) {
        String offset = inner();
        String slope = inner();
        line("vz" + made, name(from), offset, "dc", curve.volts() - 0.6 - curve.ohms() * curve.atAmps());
        line("rz" + made++, offset, slope, curve.ohms());
        double is = curve.atAmps() / Math.expm1(0.6 / DiodeModel.THERMAL_VOLTS);
        diode(slope, name(to), new DiodeModel(is, 1, 0));
    }

    private void resistor(Part part, Node a, Node b, double ohms) {
        String element = resistor(a, b, ohms);
        if (!(part instanceof Meter) && !a.equals(b)) {
            currents.put(part.id(), "@" + element + "[i]");
        }
    }

    private String resistor(Node a, Node b, double ohms) {
        String element = "r" + made++;
        line(element, name(a), name(b), ohms);
        return element;
    }

    private void relay(Relay p) {
        resistor(p.coilPlus(), p.coilMinus(), p.coilOhms());
        for (Contact contact : p.contacts()) {
            (passed.contains(p.id()) ? contact.make() : contact.rest())
                    .ifPresent(end -> resistor(contact.common(), end, p.contactOhms()));
        }
    }

    private void diodeIf(boolean present, Node anode, Node cathode, DiodeModel model) {
        if (present) {
            diode(name(anode), name(cathode), model);
        }
    }

    private String diode(String anode, String cathode, DiodeModel model) {
        String known = models.computeIfAbsent(model, m -> {
            String fresh = "dm" + models.size();
            line(".model", fresh, "d(is=" + m.saturationAmps(), "n=" + m.emission(), "rs=" + m.seriesOhms() + ")");
            return fresh;
        });
        String element = "d" + made++;
        line(element, anode, cathode, known);
        return element;
    }

    private void lamp(Lamp p) {
        double floor = Math.pow(p.coldToHotOhms(), 13.0 / 3);
        String across = "v(" + name(p.a()) + "," + name(p.b()) + ")";
        if (name(p.b()).equals("0")) {
            across = "v(" + name(p.a()) + ")";
        }
        if (p.a().equals(p.b())) {
            return;
        }
        double hotSiemens = p.ratedWatts() / (p.ratedVolts() * p.ratedVolts());
        double perSquare = (1 - floor) / (p.ratedVolts() * p.ratedVolts());
        String base = floor + "+" + perSquare + "*" + across + "*" + across;
        line(
                "b" + made++,
                name(p.a()),
                name(p.b()),
                "i = " + across + "*" + hotSiemens + "*pow(" + base + "," + -3.0 / 13 + ")");
    }

    private void channel(String from, String to, Drive drive) {
        String end = to;
        if (drive.saturationVolts() > 0) {
            end = inner();
            double is = drive.limitAmps() / Math.expm1(drive.saturationVolts() / DiodeModel.THERMAL_VOLTS);
            diode(end, to, new DiodeModel(is, 1, 0));
        }
        double over = 2 * drive.onOhms() * drive.limitAmps();
        String gate = inner();
        int k = made++;
        line("vg" + k, gate, end, "dc", over);
        // Saturation current so small that the bulk stays out of it even when the channel is driven backwards.
        line(".model mm" + k, "nmos(level=1 vto=0 kp=" + 1 / (drive.onOhms() * over), "lambda=1e-3 is=1e-60)");
        line("m" + k, from, gate, end, end, "mm" + k, "w=1 l=1");
    }

    /** Lines that read one deck, solve it and print voltages and the currents asked for. */
    List<String> commands(String file) {
        List<String> commands = new ArrayList<>(List.of("source " + file, "op", "print all"));
        currents.values().forEach(vector -> commands.add("print " + vector));
        commands.add("destroy all");
        commands.add("remcirc");
        return commands;
    }
}
