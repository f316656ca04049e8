package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.Solver;
import org.loomproof.network.solve.SolverOptions;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.Warmth;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.words.Phrase;

/** Solvers of the networks in hand, for one thread; counts what it solves. */
public final class Workbench {

    private final Map<Network, Solver> solvers = new HashMap<>();
    private final Map<Network, Histories> histories = new HashMap<>();
    private final Shared shared;
    private long solves;

    /** What benches that work side by side, one a thread, lay out once between them. */
    private static final class Shared {
        private final Map<Network, Solver> laidOut = new ConcurrentHashMap<>();
        private final Map<Network, Map<PartId, Vehicle>> variants = new ConcurrentHashMap<>();
    }

    /** A bench of its own. */
    public Workbench() {
        this(new Shared());
    }

    private Workbench(Shared shared) {
        this.shared = shared;
    }

    /** A bench for another thread, at which what one of the two lays out need not be laid out again. */
    Workbench beside() {
        return new Workbench(shared);
    }

    /** Operating points asked for so far. */
    public long solves() {
        return solves;
    }

    /** The answer from power-up, when there is one. */
    public Optional<OperatingPoint> settled(Wired wired, Setting setting) {
        return solve(wired, setting) instanceof SolveOutcome.Settled settled
                ? Optional.of(settled.point())
                : Optional.empty();
    }

    /** What the vehicle comes to from where it was, when it rests. */
    Optional<OperatingPoint> after(Wired wired, Setting setting, OperatingPoint before) {
        solves++;
        return solver(wired).solve(setting, before) instanceof SolveOutcome.Settled settled
                ? Optional.of(settled.point())
                : Optional.empty();
    }

    /** A vehicle made from another by changing one part; made once. */
    public Vehicle variant(Vehicle of, PartId changed, UnaryOperator<Vehicle> making) {
        return shared.variants
                .computeIfAbsent(of.wired().network(), n -> new ConcurrentHashMap<>())
                .computeIfAbsent(changed, part -> making.apply(of));
    }

    /**
     * Every answer that was found: from power-up, and from a history in which all relays were pulled in and the controller was
     * awake. Where these two differ, also from each relay pulled in by itself.
     *
     * <p>A hot coil needs more than what a start leaves of the battery's volts, and keeps with less what it has pulled in. So in
     * heat volts under those of a tired battery are come to as in the car: from a tired battery, with contacts where they stood.
     */
    public Answers answers(Vehicle vehicle, Setting setting) {
        Wired wired = vehicle.wired();
        double tired = SupplyPoint.LOW.volts().value();
        if (wired.warmth().value() <= Warmth.ROOM.value()
                || setting.stated(wired.network().indexOf(wired.battery())) >= tired) {
            return fromAnything(vehicle, setting);
        }
        Answers before = fromAnything(vehicle, setting.emf(wired.battery(), tired));
        if (!(before instanceof Answers.AtRest(List<OperatingPoint> stood))) {
            return before;
        }
        List<OperatingPoint> points = new ArrayList<>();
        return takeAll(wired, histories(vehicle), stood, setting, points).orElseGet(() -> new Answers.AtRest(points));
    }

    private Answers fromAnything(Vehicle vehicle, Setting setting) {
        Wired wired = vehicle.wired();
        Histories before = histories(vehicle);
        List<OperatingPoint> points = new ArrayList<>();
        Optional<Answers> trouble = take(wired, before, solve(wired, setting), points);
        if (trouble.isEmpty()) {
            trouble = takeAll(wired, before, before.together(), setting, points);
        }
        if (trouble.isEmpty() && points.size() > 1) {
            trouble = takeAll(wired, before, before.single(), setting, points);
        }
        return trouble.orElseGet(() -> new Answers.AtRest(points));
    }

    /** How the vehicle's contacts stand at those answers, as one number; zero where they do not rest. */
    public long stand(Vehicle vehicle, Answers answers) {
        return answers instanceof Answers.AtRest rest ? histories(vehicle).stand(rest.points()) : 0;
    }

    private Optional<Answers> takeAll(
            Wired wired,
            Histories before,
            List<OperatingPoint> histories,
            Setting setting,
            List<OperatingPoint> points) {
        for (OperatingPoint history : histories) {
            solves++;
            Optional<Answers> trouble = take(wired, before, solver(wired).solve(setting, history), points);
            if (trouble.isPresent()) {
                return trouble;
            }
        }
        return Optional.empty();
    }

    private Histories histories(Vehicle vehicle) {
        Histories known = histories.get(vehicle.wired().network());
        if (known == null) {
            known = Histories.of(vehicle, this);
            histories.put(vehicle.wired().network(), known);
        }
        return known;
    }

    private SolveOutcome solve(Wired wired, Setting setting) {
        solves++;
        return solver(wired).solve(setting);
    }

    private Solver solver(Wired wired) {
        return solvers.computeIfAbsent(
                wired.network(),
                n -> shared.laidOut
                        .computeIfAbsent(n, laid -> Solver.of(laid, SolverOptions.USUAL.withoutOtherStablePoints()))
                        .fresh());
    }

    private static Optional<Answers> take(
            Wired wired, Histories before, SolveOutcome outcome, List<OperatingPoint> points) {
        switch (outcome) {
            case SolveOutcome.Settled settled -> before.addNew(settled.point(), points);
            case SolveOutcome.Racing racing -> racing.stablePoints().forEach(point -> before.addNew(point, points));
            case SolveOutcome.Chattering chattering -> {
                return Optional.of(new Answers.Chatters(named("outcome.chatters", wired, chattering.moving())));
            }
            case SolveOutcome.NotConverged lost -> {
                return Optional.of(new Answers.Lost(Phrase.of("outcome.lost")));
            }
        }
        return Optional.empty();
    }

    private static Phrase named(String key, Wired wired, List<PartId> parts) {
        List<Phrase> names = parts.stream()
                .map(part -> isOutput(wired, part) ? Phrase.of("origin.controller") : wired.words(part))
                .distinct()
                .toList();
        return Phrase.of(key, names);
    }

    /** Outputs move together, when the controller wakes and sleeps. */
    private static boolean isOutput(Wired wired, PartId part) {
        Part moving = wired.network().part(part);
        return moving instanceof LowSideOutput || moving instanceof HighSideOutput;
    }
}
