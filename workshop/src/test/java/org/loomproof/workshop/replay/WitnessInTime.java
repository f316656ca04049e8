package org.loomproof.workshop.replay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.time.TimeEvent;
import org.loomproof.network.time.TimeOutcome;
import org.loomproof.network.time.TimeSolver;
import org.loomproof.network.time.Timeline;
import org.loomproof.network.time.Trace;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.prover.claim.OpeningSeen;
import org.loomproof.workshop.prover.explore.Answers;
import org.loomproof.workshop.prover.explore.ClaimAgain;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.prover.state.StepsTo;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.ControllerParts;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * Carries the steps of a witness out in one car, in time, with its controller running, and looks when the controller does what the
 * witness says: by then every wire and every part must be at the volts and amps of a point of rest at which the claim is broken by
 * the figures that the witness quotes.
 */
public final class WitnessInTime {

    /** No wire is further off. */
    public static final double VOLTS = 0.05;

    /** No part's current is further off than this and {@link #AMPS_SHARE} of it. */
    public static final double AMPS = 0.02;

    public static final double AMPS_SHARE = 0.03;

    /** A look comes at most so long after the last step. */
    private static final double SECONDS = 2;

    /** A look is so long before the controller moves again. */
    private static final double JUST_BEFORE = 1e-9;

    private final Brief brief;
    private final ClaimAgain claims;
    private final Vehicle vehicle;
    private final ControllerParts parts;
    private final Map<LeadId, PartId> outputs = new TreeMap<>();
    private final TimeSolver solver;
    private final Map<List<Phrase>, Run> runs = new HashMap<>();
    private final Workbench bench = new Workbench();

    /** A car to carry witnesses out in. */
    public WitnessInTime(Brief brief, ClaimAgain claims) {
        this.brief = brief;
        this.claims = claims;
        this.vehicle = claims.fitted();
        this.parts = vehicle.wired().controller().orElseThrow();
        parts.outputs().forEach((lead, reach) -> {
            Setting asked = vehicle.settings()
                    .atRest(
                            SupplyPoint.REST,
                            ControllerState.DISARMED,
                            ControllerFeed.WHOLE,
                            Moment.SETTLED,
                            Set.of(lead));
            if (asked.isOn(reach.part())) {
                outputs.put(lead, reach.part());
            }
        });
        this.solver = TimeSolver.of(vehicle.wired().network());
    }

    /** What came of a witness. */
    public sealed interface Told {
        /** The claim is broken where the run came to, by the figures of the witness. */
        record Same() implements Told {}

        /** The alarm is set off before anybody can look, and the claim is broken then. */
        record SetOff() implements Told {}

        /** These steps lead to another point of rest: that of the witness asks for contacts that something else has left so. */
        record Elsewhere() implements Told {}

        /** Nothing can be compared, and why. */
        record No(String why) implements Told {}

        /** The run stopped: it is worse in time. */
        record Worse(TimeOutcome.Reason reason) implements Told {}

        /** The run shows something else. */
        record Other(String what) implements Told {}
    }

    private sealed interface Run {
        /**
         * Somebody looked.
         *
         * @param at when
         * @param seconds how long nothing had moved in the controller by then
         * @param does what it did; empty where it had no supply
         * @param isLast whether it did so to the end of the run
         */
        record Looked(Trace trace, double at, double seconds, Optional<Status> does, boolean isLast) implements Run {}

        record Ended(Told told) implements Run {}
    }

    /** Carries out the witness of a claim. */
    public Told told(String claim, Witness witness) {
        return switch (runs.computeIfAbsent(key(witness), k -> run(witness))) {
            case Run.Ended(Told told) -> told;
            case Run.Looked looked -> compare(claim, witness, looked);
        };
    }

    private static List<Phrase> key(Witness witness) {
        List<Phrase> key = new ArrayList<>(witness.steps());
        key.add(Phrase.of("looked-at", witness.situation().toString()));
        return key;
    }

    private Run run(Witness witness) {
        return switch (Script.of(witness, brief, parts, outputs)) {
            case Script.Made.Impossible(String why) -> new Run.Ended(new Told.Other(why));
            case Script.Made.Ready(Script script) -> run(script);
        };
    }

