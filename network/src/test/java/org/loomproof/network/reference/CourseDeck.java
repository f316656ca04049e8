package org.loomproof.network.reference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoublePredicate;
import java.util.stream.Collectors;
import org.loomproof.network.law.FilamentCurve;
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
import org.loomproof.network.part.RelayPosition;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.Switch;
import org.loomproof.network.part.Wire;
import org.loomproof.network.part.Zener;
import org.loomproof.network.time.TimeEvent;
import org.loomproof.network.time.Trace;
import org.loomproof.network.time.Waveform;

/**
 * A network in the course of time, in the reference's language. Contacts are conductances that follow a voltage of their own:
 * abrupt switches make the reference give up. When a relay's contacts move is told to it; whether the coil calls for that at
 * the same time is what is compared.
 */
public final class CourseDeck {
    /** Time a contact takes to conduct or to stop. */
    private static final double EDGE_SECONDS = 1e-6;

    /** So far below its source that a channel that is off stays off when its drain swings below. */
    private static final double OFF_GATE_VOLTS = -60;

    /** When something is on: at the start, and each time at which it changes. */
    private record OnOff(boolean atStart, List<Double> changes) {
        static OnOff of(List<Double> times, DoublePredicate isOn) {
            List<Double> changes = new ArrayList<>();
            boolean now = isOn.test(0);
            boolean start = now;
            for (double t : times) {
                if (t > 0 && isOn.test(t) != now) {
                    now = !now;
                    changes.add(t);
                }
            }
            return new OnOff(start, changes);
        }

        OnOff inverted() {
            return new OnOff(!atStart, changes);
        }

        /** Pairs of time and value for a piecewise-linear source. */
        String line(double low, double high) {
            StringBuilder line = new StringBuilder("pwl(0 " + (atStart ? high : low));
            boolean now = atStart;
            for (double change : changes) {
                // A gate that comes from far below conducts only where its rise ends.
                double t = !now && low < 0 ? Math.max(0.5 * change, change - EDGE_SECONDS) : change;
                line.append(' ').append(t).append(' ').append(now ? high : low);
                now = !now;
                line.append(' ').append(t + EDGE_SECONDS).append(' ').append(now ? high : low);
            }
            return line.append(')').toString();
        }
    }

    private final Course course;
    private final Trace trace;
    private final Network network;
    private final List<Double> times;
    private final StringBuilder text = new StringBuilder();
    private final Map<DiodeModel, String> models = new HashMap<>();
    private final Map<PartId, String> coils = new LinkedHashMap<>();
    private int made;

    /**
     * Writes a course.
     *
     * @param trace our run of it, which tells when relays move and outputs wake
     */
    public CourseDeck(Course course, Trace trace) {
        this.course = course;
        this.trace = trace;
        network = course.network();
        times = trace.events().stream().map(TimeEvent::seconds).sorted().toList();
        line("network");
        network.parts().forEach(this::add);
    }

    /** The lines of the deck but for those that say what to do with it. */
    public List<String> lines() {
        return text.toString().lines().toList();
    }

    /** The voltages of all nodes but the chassis, in the order of the network. */
    public List<String> voltages() {
        return network.nodes().stream()
                .skip(1)
                .map(node -> "v(" + name(node) + ")")
                .toList();
    }

    /** The deck with the commands that run it and write all node voltages and coil currents to a file. */
    String text(double longestStep, String file) {
        StringBuilder whole = new StringBuilder(text);
        whole.append(
                ".options gmin=1e-12 reltol=1e-5 vntol=1e-7 abstol=1e-9 itl1=2000 itl4=200 temp=27 tnom=27 method=gear\n");
        whole.append(".control\nset wr_singlescale\nset wr_vecnames\nset numdgt=10\n");
        whole.append("tran ")
                .append(longestStep)
                .append(' ')
                .append(course.seconds())
                .append(" 0 ")
                .append(longestStep)
                .append('\n');
        whole.append("wrdata ").append(file);
        voltages().forEach(each -> whole.append(' ').append(each));
        coils.values().forEach(coil -> whole.append(" i(").append(coil).append(')'));
        return whole.append("\nquit 0\n.endc\n.end\n").toString();
    }

