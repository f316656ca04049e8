package org.loomproof.workshop.replay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Wakefulness;
import org.loomproof.network.time.Logic;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.OutputBehaviour;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.wiring.ControllerParts;
import org.loomproof.workshop.wiring.InputReach;

/**
 * The controller of a kit with all its clocks: arming delay, pulses, flashing, warning, sounding, and how long an input must see a
 * level. It reads its triggers and its own supply in the network, and is told the rest at set times. Without supply it does nothing,
 * hears nothing and forgets its pulses; with supply again it is in the state it was in.
 */
final class ControllerInTime implements Logic {

    static final String NAME = "controller";

    /** Of a controller without outputs: it sleeps again so many volts below those that it needs. */
    private static final double HYSTERESIS = 0.01;

    /** An input that stands at its threshold does not go to and fro. */
    private static final double SAME_VOLTS = 0.01;

    private static final double SAME_TIME = 1e-9;

    private final Kit kit;
    private final Behaviour behaviour;
    private final ControllerParts parts;
    private final Map<LeadId, PartId> outputs;
    private final Unsaid unsaid;
    private final List<Told> told;

    /**
     * A controller in a car.
     *
     * @param outputs those that can be driven at all
     * @param told in the order of their times
     */
    ControllerInTime(Kit kit, ControllerParts parts, Map<LeadId, PartId> outputs, Unsaid unsaid, List<Told> told) {
        this.kit = kit;
        this.behaviour = kit.behaviour();
        this.parts = parts;
        this.outputs = new TreeMap<>(outputs);
        this.unsaid = unsaid;
        this.told = List.copyOf(told);
    }

    /** From one moment to another it does the same. */
    record Span(double from, double to, Status status) {}

    /** What it does on the bench until then: with supply, and nothing at its inputs. */
    List<Span> alone(double seconds) {
        InTime course = new InTime(Optional.empty(), Map.of());
        List<Span> spans = new ArrayList<>();
        double now = 0;
        while (now < seconds) {
            double next = Math.min(seconds, course.due());
            if (next > now) {
                spans.add(new Span(now, next, course.status()));
            }
            now = next;
            course.move(now, awaited -> false);
        }
        return spans;
    }

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public Set<PartId> outputs() {
        return new TreeSet<>(outputs.values());
    }

    @Override
    public List<String> mistakesIn(Network network) {
        return List.of();
    }

    @Override
    public Course begin(Network network) {
        Wakefulness wakefulness = parts.outputs().values().stream()
                .map(output -> network.part(output.part()))
                .map(ControllerInTime::wakefulness)
                .findFirst()
                .orElseGet(() -> new Wakefulness(parts.leastSupplyVolts(), parts.leastSupplyVolts() - HYSTERESIS));
        Map<LeadId, Watched> watched = new LinkedHashMap<>();
        parts.inputs().forEach((lead, reach) -> {
            if (behaviour.triggers().contains(lead)) {
                watched.put(lead, watched((Port.Input) kit.lead(lead).port(), reach));
            }
        });
        return new InTime(Optional.of(wakefulness), watched);
    }

    private static Wakefulness wakefulness(Part part) {
        return part instanceof LowSideOutput out ? out.wakefulness() : ((HighSideOutput) part).wakefulness();
    }

    /** A trigger: when it is active, when it no longer is, and how long it must be. What lies between the two levels is taken for rest. */
    private record Watched(Awaited active, Awaited resting, double seconds) {}

    private Watched watched(Port.Input port, InputReach reach) {
        double forEver = Double.POSITIVE_INFINITY;
        boolean isActiveLow = port.active() == Port.Active.LOW;
        Awaited active = isActiveLow
                ? new Awaited(reach.wire(), reach.ground(), -forEver, reach.lowBelow())
                : new Awaited(reach.wire(), reach.ground(), reach.highAbove(), forEver);
        Awaited resting = isActiveLow
                ? new Awaited(reach.wire(), reach.ground(), reach.lowBelow() + SAME_VOLTS, forEver)
                : new Awaited(reach.wire(), reach.ground(), -forEver, reach.highAbove() - SAME_VOLTS);
        double seconds =
                port.readsAfter().map(figure -> figure.typical().value()).orElse(unsaid.readingSeconds());
        return new Watched(active, resting, seconds);
    }