    private Run run(Script script) {
        Timeline timeline = Timeline.settled(vehicle.settings().of(StepsTo.atRest()));
        for (Script.Outside each : script.outside()) {
            Setting setting = vehicle.settings().of(each.situation());
            timeline = timeline.then(each.seconds(), before -> setting);
        }
        double end = script.lastStep() + SECONDS;
        TimeOutcome outcome = solver.run(timeline.logic(script.controller()), end);
        return switch (outcome) {
            case TimeOutcome.Finished(Trace trace) -> look(trace, script, end);
            case TimeOutcome.GaveUp gaveUp -> new Run.Ended(new Told.Worse(gaveUp.reason()));
            case TimeOutcome.NotStarted notStarted -> new Run.Ended(new Told.No("no point of rest at the start"));
        };
    }

    /** What the controller did after the last step, from one of its moves to the next. */
    private List<Run.Looked> looks(Trace trace, Script script, double end) {
        List<Run.Looked> looks = new ArrayList<>();
        String now = new Status(
                        ControllerState.DISARMED,
                        brief.kit().behaviour().listOn(ControllerState.DISARMED, Moment.SETTLED),
                        false)
                .text();
        double since = script.lastStep();
        for (TimeEvent event : trace.events()) {
            if (event instanceof TimeEvent.StateEntered entered
                    && !entered.state().equals(now)) {
                if (entered.seconds() > since) {
                    looks.add(look(trace, since, entered.seconds(), now, false));
                    since = entered.seconds();
                }
                now = entered.state();
            }
        }
        looks.add(look(trace, since, end, now, true));
        return looks;
    }

    private static Run.Looked look(Trace trace, double from, double to, String does, boolean isLast) {
        return new Run.Looked(
                trace,
                Math.max(from, to - JUST_BEFORE),
                to - from,
                does.equals(Status.ASLEEP) ? Optional.empty() : Optional.of(Status.of(does)),
                isLast);
    }

    /** At the end of the longest time in which it does what is wanted; else of that in which it has no supply, or has been set off. */
    private Run look(Trace trace, Script script, double end) {
        List<Run.Looked> looks = looks(trace, script, end);
        Comparator<Run.Looked> longest = Comparator.comparingDouble(Run.Looked::seconds);
        return looks.stream()
                .filter(look -> look.does().filter(script.wanted()::equals).isPresent())
                .max(longest)
                .or(() -> looks.stream().filter(look -> look.does().isEmpty()).max(longest))
                .or(() -> looks.stream().filter(look -> isSetOff(look, script)).max(longest))
                .<Run>map(look -> look)
                .orElseGet(() -> new Run.Ended(new Told.Other("the controller is never "
                        + script.wanted().text() + " but "
                        + looks.stream()
                                .map(look -> look.does() + " for " + look.seconds())
                                .toList())));
    }

    /** Whether a trigger has set off the alarm of a controller that was to be watching. */
    private static boolean isSetOff(Run.Looked look, Script script) {
        return WATCHING.contains(script.wanted().state())
                && look.does().filter(does -> SET_OFF.contains(does.state())).isPresent();
    }

    private static final Set<ControllerState> WATCHING = EnumSet.of(ControllerState.ARMED, ControllerState.WARNING);
    private static final Set<ControllerState> SET_OFF = EnumSet.of(ControllerState.WARNING, ControllerState.SOUNDING);

    /** The situation that somebody sees who looks: the one of the witness, unless the alarm was set off before. */
    private Situation situation(Witness witness, Run.Looked run) {
        Situation told = witness.situation();
        if (run.does().isEmpty() || run.does().get().state() == told.controller()) {
            return told;
        }
        Status does = run.does().get();
        Set<LeadId> still = new TreeSet<>(does.on());
        still.removeAll(brief.kit().behaviour().listOn(does.state(), Moment.SETTLED));
        for (Moment moment : Moment.values()) {
            if (brief.kit().behaviour().listOn(does.state(), moment).equals(does.on())) {
                return new Situation(told.positions(), told.supply(), does.state(), told.feed(), moment);
            }
        }
        return new Situation(told.positions(), told.supply(), does.state(), told.feed(), Moment.SETTLED, still);
    }

