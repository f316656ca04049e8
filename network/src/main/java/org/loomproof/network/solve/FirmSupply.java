package org.loomproof.network.solve;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.loomproof.network.law.Term;
import org.loomproof.network.law.When;

/**
 * What one battery holds up while all contacts are at rest, however switches stand, and what of the network therefore decides
 * about each threshold's drive.
 *
 * <p>But for the battery all currents flow downhill, so none flows in a circle and none is larger than the battery's own; and
 * that is no larger than {@link DownhillFlow} allows at the battery's open-circuit voltage. So a rank that R ohms of
 * conductors join to the source, which are there in every setting, stands no lower than the open-circuit voltage less R times that
 * current. If that is worth the name the rank is <em>firm</em>. The part of the network between a drive's ends and the firm
 * ranks about it, its <em>piece</em>, decides about the drive but for what the voltages at those ranks leave open.
 *
 * <p>This holds for parts as built, whole or broken, unless a conductor is broken by which a rank is firm. Safe for use by several
 * threads.
 */
final class FirmSupply {
    /** A rank counts as firm while it stands no lower than this part of the open-circuit voltage. */
    private static final double FIRM_PART = 0.5;

    /** Room above the most current that can flow as built, for shorts of little consequence. */
    static final double ROOM_AMPS = 0.5;

    /** Open-circuit voltage of the battery: no voltage is higher. */
    final double emfVolts;

    /** Per rank the lowest voltage it can have; minus infinity for one that is not firm. */
    final double[] leastVolts;

    /** Per threshold the parts of its piece, and the firm ranks about it. */
    final int[][] pieceOf;

    final int[][] ranksAbout;

    /** Per part, the thresholds of whose pieces it is one, and those whose firm ranks it holds up. */
    final int[][] inPieceOf;

    final int[][] holdingUp;

    private final Layout layout;
    private final DownhillFlow flow;
    private final double mostAmps;

    /** Per part, once asked: 1 if it may be shorted, -1 if not. */
    private final AtomicIntegerArray bearsShort;

    /**
     * What a network's supply holds up. Nothing is told of a network that has not just one source of voltage, a battery with its
     * minus at the chassis, nor of one in which current could flow without limit.
     */
    static Optional<FirmSupply> of(Layout layout) {
        int battery = battery(layout);
        if (battery < 0) {
            return Optional.empty();
        }
        int[][] touching = layout.touching(b -> true);
        DownhillFlow flow =
                new DownhillFlow(layout, touching, upperEnd(layout, battery), emf(layout, battery), battery);
        double amps = flow.raise(Double.MAX_VALUE);
        return Double.isInfinite(amps)
                ? Optional.empty()
                : Optional.of(new FirmSupply(layout, battery, touching, flow, amps + ROOM_AMPS));
    }

    private FirmSupply(Layout layout, int battery, int[][] touching, DownhillFlow flow, double mostAmps) {
        this.layout = layout;
        this.flow = flow;
        this.mostAmps = mostAmps;
        int partCount = layout.network.parts().size();
        bearsShort = new AtomicIntegerArray(partCount);
        emfVolts = emf(layout, battery);
        int[] way = new int[layout.rankCount + 1];
        leastVolts = Arrays.stream(ohmsToSource(layout, battery, touching, way))
                .map(ohms -> emfVolts - ohms * mostAmps)
                .map(volts -> volts >= FIRM_PART * emfVolts ? volts : Double.NEGATIVE_INFINITY)
                .toArray();
        int count = layout.thresholds.length;
        pieceOf = new int[count][];
        ranksAbout = new int[count][];
        List<IntList> ofPiece = lists(partCount);
        List<IntList> ofWays = lists(partCount);
        for (int t = 0; t < count; t++) {
            Set<Integer> piece = new TreeSet<>(Set.of(layout.thresholdPart[t]));
            Set<Integer> about = new TreeSet<>();
            lookAbout(t, touching, piece, about);
            Set<Integer> conductors = new TreeSet<>();
            for (int rank : about) {
                for (int at = rank; at != layout.chassisRank(); ) {
                    conductors.add(layout.partOf[way[at]]);
                    at = layout.otherEnd(way[at], at);
                }
            }
            pieceOf[t] = ints(piece);
            ranksAbout[t] = ints(about);
            for (int part : piece) {
                ofPiece.get(part).add(t);
            }
            for (int part : conductors) {
                ofWays.get(part).add(t);
            }
        }
        inPieceOf = ofPiece.stream().map(IntList::toArray).toArray(int[][]::new);
        holdingUp = ofWays.stream().map(IntList::toArray).toArray(int[][]::new);
    }

