package org.loomproof.network.time;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.PartId;
import org.loomproof.network.solve.CompanionSolver;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.Solver;
import org.loomproof.network.time.TimeOutcome.Reason;

/** One run: what is where at this time, and the order in which things happen. Used once. */
final class TimeRun {
    /** No step is longer than this part of the run, unless the options say so: nothing short may be stepped over. */
    private static final double LONGEST_PART = 0.1;

    private final Network network;
    private final Timeline timeline;
    private final TimeOptions options;
    private final double end;
    private final Solver starts;
    private final CompanionSolver solver;
    private final Stores stores;
    private final Sources sources;
    private final Contacts contacts;
    private final Machines machines;
    private final Readings readings;
    private final Recorder recorder;
    private final Step step;
    private final EventSearch search;
    private final Pace pace;
    private int moment;
    private double now;

    TimeRun(Solver starts, CompanionSolver solver, Timeline timeline, double end, TimeOptions options) {
        this.starts = starts;
        this.solver = solver;
        this.network = timeline.network();
        this.timeline = timeline;
        this.options = options;
        this.end = end;
        Method method = Method.of(options.tolerance());
        stores = Stores.of(solver, method, options.fuses());
        sources = new Sources(solver, timeline.supplies());
        contacts = new Contacts(solver);
        machines = new Machines(solver, timeline.logic());
        recorder = new Recorder(solver, method);
        readings = new Readings(solver, method, recorder.events());
        step = new Step(method, solver, sources, this::margin, recorder, stores.kinds(), options.tolerance());
        pace = new Pace(method.errorPower());
        search = new EventSearch(method, step, options.tolerance());
    }

    TimeOutcome run() {
        if (timeline.settledBefore()) {
            Setting first = machines.worked(timeline.moments().getFirst().setting());
            for (var supply : timeline.supplies().entrySet()) {
                first = first.emf(supply.getKey(), supply.getValue().voltsBefore(0));
            }
            SolveOutcome start = starts.solve(first);
            if (!(start instanceof SolveOutcome.Settled(OperatingPoint point, List<OperatingPoint> others))) {
                return new TimeOutcome.NotStarted(start);
            }
            beginAt(first, point);
        } else {
            beginWithNothing();
        }
        Optional<Reason> stopped = advance();
        Trace trace = recorder.trace(stores.joules());
        return stopped.<TimeOutcome>map(reason -> new TimeOutcome.GaveUp(trace, now, reason))
                .orElseGet(() -> new TimeOutcome.Finished(trace));
    }

    private void beginAt(Setting setting, OperatingPoint point) {
        solver.begin(point);
        contacts.begin(t -> CompanionSolver.isPassed(point, t));
        configureParts(setting);
        for (int k = 0; k < stores.coils().count; k++) {
            CoilStores coils = stores.coils();
            coils.begin(k, coils.counts[k] ? coils.steadyAmps(k, coils.volts(k)) : 0);
        }
        for (int k = 0; k < stores.capacitors().count; k++) {
            CapacitorStores capacitors = stores.capacitors();
            capacitors.begin(k, capacitors.counts[k] ? capacitors.volts(k) : 0);
        }
        for (int k = 0; k < stores.filaments().count; k++) {
            FilamentStores filaments = stores.filaments();
            filaments.begin(k, filaments.steadyShare(k, filaments.counts[k] ? filaments.volts(k) : 0));
        }
    }

    private void beginWithNothing() {
        contacts.begin(t -> false);
        for (int k = 0; k < stores.filaments().count; k++) {
            stores.filaments().begin(k, stores.filaments().coldShare(k));
        }
    }

    /** From the beginning to the end, or to a reason to stop. */
    private Optional<Reason> advance() {
        recorder.begin(stores.joules(), contacts.passed());
        Optional<Reason> trouble = settleInstant(true);
        double longest = Math.min(options.longestStep(), LONGEST_PART * end);
        double h = Math.min(longest, step.firstSeconds());
        for (int tried = 0; trouble.isEmpty() && now < end; tried++) {
            if (tried >= options.mostSteps()) {
                return Optional.of(new TimeOutcome.TooManySteps(tried));
            }
            double stop = nextStop();
            double left = stop - now;
            h = Math.min(h, longest);
            // Two equal steps rather than one long and one very short.
            double seconds = h >= left * (1 - 1e-9) ? left : Math.min(h, 0.5 * left);
            double error = step.attempt(now, seconds);
            if (!(error <= 1) && seconds > least()) {
                h = Math.max(least(), pace.afterRefused(seconds, error));
                continue;
            }
            if (Double.isNaN(error)) {
                return Optional.of(new TimeOutcome.NoVoltages());
            }
            double taken = search.firstEvent(now, seconds);
            boolean found = taken < seconds || step.endMargin() <= 0;
            double reached = taken < seconds || seconds < left ? now + taken : stop;
            recorder.step(now, reached, step.stageVolts());
            readings.follow(now, reached, step.stageVolts());
            step.take(taken);
            now = reached;
            // A step cut short, by an event or by what was known to come, says nothing against the length it had.
            double next = pace.afterTaken(seconds, error);
            h = seconds < h || found ? Math.max(h, next) : next;
            boolean halted = found || now == stop;
            if (halted) {
                boolean jumped = jumpsNow();
                if (jumped) {
                    trouble = settleInstant(false);
                    h = step.firstSeconds();
                    pace.begin();
                }
            }
        }
        return trouble;
    }

