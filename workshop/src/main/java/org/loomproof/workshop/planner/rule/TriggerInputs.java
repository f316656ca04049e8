package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.PullUp;
import org.loomproof.workshop.planner.coupling.Reading;
import org.loomproof.workshop.planner.coupling.Source;
import org.loomproof.workshop.planner.survey.Family;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.planner.survey.Sight;
import org.loomproof.workshop.planner.survey.Triggers;
import org.loomproof.workshop.sizing.CoilCurrent;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.words.Phrase;

/**
 * The inputs that read one group of openings: at most one of each polarity.
 *
 * @param low reads sources that go to the body
 * @param high reads sources that go to the supply
 * @param aside what is already decided for further inputs of the group
 */
record TriggerInputs(Job job, Optional<Lead> low, Optional<Lead> high, List<Decision> aside) {

    private static final Wish WISH = Wish.WATCH_OPENINGS;

    /** Reads factory wires where it can; a second way puts pins in place of wires held at a voltage of their own. */
    List<Option> ways(List<Operable> openings) {
        Predicate<Circuit> any = c -> isReadable(c);
        Predicate<Circuit> plain =
                c -> isReadable(c) && Family.of(c.switching()).isPlain();
        Set<Sight> sights = new LinkedHashSet<>();
        Triggers triggers = new Triggers(job.brief().sheet(), job.finder());
        sights.add(triggers.see(openings, any));
        sights.add(triggers.see(openings, plain));
        Set<Option> options = new LinkedHashSet<>();
        for (Sight sight : sights) {
            options.add(option(sight, false));
            if (sight instanceof Sight.Seen seen && mayNeedIsolation(seen)) {
                options.add(option(sight, true));
            }
        }
        return List.copyOf(options);
    }

    /** A wire that goes to one pole when its opening opens, and that an input here reads or a relay's coil may hang on. */
    private boolean isReadable(Circuit circuit) {
        return isNegative(circuit)
                ? low.isPresent() || (Family.of(circuit.switching()).isPlain() && carriesCoil(circuit))
                : isReleased(circuit)
                        ? high.isPresent()
                        : Family.of(circuit.switching()) == Family.POSITIVE
                                && (high.isPresent() || carriesCoil(circuit));
    }

    /** A wire that its switch holds to the body and lets go when the opening opens. */
    private static boolean isReleased(Circuit circuit) {
        return Family.of(circuit.switching()) == Family.OPENS_WHEN_ACTIVE
                && circuit.switching().rest() instanceof Level.Ground;
    }

    private static boolean isNegative(Circuit circuit) {
        return switch (Family.of(circuit.switching())) {
            case NEGATIVE -> true;
            case LOGIC -> circuit.switching().active() instanceof Level.Ground;
            case POSITIVE, OPENS_WHEN_ACTIVE, STEPPED, REVERSING, DATA, CONTRADICTORY -> false;
        };
    }

    /** A wire whose switch already carries more than a coil, such as a lamp's, bears the coil as well. */
    private boolean carriesCoil(Circuit circuit) {
        double stock = isNegative(circuit)
                ? job.draw().intoBody(circuit).value()
                : job.draw().fromSupply(circuit).value();
        return stock >= CoilCurrent.most(relay().coil()).value();
    }

    private RelayType relay() {
        return job.listRelays().getFirst();
    }

    /** A wire held by electronics, or an input with protection diodes: a dead controller may pull such a wire. */
    private boolean mayNeedIsolation(Sight.Seen seen) {
        return seen.circuits().stream().anyMatch(c -> !Family.of(c.switching()).isPlain())
                || (!seen.circuits().isEmpty()
                        && Stream.of(low, high)
                                .flatMap(Optional::stream)
                                .anyMatch(l -> l.port() instanceof Port.Input in && in.clamps()));
    }

    private Option option(Sight sight, boolean isolated) {
        return switch (sight) {
            case Sight.Unclear(var waiting) -> Option.of(held(waiting));
            case Sight.Seen seen -> seen(seen, isolated);
        };
    }

    private List<Decision> held(Found.Waiting waiting) {
        List<Decision> decisions = new ArrayList<>(aside);
        Stream.of(low, high)
                .flatMap(Optional::stream)
                .map(l -> Aside.hold(l, WISH, waiting))
                .forEach(decisions::add);
        return decisions;
    }

    private Option seen(Sight.Seen seen, boolean isolated) {
        List<Source> toBody = new ArrayList<>();
        List<Source> toSupply = new ArrayList<>();
        boolean lifts = seen.circuits().stream().anyMatch(TriggerInputs::isReleased);
        if (lifts && !(job.constant() instanceof Found.Usable)) {
            return Option.of(heldForSupply());
        }
        for (Circuit circuit : seen.circuits()) {
            if (isReleased(circuit)) {
                toSupply.add(released(circuit));
            } else {
                (isNegative(circuit) ? toBody : toSupply).add(new Source.Wire(circuit, job.run(circuit)));
            }
        }
        seen.pins().forEach(pin -> toBody.add(new Source.Pin(pin.opening(), job.usualRun())));
        boolean inverts = (low.isEmpty() && !toBody.isEmpty()) || (high.isEmpty() && !toSupply.isEmpty());
        if (inverts && !(job.constant() instanceof Found.Usable)) {
            return Option.of(heldForSupply());
        }
        List<Decision> decisions = new ArrayList<>(aside);
        low.ifPresent(l -> decisions.add(reads(l, toBody, high.isPresent() ? List.of() : toSupply, seen, isolated)));
        high.ifPresent(l -> decisions.add(reads(l, toSupply, low.isPresent() ? List.of() : toBody, seen, isolated)));
        return Option.of(decisions).beware(cautions(seen));
    }