    private final class InTime implements Course {
        private final Optional<Wakefulness> wakefulness;
        private final Map<LeadId, Watched> watched;
        private final Map<LeadId, Double> pulseEnds = new TreeMap<>();
        private final Map<LeadId, Double> activeSince = new TreeMap<>();
        private final Set<LeadId> believed = new TreeSet<>();
        private ControllerState state = ControllerState.DISARMED;
        private double stateEnds = Double.POSITIVE_INFINITY;
        private double flashTurns = Double.POSITIVE_INFINITY;
        private boolean isLit;
        private boolean isAsleep;
        private boolean hasSounded;
        private int toldSoFar;
        private double now;

        InTime(Optional<Wakefulness> wakefulness, Map<LeadId, Watched> watched) {
            this.wakefulness = wakefulness;
            this.watched = watched;
        }

        Status status() {
            Set<LeadId> on = new LinkedHashSet<>(pulseEnds.keySet());
            for (OutputBehaviour output : behaviour.outputs()) {
                boolean isOn =
                        output.timing() == OutputTiming.STEADY || (output.timing() == OutputTiming.FLASHING && isLit);
                if (isOn && output.onIn().contains(state)) {
                    on.add(output.lead());
                }
            }
            return new Status(state, on, !pulseEnds.isEmpty());
        }

        @Override
        public Set<PartId> outputsOn() {
            return status().on().stream()
                    .filter(outputs::containsKey)
                    .map(lead -> Objects.requireNonNull(outputs.get(lead)))
                    .collect(Collectors.toSet());
        }

        @Override
        public List<Awaited> awaited() {
            List<Awaited> all = new ArrayList<>();
            wakefulness.ifPresent(limits -> all.add(isAsleep ? enough(limits) : tooLittle(limits)));
            if (!isAsleep) {
                watched.forEach(
                        (lead, each) -> all.add(activeSince.containsKey(lead) ? each.resting() : each.active()));
            }
            return all;
        }

        private Awaited enough(Wakefulness limits) {
            return new Awaited(parts.supply(), parts.ground(), limits.wakesAtVolts(), Double.POSITIVE_INFINITY);
        }

        private Awaited tooLittle(Wakefulness limits) {
            return new Awaited(parts.supply(), parts.ground(), Double.NEGATIVE_INFINITY, limits.sleepsAtVolts());
        }

        @Override
        public double due() {
            double next = toldSoFar < told.size() ? told.get(toldSoFar).seconds() : Double.POSITIVE_INFINITY;
            if (isAsleep) {
                return next;
            }
            next = Math.min(next, Math.min(stateEnds, flashTurns));
            for (double end : pulseEnds.values()) {
                next = Math.min(next, end);
            }
            for (LeadId lead : activeSince.keySet()) {
                next = believed.contains(lead) ? next : Math.min(next, believes(lead));
            }
            return next;
        }

        private double believes(LeadId lead) {
            return Objects.requireNonNull(activeSince.get(lead))
                    + Objects.requireNonNull(watched.get(lead)).seconds();
        }

        private boolean isDue(double time) {
            return time <= now + SAME_TIME;
        }

        @Override
        public Optional<String> move(double seconds, Predicate<Awaited> isThere) {
            now = seconds;
            boolean moves = due() <= now + SAME_TIME || awaited().stream().anyMatch(isThere);
            if (!moves) {
                return Optional.empty();
            }
            wakefulness.ifPresent(limits -> wakeOrSleep(limits, isThere));
            while (toldSoFar < told.size() && isDue(told.get(toldSoFar).seconds())) {
                Told next = told.get(toldSoFar++);
                if (!isAsleep) {
                    take(next.command());
                }
            }
            if (!isAsleep) {
                read(isThere);
                pulseEnds.values().removeIf(this::isDue);
                if (isDue(flashTurns)) {
                    isLit = !isLit;
                    flashTurns = now + unsaid.flashSeconds();
                }
                if (isDue(stateEnds)) {
                    goOn();
                }
                notice();
            }
            return Optional.of(isAsleep ? Status.ASLEEP : status().text());
        }

