package org.loomproof.network.solve;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.loomproof.network.netlist.PartFault;
import org.loomproof.network.netlist.Setting;

/**
 * Tells which drives of a network whose contacts are at rest call for a move, without solving it, from how the parts of each
 * drive's piece are set ({@link FirmSupply}). What a state of a piece calls for is learnt where the network was solved
 * in that state, and known from then on if the voltages that the firm ranks about the piece can have leave no doubt.
 * Where anything is in doubt nothing is told.
 *
 * <p>The measure of doubt: where currents rise with voltage, the differences between two solutions of a piece are themselves
 * voltages of a network of conductances. So if the voltages at the firm ranks about it differ by something between -d and u, chassis 0, no voltage
 * between two of its nodes differs by more than d + u.
 */
final class Foresight {
    /** What is known of a drive at all voltages that the firm ranks about it can have. */
    private enum Call {
        NOT_MET,
        IN_DOUBT,
        REST,
        MOVE;

        boolean isKnown() {
            return this == REST || this == MOVE;
        }
    }

    /** States remembered of one piece, so that a large one does not fill the memory. */
    private static final int MOST_STATES = 10_000;

    private final Layout layout;
    private final FirmSupply supply;

    /** As the setting in force has each part. */
    private final boolean[] isStated;

    private final PartFault[] faults;

    /** Parts that are set to other volts or ohms than built, that are shorted, and whose short draws more than bounds allow for. */
    private int statedCount;

    private int shortedCount;
    private int drawingCount;

    /** Per threshold, how many conductors that hold up its firm ranks have a fault; and how many thresholds have any. */
    private final int[] faultsBelow;

    private int underminedCount;

    /** Per threshold, what each state of its piece that was met calls for; the state in force, and what that calls for. */
    private final List<Map<ByteBuffer, Call>> known;

    private final ByteBuffer[] states;
    private final Call[] calls;
    private int unknownCount;

    /** Thresholds whose pieces are set otherwise than when last looked up. */
    private final int[] changed;

    private final boolean[] isChanged;
    private int changedCount;

    /** Knows nothing yet; every part must be set once. */
    Foresight(Layout layout, FirmSupply supply) {
        this.layout = layout;
        this.supply = supply;
        int count = layout.thresholds.length;
        isStated = new boolean[layout.thresholdOfPart.length];
        faults = new PartFault[isStated.length];
        Arrays.fill(faults, PartFault.NONE);
        faultsBelow = new int[count];
        known = Stream.<Map<ByteBuffer, Call>>generate(HashMap::new)
                .limit(count)
                .toList();
        states = new ByteBuffer[count];
        calls = new Call[count];
        Arrays.fill(calls, Call.NOT_MET);
        unknownCount = count;
        changed = IntStream.range(0, count).toArray();
        isChanged = new boolean[count];
        Arrays.fill(isChanged, true);
        changedCount = count;
    }

    /** A part is set otherwise than before. */
    void set(int part, Setting setting) {
        boolean isStatedNow = !Double.isNaN(setting.stated(part));
        statedCount += one(isStatedNow) - one(isStated[part]);
        isStated[part] = isStatedNow;
        PartFault fault = setting.fault(part);
        if (fault != faults[part]) {
            count(part, faults[part], -1);
            count(part, fault, 1);
            faults[part] = fault;
        }
        for (int t : supply.inPieceOf[part]) {
            if (!isChanged[t]) {
                isChanged[t] = true;
                changed[changedCount++] = t;
            }
        }
    }

    private void count(int part, PartFault fault, int by) {
        if (fault == PartFault.NONE) {
            return;
        }
        for (int t : supply.holdingUp[part]) {
            underminedCount -= one(faultsBelow[t] > 0);
            faultsBelow[t] += by;
            underminedCount += one(faultsBelow[t] > 0);
        }
        if (fault == PartFault.SHORTED) {
            shortedCount += by;
            drawingCount += supply.bearsShort(part) ? 0 : by;
        }
    }

    private static int one(boolean counts) {
        return counts ? 1 : 0;
    }

    /** Whether it is known of every drive what it calls for in this setting, the one in force. */
    boolean isSure(Setting setting) {
        if (!isFirm()) {
            return false;
        }
        while (changedCount > 0) {
            int t = changed[--changedCount];
            isChanged[t] = false;
            states[t] = state(t, setting);
            call(t, known.get(t).getOrDefault(states[t], Call.NOT_MET));
        }
        return unknownCount == 0;
    }

    /** Whether a drive calls for a move, where all is sure. */
    boolean isCalled(int threshold) {
        return calls[threshold] == Call.MOVE;
    }

    private boolean isFirm() {
        return statedCount == 0 && underminedCount == 0 && drawingCount == 0 && shortedCount <= 1;
    }

    private ByteBuffer state(int threshold, Setting setting) {
        int[] piece = supply.pieceOf[threshold];
        byte[] state = new byte[2 * piece.length];
        for (int p = 0; p < piece.length; p++) {
            state[2 * p] = (byte) setting.selected(piece[p]);
            state[2 * p + 1] = code(faults[piece[p]]);
        }
        return ByteBuffer.wrap(state);
    }

    private static byte code(PartFault fault) {
        return switch (fault) {
            case NONE -> 0;
            case BROKEN -> 1;
            case SHORTED -> 2;
        };
    }

    private void call(int threshold, Call now) {
        unknownCount += one(!now.isKnown()) - one(!calls[threshold].isKnown());
        calls[threshold] = now;
    }

    /**
     * Learns from the network at rest as solved in the setting in force, of which {@link #isSure} was asked.
     *
     * @param missVolts by how much any voltage may be out
     */
    void learn(PointSolver points, double missVolts) {
        if (!isFirm()) {
            return;
        }
        boolean isFilled = false;
        for (int t = 0; t < calls.length; t++) {
            if (calls[t] == Call.NOT_MET && known.get(t).size() < MOST_STATES) {
                if (!isFilled) {
                    points.fill();
                    isFilled = true;
                }
                call(t, told(t, points, missVolts));
                known.get(t).put(states[t], calls[t]);
            }
        }
    }

    private Call told(int threshold, PointSolver points, double missVolts) {
        double up = 0;
        double down = 0;
        for (int rank : supply.ranksAbout[threshold]) {
            up = Math.max(up, supply.emfVolts - points.volts()[rank]);
            down = Math.max(down, points.volts()[rank] - supply.leastVolts[rank]);
        }
        // One rank cannot be up and down at once; and both the drive and the ranks may be out.
        double doubt = (supply.ranksAbout[threshold].length > 1 ? up + down : Math.max(up, down)) + 3 * missVolts;
        double drive = points.thresholdVolts(threshold);
        double rise = layout.thresholds[threshold].riseVolts();
        if (drive - doubt >= rise) {
            return Call.MOVE;
        }
        return drive + doubt < rise ? Call.REST : Call.IN_DOUBT;
    }
}
