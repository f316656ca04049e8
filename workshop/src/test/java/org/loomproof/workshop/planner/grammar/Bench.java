package org.loomproof.workshop.planner.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.NetworkBuilder;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Contact;
import org.loomproof.network.part.Diode;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.Wire;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.Solver;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.grammar.Coil.Driver;
import org.loomproof.workshop.planner.grammar.Tie.Way;
import org.loomproof.workshop.planner.grammar.Word.Buffering;

/** A word built on the bench: a battery, the output as a switch, one target with a load of 1 kΩ and the car's own switch. */
record Bench(Word word, Drive drive) {

    private static final Node SOURCE = new Node("source");
    private static final Node TARGET = new Node("target");
    private static final Node PLUS = new Node("plus");
    private static final Node BODY = Node.CHASSIS;
    private static final double VOLTS = 12.6;

    /** Coils and buffer inputs draw next to nothing, so that what is drawn besides the load is a short. */
    private static final double COIL_OHMS = 10_000;

    /** How the bench stands. */
    record Stand(boolean sourceWorks, boolean ownSwitch) {}

    /** What is seen then: whether the target is at its active pole, and what is drawn; no rest at all draws without end. */
    record Seen(boolean worked, double amps) {}

    Seen see(Stand stand) {
        NetworkBuilder b = Network.builder();
        b.add(new Battery(new PartId("battery"), PLUS, BODY, VOLTS, 0.01));
        Node active = pole(drive.active());
        b.add(new Resistor(new PartId("load"), TARGET, pole(Word.opposite(drive.active())), 1000));
        if (stand.sourceWorks()) {
            b.add(new Wire(new PartId("output"), SOURCE, pole(drive.output()), 0.01));
        } else {
            b.add(new Resistor(new PartId("output"), SOURCE, pole(drive.output()), 1e7));
        }
        if (stand.ownSwitch()) {
            b.add(new Wire(new PartId("own"), TARGET, active, 0.01));
        }
        tie(b, "through", SOURCE, word.through());
        tie(b, "from-supply", PLUS, word.fromSupply());
        tie(b, "to-body", BODY, word.toBody());
        relays(b);
        if (word.buffer() != Buffering.NONE) {
            boolean ground = word.buffer() == Buffering.ON_GROUND;
            b.add(relay("buffer", ground ? PLUS : SOURCE, ground ? SOURCE : BODY, bufferContact()));
        }
        Network network = b.build();
        SolveOutcome outcome = Solver.of(network).solve(network.atRest());
        if (!(outcome instanceof SolveOutcome.Settled(OperatingPoint point, var others))) {
            return new Seen(!stand.sourceWorks(), Double.POSITIVE_INFINITY);
        }
        double away = Math.abs(point.volts(TARGET) - (drive.active() == Side.HIGH ? VOLTS : 0));
        return new Seen(away < VOLTS / 3, Math.abs(point.amps(new PartId("battery"))));
    }

    private static Node pole(Side side) {
        return side == Side.HIGH ? PLUS : BODY;
    }

    private static Relay relay(String name, Node plus, Node minus, List<Contact> contacts) {
        return new Relay(new PartId(name), plus, minus, COIL_OHMS, 5, 2, contacts, 0.01);
    }

    /** End, diode, resistor, gate, target. */
    private void tie(NetworkBuilder b, String name, Node end, Tie tie) {
        if (!tie.joined()) {
            return;
        }
        Node here = end;
        if (tie.hasDiode()) {
            Node next = new Node(name + " 1");
            boolean in = tie.diode() == Way.TO_TARGET;
            b.add(new Diode(new PartId(name + " d"), in ? here : next, in ? next : here, DiodeModel.SILICON_1A));
            here = next;
        }
        if (tie.resistor()) {
            Node next = new Node(name + " 2");
            b.add(new Resistor(new PartId(name + " r"), here, next, 100));
            here = next;
        }
        b.add(new Wire(new PartId(name + " w"), here, tie.gate() == Gate.ALWAYS ? TARGET : gate(tie.gate()), 0.01));
    }

    private static Node gate(Gate gate) {
        return new Node(gate.name());
    }

    private List<Contact> bufferContact() {
        return List.of(Contact.make(TARGET, gate(Gate.BUFFER)), Contact.make(new Node("buffer out"), BODY));
    }

    private void relays(NetworkBuilder b) {
        List<Gate> used = new ArrayList<>();
        word.ties().filter(Tie::joined).map(Tie::gate).forEach(used::add);
        List<Coil> coils = word.coils();
        for (int i = 0; i < coils.size(); i++) {
            Coil coil = coils.get(i);
            String name = "relay " + (i + 1);
            Node driven = driver(b, name, coil);
            Node far = pole(coil.pole());
            boolean behind = i == 0 && coils.size() > 1 && coils.get(1).isBehindFirst();
            Contact contact = behind
                    ? coils.get(1).driver() == Driver.FIRST_MAKE
                            ? Contact.make(BODY, new Node("behind first"))
                            : Contact.rest(BODY, new Node("behind first"))
                    : contact(used, i + 1);
            b.add(relay(name, far, driven, List.of(contact)));
        }
    }

    private static Node driver(NetworkBuilder b, String name, Coil coil) {
        Node driver = switch (coil.driver()) {
            case SOURCE -> SOURCE;
            case BUFFER -> new Node("buffer out");
            case FIRST_MAKE, FIRST_BREAK -> new Node("behind first");
        };
        if (!coil.isolated()) {
            return driver;
        }
        Node behind = new Node(name + " isolated");
        boolean sinks = coil.pole() == Side.HIGH;
        b.add(new Diode(
                new PartId(name + " d"), sinks ? behind : driver, sinks ? driver : behind, DiodeModel.SILICON_1A));
        return behind;
    }

    private static Contact contact(List<Gate> used, int relay) {
        Gate make = relay == 1 ? Gate.MAKE_1 : Gate.MAKE_2;
        Gate rest = relay == 1 ? Gate.BREAK_1 : Gate.BREAK_2;
        return new Contact(
                TARGET,
                used.contains(make) ? Optional.of(gate(make)) : Optional.empty(),
                used.contains(rest) ? Optional.of(gate(rest)) : Optional.empty());
    }
}
