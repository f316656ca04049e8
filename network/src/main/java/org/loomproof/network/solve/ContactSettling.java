package org.loomproof.network.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.loomproof.network.law.Threshold;
import org.loomproof.network.netlist.PartFault;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.PartId;

/**
 * Moves contacts until nothing moves. From stated positions, all contacts whose drive calls for it move at once, then the
 * voltages are found anew. A pattern met twice means a circle; then each mover is tried as the one that is first.
 */
final class ContactSettling {
  private final Layout layout;
  private final PointSolver points;
  private int moves;

  ContactSettling(Layout layout, PointSolver points) {
    this.layout = layout;
    this.points = points;
  }

  /** Patterns that may be tried for one setting: enough for every contact to move twice, one after the other. */
  private int bound() {
    return 16 + 2 * layout.thresholds.length;
  }

  /** How it ended. */
  sealed interface Ending {
    record AtRest(boolean[] passed) implements Ending {}

    record InCircle(boolean[] entry, List<Integer> moving) implements Ending {}

    record Lost() implements Ending {}
  }

  /** Patterns tried by the last settling. */
  int moves() {
    return moves;
  }

  /** Settles from these positions; the setting must have been applied. At the end the point solver holds the answer. */
  Ending settle(Setting setting, boolean[] start) {
    boolean[] passed = start.clone();
    List<boolean[]> met = new ArrayList<>();
    for (moves = 1; moves <= bound(); moves++) {
      if (!points.solve(passed)) {
        return new Ending.Lost();
      }
      boolean[] next = called(setting, passed);
      if (Arrays.equals(next, passed)) {
        return new Ending.AtRest(passed);
      }
      met.add(passed);
      int circle = indexOf(met, next);
      if (circle >= 0) {
        return new Ending.InCircle(next, moving(met.subList(circle, met.size())));
      }
      passed = next;
    }
    return new Ending.InCircle(passed, moving(met.subList(met.size() / 2, met.size())));
  }

  /** As {@link #settle}, but of all contacts that are called only one moves at a time, the first from {@code first} on. */
  Ending settleOneByOne(Setting setting, boolean[] start, int first) {
    boolean[] passed = start.clone();
    List<boolean[]> met = new ArrayList<>();
    for (moves = 1; moves <= bound(); moves++) {
      if (!points.solve(passed)) {
        return new Ending.Lost();
      }
      boolean[] called = called(setting, passed);
      if (Arrays.equals(called, passed)) {
        return new Ending.AtRest(passed);
      }
      met.add(passed);
      passed = passed.clone();
      int mover = firstDifference(passed, called, first);
      passed[mover] = called[mover];
      if (indexOf(met, passed) >= 0) {
        return new Ending.InCircle(passed, List.of(mover));
      }
    }
    return new Ending.InCircle(passed, List.of());
  }

  /** Positions to begin with: those given, but held contacts where they are held. */
  boolean[] begin(Setting setting, boolean[] from) {
    boolean[] start = from.clone();
    for (int t = 0; t < start.length; t++) {
      start[t] = held(setting, t, start[t]);
    }
    return start;
  }

  List<PartId> parts(List<Integer> thresholds) {
    return thresholds.stream()
        .map(t -> layout.network.parts().get(layout.thresholdPart[t]).id())
        .toList();
  }

  private boolean[] called(Setting setting, boolean[] passed) {
    boolean[] called = new boolean[passed.length];
    for (int t = 0; t < passed.length; t++) {
      Threshold threshold = layout.thresholds[t];
      double drive = points.thresholdVolts(t);
      boolean free = passed[t] ? drive > threshold.fallVolts() : drive >= threshold.riseVolts();
      called[t] = held(setting, t, free);
    }
    return called;
  }

  private boolean held(Setting setting, int threshold, boolean free) {
    int part = layout.thresholdPart[threshold];
    if (!layout.thresholds[threshold].eitherPolarity()) {
      return free;
    }
    if (setting.isHeld(part)) {
      return setting.isHeldPulledIn(part);
    }
    return free && setting.fault(part) == PartFault.NONE;
  }

  private static int indexOf(List<boolean[]> met, boolean[] pattern) {
    for (int k = met.size() - 1; k >= 0; k--) {
      if (Arrays.equals(met.get(k), pattern)) {
        return k;
      }
    }
    return -1;
  }

  private static int firstDifference(boolean[] a, boolean[] b, int first) {
    for (int k = 0; k < a.length; k++) {
      int at = (first + k) % a.length;
      if (a[at] != b[at]) {
        return at;
      }
    }
    throw new IllegalStateException("the patterns are equal");
  }

  private static List<Integer> moving(List<boolean[]> circle) {
    List<Integer> moving = new ArrayList<>();
    for (int t = 0; t < circle.getFirst().length; t++) {
      boolean first = circle.getFirst()[t];
      int at = t;
      if (circle.stream().anyMatch(pattern -> pattern[at] != first)) {
        moving.add(t);
      }
    }
    return moving;
  }
}
