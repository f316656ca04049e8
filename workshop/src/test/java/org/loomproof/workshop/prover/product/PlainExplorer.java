package org.loomproof.workshop.prover.product;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
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
 * The second way to everything that can be reached: no table, no grid, no areas, nothing left out; what is seen in each state is solved
 * on the whole network by a dense matrix with a pivoting solver, and the controller of the simple kit is written out by hand. Its pulses
 * have clocks that tick: where all lengths are whole ticks, nothing comes about between two ticks that does not at one.
 */
final class PlainExplorer {

    /** Ties what floats, and moves nothing that is read by as much as a microvolt. */
    private static final double TIE_OHMS = 1e9;

    /** One output that gives a pulse as something begins. */
    record Pulse(LeadId lead, ControllerState on, int ticks) {}

    /** One state, but for what its clocks show. */
    record State(
            SortedMap<OperableId, String> positions,
            SupplyPoint supply,
            ControllerState does,
            Set<LeadId> pulses,
            ControllerFeed feed,
            boolean asleep,
            boolean spent) {}

    /**
     * One state in full.
     *
     * @param ticks since it began to arm
     * @param own ticks since each pulse began that what it does has begun
     * @param left the same of those that something before has begun, and that may be cut short
     */
    private record Clocked(
            SortedMap<OperableId, String> positions,
            SupplyPoint supply,
            ControllerState does,
            int ticks,
            SortedMap<LeadId, Integer> own,
            SortedMap<LeadId, Integer> left,
            ControllerFeed feed,
            boolean asleep,
            boolean spent) {

        State state() {
            Set<LeadId> pulses = new TreeSet<>(own.keySet());
            pulses.addAll(left.keySet());
            return new State(positions, supply, does, pulses, feed, asleep, spent);
        }

        Clocked with(SortedMap<OperableId, String> moved, SupplyPoint volts) {
            return new Clocked(moved, volts, does, ticks, own, left, feed, asleep, spent);
        }

        Clocked withoutPulses(ControllerFeed fed, boolean nowAsleep, boolean nowSpent) {
            return new Clocked(
                    positions, supply, does, ticks, new TreeMap<>(), new TreeMap<>(), fed, nowAsleep, nowSpent);
        }

        Clocked spent(boolean now) {
            return new Clocked(positions, supply, does, ticks, own, left, feed, asleep, now);
        }

        Clocked without(LeadId pulse) {
            SortedMap<LeadId, Integer> stillOwn = new TreeMap<>(own);
            SortedMap<LeadId, Integer> stillLeft = new TreeMap<>(left);
            stillOwn.remove(pulse);
            stillLeft.remove(pulse);
            return new Clocked(positions, supply, does, ticks, stillOwn, stillLeft, feed, asleep, spent);
        }
    }

    /** What the dense solver says of one state; where contacts go in a circle it may be anything. */
    record Seen(boolean circles, boolean alive, boolean active, boolean resting) {}

    private final List<Operable> operables;
    private final Wired wired;
    private final Settings settings;
    private final List<Pulse> pulses;
    private final int armingTicks;
    private final Map<State, Seen> reached = new LinkedHashMap<>();
    private final Map<Situation, Seen> solved = new HashMap<>();
    private final Set<Clocked> known = new HashSet<>();
    private final Deque<Clocked> open = new ArrayDeque<>();

    /** The cart with the simple kit, which gives no pulse. */
    PlainExplorer(Jobs.Job job) {
        this(job, List.of(), 1);
    }

    PlainExplorer(Jobs.Job job, List<Pulse> pulses, int armingTicks) {
        this.operables = job.brief().sheet().operables();
        this.wired = VehicleWiring.fitted(job.brief(), job.plan(), Corner.TYPICAL);
        this.settings =
                new Settings(wired, job.brief().sheet(), job.brief().kit().behaviour());
        this.pulses = pulses;
        this.armingTicks = armingTicks;
    }

    /** Every state that can be reached, with what it shows. */
    Map<State, Seen> explore() {
        SortedMap<OperableId, String> rest = new TreeMap<>();
        operables.forEach(each -> rest.put(each.id(), each.rest()));
        take(new Clocked(
                rest,
                SupplyPoint.REST,
                ControllerState.DISARMED,
                0,
                new TreeMap<>(),
                new TreeMap<>(),
                ControllerFeed.WHOLE,
                false,
                false));
        while (!open.isEmpty()) {
            Clocked from = open.remove();
            Seen seen = Optional.ofNullable(reached.get(from.state())).orElseThrow();
            next(from, seen).forEach(this::take);
        }
        return reached;
    }

    private void take(Clocked to) {
        if (known.add(to)) {
            reached.computeIfAbsent(to.state(), this::see);
            open.add(to);
        }
    }

    private Seen see(State state) {
        Situation situation = new Situation(
                state.positions(), state.supply(), state.does(), state.feed(), Moment.SETTLED, state.pulses());
        return solved.computeIfAbsent(situation, this::solve);
    }