    /** What a part does in the course: switch closed, output driving, relay pulled in. */
    private OnOff positions(PartId id) {
        return OnOff.of(times, t -> isOn(id, t));
    }

    private boolean isOn(PartId id, double seconds) {
        return switch (network.part(id)) {
            case Relay relay -> trace.relayPosition(id, seconds) == RelayPosition.PULLED_IN;
            case Switch contact -> course.isOn(id, seconds);
            default -> course.isOn(id, seconds) && trace.isAwake(id, seconds);
        };
    }

    /** The relays whose coil currents are written, in the order of writing. */
    List<PartId> coils() {
        return List.copyOf(coils.keySet());
    }

    private String name(Node node) {
        return Deck.name(network, node);
    }

    private void line(Object... words) {
        text.append(Arrays.stream(words).map(Object::toString).collect(Collectors.joining(" ")))
                .append('\n');
    }

    private String inner() {
        return "x" + made++;
    }

    private void add(Part part) {
        switch (part) {
            case Battery p -> {
                String inside = inner();
                line("v" + made, inside, name(p.minus()), supply(p));
                line("rb" + made++, name(p.plus()), inside, p.innerOhms());
            }
            case PulsedSource p -> {
                String inside = inner();
                line("v" + made, inside, name(p.minus()), pulses(p));
                line("rb" + made++, name(p.plus()), inside, p.innerOhms());
            }
            case Resistor p -> resistor(name(p.a()), name(p.b()), p.ohms());
            case Wire p -> resistor(name(p.a()), name(p.b()), p.ohms());
            case Meter p -> resistor(name(p.a()), name(p.b()), p.ohms());
            case Switch p -> contact(name(p.a()), name(p.b()), p.closedOhms(), positions(p.id()));
            case Diode p -> diode(name(p.anode()), name(p.cathode()), p.model());
            case Zener p -> {
                diode(name(p.anode()), name(p.cathode()), p.forward());
                breakdown(name(p.cathode()), name(p.anode()), p.breakdown());
            }
            case Capacitor p -> capacitor(name(p.plus()), name(p.minus()), p.farads(), p.seriesOhms());
            case Inductor p -> coil(name(p.a()), name(p.b()), p.windingOhms(), p.henries());
            case Motor p -> {
                String turning = inner();
                resistor(name(p.a()), turning, p.armatureOhms());
                resistor(turning, name(p.b()), 1 / p.loadSiemens());
                line("c" + made++, turning, name(p.b()), p.inertiaFarads());
            }
            case Lamp p -> lamp(p);
            case Relay p -> {
                coils.put(p.id(), coil(name(p.coilPlus()), name(p.coilMinus()), p.coilOhms(), p.coilHenries()));
                OnOff pulledIn = positions(p.id());
                for (Contact contact : p.contacts()) {
                    contact.make()
                            .ifPresent(end -> contact(name(contact.common()), name(end), p.contactOhms(), pulledIn));
                    contact.rest()
                            .ifPresent(end ->
                                    contact(name(contact.common()), name(end), p.contactOhms(), pulledIn.inverted()));
                }
            }
            case LowSideOutput p -> {
                channel(name(p.output()), name(p.ground()), p.drive(), positions(p.id()));
                if (p.bodyDiode()) {
                    diode(name(p.ground()), name(p.output()), DiodeModel.BODY);
                }
            }
            case HighSideOutput p -> {
                channel(name(p.supply()), name(p.output()), p.drive(), positions(p.id()));
                if (p.bodyDiode()) {
                    diode(name(p.output()), name(p.supply()), DiodeModel.BODY);
                }
            }
            case LogicInput p -> {
                p.pullUpOhms().ifPresent(ohms -> resistor(name(p.input()), name(p.supply()), ohms));
                p.pullDownOhms().ifPresent(ohms -> resistor(name(p.input()), name(p.ground()), ohms));
                if (p.protectionDiodes()) {
                    diode(name(p.input()), name(p.supply()), DiodeModel.PROTECTION);
                    diode(name(p.ground()), name(p.input()), DiodeModel.PROTECTION);
                }
            }
            default -> throw new IllegalArgumentException("no course is drawn with " + part);
        }
    }

