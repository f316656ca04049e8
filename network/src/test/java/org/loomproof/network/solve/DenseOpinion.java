package org.loomproof.network.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.PartFault;
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

/**
 * A second opinion that shares nothing with the fast path: its own equations written from the parts, a dense matrix with a
 * pivoting solver, the whole matrix anew in every step, series resistances at nodes of their own, contacts moved by its own
 * loop. Slow, and every network it is given must tie each node to the chassis, or be tied by {@link #tied}.
 */
public final class DenseOpinion {
    private static final double VT = 1.380649e-23 * 300.15 / 1.602176634e-19;

    /** The dense matrix with its summed diagonal is itself only good to some 1e-8 V with 1 mΩ beside 10 MΩ. */
    private static final double STILL_VOLTS = 5e-8;

    private final Network network;
    private final Setting setting;
    private final Map<Node, Integer> rows = new HashMap<>();
    private final List<Element> elements = new ArrayList<>();
    private int rowCount;
    private double[] volts;

    /** A two-terminal law: current and slope at a voltage, and how far a step may go. */
    private abstract static class Element {
        final int a;
        final int b;

        Element(int a, int b) {
            this.a = a;
            this.b = b;
        }

        abstract double amps(double v);

        double slope(double v) {
            double h = 1e-6 * Math.max(1e-3, Math.abs(v));
            return (amps(v + h) - amps(v - h)) / (2 * h);
        }

        @SuppressWarnings("UnusedVariable") // curves that need it look where they stood
        double limited(double before, double wanted) {
            return wanted;
        }
    }

    private DenseOpinion(Network network, Setting setting, Set<PartId> passed) {
        this.network = network;
        this.setting = setting;
        for (Node node : network.nodes()) {
            rows.put(node, node.equals(Node.CHASSIS) ? -1 : rowCount++);
        }
        for (Part part : network.parts()) {
            add(part, passed.contains(part.id()));
        }
        volts = new double[rowCount];
    }

    /** What it finds for a setting after power-up; empty when its contacts go in a circle. */
    static Optional<DenseOpinion> afterPowerUp(Network network, Setting setting) {
        return tied(network, setting, Double.POSITIVE_INFINITY);
    }

    /** The same for a network whose nodes are each tied to the chassis by so many ohms. */
    public static Optional<DenseOpinion> tied(Network network, Setting setting, double ohms) {
        Set<PartId> passed = new HashSet<>();
        Set<Set<PartId>> met = new HashSet<>();
        while (met.add(Set.copyOf(passed))) {
            DenseOpinion opinion = new DenseOpinion(network, setting, passed);
            if (Double.isFinite(ohms)) {
                network.nodes().stream()
                        .filter(node -> !node.equals(Node.CHASSIS))
                        .forEach(node -> opinion.conductor(node, Node.CHASSIS, ohms));
            }
            opinion.iterate();
            Set<PartId> called = opinion.called(passed);
            if (called.equals(passed)) {
                return Optional.of(opinion);
            }
            passed = called;
        }
        return Optional.empty();
    }

    public double volts(Node node) {
        int row = row(node);
        return row < 0 ? 0 : volts[row];
    }

    private Set<PartId> called(Set<PartId> passed) {
        Set<PartId> called = new HashSet<>();
        for (Part part : network.parts()) {
            boolean now = passed.contains(part.id());
            boolean calls = switch (part) {
                case Relay r ->
                    past(Math.abs(volts(r.coilPlus()) - volts(r.coilMinus())), r.pullInVolts(), r.dropOutVolts(), now)
                            && setting.fault(r.id()) == PartFault.NONE;
                case LowSideOutput o ->
                    past(
                            volts(o.supply()) - volts(o.ground()),
                            o.wakefulness().wakesAtVolts(),
                            o.wakefulness().sleepsAtVolts(),
                            now);
                case HighSideOutput o ->
                    past(
                            volts(o.supply()) - volts(o.ground()),
                            o.wakefulness().wakesAtVolts(),
                            o.wakefulness().sleepsAtVolts(),
                            now);
                default -> false;
            };
            if (calls) {
                called.add(part.id());
            }
        }
        return called;
    }

    private static boolean past(double volts, double rise, double fall, boolean now) {
        return now ? volts > fall : volts >= rise;
    }

