package org.loomproof.workshop.planner.grammar;

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
import org.loomproof.workshop.planner.grammar.Sense.Held;
import org.loomproof.workshop.planner.grammar.Tie.Way;
import org.loomproof.workshop.planner.grammar.Word.Buffering;

/** A word with at most one relay that reads one or two wires on the bench: a battery, wires held as said, an input with a weak pull of its own. */
record ReadingBench(Word word, Sense sense) {

    private static final Node TARGET = new Node("target");
    private static final Node PLUS = new Node("plus");
    private static final Node BODY = Node.CHASSIS;
    private static final double VOLTS = 12.6;
    /** All resistors are alike, so that two that meet decide nothing. */
    private static final double OHMS = 1000;

    private static final double COIL_OHMS = 10_000;

    /** What is seen: whether the input is at the pole that it reads, at the other, or between; and what is drawn. */
    record Seen(boolean active, boolean rest, double amps) {}

    /** One wire is held as said, the other one, where there are several, as said too. */
    Seen see(Held one, Held other) {
        NetworkBuilder b = Network.builder();
        b.add(new Battery(new PartId("battery"), PLUS, BODY, VOLTS, 0.01));
        List<Held> wires = sense.several() ? List.of(one, other) : List.of(one);
        Node driven = new Node("driven");
        for (int i = 0; i < wires.size(); i++) {
            wire(b, new Node("wire " + i), wires.get(i), "wire " + i, driven);
        }
        tie(b, "from-supply", PLUS, word.fromSupply());
        tie(b, "to-body", BODY, word.toBody());
        for (Side pole : Side.values()) {
            boolean own = sense.pulled() && pole != sense.reads();
            Node end = pole == Side.HIGH ? PLUS : BODY;
            b.add(new Resistor(new PartId("input " + pole), TARGET, end, own ? 47_000 : 1e7));
        }
        parts(b, driven);
        Network network = b.build();
        SolveOutcome outcome = Solver.of(network).solve(network.atRest());
        if (!(outcome instanceof SolveOutcome.Settled(OperatingPoint point, var others))) {
            return new Seen(false, false, Double.POSITIVE_INFINITY);
        }
        double fromReads = Math.abs(point.volts(TARGET) - (sense.reads() == Side.HIGH ? VOLTS : 0));
        return new Seen(fromReads < VOLTS / 3, fromReads > VOLTS * 2 / 3, Math.abs(point.amps(new PartId("battery"))));
    }

    private void wire(NetworkBuilder b, Node at, Held held, String name, Node driven) {
        switch (held) {
            case LOW -> b.add(new Wire(new PartId(name), at, BODY, 0.01));
            case HIGH -> b.add(new Wire(new PartId(name), at, PLUS, 0.01));
            case PULLED_LOW -> b.add(new Resistor(new PartId(name), at, BODY, OHMS));
            case PULLED_HIGH -> b.add(new Resistor(new PartId(name), at, PLUS, OHMS));
            case OPEN -> b.add(new Resistor(new PartId(name), at, BODY, 1e8));
        }
        if (word.pull() != Pull.NONE) {
            b.add(new Resistor(new PartId(name + " pull"), at, word.pull() == Pull.UP ? PLUS : BODY, OHMS));
        }
        if (word.through().joined()) {
            through(b, at, name);
        }
        if (hasDriven()) {
            Way way = !sense.several() ? Way.BOTH : drivenBy() == Side.LOW ? Way.FROM_TARGET : Way.TO_TARGET;
            join(b, at, driven, way, name + " drives");
        }
    }

    private boolean hasDriven() {
        return word.buffer() != Buffering.NONE || !word.coils().isEmpty();
    }

    /** The level at a wire that moves what hangs on it. */
    private Side drivenBy() {
        return word.buffer() == Buffering.NONE
                ? Word.opposite(word.coils().getFirst().pole())
                : word.buffer() == Buffering.ON_GROUND ? Side.LOW : Side.HIGH;
    }

    private void through(NetworkBuilder b, Node at, String name) {
        Node end = at;
        if (word.through().resistor()) {
            end = new Node(name + " behind");
            b.add(new Resistor(new PartId(name + " r"), at, end, OHMS));
        }
        join(b, end, TARGET, word.through().diode(), name + " through");
    }

    private static void join(NetworkBuilder b, Node from, Node to, Way way, String name) {
        switch (way) {
            case BOTH -> b.add(new Wire(new PartId(name), from, to, 0.01));
            case TO_TARGET -> b.add(new Diode(new PartId(name), from, to, DiodeModel.SILICON_1A));
            case FROM_TARGET -> b.add(new Diode(new PartId(name), to, from, DiodeModel.SILICON_1A));
        }
    }

    private static void tie(NetworkBuilder b, String name, Node end, Tie tie) {
        if (!tie.joined()) {
            return;
        }
        Node gate = tie.gate() == Gate.ALWAYS ? TARGET : new Node(tie.gate().name());
        Node middle = new Node(name);
        b.add(new Resistor(new PartId(name + " r"), end, middle, tie.resistor() ? OHMS : 0.01));
        join(b, middle, gate, tie.diode(), name + " d");
    }

    private void parts(NetworkBuilder b, Node driven) {
        Node out = new Node("buffer out");
        if (word.buffer() != Buffering.NONE) {
            boolean ground = word.buffer() == Buffering.ON_GROUND;
            b.add(new Relay(
                    new PartId("buffer"),
                    ground ? PLUS : driven,
                    ground ? driven : BODY,
                    COIL_OHMS,
                    5,
                    2,
                    List.of(Contact.make(TARGET, new Node(Gate.BUFFER.name())), Contact.make(out, BODY)),
                    0.01));
        }
        for (Coil coil : word.coils()) {
            Node near = coil.driver() == Driver.BUFFER ? out : driven;
            Node far = coil.pole() == Side.HIGH ? PLUS : BODY;
            b.add(new Relay(
                    new PartId("relay"),
                    far,
                    near,
                    COIL_OHMS,
                    5,
                    2,
                    List.of(new Contact(TARGET, used(Gate.MAKE_1), used(Gate.BREAK_1))),
                    0.01));
        }
    }

    private Optional<Node> used(Gate gate) {
        return word.ties().anyMatch(tie -> tie.joined() && tie.gate() == gate)
                ? Optional.of(new Node(gate.name()))
                : Optional.empty();
    }
}