        private void wakeOrSleep(Wakefulness limits, Predicate<Awaited> isThere) {
            if (isAsleep && isThere.test(enough(limits))) {
                isAsleep = false;
                // Clocks that stood still meanwhile end at once.
                flashTurns = flashTurns < now ? now + unsaid.flashSeconds() : flashTurns;
            } else if (!isAsleep && isThere.test(tooLittle(limits))) {
                isAsleep = true;
                pulseEnds.clear();
                activeSince.clear();
                believed.clear();
            }
        }

        private void read(Predicate<Awaited> isThere) {
            watched.forEach((lead, each) -> {
                if (activeSince.containsKey(lead) && isThere.test(each.resting())) {
                    activeSince.remove(lead);
                    believed.remove(lead);
                } else if (!activeSince.containsKey(lead) && isThere.test(each.active())) {
                    activeSince.put(lead, now);
                }
            });
            activeSince.keySet().stream().filter(lead -> isDue(believes(lead))).forEach(believed::add);
            hasSounded &= !believed.isEmpty();
        }

        private void take(Told.Command command) {
            switch (command) {
                case ARM -> enter(state == ControllerState.DISARMED ? ControllerState.ARMING : state);
                case DISARM -> enter(ControllerState.DISARMED);
                case OVERRIDE -> enter(ControllerState.OVERRIDE);
                case LIGHT_BLOW -> enter(state == ControllerState.ARMED ? ControllerState.WARNING : state);
                case HARD_BLOW -> {
                    boolean isWatching = state == ControllerState.ARMED
                            || state == ControllerState.WARNING
                            || state == ControllerState.SOUNDING;
                    enter(isWatching ? ControllerState.SOUNDING : state);
                }
                case AGAIN -> begin(OutputTiming.SECOND_PULSE);
            }
        }

        private void enter(ControllerState next) {
            if (next == state && next != ControllerState.SOUNDING) {
                return;
            }
            state = next;
            if (unsaid.cutsShort()) {
                pulseEnds.clear();
            }
            begin(OutputTiming.PULSE);
            isLit = true;
            boolean flashes = behaviour.outputs().stream()
                    .anyMatch(
                            o -> o.timing() == OutputTiming.FLASHING && o.onIn().contains(state));
            flashTurns = flashes ? now + unsaid.flashSeconds() : Double.POSITIVE_INFINITY;
            double lasts = switch (state) {
                case ARMING -> behaviour.armingDelay().typical().value();
                case WARNING -> unsaid.warningSeconds();
                case SOUNDING ->
                    behaviour.soundingTime().map(t -> t.typical().value()).orElse(Double.POSITIVE_INFINITY);
                case WITHOUT_SUPPLY, DISARMED, ARMED, OVERRIDE -> Double.POSITIVE_INFINITY;
            };
            stateEnds = now + lasts;
        }

        private void begin(OutputTiming timing) {
            for (OutputBehaviour output : behaviour.outputs()) {
                if (output.timing() == timing && output.onIn().contains(state)) {
                    double lasts = kit.lead(output.lead())
                            .port()
                            .pulse()
                            .map(figure -> figure.typical().value())
                            .orElse(unsaid.pulseSeconds());
                    pulseEnds.put(output.lead(), now + lasts);
                }
            }
        }

        /** The state's own time is over. */
        private void goOn() {
            switch (state) {
                case ARMING -> enter(ControllerState.ARMED);
                case WARNING -> enter(believed.isEmpty() ? ControllerState.ARMED : ControllerState.SOUNDING);
                case SOUNDING -> {
                    enter(ControllerState.ARMED);
                    hasSounded = !believed.isEmpty();
                }
                case WITHOUT_SUPPLY, DISARMED, ARMED, OVERRIDE ->
                    throw new IllegalStateException(state + " has no end of its own");
            }
        }

        private void notice() {
            if (state == ControllerState.ARMED && !hasSounded && !believed.isEmpty()) {
                boolean atOnce = believed.stream().anyMatch(behaviour.instantTriggers()::contains);
                enter(atOnce ? ControllerState.SOUNDING : ControllerState.WARNING);
            }
        }
    }
}
