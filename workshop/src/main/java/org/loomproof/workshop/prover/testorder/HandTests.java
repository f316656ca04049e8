package org.loomproof.workshop.prover.testorder;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.JoinedCircuits;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.damage.Sign;
import org.loomproof.workshop.prover.state.Operated;
import org.loomproof.workshop.prover.state.StepsTo;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * Every test that a technician can do at a finished car, made from what its sheet says can be operated and from what the kit
 * does. Seconds are common practice, no published source.
 */
public final class HandTests {

    private static final int SECONDS_TO_OPERATE = 5;
    private static final int SECONDS_TO_OPEN_AND_LISTEN = 15;
    private static final int SECONDS_TO_TRY_A_START = 10;
    private static final int SECONDS_TO_UNPLUG = 60;
    private static final int SECONDS_WITH_METER = 45;

    /** Modules fall asleep first. */
    private static final int SECONDS_FOR_STANDING_CURRENT = 1200;

    private static final List<String> STARTING = Operable.KEY_POSITIONS.subList(2, 4);

    private final Brief brief;
    private final Plan plan;
    private final boolean hasFeedFuse;
    private final List<HandTest> all = new ArrayList<>();

    private HandTests(Brief brief, Plan plan, boolean hasFeedFuse) {
        this.brief = brief;
        this.plan = plan;
        this.hasFeedFuse = hasFeedFuse;
    }

    /** All of a job, in a fixed order. */
    public static List<HandTest> list(Brief brief, Plan plan, boolean hasFeedFuse) {
        HandTests tests = new HandTests(brief, plan, hasFeedFuse);
        tests.disarmed();
        tests.armed();
        tests.alarm();
        tests.unfed();
        tests.metered();
        return List.copyOf(tests.all);
    }

    /** A test of one situation that no usual test meets. */
    public static HandTest of(Situation situation, Brief brief, int number) {
        List<Phrase> steps = new ArrayList<>(new StepsTo(brief.sheet(), brief.kit()).list(situation));
        return new HandTest(
                "further " + number,
                ControllerState.DISARMED,
                steps,
                List.of(situation),
                Optional.empty(),
                moved(brief, situation),
                SECONDS_TO_OPEN_AND_LISTEN + waiting(brief, situation.controller()),
                HandTest.Kind.BY_HAND);
    }

    /** A test of what a lead gets as it lets go of its coil. */
    public static HandTest of(Sign.Kick kick, Lead lead) {
        return new HandTest(
                "kick " + kick.lead(),
                ControllerState.DISARMED,
                List.of(Phrase.of("test.kick", lead.id(), lead.plug(), lead.position())),
                List.of(),
                Optional.of(kick),
                Set.of(),
                SECONDS_WITH_METER,
                HandTest.Kind.WITH_METER);
    }

    /** A test at one place of the dead loom. */
    public static HandTest of(Sign.Cold cold) {
        Set<OperableId> follows = cold.place().follows();
        List<Phrase> steps = new ArrayList<>(
                List.of(Phrase.of("test.battery-off"), cold.place().words()));
        if (!follows.isEmpty()) {
            steps.add(Phrase.of("test.while", List.copyOf(follows)));
        }
        return new HandTest(
                "battery-off " + cold.place().id(),
                ControllerState.WITHOUT_SUPPLY,
                steps,
                List.of(),
                Optional.of(cold),
                follows,
                SECONDS_WITH_METER + SECONDS_TO_OPERATE * follows.size(),
                HandTest.Kind.BATTERY_OFF);
    }

    private static Set<OperableId> moved(Brief brief, Situation situation) {
        Set<OperableId> moved = new LinkedHashSet<>();
        situation.positions().forEach((operable, position) -> {
            if (!position.equals(brief.sheet().operable(operable).rest())) {
                moved.add(operable);
            }
        });
        return moved;
    }

    private static int waiting(Brief brief, ControllerState state) {
        return switch (state) {
            case ARMED, WARNING, SOUNDING ->
                (int) Math.ceil(brief.kit().behaviour().armingDelay().high().value());
            case WITHOUT_SUPPLY, DISARMED, ARMING, OVERRIDE -> 0;
        };
    }

