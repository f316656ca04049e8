package org.loomproof.workshop.prover.reach;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeSet;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.kit.OutputBehaviour;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.words.Phrase;

/**
 * Every mode that a fed controller comes into, whatever a person does and whenever: a walk of its states and timers, breadth
 * first by steps, in which times are zones and not moments. Two pulses overlap where they can, and nowhere else.
 *
 * <p>What the kit does not say may be either way: how long a pulse lasts, whether a pulse that an earlier state has begun is let
 * end or cut short, how long it warns and what it does then, how long it sounds. That an alarm can be set off is taken for
 * granted. What flashes is all lit or all dark.
 */
public final class Reach {

    /** No kit met yet comes near; a walk that is cut short says so. */
    static final int MOST_ZONES = 20_000;

    private static final int MOST_KEPT = 4;

    /** Walks of kits, none of which changes any more once it is here. */
    private static final Map<Kit, Reach> KEPT =
            Collections.synchronizedMap(new LinkedHashMap<>(MOST_KEPT, 0.75f, true) {
                @Override
                protected boolean removeEldestEntry(Map.Entry<Kit, Reach> eldest) {
                    return size() > MOST_KEPT;
                }
            });

    private final Behaviour behaviour;
    private final Map<LeadId, Lasts> pulses = new LinkedHashMap<>();
    private final List<LeadId> clocks;
    private final double longest;
    private final Map<Mode, List<Zone>> seen = new HashMap<>();
    private final Set<UnderWay> underWay = new HashSet<>();
    private final Map<Together, Way> ways = new LinkedHashMap<>();
    private final PriorityQueue<Node> queue = new PriorityQueue<>(
            Comparator.comparingInt((Node node) -> node.steps.size()).thenComparingLong(Node::number));
    private long numbers;
    private long transitions;
    private long zones;
    private boolean isCutShort;

    /** A state with all pulses under way in it, whichever state has begun them. */
    private record UnderWay(ControllerState state, Set<LeadId> pulses) {}

    /** How long something lasts: at least and at most. */
    private record Lasts(double least, double most) {
        static final Lasts UNKNOWN = new Lasts(0, Double.POSITIVE_INFINITY);

        static Lasts of(Optional<Figure<Seconds>> figure) {
            return figure.map(f -> new Lasts(f.low().value(), f.high().value())).orElse(UNKNOWN);
        }
    }

    private record Node(Mode mode, Zone zone, List<Phrase> steps, long number) {}

    /** Outputs that are on together in a state. */
    public record Together(ControllerState state, Set<LeadId> on) {
        public Together {
            on = Collections.unmodifiableSet(new TreeSet<>(on));
        }
    }

    private Reach(Kit kit) {
        this.behaviour = kit.behaviour();
        for (OutputBehaviour output : behaviour.outputs()) {
            if (isPulse(output)) {
                pulses.put(output.lead(), Lasts.of(pulse(kit, output.lead())));
            }
        }
        this.clocks = List.copyOf(pulses.keySet());
        this.longest = longest();
    }

    private static Optional<Figure<Seconds>> pulse(Kit kit, LeadId output) {
        return kit.leads().stream()
                .filter(lead -> lead.id().equals(output))
                .findFirst()
                .flatMap(lead -> lead.port().pulse());
    }

    private static boolean isPulse(OutputBehaviour output) {
        return output.timing() == OutputTiming.PULSE || output.timing() == OutputTiming.SECOND_PULSE;
    }

    /** The walk of a kit. A proof asks for it again and again, and a kit of many pulses takes long: the last few are kept. */
    public static Reach of(Kit kit) {
        Reach known = KEPT.get(kit);
        if (known != null) {
            return known;
        }
        Reach reach = new Reach(kit);
        reach.walk();
        KEPT.put(kit, reach);
        return reach;
    }

    /**
     * A way to outputs that are on together.
     *
     * @param steps the fewest that lead there
     * @param isSupposed whether it rests on what the kit does not say: that a pulse of an earlier state is not cut short, or how
     *     long a pulse lasts
     */
    public record Way(List<Phrase> steps, boolean isSupposed) {
        public Way {
            steps = List.copyOf(steps);
        }
    }

    /** All sets of outputs that may be on together, state by state, each with a way there: a sure one where there is any. */
    public Map<Together, Way> ways() {
        return Collections.unmodifiableMap(ways);
    }

    /**
     * Whether its clocks let those pulses and no other be under way in a state. A controller that wakes in a state comes to nothing
     * else: where it enters the same state fed, what earlier states have begun may be cut short at once.
     */
    public boolean comesTo(ControllerState state, Set<LeadId> pulses) {
        return underWay.contains(new UnderWay(state, pulses));
    }

    /** Modes that were reached: states with the pulses under way. */
    public int modes() {
        return seen.size();
    }

    /** Ways from one to the next that were tried. */
    public long transitions() {
        return transitions;
    }

    /** Whether the walk was ended before nothing new came. */
    public boolean isCutShort() {
        return isCutShort;
    }

    private double longest() {
        double most = behaviour.armingDelay().high().value();
        most = Math.max(
                most, behaviour.soundingTime().map(t -> t.high().value()).orElse(0.0));
        for (Lasts lasts : pulses.values()) {
            most = Math.max(most, Math.max(lasts.least(), Double.isFinite(lasts.most()) ? lasts.most() : 0));
        }
        return most;
    }

