package org.loomproof.workshop.planner.cut;

import java.util.List;
import java.util.Optional;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.NetworkBuilder;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Contact;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.Wire;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.Solver;

/** The contacts of one cut wire built on the bench: a battery, a load that shows either pole or none, and the car's own switch. */
record CutBench(List<Throw> chain, int leads) {

    private static final Node PLUS = new Node("plus");
    private static final Node BODY = Node.CHASSIS;
    private static final double VOLTS = 12.6;

    /** Load and coils draw some milliamps; more is a way from pole to pole. */
    private static final double SHORT_AMPS = 0.03;

    /** What the load is at, and whether the poles meet. */
    record Seen(Given load, boolean isShort) {}

    /** With those leads on, a bit each, and the car's switch at that pole. */
    Seen see(int on, Given feed) {
        NetworkBuilder b = Network.builder();
        b.add(new Battery(new PartId("battery"), PLUS, BODY, VOLTS, 0.01));
        b.add(new Resistor(new PartId("load up"), PLUS, node(0), 1000));
        b.add(new Resistor(new PartId("load down"), node(0), BODY, 1000));
        for (int lead = 0; lead < leads; lead++) {
            boolean isOn = (on & 1 << lead) != 0;
            b.add(new Resistor(new PartId("output " + lead), driven(lead), BODY, isOn ? 0.01 : 1e7));
        }
        int here = 0;
        for (int i = 0; i < chain.size(); i++) {
            Throw each = chain.get(i);
            int next = each.isThrough() ? here + 1 : here;
            b.add(new Relay(
                    new PartId("relay " + i),
                    PLUS,
                    driven(each.lead()),
                    10_000,
                    5,
                    2,
                    List.of(contact(each, node(here), node(next))),
                    0.01));
            here = next;
        }
        b.add(
                feed == Given.NOTHING
                        ? new Resistor(new PartId("switch"), node(here), BODY, 1e7)
                        : new Wire(new PartId("switch"), node(here), pole(feed).orElseThrow(), 0.01));
        Network network = b.build();
        if (!(Solver.of(network).solve(network.atRest())
                instanceof SolveOutcome.Settled(OperatingPoint point, var o))) {
            throw new IllegalStateException("does not settle: " + chain);
        }
        double volts = point.volts(node(0));
        Given load = volts > 0.75 * VOLTS ? Given.HIGH : volts < 0.25 * VOLTS ? Given.LOW : Given.NOTHING;
        return new Seen(load, Math.abs(point.amps(new PartId("battery"))) > SHORT_AMPS);
    }

    private static Contact contact(Throw each, Node load, Node feed) {
        Optional<Node> gives = pole(each.gives());
        return switch (each.lie()) {
            case BREAK -> new Contact(load, gives, Optional.of(feed));
            case BREAK_TURNED -> new Contact(feed, gives, Optional.of(load));
            case MAKE -> new Contact(load, Optional.of(feed), gives);
            case MAKE_TURNED -> new Contact(feed, Optional.of(load), gives);
            case BESIDE -> new Contact(load, gives, Optional.empty());
            case BESIDE_AT_REST -> new Contact(load, Optional.empty(), gives);
        };
    }

    private static Optional<Node> pole(Given given) {
        return switch (given) {
            case LOW -> Optional.of(BODY);
            case HIGH -> Optional.of(PLUS);
            case NOTHING -> Optional.empty();
        };
    }

    private static Node node(int number) {
        return new Node("wire " + number);
    }

    private static Node driven(int lead) {
        return new Node("driven " + lead);
    }
}
