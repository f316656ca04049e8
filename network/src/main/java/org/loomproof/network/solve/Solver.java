package org.loomproof.network.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.solve.ContactSettling.Ending;

/**
 * Finds operating points of one network. The network is laid out once; every further setting costs only what it changes.
 * The answer to a setting depends on the setting and the history asked for, never on what was solved before; voltages agree
 * to well below 1 uV whatever the order. Not for sharing: one solver a thread.
 */
public final class Solver {
  /** Racing contacts beyond this many are not each tried as the first. */
  private static final int RACERS_TRIED = 16;

  private final Layout layout;
  private final SolverOptions options;
  private final PointSolver points;
  private final ContactSettling settling;

  private Solver(Network network, SolverOptions options) {
    this.layout = new Layout(network);
    this.options = options;
    this.points = new PointSolver(layout, options);
    this.settling = new ContactSettling(layout, points);
  }

  public static Solver of(Network network) {
    return of(network, SolverOptions.USUAL);
  }

  public static Solver of(Network network, SolverOptions options) {
    return new Solver(network, options);
  }

  public Network network() {
    return layout.network;
  }

  /**
   * Power-up: supply appears with all relays released and all controllers asleep.
   *
   * @throws IllegalArgumentException if the setting belongs to another network
   */
  public SolveOutcome solve(Setting setting) {
    return solveFrom(setting, new boolean[layout.thresholds.length]);
  }

  /**
   * The setting comes upon a network that rests at the previous point: a change, or a fault, while running.
   *
   * @throws IllegalArgumentException if the setting or the point belongs to another network
   */
  public SolveOutcome solve(Setting setting, OperatingPoint previous) {
    if (previous.network() != layout.network) {
      throw new IllegalArgumentException("the previous point belongs to another network");
    }
    return solveFrom(setting, previous.passed());
  }

  /** Fronts computed and linear solutions made so far: work that does not depend on the machine. */
  public long work() {
    return points.work();
  }

  private SolveOutcome solveFrom(Setting setting, boolean[] history) {
    if (setting.network() != layout.network) {
      throw new IllegalArgumentException("the setting belongs to another network");
    }
    points.apply(setting);
    Ending ending = settling.settle(setting, settling.begin(setting, history));
    return switch (ending) {
      case Ending.AtRest(boolean[] passed) -> settled(setting, passed);
      case Ending.InCircle(boolean[] entry, List<Integer> moving) -> circled(setting, entry, moving);
      case Ending.Lost() -> new SolveOutcome.NotConverged(points.residualAmps(), settling.moves());
    };
  }

  private SolveOutcome settled(Setting setting, boolean[] passed) {
    if (!points.checked()) {
      return new SolveOutcome.NotConverged(points.residualAmps(), settling.moves());
    }
    OperatingPoint point = points.point(setting, passed);
    List<OperatingPoint> others = options.otherStablePoints() ? others(setting, passed) : List.of();
    return new SolveOutcome.Settled(point, others);
  }

  /** Stable points reached from all contacts passed, and from the settled ones with each single contact moved. */
  private List<OperatingPoint> others(Setting setting, boolean[] passed) {
    List<boolean[]> starts = new ArrayList<>();
    boolean[] all = new boolean[passed.length];
    Arrays.fill(all, true);
    starts.add(all);
    for (int t = 0; t < passed.length; t++) {
      boolean[] moved = passed.clone();
      moved[t] = !moved[t];
      starts.add(moved);
    }
    List<boolean[]> known = new ArrayList<>(List.of(passed));
    List<OperatingPoint> found = new ArrayList<>();
    for (boolean[] from : starts) {
      boolean[] start = settling.begin(setting, from);
      if (isIn(known, start)) {
        continue;
      }
      if (settling.settle(setting, start) instanceof Ending.AtRest(boolean[] other)) {
        addNew(setting, other, known, found);
      }
    }
    return found;
  }

  private SolveOutcome circled(Setting setting, boolean[] entry, List<Integer> moving) {
    List<boolean[]> known = new ArrayList<>();
    List<OperatingPoint> found = new ArrayList<>();
    for (int first : moving.subList(0, Math.min(moving.size(), RACERS_TRIED))) {
      if (settling.settleOneByOne(setting, entry, first) instanceof Ending.AtRest(boolean[] rest)) {
        addNew(setting, rest, known, found);
      }
    }
    return found.isEmpty()
        ? new SolveOutcome.Chattering(settling.parts(moving))
        : new SolveOutcome.Racing(settling.parts(moving), found);
  }

  private void addNew(Setting setting, boolean[] passed, List<boolean[]> known, List<OperatingPoint> found) {
    if (!isIn(known, passed) && points.checked()) {
      known.add(passed);
      found.add(points.point(setting, passed));
    }
  }

  private static boolean isIn(List<boolean[]> known, boolean[] pattern) {
    return known.stream().anyMatch(each -> Arrays.equals(each, pattern));
  }
}