    /** Whether all holds with this part shorted, and no other. */
    boolean bearsShort(int part) {
        int known = bearsShort.get(part);
        if (known == 0) {
            known = flow.withShort(layout.firstBranch[part]).raise(mostAmps) <= mostAmps ? 1 : -1;
            bearsShort.set(part, known);
        }
        return known > 0;
    }

    /** The most the battery gives, amps. */
    double mostAmps() {
        return mostAmps;
    }

    /** The one branch with a source of voltage; -1 if there are more, or none, or it does not stand on the chassis the right way up. */
    private static int battery(Layout layout) {
        int[] sources = IntStream.range(0, layout.branchCount)
                .filter(b -> layout.terms[b] instanceof Term.Conductance term
                        && (term.emfVolts() != 0 || term.stated() == Term.Stated.EMF))
                .toArray();
        if (sources.length != 1) {
            return -1;
        }
        int only = sources[0];
        boolean standsOnChassis =
                (layout.from[only] == layout.chassisRank()) != (layout.to[only] == layout.chassisRank());
        return standsOnChassis && emf(layout, only) > 0 ? only : -1;
    }

    private static int upperEnd(Layout layout, int battery) {
        return Math.min(layout.from[battery], layout.to[battery]);
    }

    private static double emf(Layout layout, int battery) {
        double emf = layout.terms[battery] instanceof Term.Conductance term ? term.emfVolts() : 0;
        return layout.to[battery] == layout.chassisRank() ? emf : -emf;
    }

    /**
     * Ohms of the best way from each rank to the source over conductors that are there in every setting (Dijkstra, Numerische
     * Mathematik 1, 1959; from memory).
     *
     * @param way set for each rank within reach to the first branch of that way
     */
    private static double[] ohmsToSource(Layout layout, int battery, int[][] touching, int[] way) {
        double[] ohms = new double[layout.rankCount + 1];
        Arrays.fill(ohms, Double.POSITIVE_INFINITY);
        PriorityQueue<Reached> next =
                new PriorityQueue<>(Comparator.comparingDouble(Reached::ohms).thenComparingInt(Reached::rank));
        next.add(new Reached(upperEnd(layout, battery), battery, 1 / siemens(layout, battery)));
        while (!next.isEmpty()) {
            Reached reached = next.remove();
            int at = reached.rank();
            if (reached.ohms() >= ohms[at]) {
                continue;
            }
            ohms[at] = reached.ohms();
            way[at] = reached.branch();
            for (int b : touching[at]) {
                int other = layout.otherEnd(b, at);
                double siemens = siemens(layout, b);
                if (other != layout.chassisRank() && siemens > 0) {
                    next.add(new Reached(other, b, ohms[at] + 1 / siemens));
                }
            }
        }
        return ohms;
    }

    private record Reached(int rank, int branch, double ohms) {}

    /** Conductance that is there in every setting. */
    private static double siemens(Layout layout, int branch) {
        return layout.terms[branch] instanceof Term.Conductance term && term.when() == When.ALWAYS ? term.siemens() : 0;
    }

    private void lookAbout(int threshold, int[][] touching, Set<Integer> piece, Set<Integer> about) {
        Deque<Integer> border =
                new ArrayDeque<>(List.of(layout.thresholdPlus[threshold], layout.thresholdMinus[threshold]));
        boolean[] isMet = new boolean[layout.rankCount + 1];
        isMet[layout.chassisRank()] = true;
        while (!border.isEmpty()) {
            int at = border.remove();
            if (isMet[at]) {
                continue;
            }
            isMet[at] = true;
            if (leastVolts[at] > Double.NEGATIVE_INFINITY) {
                about.add(at);
                continue;
            }
            for (int b : touching[at]) {
                if (DownhillFlow.mayCarry(layout.terms[b])) {
                    piece.add(layout.partOf[b]);
                    border.add(layout.otherEnd(b, at));
                }
            }
        }
    }

    private static List<IntList> lists(int count) {
        return Stream.generate(IntList::new).limit(count).toList();
    }

    private static int[] ints(Set<Integer> set) {
        return set.stream().mapToInt(Integer::intValue).toArray();
    }
}