    private void add(Part part, boolean passed) {
        boolean on = setting.isOn(part.id());
        switch (setting.fault(part.id())) {
            case BROKEN -> {
                return;
            }
            case SHORTED -> {
                conductor(part.pins().get(0).node(), part.pins().get(1).node(), 1e-3);
                return;
            }
            case NONE -> {}
        }
        double stated = setting.stated(network.indexOf(part.id()));
        double ohms = Double.isNaN(stated) ? 0 : stated;
        switch (part) {
            case Battery p -> source(row(p.plus()), row(p.minus()), ohms != 0 ? ohms : p.emfVolts(), p.innerOhms());
            case Resistor p -> conductor(p.a(), p.b(), ohms != 0 ? ohms : p.ohms());
            case Wire p -> conductor(p.a(), p.b(), ohms != 0 ? ohms : p.ohms());
            case Fuse p -> conductor(p.a(), p.b(), ohms != 0 ? ohms : p.coldOhms());
            case Meter p -> conductor(p.a(), p.b(), ohms != 0 ? ohms : p.ohms());
            case Switch p -> {
                if (on) {
                    conductor(p.a(), p.b(), p.closedOhms());
                }
            }
            case Diode p -> diode(row(p.anode()), row(p.cathode()), p.model());
            case Lamp p -> lamp(p);
            case Relay p -> {
                conductor(p.coilPlus(), p.coilMinus(), ohms != 0 ? ohms : p.coilOhms());
                for (Contact contact : p.contacts()) {
                    (passed ? contact.make() : contact.rest())
                            .ifPresent(end -> conductor(contact.common(), end, p.contactOhms()));
                }
            }
            case Capacitor p -> {}
            case Inductor p -> conductor(p.a(), p.b(), ohms != 0 ? ohms : p.windingOhms());
            case Zener p -> {
                diode(row(p.anode()), row(p.cathode()), p.forward());
                breakdown(row(p.cathode()), row(p.anode()), p.breakdown());
            }
            case Suppressor p -> {
                breakdown(row(p.a()), row(p.b()), p.breakdown());
                breakdown(row(p.b()), row(p.a()), p.breakdown());
            }
            case Motor p -> {
                // Running at its rating: what is left of the rated volts at the rated current is back-EMF.
                double back = on
                        ? 1e-4 / (1 + 1e-4 * p.armatureOhms() * p.loadSiemens()) * p.armatureOhms()
                        : (p.ratedVolts() - p.runAmps() * p.armatureOhms()) / p.runAmps();
                conductor(p.a(), p.b(), p.armatureOhms() + back);
            }
            case PulsedSource p ->
                source(
                        row(p.plus()),
                        row(p.minus()),
                        ohms != 0 ? ohms : p.lowVolts() + p.duty() * (p.highVolts() - p.lowVolts()),
                        p.innerOhms());
            case SelectorSwitch p ->
                p.poles()
                        .forEach(pole -> pole.throwAt()
                                .get(setting.selected(network.indexOf(p.id())))
                                .ifPresent(end -> conductor(pole.common(), end, p.closedOhms())));
            case SteppedSwitch p ->
                p.ohmsAt()
                        .get(setting.selected(network.indexOf(p.id())))
                        .ifPresent(step -> conductor(p.a(), p.b(), step));
            case LowSideOutput p -> {
                if (on && passed) {
                    drive(row(p.output()), row(p.ground()), p.drive());
                }
                if (p.bodyDiode()) {
                    diode(row(p.ground()), row(p.output()), DiodeModel.BODY);
                }
                if (p.clampToSupply()) {
                    diode(row(p.output()), row(p.supply()), DiodeModel.BODY);
                }
            }
            case HighSideOutput p -> {
                if (on && passed) {
                    drive(row(p.supply()), row(p.output()), p.drive());
                }
                if (p.bodyDiode()) {
                    diode(row(p.output()), row(p.supply()), DiodeModel.BODY);
                }
                if (p.clampToGround()) {
                    diode(row(p.ground()), row(p.output()), DiodeModel.BODY);
                }
            }
            case LogicInput p -> {
                p.pullUpOhms().ifPresent(r -> conductor(p.input(), p.supply(), r));
                p.pullDownOhms().ifPresent(r -> conductor(p.input(), p.ground(), r));
                if (p.protectionDiodes()) {
                    diode(row(p.input()), row(p.supply()), DiodeModel.PROTECTION);
                    diode(row(p.ground()), row(p.input()), DiodeModel.PROTECTION);
                }
            }
        }
    }

    private int row(Node node) {
        return Objects.requireNonNull(rows.get(node));
    }

    private void conductor(Node a, Node b, double ohms) {
        source(row(a), row(b), 0, ohms);
    }

    private void source(int a, int b, double emf, double ohms) {
        elements.add(new Element(a, b) {
            @Override
            double amps(double v) {
                return (v - emf) / ohms;
            }

            @Override
            double slope(double v) {
                return 1 / ohms;
            }
        });
    }

    private void diode(int anode, int cathode, DiodeModel model) {
        int junction = anode;
        if (model.seriesOhms() > 0) {
            junction = rowCount++;
            source(anode, junction, 0, model.seriesOhms());
        }
        junction(junction, cathode, model.saturationAmps(), model.emission() * VT);
    }