    /** No step is shorter: some roundings of the time. */
    private double least() {
        return Math.max(1e-15, 16 * Math.ulp(now));
    }

    private double margin() {
        double least = Math.min(contacts.margin(), machines.margin());
        return Math.min(least, stores.fuses().margin());
    }

    /** The next time at which something is known to happen, or the end. */
    private double nextStop() {
        double next = Math.min(end, Math.min(contacts.nextDue(), machines.nextTimer()));
        if (moment + 1 < timeline.moments().size()) {
            next = Math.min(next, timeline.moments().get(moment + 1).seconds());
        }
        return Math.min(next, sources.nextCorner(now));
    }

    /** Whether something moves at this very time. Takes note of calls first: they alone move nothing. */
    private boolean jumpsNow() {
        contacts.call(now, recorder.events());
        boolean setting = moment + 1 < timeline.moments().size()
                && timeline.moments().get(moment + 1).seconds() <= now;
        return setting
                || contacts.nextDue() <= now
                || machines.nextTimer() <= now
                || machines.margin() <= 0
                || stores.fuses().opens()
                || sources.jumps(now);
    }

    /** Moves all that moves at this time, and what that moves in turn, until nothing does. */
    private Optional<Reason> settleInstant(boolean first) {
        int bound = 16 + 2 * solver.thresholdCount() + 4 * timeline.logic().size();
        Set<PartId> moving = new LinkedHashSet<>();
        boolean everSwitched = first;
        for (int round = 0; round < bound; round++) {
            boolean switched = first && round == 0;
            while (moment + 1 < timeline.moments().size()
                    && timeline.moments().get(moment + 1).seconds() <= now) {
                moment++;
                recorder.events().add(new TimeEvent.SettingChanged(now));
                switched = true;
            }
            List<PartId> moved = contacts.move(now, recorder.events());
            if (round > 2) {
                moving.addAll(moved);
            }
            switched |= !moved.isEmpty();
            switched |= stores.fuses().move(now, recorder.events());
            // Before the first solution inputs read nothing yet.
            switched |= !(first && round == 0) && machines.move(now, recorder.events());
            everSwitched |= switched;
            if (switched) {
                configure();
            } else if (round > 0) {
                recorder.start(now, everSwitched);
                readings.jump(now);
                return Optional.empty();
            }
            if (!step.freeze(now)) {
                return Optional.of(
                        cutCoil().<Reason>map(TimeOutcome.NoWayForCurrent::new).orElseGet(TimeOutcome.NoVoltages::new));
            }
            Optional<PartId> cut = cutCoil();
            if (cut.isPresent()) {
                return Optional.of(new TimeOutcome.NoWayForCurrent(cut.get()));
            }
            contacts.call(now, recorder.events());
        }
        return Optional.of(new TimeOutcome.Chattering(List.copyOf(moving)));
    }

    /** A coil whose current would need an absurd voltage to go on. */
    private Optional<PartId> cutCoil() {
        CoilStores coils = stores.coils();
        for (int k = 0; k < coils.count; k++) {
            if (coils.counts[k] && Math.abs(coils.volts(k)) > NO_WAY_VOLTS) {
                return Optional.of(
                        network.parts().get(solver.partOf(coils.branch[k])).id());
            }
        }
        return Optional.empty();
    }

    /** No clamp, winding or contact in a vehicle stands this: it arcs. */
    private static final double NO_WAY_VOLTS = 1e5;

    private void configure() {
        double stored = stores.joules();
        configureParts(machines.worked(timeline.moments().get(moment).setting()));
        recorder.cut(stored - stores.joulesLeft());
    }

    private void configureParts(Setting setting) {
        Setting whole = setting;
        for (PartId fuse : stores.fuses().opened()) {
            whole = whole.broken(fuse);
        }
        contacts.configure(whole);
        sources.configure(whole);
        stores.coils().configure(whole);
        solver.configure(whole, contacts::isPassed);
        for (StoreKind kind : stores.kinds()) {
            kind.configure();
        }
    }
}
