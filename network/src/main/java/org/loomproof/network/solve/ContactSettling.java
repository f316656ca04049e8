package org.loomproof.network.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.loomproof.network.law.Threshold;
import org.loomproof.network.netlist.PartFault;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.PartId;

/**
 * Moves contacts until nothing moves. From a stated pattern, all contacts whose drive calls for it move at once, then the
 * voltages are found anew. A pattern met twice means a circle.
 */
final class ContactSettling {
    /**
     * Point solvers kept, one for each of the first moves and the last for all further ones. What contacts do after power-up
     * is much the same from one setting to the next, so each solver finds its network nearly as it left it.
     */
    private static final int TRACKS = 4;

    private final Layout layout;
    private final SolverOptions options;

    /** Made when first asked for: the later ones seldom are. */
    private final List<PointSolver> tracks = new ArrayList<>();

    /** Per threshold where it lies, and the drive last found. */
    private final double[] riseVolts;

    private final double[] fallVolts;
    private final double[] drive;

    /** Whether the setting lets the drive move it, and where it stays if not. */
    private final boolean[] isFree;

    private final boolean[] isHeldPassed;
    private final SettingChange change;
    private final ContactPattern unpowered;

    /** Tells, where there is one, what is called at rest without solving. */
    private final @Nullable Foresight foresight;

    private PointSolver points;
    private int moves;

    /**
     * A settling that has settled nothing yet.
     *
     * @param supply what the supply holds up, if that is known
     */
    ContactSettling(Layout layout, SolverOptions options, Optional<FirmSupply> supply) {
        this.layout = layout;
        this.options = options;
        this.points = new PointSolver(layout, options, Trust.ROUGH_VOLTS);
        tracks.add(points);
        int count = layout.thresholds.length;
        riseVolts = Arrays.stream(layout.thresholds)
                .mapToDouble(Threshold::riseVolts)
                .toArray();
        fallVolts = Arrays.stream(layout.thresholds)
                .mapToDouble(Threshold::fallVolts)
                .toArray();
        drive = new double[count];
        isFree = new boolean[count];
        isHeldPassed = new boolean[count];
        change = new SettingChange(layout.thresholdOfPart.length);
        unpowered = ContactPattern.of(count, t -> false);
        foresight = supply.map(firm -> new Foresight(layout, firm)).orElse(null);
    }

    private PointSolver track(int move) {
        if (move > tracks.size() && tracks.size() < TRACKS) {
            tracks.add(new PointSolver(layout, options, Trust.ROUGH_VOLTS));
        }
        return tracks.get(Math.min(move, TRACKS) - 1);
    }

    /** All contacts at rest: released, asleep. */
    ContactPattern unpowered() {
        return unpowered;
    }

    /** The solver that holds the answer of the last settling. */
    PointSolver points() {
        return points;
    }

    /** Linear solutions and nodes eliminated so far. */
    long work() {
        return tracks.stream().mapToLong(PointSolver::work).sum();
    }

    /** How it ended. */
    sealed interface Ending {
        record AtRest(ContactPattern pattern) implements Ending {}

        record InCircle(ContactPattern entry, List<Integer> moving) implements Ending {}

        record Lost() implements Ending {}
    }

    /** Of all contacts called to move, those that do. */
    private interface Movers {
        ContactPattern next(ContactPattern now, ContactPattern called);
    }

    /** Patterns tried by the last settling. */
    int moves() {
        return moves;
    }

    /** Patterns that may be tried for one setting: enough for every contact to move twice, one after the other. */
    private int bound() {
        return 16 + 2 * layout.thresholds.length;
    }

    /** Settles from this pattern; at rest, {@link #points()} holds the answer. */
    Ending settle(Setting setting, ContactPattern start) {
        return settle(setting, start, (now, called) -> called);
    }

    /** As {@link #settle}, but of all contacts called only one moves at a time, the next from {@code first} on. */
    Ending settleOneByOne(Setting setting, ContactPattern start, int first) {
        return settle(setting, start, (now, called) -> {
            int mover = now.findDifference(called, first);
            return now.withMoved(mover >= 0 ? mover : now.findDifference(called, 0));
        });
    }