    private void disarmed() {
        add(
                "disarm",
                ControllerState.ARMED,
                SECONDS_TO_OPERATE,
                disarming(),
                List.of(at(ControllerState.DISARMED, Moment.ACTING), at(ControllerState.DISARMED, Moment.SETTLED)));
        for (Operable operable : brief.sheet().operables()) {
            if (operable.kind() != Operable.Kind.KEY) {
                for (String position :
                        operable.positions().subList(1, operable.positions().size())) {
                    operate("operate", operable, position, ControllerState.DISARMED, SECONDS_TO_OPERATE);
                }
            }
        }
        start("start-disarmed", ControllerState.DISARMED, ControllerFeed.WHOLE, Moment.SETTLED, List.of());
    }

    private void armed() {
        add(
                "arm",
                ControllerState.DISARMED,
                waiting(brief, ControllerState.ARMED),
                arming(),
                List.of(at(ControllerState.ARMING, Moment.ACTING), at(ControllerState.ARMED, Moment.SETTLED)));
        start("start-armed", ControllerState.ARMED, ControllerFeed.WHOLE, Moment.SETTLED, List.of());
        for (Operable operable : brief.sheet().operables()) {
            switch (operable.kind()) {
                case KEY -> {}
                case DOOR, HOOD, TRUNK -> open(operable);
                case CONTROL ->
                    operable.positions().stream()
                            .skip(1)
                            .forEach(p ->
                                    operate("operate-armed", operable, p, ControllerState.ARMED, SECONDS_TO_OPERATE));
            }
        }
    }

    /** A factory alarm must have been disarmed by the same pulse: a door tells. */
    private List<Phrase> disarming() {
        String alarm = brief.sheet().vehicle().factoryAlarm();
        Phrase disarm = Phrase.of("test.disarm");
        return alarm.isBlank() ? List.of(disarm) : List.of(disarm, Phrase.of("test.alarm-quiet", alarm));
    }

    /** A switch on the lock wires that stays as it is put must have moved by itself. */
    private List<Phrase> arming() {
        List<Phrase> steps = new ArrayList<>(List.of(Phrase.of("test.arm")));
        plan.hookups().stream()
                .flatMap(hookup -> hookup instanceof Hookup.Connect connect && connect.serves() == Wish.LOCKS
                        ? connect.circuits().stream()
                        : Stream.empty())
                .flatMap(circuit -> brief.sheet().circuit(circuit).follows().stream())
                .distinct()
                .filter(id -> brief.sheet().operable(id).staysAsPut())
                .forEach(knob -> steps.add(Phrase.of("test.knob-follows", knob)));
        return steps;
    }

    private void open(Operable opening) {
        String open = Operable.OPENING_POSITIONS.getLast();
        add(
                "open-armed " + opening.id(),
                ControllerState.ARMED,
                SECONDS_TO_OPEN_AND_LISTEN,
                List.of(Phrase.of(
                        opening.kind() == Operable.Kind.DOOR ? "test.open-from-inside" : "test.open", opening.id())),
                List.of(
                        at(ControllerState.ARMED, Moment.SETTLED, opening.id(), open),
                        at(ControllerState.SOUNDING, Moment.ACTING, opening.id(), open)),
                opening.id());
    }

    private void operate(String name, Operable operable, String position, ControllerState state, int seconds) {
        add(
                name + " " + operable.id() + " " + position,
                state,
                seconds,
                List.of(Phrase.of(operable.isOpening() ? "test.open" : "test.put", operable.id(), position)),
                List.of(at(state, Moment.SETTLED, operable.id(), position)),
                operable.id());
    }