    private void walk() {
        push(new Mode(ControllerState.DISARMED, Set.of(), Set.of()), Zone.start(1 + clocks.size()), List.of());
        while (!queue.isEmpty() && !isCutShort) {
            Node node = Objects.requireNonNull(queue.poll());
            List<Zone> known = seen.computeIfAbsent(node.mode(), m -> new ArrayList<>());
            if (known.stream().noneMatch(zone -> zone.holds(node.zone()))) {
                known.add(node.zone());
                zones++;
                isCutShort = zones > MOST_ZONES;
                underWay.add(new UnderWay(node.mode().state(), node.mode().running()));
                tell(node);
                follow(node);
            }
        }
    }

    private void push(Mode mode, Zone entered, List<Phrase> steps) {
        transitions++;
        Zone zone = stays(mode, entered.later()).coarse(longest);
        if (!zone.isEmpty()) {
            queue.add(new Node(mode, zone, steps, numbers++));
        }
    }

    /** As long as the mode may last. */
    private Zone stays(Mode mode, Zone zone) {
        Zone staying = zone;
        for (LeadId pulse : mode.running()) {
            double most = lasts(pulse).most();
            staying = Double.isFinite(most) ? staying.atMost(clock(pulse), most) : staying;
        }
        double most = lasts(mode.state()).most();
        return Double.isFinite(most) ? staying.atMost(STATE, most) : staying;
    }

    private static final int STATE = 1;

    private int clock(LeadId pulse) {
        return STATE + 1 + clocks.indexOf(pulse);
    }

    private Lasts lasts(LeadId pulse) {
        return Objects.requireNonNull(pulses.get(pulse));
    }

    /** How long a state lasts by itself. */
    private Lasts lasts(ControllerState state) {
        return switch (state) {
            case ARMING -> Lasts.of(Optional.of(behaviour.armingDelay()));
            case SOUNDING -> Lasts.of(behaviour.soundingTime());
            case WITHOUT_SUPPLY, DISARMED, ARMED, WARNING, OVERRIDE -> Lasts.UNKNOWN;
        };
    }

    private void tell(Node node) {
        ControllerState state = node.mode().state();
        for (Moment flashing : List.of(Moment.ACTING, Moment.SETTLED)) {
            Set<LeadId> on = new LinkedHashSet<>(node.mode().running());
            behaviour.outputs().stream()
                    .filter(output -> output.onIn().contains(state))
                    .filter(output -> output.timing() == OutputTiming.STEADY
                            || (output.timing() == OutputTiming.FLASHING && flashing == Moment.ACTING))
                    .forEach(output -> on.add(output.lead()));
            ways.merge(
                    new Together(state, on),
                    way(node),
                    (known, next) -> known.isSupposed() && !next.isSupposed() ? next : known);
        }
    }

    private Way way(Node node) {
        boolean isTimed = node.mode().pulses().stream().noneMatch(p -> lasts(p).equals(Lasts.UNKNOWN));
        return new Way(node.steps(), !node.mode().left().isEmpty() || !isTimed);
    }

    private void follow(Node node) {
        for (LeadId pulse : node.mode().running()) {
            boolean isOwn = node.mode().pulses().contains(pulse);
            Zone ended = node.zone().atLeast(clock(pulse), isOwn ? lasts(pulse).least() : 0);
            if (!ended.isEmpty()) {
                push(node.mode().without(pulse), ended.free(clock(pulse)), node.steps());
            }
        }
        Turn.from(node.mode().state()).forEach(turn -> take(node, turn));
        again(node);
    }

    private void take(Node node, Turn turn) {
        switch (turn.cause()) {
            case ARMING_OVER, SOUNDING_OVER, SOUNDS_AGAIN -> {
                Zone over =
                        node.zone().atLeast(STATE, lasts(node.mode().state()).least());
                if (!over.isEmpty()) {
                    enter(new Node(node.mode(), over, node.steps(), node.number()), turn);
                }
            }
            case ARMED_BY_HAND,
                    DISARMED_BY_HAND,
                    OVERRIDDEN,
                    OVERRIDE_LEFT,
                    CAUSE_TO_WARN,
                    CAUSE_TO_SOUND,
                    WARNING_GOES_ON,
                    WARNING_ENDS -> enter(node, turn);
        }
    }

    private void enter(Node node, Turn turn) {
        Set<LeadId> begun = begun(turn.to(), OutputTiming.PULSE);
        push(
                node.mode().enter(turn.to(), begun),
                reset(node.zone().reset(STATE), begun),
                and(node.steps(), turn.cause().step()));
    }

    /** The command is given once more: pulses that wait for that begin. */
    private void again(Node node) {
        Set<LeadId> begun = begun(node.mode().state(), OutputTiming.SECOND_PULSE);
        if (!begun.isEmpty() && Collections.disjoint(node.mode().pulses(), begun)) {
            Set<LeadId> own = new TreeSet<>(node.mode().pulses());
            own.addAll(begun);
            Set<LeadId> left = new TreeSet<>(node.mode().left());
            left.removeAll(begun);
            push(new Mode(node.mode().state(), own, left), reset(node.zone(), begun), and(node.steps(), "step.again"));
        }
    }

    private Set<LeadId> begun(ControllerState state, OutputTiming timing) {
        Set<LeadId> begun = new TreeSet<>();
        behaviour.outputs().stream()
                .filter(output -> output.timing() == timing && output.onIn().contains(state))
                .forEach(output -> begun.add(output.lead()));
        return begun;
    }

    private Zone reset(Zone zone, Set<LeadId> begun) {
        Zone next = zone;
        for (LeadId pulse : begun) {
            next = next.reset(clock(pulse));
        }
        return next;
    }

    private static List<Phrase> and(List<Phrase> steps, String step) {
        List<Phrase> more = new ArrayList<>(steps);
        more.add(Phrase.of(step));
        return List.copyOf(more);
    }
}
