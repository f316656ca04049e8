package org.loomproof.network;

import java.util.List;
import java.util.OptionalDouble;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.NetworkBuilder;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Contact;
import org.loomproof.network.part.Diode;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Lamp;
import org.loomproof.network.part.LogicInput;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.Switch;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.Solver;

/** Short words for writing networks in tests. Nodes are named by text, {@code "0"} is the chassis. */
public final class TestNetwork {
    private final NetworkBuilder builder = Network.builder();

    public static TestNetwork network() {
        return new TestNetwork();
    }

    public static Node at(String name) {
        return name.equals("0") ? Node.CHASSIS : new Node(name);
    }

    public static PartId id(String name) {
        return new PartId(name);
    }

    public TestNetwork battery(String id, String plus, String minus, double volts, double ohms) {
        return part(new Battery(id(id), at(plus), at(minus), volts, ohms));
    }

    public TestNetwork resistor(String id, String a, String b, double ohms) {
        return part(new Resistor(id(id), at(a), at(b), ohms));
    }

    public TestNetwork diode(String id, String anode, String cathode, DiodeModel model) {
        return part(new Diode(id(id), at(anode), at(cathode), model));
    }

    public TestNetwork contact(String id, String a, String b) {
        return part(new Switch(id(id), at(a), at(b), 1e-3));
    }

    public TestNetwork lamp(String id, String a, String b, double volts, double watts) {
        return part(new Lamp(id(id), at(a), at(b), volts, watts));
    }

    /** A cube relay: 85 Ω, pulls in at 8 V, drops out at 1.2 V, 2 mΩ. */
    public TestNetwork relay(String id, String coilPlus, String coilMinus, String common, String make, String rest) {
        return part(new Relay(
                id(id),
                at(coilPlus),
                at(coilMinus),
                85,
                8,
                1.2,
                List.of(Contact.changeover(at(common), at(make), at(rest))),
                2e-3));
    }

    /** Reads low up to 2 V, high from 4 V. */
    public TestNetwork pulledUpInput(String id, String input, String supply, String ground, double ohms) {
        return part(new LogicInput(
                id(id),
                at(input),
                at(supply),
                at(ground),
                OptionalDouble.of(ohms),
                OptionalDouble.empty(),
                2,
                4,
                true));
    }

    public TestNetwork part(Part part) {
        builder.add(part);
        return this;
    }

    public Network build() {
        return builder.build();
    }

    /** The settled point of the network at rest. */
    public OperatingPoint solved() {
        Network network = build();
        return Solver.of(network).solve(network.atRest()).settledPoint();
    }
}