    private String supply(Battery p) {
        Waveform shape = course.supplies().get(p.id());
        if (shape == null) {
            return "dc " + p.emfVolts();
        }
        StringBuilder line = new StringBuilder("pwl(0 " + shape.volts(0));
        shape.corners()
                .forEach(corner ->
                        line.append(' ').append(corner.seconds()).append(' ').append(corner.volts()));
        return line.append(')').toString();
    }

    /** At its average until the run begins, as a settled network has it; then to and fro. */
    private String pulses(PulsedSource p) {
        StringBuilder line = new StringBuilder("pwl(0 " + p.averageVolts());
        double end = course.seconds();
        for (double t = 0; t < end; t += 1 / p.hertz()) {
            double down = t + p.duty() / p.hertz();
            if (t > 0) {
                line.append(' ').append(t).append(' ').append(p.lowVolts());
            }
            line.append(' ').append(t + EDGE_SECONDS).append(' ').append(p.highVolts());
            line.append(' ').append(down).append(' ').append(p.highVolts());
            line.append(' ').append(down + EDGE_SECONDS).append(' ').append(p.lowVolts());
        }
        return line.append(')').toString();
    }

    private void resistor(String a, String b, double ohms) {
        line("r" + made++, a, b, ohms);
    }

    private void capacitor(String a, String b, double farads, double seriesOhms) {
        String inside = inner();
        resistor(a, inside, seriesOhms);
        line("c" + made++, inside, b, farads);
    }

    private String coil(String a, String b, double ohms, double henries) {
        String inside = inner();
        resistor(a, inside, ohms);
        String element = "l" + made++;
        line(element, inside, b, henries);
        return element;
    }

    private void contact(String a, String b, double ohms, OnOff position) {
        String hand = inner();
        line("vs" + made, hand, "0", position.line(0, 1));
        line("bs" + made++, a, b, "i = v(" + a + "," + b + ")*v(" + hand + ")*" + 1 / ohms);
    }

    private void diode(String anode, String cathode, DiodeModel model) {
        String known = models.computeIfAbsent(model, m -> {
            String fresh = "dm" + models.size();
            line(".model", fresh, "d(is=" + m.saturationAmps(), "n=" + m.emission(), "rs=" + m.seriesOhms() + ")");
            return fresh;
        });
        line("d" + made++, anode, cathode, known);
    }

    private void breakdown(String from, String to, Breakdown curve) {
        String offset = inner();
        String slope = inner();
        line("vz" + made, from, offset, "dc", curve.volts() - 0.6 - curve.ohms() * curve.atAmps());
        line("rz" + made++, offset, slope, curve.ohms());
        double is = curve.atAmps() / Math.expm1(0.6 / DiodeModel.THERMAL_VOLTS);
        diode(slope, to, new DiodeModel(is, 1, 0));
    }

    private void channel(String from, String to, Drive drive, OnOff on) {
        double over = 2 * drive.onOhms() * drive.limitAmps();
        String gate = inner();
        int k = made++;
        line("vg" + k, gate, to, on.line(OFF_GATE_VOLTS, over));
        line(".model mm" + k, "nmos(level=1 vto=0 kp=" + 1 / (drive.onOhms() * over), "lambda=1e-3 is=1e-60)");
        line("m" + k, from, gate, to, to, "mm" + k, "w=1 l=1");
    }

    /** The filament's temperature is the voltage of a capacitor of one farad fed with its rate of change. */
    private void lamp(Lamp p) {
        double floor = FilamentCurve.of(p).coldFloor();
        String a = name(p.a());
        String heat = inner();
        String volts = "v(" + a + ")";
        line("bl" + made++, a, name(p.b()), "i = " + volts + "*" + 1 / p.hotOhms() + "*pow(v(" + heat + "),-1.2)");
        line("c" + made++, "0", heat, 1);
        String in = volts + "*" + volts + "*" + 1 / (p.ratedVolts() * p.ratedVolts());
        String out = "(pow(v(" + heat + "),5.2)-" + floor + ")*" + 1 / (1 - floor);
        line("bh" + made++, "0", heat, "i = (" + in + "-" + out + ")*pow(v(" + heat + "),-1.2)*" + 1 / p.heatSeconds());
        line(".nodeset v(" + heat + ")=1");
    }
}
