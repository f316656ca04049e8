package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.planner.coupling.AddedLoad;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Driving.Line;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.coupling.Feed;
import org.loomproof.workshop.planner.coupling.Target;
import org.loomproof.workshop.planner.grammar.Catalogue;
import org.loomproof.workshop.planner.grammar.Composer;
import org.loomproof.workshop.planner.grammar.Drive;
import org.loomproof.workshop.planner.grammar.Enumeration;
import org.loomproof.workshop.planner.grammar.Grammar;
import org.loomproof.workshop.planner.grammar.LeftOut;
import org.loomproof.workshop.planner.grammar.Tie;
import org.loomproof.workshop.planner.grammar.Word;
import org.loomproof.workshop.planner.grammar.Word.Buffering;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.trade.buffer.BufferType;
import org.loomproof.workshop.trade.buffer.Buffers;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.wire.AllowedDrop;
import org.loomproof.workshop.words.Phrase;

/**
 * The ways to work loads out of the kit's box with one output: the words of the grammar for something that has one pole to itself
 * and is given the other. Which of its poles is to be had for good is one choice more: the body, or the fused supply.
 *
 * @param resistance what stands before a bare light-emitting diode; empty where none does
 */
record LoadWords(Job job, Lead lead, Wish wish, Side side, Target.Loads loads, Optional<Ohms> resistance) {

    private record Way(Word word, Side active) {}

    List<Option> list() {
        List<Searched> searched = new ArrayList<>();
        List<Way> ways = new ArrayList<>();
        for (Side active : List.of(Side.HIGH, Side.LOW)) {
            Enumeration<Word> found = Grammar.of(
                            new Drive(side, active, Job.leaks(lead.port()), false, resistance.isPresent(), false))
                    .leavingOut(word -> leftOut(new Way(word, active)));
            searched.add(new Searched(lead.id(), List.of(), found));
            found.words().forEach(word -> ways.add(new Way(word, active)));
        }
        ways.sort(Comparator.comparing(this::feedsTheDead).thenComparingInt(way -> Catalogue.rank(way.word())));
        if (ways.isEmpty() || job.brief().sheet().circuits().isEmpty()) {
            boolean unfed = searched.stream()
                    .anyMatch(each -> each.enumeration().leftOut().containsKey(LeftOut.NO_SUPPLY));
            return List.of(
                    unfed || !ways.isEmpty()
                            ? AddedLoads.without(lead, wish, job.constant())
                            : AddedLoads.tooWeak(job, lead, wish).searched(searched));
        }
        return new Release(job)
                .weighed(ways.stream().map(way -> join(way).searched(searched)).toList());
    }

    private Optional<LeftOut> leftOut(Way way) {
        Word word = way.word();
        boolean byRelay = !word.coils().isEmpty();
        if (byRelay && way.active() == Side.LOW) {
            // The same contact gives it the supply instead, and leaves the wires to it without volts at rest.
            return Optional.of(LeftOut.SAME_WITH_FEWER);
        }
        if ((word.needsSupply() || way.active() == Side.LOW) && !(job.constant() instanceof Found.Usable)) {
            return Optional.of(LeftOut.NO_SUPPLY);
        }
        boolean output = !word.through().joined() || (fits() && lineDiode(word).isPresent());
        boolean buffer = word.buffer() == Buffering.NONE
                || byRelay
                || loads.most().value() <= buffer(word).rating().value();
        return output && buffer && (!byRelay || relay(word).isPresent())
                ? Optional.empty()
                : Optional.of(LeftOut.CURRENT);
    }

    private boolean fits() {
        return loads.most().value() <= Job.ratingOf(lead.port()).value();
    }

    /** True where the supply reaches an output that clamps, through no more than a load or a coil. */
    private boolean feedsTheDead(Way way) {
        return lead.port() instanceof Port.LowSide out
                && out.clamp()
                && way.word().buffer() == Buffering.NONE;
    }

    private Optional<DiodeType> lineDiode(Word word) {
        return word.through().diode() == Tie.Way.BOTH
                ? Optional.of(job.signalDiode())
                : job.findDiode(new Amps(Math.max(1, loads.most().value())));
    }

    private static BufferType buffer(Word word) {
        return Buffers.workingOn(word.buffer() == Buffering.ON_GROUND);
    }

    private Optional<RelayType> relay(Word word) {
        return word.buffer() == Buffering.NONE
                ? job.relayFor(loads.most(), lead.port(), 1)
                : job.relayBehind(buffer(word), loads.most(), 1);
    }

    private Option join(Way way) {
        Word word = way.word();
        Amps typical = new Amps(
                loads.items().stream().mapToDouble(item -> item.draws().value()).sum());
        AllowedDrop drop = resistance.isPresent() ? AllowedDrop.SIGNAL : AllowedDrop.LAMP;
        Line line = new Line(
                loads, way.active(), typical, typical, loads.items().getFirst().run(), drop, false);
        Optional<Circuit> supply =
                job.constant() instanceof Found.Usable usable ? Optional.of(usable.first()) : Optional.empty();
        // Where no feed is needed any circuit will do as its stand-in: nothing is run from it.
        Circuit nearest = supply.orElseGet(() -> job.brief().sheet().circuits().getFirst());
        Feed feed = job.loadFeed(nearest, lead);
        Composer.Making making = new Composer.Making(
                relay(word).orElse(job.listRelays().getFirst()),
                job.signalDiode(),
                lineDiode(word).orElse(job.signalDiode()),
                buffer(word),
                resistance.orElse(new Ohms(1)),
                feed,
                feed);
        Draft draft = Composer.compose(word, lead, side, List.of(line), making);
        List<Phrase> lost =
                fits() ? List.of() : List.of(Phrase.of("lost.over-rating", loads.most(), Job.ratingOf(lead.port())));
        Phrase because = because(draft.key(), way, making, supply);
        return Option.of(List.of(new Decision.Join(lead, wish, List.of(), draft, because, lost)));
    }

    private Phrase because(String key, Way way, Composer.Making making, Optional<Circuit> supply) {
        List<String> names = loads.items().stream().map(AddedLoad.Item::extra).toList();
        String relay = making.relay().name();
        String buffer = making.buffer().name();
        Amps most = loads.most();
        return switch (key) {
            case "coupling.added-load" ->
                way.active() == Side.HIGH
                        ? Phrase.of("rule.added-load", most, Job.ratingOf(lead.port()))
                        : Phrase.of(
                                "rule.added-load-low-side",
                                most,
                                Job.ratingOf(lead.port()),
                                supply.orElseThrow().id());
            case "coupling.added-load-by-relay" ->
                Phrase.of(
                        "rule.added-load-by-relay",
                        most,
                        relay,
                        supply.orElseThrow().id());
            case "coupling.added-light" -> {
                AddedLoad.Item light = loads.items().getFirst();
                yield Phrase.of(
                        "rule.added-light",
                        light.extra(),
                        light.forward().orElseThrow(),
                        light.draws(),
                        resistance.orElseThrow());
            }
            case "coupling.isolation-diodes" ->
                Phrase.of("rule.diode-output", names, most, making.lineDiode().name());
            case "coupling.relay-isolated" -> Phrase.of("rule.relay-isolated", names, most, relay);
            case "coupling.buffered-relay" -> Phrase.of("rule.buffered-relay", names, most, relay, buffer);
            case "coupling.buffer" -> Phrase.of("rule.buffer-output", names, most, buffer);
            default -> Phrase.of("rule.composed-output", names, most);
        };
    }
}