    private Source.Released released(Circuit circuit) {
        Port.Input input = (Port.Input) high.orElseThrow().port();
        Circuit constant = ((Found.Usable) job.constant()).first();
        return new Source.Released(circuit, job.run(circuit), PullUp.choose(input), job.coilFeed(constant));
    }

    private List<Decision> heldForSupply() {
        return switch (job.constant()) {
            case Found.Waiting waiting -> held(waiting);
            case Found.Forbidden(var because, var possibleIf) -> {
                List<Decision> decisions = new ArrayList<>(aside);
                Stream.of(low, high)
                        .flatMap(Optional::stream)
                        .map(l -> Aside.cap(l, because))
                        .forEach(decisions::add);
                yield decisions;
            }
            case Found.Usable usable -> throw new IllegalStateException("there is a supply: " + usable.circuits());
        };
    }

    /** The decision for one input: its own polarity straight or by diodes, the other by relay. */
    private Decision reads(Lead lead, List<Source> own, List<Source> others, Sight.Seen seen, boolean isolated) {
        if (own.isEmpty() && others.isEmpty()) {
            return Aside.trim(
                    lead, Phrase.of(lead.equals(low.orElse(null)) ? "trim.all-positive" : "trim.all-negative"));
        }
        Port.Input port = (Port.Input) lead.port();
        Reading reading = new Reading(lead, port.active(), job.signalDiode());
        List<Phrase> lost = new ArrayList<>();
        Draft draft;
        Phrase because;
        if (others.isEmpty()) {
            draft = isolated ? reading.isolated(own) : reading.direct(own);
            because = Phrase.of(directReason(own, isolated), names(own));
        } else {
            Reading.Inverter inverter =
                    new Reading.Inverter(relay(), job.coilFeed(((Found.Usable) job.constant()).first()));
            draft = own.isEmpty() ? reading.inverted(others, inverter) : reading.mixed(own, others, inverter);
            because = Phrase.of("rule.trigger-inverted", names(others), inverter.coil());
            lost.add(Phrase.of("lost.wrong-level", names(others)));
        }
        Stream.concat(own.stream(), others.stream())
                .filter(Source.Pin.class::isInstance)
                .flatMap(pin -> seen.pins().stream().filter(p -> p.opening().equals(((Source.Pin) pin).opening())))
                .map(Sight.NeedsPin::because)
                .forEach(lost::add);
        List<CircuitId> circuits = Stream.concat(own.stream(), others.stream())
                .flatMap(s -> s.circuitRead().map(Circuit::id).stream())
                .toList();
        return new Decision.Join(lead, WISH, circuits, draft, because, lost);
    }

    private static String directReason(List<Source> own, boolean isolated) {
        if (own.stream().anyMatch(Source.Released.class::isInstance)) {
            return "rule.trigger-pull-up";
        }
        if (own.stream().allMatch(Source.Pin.class::isInstance)) {
            return "rule.trigger-pins";
        }
        if (isolated && own.size() == 1) {
            return "rule.trigger-isolated";
        }
        return own.size() == 1 ? "rule.trigger-straight" : "rule.trigger-diodes";
    }

    private static List<String> names(List<Source> sources) {
        return sources.stream()
                .map(s -> switch (s) {
                    case Source.Wire wire -> wire.circuit().id().toString();
                    case Source.Released released -> released.circuit().id().toString();
                    case Source.Fused fused -> fused.feed().circuit().id().toString();
                    case Source.Pin pin -> pin.opening().toString();
                })
                .toList();
    }

    private List<Phrase> cautions(Sight.Seen seen) {
        List<Phrase> cautions = new ArrayList<>();
        seen.circuits().stream()
                .filter(c -> c.basis().certainty().compareTo(Certainty.STATED) > 0)
                .map(c -> Phrase.of("caution.guessed-tap", c.id()))
                .forEach(cautions::add);
        seen.circuits().stream()
                .filter(c -> Family.of(c.switching()) == Family.LOGIC)
                .map(c -> Phrase.of("caution.held-by-electronics", c.id()))
                .forEach(cautions::add);
        seen.circuits().stream()
                .filter(TriggerInputs::isReleased)
                .map(c -> Phrase.of("caution.pull-up-drain", c.id(), released(c).atRest()))
                .forEach(cautions::add);
        if (!seen.pins().isEmpty()) {
            cautions.add(Phrase.of("caution.pin-place"));
        }
        return cautions;
    }
}