    private Told compare(String claim, Witness witness, Run.Looked run) {
        Situation situation = situation(witness, run);
        if (!(bench.answers(vehicle, vehicle.settings().of(situation)) instanceof Answers.AtRest rest)) {
            return new Told.No("no point of rest");
        }
        Off nearest = rest.points().stream()
                .map(point -> off(point, run))
                .min(Comparator.comparingDouble(Off::times))
                .orElseThrow();
        if (nearest.times() > 1) {
            return new Told.Other("after " + run.seconds() + " s " + nearest.what());
        }
        Optional<ClaimAgain.Found> found =
                claims.at(claim, situation, point -> off(point, run).times() <= 1);
        if (found.isEmpty()) {
            return new Told.Other("the claim says nothing where the run came to");
        }
        boolean isBroken = found.get().slack() < 0;
        if (isBroken && !situation.equals(witness.situation())) {
            return new Told.SetOff();
        }
        if (isBroken && claim.startsWith(OpeningSeen.NAME + " ") && isNoticed(run)) {
            return new Told.Other("the alarm is set off by what no input was to read");
        }
        if (isBroken && areAlike(found.get().seen(), witness.seen())) {
            return new Told.Same();
        }
        boolean isElsewhere = rest.points().size() > 1
                && claims.at(claim, situation, point -> true)
                        .filter(there -> there.slack() < 0 && areAlike(there.seen(), witness.seen()))
                        .isPresent();
        return isElsewhere
                ? new Told.Elsewhere()
                : new Told.Other(
                        isBroken
                                ? "other figures: " + found.get().seen() + " instead of " + witness.seen()
                                : "the claim is kept where the run came to, by "
                                        + found.get().slack());
    }

    /** Whether a controller that is armed and alive moves all the same, long after any input has had its time. */
    private static boolean isNoticed(Run.Looked run) {
        return !run.isLast()
                && run.does()
                        .filter(does -> does.state() == ControllerState.ARMED)
                        .isPresent();
    }

    /**
     * Whether the same meters show the same, but for what a run may be off. Of two wires with one current either may be named, and
     * in a larger part of the car more may be read.
     */
    private static boolean areAlike(List<Observation> these, List<Observation> those) {
        int count = Math.min(these.size(), those.size());
        boolean areAlike = count > 0 || these.equals(those);
        for (int k = 0; areAlike && k < count; k++) {
            areAlike = these.get(k).at().key().equals(those.get(k).at().key())
                    && isAlike(these.get(k).reads(), those.get(k).reads());
        }
        return areAlike;
    }

    private static boolean isAlike(String reads, String quoted) {
        if (reads.equals(quoted)) {
            return true;
        }
        Optional<Double> here = base(reads);
        Optional<Double> there = base(quoted);
        return here.isPresent()
                && there.isPresent()
                && unit(reads).equals(unit(quoted))
                && Math.abs(here.get() - there.get()) <= Math.max(VOLTS, AMPS + AMPS_SHARE * Math.abs(there.get()));
    }

    /** Volts or amps. */
    private static Optional<Double> base(String reads) {
        Matcher matcher = READING.matcher(reads);
        return matcher.matches()
                ? Optional.of(
                        Double.parseDouble(matcher.group(1)) * (matcher.group(2).equals("m") ? 1e-3 : 1))
                : Optional.empty();
    }

    private static String unit(String reads) {
        return reads.substring(reads.length() - 1);
    }

    private static final Pattern READING = Pattern.compile("(-?[0-9.]+) (m?)([VA])");

    /** How many times further off than allowed the worst of it is, and what that is. */
    private record Off(double times, String what) {}

    private static Off off(OperatingPoint point, Run.Looked run) {
        Off worst = new Off(0, "");
        for (Node node : point.network().nodes()) {
            if (!point.isFloating(node)) {
                double there = run.trace().volts(node, run.at());
                double times = Math.abs(point.volts(node) - there) / VOLTS;
                if (times > worst.times()) {
                    worst = new Off(times, node + " is at " + there + " V and not at " + point.volts(node));
                }
            }
        }
        for (Part part : point.network().parts()) {
            if (part instanceof Battery) {
                continue; // gives what all the others take, of which there are fewer in a part of the car
            }
            double there = run.trace().amps(part.id(), run.at());
            double here = point.amps(part.id());
            double times = Math.abs(here - there) / (AMPS + AMPS_SHARE * Math.abs(here));
            if (times > worst.times()) {
                worst = new Off(times, part.id() + " carries " + there + " A and not " + here);
            }
        }
        return worst;
    }
}
