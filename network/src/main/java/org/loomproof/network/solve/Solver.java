package org.loomproof.network.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    private static final int RACERS_TRIED = 8;

    private final Layout layout;
    private final SolverOptions options;
    private final Optional<FirmSupply> supply;
    private final ContactSettling settling;

    private Solver(Layout layout, SolverOptions options, Optional<FirmSupply> supply) {
        this.layout = layout;
        this.options = options;
        this.supply = supply;
        this.settling = new ContactSettling(layout, options, supply);
    }

    /** A solver that looks as closely and widely as usual; the network is laid out for it. */
    public static Solver of(Network network) {
        return of(network, SolverOptions.USUAL);
    }

    /** A solver that looks as closely and widely as told; the network is laid out for it. */
    public static Solver of(Network network, SolverOptions options) {
        return new Solver(new Layout(network), options, Optional.empty());
    }

    /** Another solver of the same network, as it was when new; what was laid out is shared. */
    public Solver fresh() {
        return new Solver(layout, options, supply);
    }

    /** Another solver of the same network, as when new, that is quicker over very many settings. */
    Solver foreseeing() {
        return new Solver(layout, options, FirmSupply.of(layout));
    }

    /** The network it solves. */
    public Network network() {
        return layout.network;
    }

    /**
     * Power-up: supply appears with all relays released and all controllers asleep.
     *
     * @throws IllegalArgumentException if the setting belongs to another network
     */
    public SolveOutcome solve(Setting setting) {
        return solveFrom(setting, settling.unpowered());
    }

    /**
     * The setting comes upon a network that rests at the previous point: a change, or a fault, while running.
     *
     * @throws IllegalArgumentException if the setting or the point belongs to another network
     */
    public SolveOutcome solve(Setting setting, OperatingPoint previous) {
        if (!previous.network().equals(layout.network)) {
            throw new IllegalArgumentException("the previous point belongs to another network");
        }
        return solveFrom(setting, previous.contacts());
    }

    /** Linear solutions and nodes eliminated so far: work that does not depend on the machine. */
    public long work() {
        return settling.work();
    }

    private SolveOutcome solveFrom(Setting setting, ContactPattern history) {
        if (!setting.network().equals(layout.network)) {
            throw new IllegalArgumentException("the setting belongs to another network");
        }
        return switch (settling.settle(setting, settling.begin(setting, history))) {
            case Ending.AtRest(ContactPattern pattern) -> settled(setting, pattern);
            case Ending.InCircle(ContactPattern entry, List<Integer> moving) -> circled(setting, entry, moving);
            case Ending.Lost() ->
                new SolveOutcome.NotConverged(settling.points().residualAmps(), settling.moves());
        };
    }

    private SolveOutcome settled(Setting setting, ContactPattern pattern) {
        if (!settling.points().checked()) {
            return new SolveOutcome.NotConverged(settling.points().residualAmps(), settling.moves());
        }
        OperatingPoint point = settling.points().point(setting, pattern);
        return new SolveOutcome.Settled(point, options.otherStablePoints() ? others(setting, pattern) : List.of());
    }

    /** Stable points reached from all contacts passed, and from the settled ones with each single contact moved. */
    private List<OperatingPoint> others(Setting setting, ContactPattern settled) {
        List<ContactPattern> starts = new ArrayList<>();
        starts.add(ContactPattern.of(settled.count(), t -> true));
        for (int t = 0; t < settled.count(); t++) {
            starts.add(settled.withMoved(t));
        }
        List<ContactPattern> known = new ArrayList<>(List.of(settled));
        List<OperatingPoint> found = new ArrayList<>();
        for (ContactPattern from : starts) {
            ContactPattern start = settling.begin(setting, from);
            if (!known.contains(start)
                    && settling.settle(setting, start) instanceof Ending.AtRest(ContactPattern other)) {
                addNew(setting, other, known, found);
            }
        }
        return found;
    }

    private SolveOutcome circled(Setting setting, ContactPattern entry, List<Integer> moving) {
        List<ContactPattern> known = new ArrayList<>();
        List<OperatingPoint> found = new ArrayList<>();
        for (int first : moving.subList(0, Math.min(moving.size(), RACERS_TRIED))) {
            if (settling.settleOneByOne(setting, entry, first) instanceof Ending.AtRest(ContactPattern rest)) {
                addNew(setting, rest, known, found);
            }
        }
        return found.isEmpty()
                ? new SolveOutcome.Chattering(settling.parts(moving))
                : new SolveOutcome.Racing(settling.parts(moving), found);
    }

    private void addNew(
            Setting setting, ContactPattern pattern, List<ContactPattern> known, List<OperatingPoint> found) {
        if (!known.contains(pattern) && settling.points().checked()) {
            known.add(pattern);
            found.add(settling.points().point(setting, pattern));
        }
    }
}
