package org.loomproof.network.solve;

import java.util.List;
import java.util.Set;
import org.loomproof.network.law.Term;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.LogicInput;
import org.loomproof.network.part.LogicLevel;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Pin;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.RelayPosition;

/**
 * One settled answer: voltages, currents and contact positions, checked against Kirchhoff's current law. Immutable. Methods
 * throw {@link IllegalArgumentException} for a node or part the network does not have.
 */
public final class OperatingPoint {
    private final Layout layout;
    private final Setting setting;
    private final double[] rankVolts;

    /** Current of each curved branch; those of straight ones follow from the voltages. */
    private final double[] curveAmps;

    private final ContactPattern contacts;
    private final double residualAmps;

    OperatingPoint(
            Layout layout,
            Setting setting,
            double[] rankVolts,
            double[] curveAmps,
            ContactPattern contacts,
            double residualAmps) {
        this.layout = layout;
        this.setting = setting;
        this.rankVolts = rankVolts;
        this.curveAmps = curveAmps;
        this.contacts = contacts;
        this.residualAmps = residualAmps;
    }

    /** The network it is a point of. */
    public Network network() {
        return layout.network;
    }

    /** The setting it answers. */
    public Setting setting() {
        return setting;
    }

    /** Voltage against the chassis; of a floating node against one node of its island. */
    public double volts(Node node) {
        return rankVolts[layout.rankOfNode[network().indexOf(node)]];
    }

    /** Voltage of one node against another. */
    public double volts(Node plus, Node minus) {
        return volts(plus) - volts(minus);
    }

    /** Whether nothing that conducts joins the node to the chassis; a voltmeter there would show what it likes. */
    public boolean isFloating(Node node) {
        return islands().isFloating(layout.rankOfNode[network().indexOf(node)]);
    }

    /** The groups of nodes that are joined among themselves and not to the chassis, in network order. */
    public List<Set<Node>> floatingIslands() {
        return islands().named(layout);
    }

    /** Current into the part's first pin, amps. */
    public double amps(PartId id) {
        return ampsInto(network().indexOf(id), 0);
    }

    /**
     * Current into one pin of a part, amps.
     *
     * @throws IllegalArgumentException if the part has no pin of this name
     */
    public double ampsInto(PartId id, String pinName) {
        int part = network().indexOf(id);
        List<Pin> pins = network().parts().get(part).pins();
        for (int k = 0; k < pins.size(); k++) {
            if (pins.get(k).name().equals(pinName)) {
                return ampsInto(part, k);
            }
        }
        throw new IllegalArgumentException(id + " has no pin " + pinName + " but " + pins);
    }

    /** Power the part takes from the network, watts; negative for one that gives. */
    public double watts(PartId id) {
        int part = network().indexOf(id);
        List<Pin> pins = network().parts().get(part).pins();
        double sum = 0;
        for (int k = 0; k < pins.size(); k++) {
            sum += volts(pins.get(k).node()) * ampsInto(part, k);
        }
        return sum;
    }

    private double ampsInto(int part, int pin) {
        double sum = 0;
        for (int b = layout.firstBranch[part]; b < layout.firstBranch[part + 1]; b++) {
            Term term = layout.terms[b];
            if (term.from() == pin) {
                sum += branchAmps(b);
            }
            if (term.to() == pin) {
                sum -= branchAmps(b);
            }
        }
        return sum;
    }

    /** Current of a branch from its first end to its second. */
    private double branchAmps(int branch) {
        boolean isPassed = isPassed(branch);
        if (layout.rules.isCurved(branch) && layout.rules.counts(branch, setting, isPassed)) {
            return curveAmps[layout.curveOf(branch)];
        }
        double across = rankVolts[layout.from[branch]] - rankVolts[layout.to[branch]];
        return layout.rules.siemens(branch, setting, isPassed) * (across - layout.rules.emf(branch, setting, isPassed));
    }

    private boolean isPassed(int branch) {
        int threshold = layout.thresholdOfPart[layout.partOf[branch]];
        return threshold >= 0 && contacts.isPassed(threshold);
    }

    /** Where the relay's contacts are. */
    public RelayPosition relayPosition(PartId id) {
        return switch (network().part(id)) {
            case Relay relay -> isPassed(id) ? RelayPosition.PULLED_IN : RelayPosition.RELEASED;
            case Part other -> throw new IllegalArgumentException(id + " is no relay: " + other);
        };
    }

    /** Whether the output's controller has supply enough to work its outputs. */
    public boolean isAwake(PartId id) {
        if (layout.thresholdOfPart[network().indexOf(id)] < 0 || network().part(id) instanceof Relay) {
            throw new IllegalArgumentException(
                    id + " is no output: " + network().part(id));
        }
        return isPassed(id);
    }

    /** How the logic input reads its lead, against its own ground. */
    public LogicLevel level(PartId id) {
        return switch (network().part(id)) {
            case LogicInput input -> input.level(volts(input.input(), input.ground()));
            case Part other -> throw new IllegalArgumentException(id + " is no logic input: " + other);
        };
    }

    /** The largest sum of currents at any node, as found by the check: ideally zero. */
    public double kirchhoffResidualAmps() {
        return residualAmps;
    }

    private boolean isPassed(PartId id) {
        return contacts.isPassed(layout.thresholdOfPart[network().indexOf(id)]);
    }

    /** Whether a branch joins its ends: a straight one that counts, a curve with a slope worth the name. */
    private boolean conducts(int branch) {
        boolean isPassed = isPassed(branch);
        if (layout.rules.isCurved(branch) && layout.rules.counts(branch, setting, isPassed)) {
            return !(layout.terms[branch] instanceof Term.Junction junction)
                    || junction.curve().slopeSiemens(branchAmps(branch)) > FloatingIslands.BLOCKED_SIEMENS;
        }
        return layout.rules.siemens(branch, setting, isPassed) > 0;
    }

    private FloatingIslands islands() {
        return new FloatingIslands(layout, this::conducts);
    }

    /** Voltage of the network's n-th node, or of the n-th after all those inside parts. */
    double nodeVolts(int node) {
        return rankVolts[layout.rankOfNode[node]];
    }

    ContactPattern contacts() {
        return contacts;
    }
}
