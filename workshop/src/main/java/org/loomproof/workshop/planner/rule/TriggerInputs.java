package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Piece;
import org.loomproof.workshop.planner.coupling.PullUp;
import org.loomproof.workshop.planner.coupling.Source;
import org.loomproof.workshop.planner.grammar.Pull;
import org.loomproof.workshop.planner.grammar.Sense.Held;
import org.loomproof.workshop.planner.survey.Family;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.planner.survey.Sight;
import org.loomproof.workshop.planner.survey.Triggers;
import org.loomproof.workshop.sizing.CoilCurrent;
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

    /** Reads factory wires where it can; a second way puts pins in place of those that are no plain switch's. */
    List<Option> ways(List<Operable> openings) {
        Triggers triggers = new Triggers(
                job.brief().sheet(), job.finder(), job.brief().kit().behaviour().armingDelay());
        Set<Sight> sights = new LinkedHashSet<>();
        sights.add(triggers.see(openings, circuit -> isReadable(circuit, false)));
        sights.add(triggers.see(openings, circuit -> isReadable(circuit, true)));
        Set<Option> options = new LinkedHashSet<>();
        for (Sight sight : sights) {
            switch (sight) {
                case Sight.Unclear(var waiting) -> options.add(Option.of(held(waiting)));
                case Sight.Seen seen -> options.addAll(seen(seen));
            }
        }
        return List.copyOf(options);
    }

    /** A wire that some word reads; a plain one goes to a pole that an input reads, or bears a relay's coil. */
    private boolean isReadable(Circuit circuit, boolean plainly) {
        Optional<Read> read = Read.of(job, circuit);
        if (read.isEmpty()) {
            return false;
        }
        if (plainly) {
            return read.get().isPlain()
                    && (find(read.get().pole()).isPresent() || read.get().bearsCoil());
        }
        InputWords words = new InputWords(job, reader(read.get()), List.of(read.get()), InputWords.constant(job));
        return words.wantsSupply() || !words.list().isEmpty();
    }

    private Optional<Lead> find(Port.Active pole) {
        return pole == Port.Active.LOW ? low : high;
    }

    /** The input of its own pole where there is one, else the other. */
    private Lead reader(Read read) {
        return find(read.pole()).or(() -> low).or(() -> high).orElseThrow();
    }

    private List<Decision> held(Found.Waiting waiting) {
        List<Decision> decisions = new ArrayList<>(aside);
        Stream.of(low, high)
                .flatMap(Optional::stream)
                .map(l -> Aside.hold(l, WISH, waiting))
                .forEach(decisions::add);
        return decisions;
    }

    /** Every way of one input with every way of the other; both read what is nearest to their own pole. */
    private List<Option> seen(Sight.Seen seen) {
        List<Read> reads = new ArrayList<>();
        seen.circuits().forEach(circuit -> Read.of(job, circuit).ifPresent(reads::add));
        seen.pins().forEach(pin -> reads.add(Read.pin(new Source.Pin(pin.opening(), job.usualRun()))));
        List<Option> options = new ArrayList<>(List.of(Option.of(aside)));
        for (Lead lead : Stream.of(low, high).flatMap(Optional::stream).toList()) {
            List<Read> own =
                    reads.stream().filter(read -> reader(read).equals(lead)).toList();
            InputWords words = new InputWords(job, lead, own, InputWords.constant(job));
            if (words.wantsSupply()) {
                return List.of(Option.of(heldForSupply()));
            }
            List<Option> ways = own.isEmpty()
                    ? List.of(Option.of(List.of(unneeded(lead))))
                    : words.list().stream()
                            .map(way -> Option.of(List.of(reads(lead, own, way, seen)))
                                    .beware(drains(own, way))
                                    .searched(words.searched()))
                            .toList();
            options = options.stream()
                    .flatMap(option -> ways.stream().map(option::and))
                    .toList();
        }
        return options.stream()
                .map(option -> option.and(new Option(List.of(), List.of(), cautions(seen))))
                .toList();
    }

    private Decision unneeded(Lead lead) {
        return Aside.trim(lead, Phrase.of(lead.equals(low.orElse(null)) ? "trim.all-positive" : "trim.all-negative"));
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

    private Decision reads(Lead lead, List<Read> own, InputWords.Way way, Sight.Seen seen) {
        Port.Input port = (Port.Input) lead.port();
        List<Source> sources = own.stream().map(Read::source).toList();
        List<Phrase> lost = new ArrayList<>();
        List<String> others = own.stream()
                .filter(read -> read.pole() != port.active())
                .map(read -> read.source().name())
                .toList();
        if (!others.isEmpty()) {
            lost.add(Phrase.of("lost.wrong-level", others));
        }
        sources.stream()
                .filter(Source.Pin.class::isInstance)
                .flatMap(pin -> seen.pins().stream().filter(p -> p.opening().equals(((Source.Pin) pin).opening())))
                .map(Sight.NeedsPin::because)
                .forEach(lost::add);
        List<CircuitId> circuits = sources.stream()
                .flatMap(s -> s.circuitRead().map(Circuit::id).stream())
                .toList();
        Phrase because = because(way.draft(), sources.stream().map(Source::name).toList(), others);
        return new Decision.Join(lead, WISH, circuits, way.draft(), because, lost);
    }

    private Phrase because(Draft draft, List<String> all, List<String> others) {
        return switch (draft.key()) {
            case "coupling.pull-up" -> Phrase.of("rule.trigger-pull-up", all);
            case "coupling.added-pin" -> Phrase.of("rule.trigger-pins", all);
            case "coupling.straight" -> Phrase.of("rule.trigger-straight", all);
            case "coupling.series-resistor" -> Phrase.of("rule.trigger-series", all);
            case "coupling.isolation-diodes" ->
                Phrase.of(all.size() == 1 ? "rule.trigger-isolated" : "rule.trigger-diodes", all);
            case "coupling.reading-buffer", "coupling.diodes-and-reading-buffer" ->
                Phrase.of("rule.trigger-buffered", others.isEmpty() ? all : others);
            default ->
                Phrase.of(
                        others.isEmpty() ? "rule.trigger-relayed" : "rule.trigger-inverted",
                        others.isEmpty() ? all : others,
                        CoilCurrent.most(job.listRelays().getFirst().coil()));
        };
    }

    /** What a resistor to the supply draws for as long as its wire is held at the body. */
    private static List<Phrase> drains(List<Read> own, InputWords.Way way) {
        boolean lifts = way.words().stream().anyMatch(word -> word.pull() == Pull.UP);
        return way.draft().pieces().stream()
                .filter(piece -> lifts && piece instanceof Piece.Resistor)
                .map(Piece.Resistor.class::cast)
                .flatMap(r -> own.stream()
                        .filter(read -> read.rest() == Held.LOW)
                        .filter(read ->
                                r.name().equals(Draft.local(read.source().name(), "pull")))
                        .map(read -> Phrase.of(
                                "caution.pull-up-drain", read.source().name(), PullUp.wastes(r.resistance()))))
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
        if (!seen.pins().isEmpty()) {
            cautions.add(Phrase.of("caution.pin-place"));
        }
        return cautions;
    }
}