    /** A blow to the hub of the steering wheel is how the trade tries a shock sensor. */
    private void alarm() {
        boolean shock = brief.order().wishes().contains(Wish.SHOCK_SENSOR)
                && plan.refusals().stream().noneMatch(r -> r.wish() == Wish.SHOCK_SENSOR);
        Phrase how = Phrase.of(shock ? "test.strike" : "test.sound");
        add(
                "alarm",
                ControllerState.ARMED,
                SECONDS_TO_OPEN_AND_LISTEN,
                List.of(how),
                List.of(
                        at(ControllerState.WARNING, Moment.ACTING),
                        at(ControllerState.SOUNDING, Moment.ACTING),
                        at(ControllerState.SOUNDING, Moment.SETTLED)));
        start("start-sounding", ControllerState.SOUNDING, ControllerFeed.WHOLE, Moment.ACTING, List.of());
    }

    private void unfed() {
        start(
                "start-override",
                ControllerState.OVERRIDE,
                ControllerFeed.WHOLE,
                Moment.SETTLED,
                List.of(Phrase.of("step.override")));
        if (hasFeedFuse) {
            start(
                    "start-without-fuse",
                    ControllerState.DISARMED,
                    ControllerFeed.FUSE_OUT,
                    Moment.SETTLED,
                    List.of(Phrase.of("step.feed-fuse-out")));
        }
    }

    private void start(String id, ControllerState state, ControllerFeed feed, Moment moment, List<Phrase> before) {
        List<Phrase> steps = new ArrayList<>(before);
        steps.add(Phrase.of("test.try-to-start"));
        List<Situation> situations = STARTING.stream()
                .map(key ->
                        new Situation(new TreeMap<>(Map.of(Operable.KEY, key)), SupplyPoint.REST, state, feed, moment))
                .toList();
        boolean intervening = !before.isEmpty();
        all.add(new HandTest(
                id,
                intervening ? ControllerState.DISARMED : state,
                steps,
                situations,
                Optional.empty(),
                Set.of(Operable.KEY),
                SECONDS_TO_TRY_A_START + (intervening ? SECONDS_TO_UNPLUG : 0),
                intervening ? HandTest.Kind.INTERVENING : HandTest.Kind.BY_HAND));
    }

    private void metered() {
        for (Hookup hookup : plan.hookups()) {
            if (hookup instanceof Hookup.Connect connect) {
                metered(connect);
            }
        }
        for (CircuitId cut : JoinedCircuits.cut(plan)) {
            acrossCut(cut);
            acrossCutActing(cut);
        }
        all.add(new HandTest(
                "meter feed",
                ControllerState.SOUNDING,
                List.of(Phrase.of("test.meter-feed")),
                List.of(at(ControllerState.SOUNDING, Moment.ACTING)),
                Optional.of(new Sign.FeedDrop()),
                Set.of(),
                SECONDS_WITH_METER,
                HandTest.Kind.WITH_METER));
        all.add(new HandTest(
                "standing-current",
                ControllerState.ARMED,
                List.of(Phrase.of("test.standing-current")),
                List.of(at(ControllerState.ARMED, Moment.SETTLED)),
                Optional.of(new Sign.StandingCurrent()),
                Set.of(),
                SECONDS_FOR_STANDING_CURRENT,
                HandTest.Kind.WITH_METER));
    }

    /** At rest, and with each thing moved that works one of its circuits. */
    private void metered(Hookup.Connect connect) {
        Set<OperableId> follows = Operated.by(brief.sheet(), plan, connect);
        List<Situation> situations = new ArrayList<>(List.of(at(ControllerState.DISARMED, Moment.SETTLED)));
        for (OperableId operable : follows) {
            List<String> positions = brief.sheet().operable(operable).positions();
            boolean added = brief.kit().extras().stream()
                    .anyMatch(extra -> Extra.workedAs(extra.name()).equals(operable));
            String moved = operable.equals(Operable.KEY)
                    ? STARTING.getFirst()
                    : added ? positions.getLast() : positions.get(1);
            situations.add(at(ControllerState.DISARMED, Moment.SETTLED, operable, moved));
        }
        Lead lead = brief.kit().lead(connect.lead());
        Phrase where = Phrase.of("test.meter-at-plug", lead.id(), lead.plug(), lead.position());
        all.add(new HandTest(
                "meter " + lead.id(),
                ControllerState.DISARMED,
                follows.isEmpty() ? List.of(where) : List.of(where, Phrase.of("test.while", List.copyOf(follows))),
                situations,
                Optional.of(new Sign.AtPlug(lead.id())),
                follows,
                SECONDS_WITH_METER + SECONDS_TO_OPERATE * follows.size(),
                HandTest.Kind.WITH_METER));
    }