    private Seen solve(Situation situation) {
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

    private List<Clocked> next(Clocked from, Seen seen) {
        List<Clocked> all = new ArrayList<>();
        for (Operable operable : operables) {
            for (String position : operable.positions()) {
                if (!position.equals(from.positions().get(operable.id()))) {
                    SortedMap<OperableId, String> moved = new TreeMap<>(from.positions());
                    moved.put(operable.id(), position);
                    boolean cranks = from.supply() == SupplyPoint.CRANKING && isAtStart(moved);
                    SupplyPoint supply =
                            from.supply() != SupplyPoint.CRANKING || cranks ? from.supply() : SupplyPoint.REST;
                    all.add(from.with(moved, supply));
                }
            }
        }
        for (SupplyPoint supply : SupplyPoint.values()) {
            if (supply != from.supply() && (supply != SupplyPoint.CRANKING || isAtStart(from.positions()))) {
                all.add(from.with(from.positions(), supply));
            }
        }
        for (ControllerFeed feed : ControllerFeed.values()) {
            boolean can = feed != ControllerFeed.FUSE_OUT
                    || !wired.controller().orElseThrow().feedFuses().isEmpty();
            if (can && feed != from.feed() && (feed == ControllerFeed.WHOLE || from.feed() == ControllerFeed.WHOLE)) {
                all.add(from.withoutPulses(feed, from.asleep(), from.spent()));
            }
        }
        if (from.asleep()) {
            if (seen.circles() || seen.alive()) {
                EnumSet.of(from.does(), ControllerState.DISARMED, ControllerState.ARMED, ControllerState.SOUNDING)
                        .forEach(as -> all.add(enter(from, as)));
            }
        } else {
            byItself(from, seen, all);
        }
        return all;
    }

    private static boolean isAtStart(SortedMap<OperableId, String> positions) {
        return "start".equals(positions.get(Operable.KEY));
    }

    /** Begins the pulses of what it does next; those before go on. Without its feed it gives none. */
    private Clocked enter(Clocked from, ControllerState next) {
        SortedMap<LeadId, Integer> own = new TreeMap<>();
        SortedMap<LeadId, Integer> left = new TreeMap<>(from.left());
        left.putAll(from.own());
        if (from.feed() == ControllerFeed.WHOLE) {
            pulses.stream().filter(pulse -> pulse.on() == next).forEach(pulse -> own.put(pulse.lead(), 0));
        }
        left.keySet().removeAll(own.keySet());
        return new Clocked(from.positions(), from.supply(), next, 0, own, left, from.feed(), false, false);
    }

    private int length(LeadId lead) {
        return pulses.stream()
                .filter(pulse -> pulse.lead().equals(lead))
                .findFirst()
                .orElseThrow()
                .ticks();
    }

    /** A tick later, unless something must end before. */
    private Optional<Clocked> later(Clocked from) {
        boolean mustEnd = from.does() == ControllerState.ARMING && from.ticks() == armingTicks;
        SortedMap<LeadId, Integer> own = new TreeMap<>();
        SortedMap<LeadId, Integer> left = new TreeMap<>();
        for (Map.Entry<LeadId, Integer> each : from.own().entrySet()) {
            mustEnd |= each.getValue() == length(each.getKey());
            own.put(each.getKey(), each.getValue() + 1);
        }
        for (Map.Entry<LeadId, Integer> each : from.left().entrySet()) {
            mustEnd |= each.getValue() == length(each.getKey());
            left.put(each.getKey(), each.getValue() + 1);
        }
        int ticks = from.does() == ControllerState.ARMING ? from.ticks() + 1 : 0;
        return mustEnd
                ? Optional.empty()
                : Optional.of(new Clocked(
                        from.positions(),
                        from.supply(),
                        from.does(),
                        ticks,
                        own,
                        left,
                        from.feed(),
                        from.asleep(),
                        from.spent()));
    }

    private void byItself(Clocked from, Seen seen, List<Clocked> all) {
        boolean mayRaise = seen.circles() || !seen.resting();
        boolean mayBeQuiet = seen.circles() || !seen.active();
        later(from).ifPresent(all::add);
        from.own().forEach((pulse, ticks) -> {
            if (ticks == length(pulse)) {
                all.add(from.without(pulse));
            }
        });
        from.left().keySet().forEach(pulse -> all.add(from.without(pulse)));
        if (seen.circles() || !seen.alive()) {
            all.add(from.withoutPulses(from.feed(), true, false));
        }
        all.add(enter(
                from, from.does() == ControllerState.DISARMED ? ControllerState.ARMING : ControllerState.DISARMED));
        if (from.does() != ControllerState.OVERRIDE) {
            all.add(enter(from, ControllerState.OVERRIDE));
        }
        Clocked armed = enter(from, ControllerState.ARMED);
        switch (from.does()) {
            case ARMING -> {
                if (from.ticks() == armingTicks) {
                    all.add(armed);
                }
            }
            case ARMED -> {
                if (!from.spent() && mayRaise) {
                    all.add(enter(from, ControllerState.WARNING));
                }
                if (from.spent() && mayBeQuiet) {
                    all.add(from.spent(false));
                }
            }
            case WARNING -> {
                all.add(enter(from, ControllerState.SOUNDING));
                if (mayBeQuiet) {
                    all.add(armed);
                }
            }
            case SOUNDING -> {
                all.add(armed);
                if (mayRaise) {
                    all.add(armed.spent(true));
                }
            }
            case WITHOUT_SUPPLY, DISARMED, OVERRIDE -> {}
        }
    }
}