    private Ending settle(Setting setting, ContactPattern start, Movers movers) {
        ContactPattern pattern = start;
        List<ContactPattern> met = new ArrayList<>();
        for (moves = 1; moves <= bound(); moves++) {
            ContactPattern called = foreseen(setting, pattern);
            if (called.equals(pattern)) {
                points = track(moves);
                points.apply(setting, change);
                if (!points.solveRoughly(pattern)) {
                    return new Ending.Lost();
                }
                called = called(pattern);
                if (foresight != null && pattern.equals(unpowered)) {
                    foresight.learn(points, Trust.ROUGH_VOLTS);
                }
                if (called.equals(pattern) || isClose()) {
                    if (!points.solve()) {
                        return new Ending.Lost();
                    }
                    called = called(pattern);
                    if (called.equals(pattern)) {
                        return new Ending.AtRest(pattern);
                    }
                }
            }
            met.add(pattern);
            pattern = movers.next(pattern, called);
            int circle = met.indexOf(pattern);
            if (circle >= 0) {
                return new Ending.InCircle(pattern, moving(met.subList(circle, met.size())));
            }
        }
        // A circle longer than the bound, as in a long ring: told by what moved in the second half.
        return new Ending.InCircle(pattern, moving(met.subList(met.size() / 2, met.size())));
    }

    /** The pattern to begin with: the one given, but held contacts where they are held. */
    ContactPattern begin(Setting setting, ContactPattern from) {
        change.to(setting);
        for (int c = 0; c < change.count(); c++) {
            int threshold = layout.thresholdOfPart[change.part(c)];
            if (threshold >= 0) {
                hold(threshold, setting);
            }
            if (foresight != null) {
                foresight.set(change.part(c), setting);
            }
        }
        return from.with(t -> isFree[t] ? from.isPassed(t) : isHeldPassed[t]);
    }

    /** Whether the setting lets the drive of a threshold move it, and where it stays if not. */
    private void hold(int t, Setting setting) {
        int part = layout.thresholdPart[t];
        boolean isHeld = layout.isRelay[t] && setting.isHeld(part);
        isHeldPassed[t] = isHeld && setting.isHeldPulledIn(part);
        isFree[t] = !layout.isRelay[t] || (!isHeld && setting.fault(part) == PartFault.NONE);
    }

    List<PartId> parts(List<Integer> thresholds) {
        return thresholds.stream()
                .map(t -> layout.network.parts().get(layout.thresholdPart[t]).id())
                .toList();
    }

    /** The pattern the drives call for; {@code now} itself when they call for no move. */
    private ContactPattern called(ContactPattern now) {
        points.takeDrives(drive);
        return now.with(t ->
                isFree[t] ? now.isPassed(t) ? drive[t] > fallVolts[t] : drive[t] >= riseVolts[t] : isHeldPassed[t]);
    }

    /** Whether some drive is so near its threshold that rough voltages do not tell on which side it is. */
    private boolean isClose() {
        for (int t = 0; t < drive.length; t++) {
            if (Math.abs(drive[t] - riseVolts[t]) < Trust.ROUGH_VOLTS
                    || Math.abs(drive[t] - fallVolts[t]) < Trust.ROUGH_VOLTS) {
                return true;
            }
        }
        return false;
    }

    /** What drives are sure to call for from here; the pattern itself where none is, or nothing is sure. */
    private ContactPattern foreseen(Setting setting, ContactPattern now) {
        return foresight != null && now.equals(unpowered) && foresight.isSure(setting)
                ? now.with(t -> isFree[t] ? foresight.isCalled(t) : isHeldPassed[t])
                : now;
    }

    private static List<Integer> moving(List<ContactPattern> circle) {
        ContactPattern first = circle.getFirst();
        List<Integer> moving = new ArrayList<>();
        for (int t = 0; t < first.count(); t++) {
            int at = t;
            if (circle.stream().anyMatch(pattern -> pattern.isPassed(at) != first.isPassed(at))) {
                moving.add(t);
            }
        }
        return moving;
    }
}
