package org.loomproof.workshop.replay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.replay.ControllerInTime.Span;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.ControllerParts;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * The steps of a witness with times, as they are told to a person: first what the controller is told, then what is done to the car
 * while the controller does what the witness says.
 *
 * @param controller with all that it is told
 * @param outside what is set from outside, and from when on
 * @param wanted what the controller is to do when somebody looks
 * @param lastStep when all has been done
 */
record Script(ControllerInTime controller, List<Outside> outside, Status wanted, double lastStep) {

    /** The car as it is set from outside; the controller's own part of the situation says nothing. */
    record Outside(double seconds, Situation situation) {}

    /** Between two steps. A person is slower: what that would change is what the witness says by waiting. */
    private static final double GAP = 0.02;

    /** So long may a controller take by itself to what a witness is about. */
    private static final double LONGEST = 200;

    /** A look takes so long. */
    private static final double LOOK = 0.2;

    /** A script of a witness, or why there is none. */
    sealed interface Made {
        record Ready(Script script) implements Made {}

        record Impossible(String why) implements Made {}
    }

    static Made of(Witness witness, Brief brief, ControllerParts parts, Map<LeadId, PartId> outputs) {
        Kit kit = brief.kit();
        Status wanted = wanted(witness.situation(), kit);
        Optional<Phrase> unknown = witness.steps().stream()
                .filter(step -> !COMMANDS.contains(step.key()) && !isDeed(step))
                .findFirst();
        if (unknown.isPresent()) {
            return new Made.Impossible("no step in time: " + unknown.get().key());
        }
        List<Tried> all = new ArrayList<>();
        for (boolean isPatient : new boolean[] {true, false}) {
            for (Unsaid unsaid : Unsaid.WAYS) {
                Clocked clocked = new Clocked(kit, parts, outputs, unsaid);
                witness.steps().forEach(step -> clocked.take(step, isPatient));
                clocked.span(wanted, clocked.takes()).ifPresent(span -> all.add(new Tried(clocked, span)));
            }
        }
        return all.stream()
                .filter(tried -> tried.lasts() >= tried.clocked().takes())
                .findFirst()
                .or(() -> all.stream().max(Comparator.comparingDouble(Tried::lasts)))
                .<Made>map(tried -> new Made.Ready(tried.script(wanted, witness.situation(), brief.sheet())))
                .orElseGet(() -> new Made.Impossible("never by these steps: " + wanted.text()));
    }

    private static final Set<String> COMMANDS = Set.of(
            "step.arm",
            "step.arm-and-wait",
            "step.wait-armed",
            "step.disarm",
            "step.override",
            "step.leave-override",
            "step.again",
            "step.warn",
            "step.sound",
            "step.wait-quiet",
            "step.still");

    private static boolean isDeed(Phrase step) {
        return step.key().startsWith("step.feed-")
                || step.key().startsWith("step.supply-")
                || Set.of("step.turn-key", "step.open", "step.put").contains(step.key());
    }

    private static Status wanted(Situation situation, Kit kit) {
        Set<LeadId> on = new TreeSet<>(kit.behaviour().listOn(situation.controller(), situation.moment()));
        on.addAll(situation.still());
        return new Status(situation.controller(), on, false);
    }

    /** Commands with times, found out on the bench. */
    private static final class Clocked {
        private final Kit kit;
        private final ControllerParts parts;
        private final Map<LeadId, PartId> outputs;
        private final Unsaid unsaid;
        private final List<Told> told = new ArrayList<>();
        private final Car car = new Car();
        private final List<Outside> outside = new ArrayList<>(List.of(new Outside(0, car.situation())));
        private double now = 2 * GAP;

        Clocked(Kit kit, ControllerParts parts, Map<LeadId, PartId> outputs, Unsaid unsaid) {
            this.kit = kit;
            this.parts = parts;
            this.outputs = outputs;
            this.unsaid = unsaid;
        }

        ControllerInTime controller() {
            return new ControllerInTime(kit, parts, outputs, unsaid, told);
        }

        /** One who is patient lets each pulse end before the next command. */
        void take(Phrase step, boolean isPatient) {
            switch (step.key()) {
                case "step.arm" -> tell(Told.Command.ARM, isPatient);
                case "step.disarm", "step.leave-override" -> tell(Told.Command.DISARM, isPatient);
                case "step.override" -> tell(Told.Command.OVERRIDE, isPatient);
                case "step.again" -> tell(Told.Command.AGAIN, isPatient);
                case "step.warn" -> tell(Told.Command.LIGHT_BLOW, isPatient);
                case "step.sound" -> tell(Told.Command.HARD_BLOW, isPatient);
                case "step.arm-and-wait" -> {
                    tell(Told.Command.ARM, isPatient);
                    waitFor(status -> status.state() == ControllerState.ARMED);
                }
                case "step.wait-armed", "step.wait-quiet" -> waitFor(status -> status.state() == ControllerState.ARMED);
                case "step.still" -> {}
                default -> {
                    now += GAP;
                    car.take(step);
                    outside.add(new Outside(now, car.situation()));
                }
            }
        }

