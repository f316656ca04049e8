package org.loomproof.workshop.prover.product;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.loomproof.network.solve.DenseOpinion;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.ControllerParts;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.InputReach;
import org.loomproof.workshop.wiring.Settings;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.wiring.VehicleWiring;
import org.loomproof.workshop.wiring.Wired;

/**
 * The second way to everything that can be reached: no table, no grid, no areas, nothing left out; each state is solved afresh
 * on the whole network by a dense matrix with a pivoting solver, and the controller of the simple kit is written out by hand.
 */
final class PlainExplorer {

    /** Ties what floats, and moves nothing that is read by as much as a microvolt. */
    private static final double TIE_OHMS = 1e9;

    /** One state, in full. */
    record State(
            SortedMap<OperableId, String> positions,
            SupplyPoint supply,
            ControllerState does,
            boolean acting,
            ControllerFeed feed,
            boolean asleep,
            boolean spent) {

        State does(ControllerState next) {
            return new State(positions, supply, next, true, feed, false, false);
        }

        State with(boolean nowActing, boolean nowAsleep, boolean nowSpent) {
            return new State(positions, supply, does, nowActing, feed, nowAsleep, nowSpent);
        }
    }

    /** What the dense solver says of one state; where contacts go in a circle it may be anything. */
    record Seen(boolean circles, boolean alive, boolean active, boolean resting) {}

    private final List<Operable> operables;
    private final Wired wired;
    private final Settings settings;
    private final Map<State, Seen> reached = new LinkedHashMap<>();
    private final Deque<State> open = new ArrayDeque<>();

    PlainExplorer(Jobs.Job job) {
        this.operables = job.brief().sheet().operables();
        this.wired = VehicleWiring.fitted(job.brief(), job.plan(), Corner.TYPICAL);
        this.settings =
                new Settings(wired, job.brief().sheet(), job.brief().kit().behaviour());
    }

    /** Every state that can be reached, with what it shows. */
    Map<State, Seen> explore() {
        SortedMap<OperableId, String> rest = new TreeMap<>();
        operables.forEach(each -> rest.put(each.id(), each.rest()));
        State first =
                new State(rest, SupplyPoint.REST, ControllerState.DISARMED, false, ControllerFeed.WHOLE, false, false);
        reached.put(first, solve(first));
        open.add(first);
        while (!open.isEmpty()) {
            State from = open.remove();
            Seen seen = reached.get(from);
            for (State to : next(from, Optional.ofNullable(seen).orElseThrow())) {
                if (!reached.containsKey(to)) {
                    reached.put(to, solve(to));
                    open.add(to);
                }
            }
        }
        return reached;
    }

    private Seen solve(State state) {
        boolean asked = !state.asleep() && state.feed() == ControllerFeed.WHOLE && state.acting();
        Situation situation = new Situation(
                state.positions(), state.supply(), state.does(), state.feed(), asked ? Moment.ACTING : Moment.SETTLED);
        Optional<DenseOpinion> opinion = DenseOpinion.tied(wired.network(), settings.of(situation), TIE_OHMS);
        if (opinion.isEmpty()) {
            return new Seen(true, true, false, false);
        }
        DenseOpinion point = opinion.get();
        ControllerParts controller = wired.controller().orElseThrow();
        InputReach trigger = controller.inputs().get(new LeadId("trigger"));
        if (trigger == null) {
            throw new IllegalArgumentException("this is for the simple kit");
        }
        double reads = point.volts(trigger.wire()) - point.volts(trigger.ground());
        double lives = point.volts(controller.supply()) - point.volts(controller.ground());
        return new Seen(
                false,
                lives >= controller.leastSupplyVolts(),
                reads <= trigger.lowBelow(),
                reads >= trigger.highAbove());
    }

    private List<State> next(State from, Seen seen) {
        List<State> all = new ArrayList<>();
        for (Operable operable : operables) {
            for (String position : operable.positions()) {
                if (!position.equals(from.positions().get(operable.id()))) {
                    SortedMap<OperableId, String> moved = new TreeMap<>(from.positions());
                    moved.put(operable.id(), position);
                    boolean cranks = from.supply() == SupplyPoint.CRANKING && isAtStart(moved);
                    SupplyPoint supply =
                            from.supply() != SupplyPoint.CRANKING || cranks ? from.supply() : SupplyPoint.REST;
                    all.add(new State(
                            moved, supply, from.does(), from.acting(), from.feed(), from.asleep(), from.spent()));
                }
            }
        }
        for (SupplyPoint supply : SupplyPoint.values()) {
            if (supply != from.supply() && (supply != SupplyPoint.CRANKING || isAtStart(from.positions()))) {
                all.add(new State(
                        from.positions(),
                        supply,
                        from.does(),
                        from.acting(),
                        from.feed(),
                        from.asleep(),
                        from.spent()));
            }
        }
        for (ControllerFeed feed : ControllerFeed.values()) {
            boolean can = feed != ControllerFeed.FUSE_OUT
                    || !wired.controller().orElseThrow().feedFuses().isEmpty();
            if (can && feed != from.feed() && (feed == ControllerFeed.WHOLE || from.feed() == ControllerFeed.WHOLE)) {
                all.add(new State(
                        from.positions(), from.supply(), from.does(), false, feed, from.asleep(), from.spent()));
            }
        }
        if (from.asleep()) {
            if (seen.circles() || seen.alive()) {
                EnumSet.of(from.does(), ControllerState.DISARMED, ControllerState.ARMED, ControllerState.SOUNDING)
                        .forEach(as -> all.add(from.does(as)));
            }
        } else {
            byItself(from, seen, all);
        }
        return all;
    }

    private static boolean isAtStart(SortedMap<OperableId, String> positions) {
        return "start".equals(positions.get(Operable.KEY));
    }

    private static void byItself(State from, Seen seen, List<State> all) {
        boolean mayRaise = seen.circles() || !seen.resting();
        boolean mayBeQuiet = seen.circles() || !seen.active();
        if (from.acting()) {
            all.add(from.with(false, false, from.spent()));
        }
        if (seen.circles() || !seen.alive()) {
            all.add(from.with(false, true, false));
        }
        all.add(from.does(from.does() == ControllerState.DISARMED ? ControllerState.ARMING : ControllerState.DISARMED));
        if (from.does() != ControllerState.OVERRIDE) {
            all.add(from.does(ControllerState.OVERRIDE));
        }
        State armed = from.does(ControllerState.ARMED);
        switch (from.does()) {
            case ARMING -> all.add(armed);
            case ARMED -> {
                if (!from.spent() && mayRaise) {
                    all.add(from.does(ControllerState.WARNING));
                }
                if (from.spent() && mayBeQuiet) {
                    all.add(from.with(from.acting(), false, false));
                }
            }
            case WARNING -> {
                all.add(from.does(ControllerState.SOUNDING));
                if (mayBeQuiet) {
                    all.add(armed);
                }
            }
            case SOUNDING -> {
                all.add(armed);
                if (mayRaise) {
                    all.add(armed.with(true, false, true));
                }
            }
            case WITHOUT_SUPPLY, DISARMED, OVERRIDE -> {}
        }
    }
}