    private void junction(int a, int b, double is, double slope) {
        elements.add(new Element(a, b) {
            @Override
            double amps(double v) {
                return is * (Math.exp(v / slope) - 1) + 1e-12 * v;
            }

            @Override
            double slope(double v) {
                return is / slope * Math.exp(v / slope) + 1e-12;
            }

            @Override
            double limited(double before, double wanted) {
                // The usual logarithmic limit above the voltage where the curve bends most.
                double critical = slope * Math.log(slope / (Math.sqrt(2) * is));
                if (wanted <= critical || Math.abs(wanted - before) <= 2 * slope) {
                    return wanted;
                }
                if (before <= 0) {
                    return slope * Math.log(wanted / slope);
                }
                double grown = 1 + (wanted - before) / slope;
                return grown > 0 ? before + slope * Math.log(grown) : critical;
            }
        });
    }

    private void breakdown(int from, int to, Breakdown curve) {
        int slope = rowCount++;
        double is = curve.atAmps() / (Math.exp(0.6 / VT) - 1);
        source(from, slope, curve.volts() - 0.6 - curve.ohms() * curve.atAmps(), curve.ohms());
        junction(slope, to, is, VT);
    }

    private void lamp(Lamp lamp) {
        double hot = lamp.ratedVolts() * lamp.ratedVolts() / lamp.ratedWatts();
        double floor = Math.pow(lamp.coldToHotOhms(), 13.0 / 3);
        elements.add(new Element(row(lamp.a()), row(lamp.b())) {
            @Override
            double amps(double v) {
                double share = v / lamp.ratedVolts();
                return v / (hot * Math.pow(floor + (1 - floor) * share * share, 3.0 / 13));
            }

            @Override
            double limited(double before, double wanted) {
                return before * wanted < 0 ? 0 : wanted;
            }
        });
    }

    private void drive(int from, int to, Drive drive) {
        int end = to;
        if (drive.saturationVolts() > 0) {
            end = rowCount++;
            junction(end, to, drive.limitAmps() / (Math.exp(drive.saturationVolts() / VT) - 1), VT);
        }
        double over = 2 * drive.onOhms() * drive.limitAmps();
        double beta = 1 / (drive.onOhms() * over);
        elements.add(new Element(from, end) {
            @Override
            double amps(double v) {
                double square = v >= over ? over * over / 2 : v * (over - v / 2);
                double flat = Double.isInfinite(over) ? v / drive.onOhms() : beta * square;
                return flat * (1 + 1e-3 * Math.abs(v));
            }

            @Override
            double limited(double before, double wanted) {
                return before * wanted < 0 ? 0 : wanted;
            }
        });
    }

    private void iterate() {
        int n = rowCount;
        volts = new double[n];
        double[] touch = new double[elements.size()];
        double last = 0;
        for (int step = 0; step < 3000; step++) {
            double[][] matrix = new double[n][n + 1];
            for (int e = 0; e < touch.length; e++) {
                stamp(matrix, elements.get(e), touch[e]);
            }
            volts = gauss(matrix);
            double moved = 0;
            for (int e = 0; e < touch.length; e++) {
                Element element = elements.get(e);
                double next = element.limited(touch[e], at(element.a) - at(element.b));
                moved = Math.max(moved, Math.abs(next - touch[e]));
                touch[e] = next;
            }
            last = moved;
            if (moved < STILL_VOLTS) {
                return;
            }
        }
        throw new IllegalStateException("the second opinion did not converge, still moving by " + last);
    }

    private double at(int row) {
        return row < 0 ? 0 : volts[row];
    }

    private static void stamp(double[][] matrix, Element element, double v) {
        int n = matrix.length;
        double g = element.slope(v);
        double rest = element.amps(v) - g * v;
        int a = element.a;
        int b = element.b;
        if (a >= 0) {
            matrix[a][a] += g;
            matrix[a][n] -= rest;
        }
        if (b >= 0) {
            matrix[b][b] += g;
            matrix[b][n] += rest;
        }
        if (a >= 0 && b >= 0) {
            matrix[a][b] -= g;
            matrix[b][a] -= g;
        }
    }

    private static double[] gauss(double[][] m) {
        int n = m.length;
        for (int k = 0; k < n; k++) {
            int pivot = k;
            for (int r = k + 1; r < n; r++) {
                if (Math.abs(m[r][k]) > Math.abs(m[pivot][k])) {
                    pivot = r;
                }
            }
            double[] swap = m[k];
            m[k] = m[pivot];
            m[pivot] = swap;
            for (int r = k + 1; r < n; r++) {
                double factor = m[r][k] / m[k][k];
                if (factor != 0) {
                    for (int c = k; c <= n; c++) {
                        m[r][c] -= factor * m[k][c];
                    }
                }
            }
        }
        double[] x = new double[n];
        for (int k = n - 1; k >= 0; k--) {
            double sum = m[k][n];
            for (int c = k + 1; c < n; c++) {
                sum -= m[k][c] * x[c];
            }
            x[k] = sum / m[k][k];
        }
        return x;
    }
}
