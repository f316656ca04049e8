package org.loomproof.network.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.loomproof.network.law.PartEquations;
import org.loomproof.network.law.Term;
import org.loomproof.network.law.Threshold;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.Pin;
import org.loomproof.network.part.Relay;

/**
 * A network laid out once for all its settings: every term of every part as a branch between two <em>ranks</em>, a rank
 * being a node's place in the elimination order. The chassis has the rank after the last. Immutable.
 */
final class Layout {
    final Network network;

    /** How the network is eliminated. */
    final EliminationScheme scheme;

    /** All branches that are curved, ascending. */
    final int[] curved;

    private final int[] curveOfBranch;

    final BranchSlots slots;

    /** What a setting makes of each branch. */
    final BranchRules rules;

    /** What decides where each curve stands. */
    final Neighbourhoods neighbourhoods;

    /** Nodes with a voltage of their own: all but the chassis, plus those inside parts. */
    final int rankCount;

    /** Rank of each node of {@link Network#nodes()}, then of each node inside a part. */
    final int[] rankOfNode;

    final int branchCount;
    final int[] from;
    final int[] to;
    final Term[] terms;

    /** Part of each branch, and where each part's branches begin; they are consecutive. */
    final int[] partOf;

    final int[] firstBranch;

    /** Thresholds of relays and outputs, with the part each belongs to; and per part its threshold or -1. */
    final Threshold[] thresholds;

    final boolean[] isRelay;
    final boolean[] isEitherPolarity;
    final int[] thresholdPart;
    final int[] thresholdOfPart;
    final int[] thresholdPlus;
    final int[] thresholdMinus;

    Layout(Network network) {
        this(network, term -> term);
    }

    /**
     * A layout whose terms are replaced one by one.
     *
     * @param lowering for each term one between the same two ends
     */
    Layout(Network network, UnaryOperator<Term> lowering) {
        this.network = network;
        List<Part> parts = network.parts();
        List<Term> allTerms = new ArrayList<>();
        List<int[]> ends = new ArrayList<>();
        List<Integer> owners = new ArrayList<>();
        List<Threshold> foundThresholds = new ArrayList<>();
        List<int[]> thresholdEnds = new ArrayList<>();
        firstBranch = new int[parts.size() + 1];
        thresholdOfPart = new int[parts.size()];
        Arrays.fill(thresholdOfPart, -1);
        int nodes = network.nodes().size();
        for (int p = 0; p < parts.size(); p++) {
            firstBranch[p] = allTerms.size();
            PartEquations equations = PartEquations.of(parts.get(p));
            int[] pinNodes = pinNodes(parts.get(p), equations, nodes);
            nodes += equations.innerNodes();
            for (Term term : equations.terms()) {
                allTerms.add(lowering.apply(term));
                ends.add(new int[] {pinNodes[term.from()], pinNodes[term.to()]});
                owners.add(p);
            }
            if (equations.threshold().isPresent()) {
                Threshold threshold = equations.threshold().get();
                thresholdOfPart[p] = foundThresholds.size();
                foundThresholds.add(threshold);
                thresholdEnds.add(new int[] {p, pinNodes[threshold.plus()], pinNodes[threshold.minus()]});
            }
        }
        firstBranch[parts.size()] = allTerms.size();
        rankCount = nodes - 1;
        scheme = new EliminationScheme(nodes, ends, watched(nodes, allTerms, ends, thresholdEnds));
        rankOfNode = scheme.rankOfNode;
        branchCount = allTerms.size();
        terms = allTerms.toArray(Term[]::new);
        from = ends.stream().mapToInt(pair -> rankOfNode[pair[0]]).toArray();
        to = ends.stream().mapToInt(pair -> rankOfNode[pair[1]]).toArray();
        partOf = owners.stream().mapToInt(Integer::intValue).toArray();
        thresholds = foundThresholds.toArray(Threshold[]::new);
        thresholdPart = thresholdEnds.stream().mapToInt(t -> t[0]).toArray();
        isRelay = new boolean[thresholds.length];
        isEitherPolarity = new boolean[thresholds.length];
        for (int t = 0; t < thresholds.length; t++) {
            isEitherPolarity[t] = thresholds[t].eitherPolarity();
            isRelay[t] = parts.get(thresholdPart[t]) instanceof Relay;
        }
        thresholdPlus = thresholdEnds.stream().mapToInt(t -> rankOfNode[t[1]]).toArray();
        thresholdMinus = thresholdEnds.stream().mapToInt(t -> rankOfNode[t[2]]).toArray();
        curved =
                IntStream.range(0, branchCount).filter(b -> terms[b].isCurved()).toArray();
        curveOfBranch = new int[branchCount];
        Arrays.fill(curveOfBranch, -1);
        for (int k = 0; k < curved.length; k++) {
            curveOfBranch[curved[k]] = k;
        }
        slots = new BranchSlots(scheme, from, to);
        rules = new BranchRules(allTerms, partOf, firstBranch);
        neighbourhoods = new Neighbourhoods(this);
    }

    int chassisRank() {
        return rankCount;
    }

    /** Rank of a branch's other end. */
    int otherEnd(int branch, int end) {
        return from[branch] + to[branch] - end;
    }

    /** Per rank, the branches of those that count which lead from it to another, ascending. */
    int[][] touching(IntPredicate counts) {
        IntList[] touching = new IntList[rankCount + 1];
        Arrays.setAll(touching, k -> new IntList());
        for (int b = 0; b < branchCount; b++) {
            if (counts.test(b) && from[b] != to[b]) {
                touching[from[b]].add(b);
                touching[to[b]].add(b);
            }
        }
        return Arrays.stream(touching).map(IntList::toArray).toArray(int[][]::new);
    }

    /** The number of a branch's curve, its place in {@link #curved}, or -1 for a straight one. */
    int curveOf(int branch) {
        return curveOfBranch[branch];
    }

    private int[] pinNodes(Part part, PartEquations equations, int firstInner) {
        List<Pin> pins = part.pins();
        int[] found = new int[pins.size() + equations.innerNodes()];
        for (int k = 0; k < pins.size(); k++) {
            found[k] = network.indexOf(pins.get(k).node());
        }
        for (int k = 0; k < equations.innerNodes(); k++) {
            found[pins.size() + k] = firstInner + k;
        }
        return found;
    }

    /** Voltages asked for at every step: those that bend a curve and those that move a contact. */
    private static boolean[] watched(int nodeCount, List<Term> terms, List<int[]> ends, List<int[]> thresholdEnds) {
        boolean[] watched = new boolean[nodeCount];
        for (int b = 0; b < terms.size(); b++) {
            if (terms.get(b).isCurved()) {
                watched[ends.get(b)[0]] = true;
                watched[ends.get(b)[1]] = true;
            }
        }
        for (int[] threshold : thresholdEnds) {
            watched[threshold[1]] = true;
            watched[threshold[2]] = true;
        }
        return watched;
    }
}