        /** How long the controller must do the same for the steps that follow its last command, and for a look. */
        double takes() {
            return GAP
                            * (outside.stream()
                                            .filter(each -> each.seconds() > lastCommand())
                                            .count()
                                    + 1)
                    + LOOK;
        }

        private double lastCommand() {
            return told.isEmpty() ? 0 : told.getLast().seconds();
        }

        private void tell(Told.Command command, boolean isPatient) {
            if (isPatient) {
                waitFor(status -> !status.pulses());
            }
            told.add(new Told(now, command));
            now += GAP / 2;
        }

        private void waitFor(Predicate<Status> what) {
            controller().alone(now + LONGEST).stream()
                    .filter(span -> span.to() > now && what.test(span.status()))
                    .findFirst()
                    .ifPresent(span -> now = Math.max(now, span.from()) + GAP / 2);
        }

        /** The first time from now on that it does that long enough, or the longest. */
        Optional<Span> span(Status wanted, double enough) {
            double from = told.isEmpty() ? 2 * GAP : lastCommand();
            List<Span> all = joined(controller().alone(now + LONGEST)).stream()
                    .filter(span -> span.to() > from && span.status().text().equals(wanted.text()))
                    .map(span -> new Span(Math.max(span.from(), from), span.to(), span.status()))
                    .toList();
            return all.stream()
                    .filter(span -> span.to() - span.from() >= enough)
                    .findFirst()
                    .or(() -> all.stream().max(Comparator.comparingDouble(span -> span.to() - span.from())));
        }

        private static List<Span> joined(List<Span> spans) {
            List<Span> joined = new ArrayList<>();
            for (Span span : spans) {
                if (!joined.isEmpty()
                        && joined.getLast().status().text().equals(span.status().text())) {
                    span = new Span(joined.removeLast().from(), span.to(), span.status());
                }
                joined.add(span);
            }
            return joined;
        }
    }

    private record Tried(Clocked clocked, Span span) {

        double lasts() {
            return span.to() - span.from();
        }

        Script script(Status wanted, Situation situation, Sheet sheet) {
            if (!clocked.car.isAs(situation, sheet)) {
                throw new IllegalStateException(
                        "the steps lead to " + clocked.car.situation() + " and not to " + situation);
            }
            double last = clocked.lastCommand();
            double start = Math.max(span.from(), last) + GAP / 2;
            List<Outside> outside = new ArrayList<>();
            int late = 0;
            for (Outside each : clocked.outside) {
                boolean isLate = each.seconds() > last && each.seconds() > 0;
                outside.add(isLate ? new Outside(start + GAP * late++, each.situation()) : each);
            }
            return new Script(clocked.controller(), outside, wanted, start + GAP * Math.max(0, late - 1));
        }
    }

    /** What has been done to the car so far. */
    private static final class Car {
        private final SortedMap<OperableId, String> positions = new TreeMap<>();
        private SupplyPoint supply = SupplyPoint.REST;
        private ControllerFeed feed = ControllerFeed.WHOLE;

        void take(Phrase deed) {
            switch (deed.key()) {
                case "step.turn-key" -> positions.put(Operable.KEY, text(deed, 0));
                case "step.open" -> positions.put(operable(deed), Operable.OPENING_POSITIONS.getLast());
                case "step.put" -> positions.put(operable(deed), text(deed, 1));
                default -> {
                    for (ControllerFeed each : ControllerFeed.values()) {
                        feed = deed.key().equals("step.feed-" + each.word()) ? each : feed;
                    }
                    for (SupplyPoint each : SupplyPoint.values()) {
                        supply = deed.key().equals("step.supply-" + each.word()) ? each : supply;
                    }
                }
            }
        }

        private static OperableId operable(Phrase deed) {
            return (OperableId) deed.arguments().getFirst();
        }

        private static String text(Phrase deed, int argument) {
            return deed.arguments().get(argument).toString();
        }

        Situation situation() {
            return new Situation(positions, supply, ControllerState.DISARMED, feed, Moment.SETTLED);
        }

        boolean isAs(Situation wanted, Sheet sheet) {
            return supply == wanted.supply()
                    && feed == wanted.feed()
                    && sheet.operables().stream()
                            .allMatch(each -> positions
                                    .getOrDefault(each.id(), each.rest())
                                    .equals(wanted.positions().getOrDefault(each.id(), each.rest())));
        }
    }
}