    /** Volts left where a factory wire was cut, while it carries its current. */
    private void acrossCut(CircuitId cut) {
        Set<OperableId> follows = new LinkedHashSet<>(brief.sheet().circuit(cut).follows());
        List<Situation> situations = new ArrayList<>();
        for (OperableId operable : follows) {
            brief.sheet().operable(operable).positions().stream()
                    .skip(1)
                    .forEach(position ->
                            situations.add(at(ControllerState.DISARMED, Moment.SETTLED, operable, position)));
        }
        if (!situations.isEmpty()) {
            all.add(new HandTest(
                    "meter across " + cut,
                    ControllerState.DISARMED,
                    List.of(Phrase.of("test.meter-across-cut", cut), Phrase.of("test.while", List.copyOf(follows))),
                    situations,
                    Optional.of(new Sign.AcrossCut(cut)),
                    follows,
                    SECONDS_WITH_METER + SECONDS_TO_TRY_A_START,
                    HandTest.Kind.WITH_METER));
        }
    }

    /** The same while a lead acts there: a pulse is over soon, so the meter holds its peak. */
    private void acrossCutActing(CircuitId cut) {
        for (Hookup hookup : plan.hookups()) {
            if (hookup instanceof Hookup.Connect connect && isJoinedAt(cut, connect)) {
                for (ControllerState state : ControllerState.values()) {
                    boolean acts =
                            brief.kit().behaviour().listOn(state, Moment.ACTING).contains(connect.lead());
                    if (acts) {
                        all.add(new HandTest(
                                "meter across " + cut + " " + connect.lead() + " " + state.word(),
                                state,
                                List.of(Phrase.of("test.meter-across-cut-acting", cut, connect.lead())),
                                List.of(at(state, Moment.ACTING)),
                                Optional.of(new Sign.AcrossCut(cut)),
                                Set.of(),
                                SECONDS_WITH_METER,
                                HandTest.Kind.WITH_METER));
                    }
                }
            }
        }
    }

    private boolean isJoinedAt(CircuitId cut, Hookup.Connect connect) {
        return plan.wires().stream()
                .filter(wire -> connect.wires().contains(wire.id()))
                .flatMap(wire -> Stream.of(wire.from(), wire.to()))
                .anyMatch(end -> end.equals(new End.CutBefore(cut)) || end.equals(new End.CutAfter(cut)));
    }

    /**
     * Tests that the trade does at every car, whatever they are needed for: each watched opening in turn, a start while armed
     * and one while disarmed, a blow for the shock sensor. Common practice, no published source.
     */
    public static boolean isCustomary(HandTest test, Order order) {
        boolean opens = order.watched().stream().anyMatch(opening -> test.id().equals("open-armed " + opening));
        boolean starts = order.wishes().contains(Wish.STARTER_INTERRUPT)
                && (test.id().equals("start-armed") || test.id().equals("start-disarmed"));
        boolean strikes =
                order.wishes().contains(Wish.SHOCK_SENSOR) && test.id().equals("alarm");
        return opens || starts || strikes;
    }

    private void add(
            String id,
            ControllerState from,
            int seconds,
            List<Phrase> steps,
            List<Situation> situations,
            OperableId... touches) {
        all.add(new HandTest(
                id,
                from,
                steps,
                situations,
                Optional.empty(),
                new LinkedHashSet<>(Arrays.asList(touches)),
                seconds,
                HandTest.Kind.BY_HAND));
    }

    private static Situation at(ControllerState state, Moment moment) {
        return new Situation(new TreeMap<>(), SupplyPoint.REST, state, ControllerFeed.WHOLE, moment);
    }

    private static Situation at(ControllerState state, Moment moment, OperableId operable, String position) {
        return new Situation(
                new TreeMap<>(Map.of(operable, position)), SupplyPoint.REST, state, ControllerFeed.WHOLE, moment);
    }
}
