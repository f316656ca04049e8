package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.coupling.Feed;
import org.loomproof.workshop.planner.coupling.PullUp;
import org.loomproof.workshop.planner.coupling.Source;
import org.loomproof.workshop.planner.grammar.Coil;
import org.loomproof.workshop.planner.grammar.Enumeration;
import org.loomproof.workshop.planner.grammar.Grammar;
import org.loomproof.workshop.planner.grammar.LeftOut;
import org.loomproof.workshop.planner.grammar.ReadingCatalogue;
import org.loomproof.workshop.planner.grammar.Sense;
import org.loomproof.workshop.planner.grammar.Sense.Held;
import org.loomproof.workshop.planner.grammar.SenseComposer;
import org.loomproof.workshop.planner.grammar.Word;
import org.loomproof.workshop.planner.grammar.Word.Buffering;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.trade.buffer.BufferType;
import org.loomproof.workshop.trade.buffer.Buffers;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/**
 * The ways in which one input reads what it is given: the words of the grammar for all that switches alike, and where there are
 * two kinds every pair of words.
 */
final class InputWords {

    private final Job job;
    private final Lead lead;
    private final Port.Input input;
    private final Optional<Feed> feed;
    private final List<Kind> kinds = new ArrayList<>();

    /** What switches alike, with the words for it. */
    private record Kind(List<Read> reads, Sense sense, Enumeration<Word> found) {
        List<Source> sources() {
            return reads.stream().map(Read::source).toList();
        }
    }

    /**
     * One way.
     *
     * @param words one for each kind
     * @param draft parts and runs of them all
     */
    record Way(List<Word> words, Draft draft) {}

    /**
     * The ways of an input.
     *
     * @param feed the supply of coils, buffers and pulls, where there is one
     */
    InputWords(Job job, Lead lead, List<Read> reads, Optional<Feed> feed) {
        this.job = job;
        this.lead = lead;
        this.input = (Port.Input) lead.port();
        this.feed = feed;
        Map<List<Object>, List<Read>> alike = new LinkedHashMap<>();
        for (Read read : reads) {
            boolean switched = read.active() == Held.LOW || read.active() == Held.HIGH;
            List<Object> kind = switched ? List.of(read.active()) : List.of(read.active(), read.rest());
            alike.computeIfAbsent(kind, k -> new ArrayList<>()).add(read);
        }
        List<List<Read>> ordered = new ArrayList<>(alike.values());
        ordered.sort(Comparator.comparing(kind -> kind.getFirst().pole() != input.active()));
        ordered.forEach(kind -> kinds.add(kind(kind, ordered.size() > 1)));
    }

    private Kind kind(List<Read> reads, boolean amongOthers) {
        Read first = reads.getFirst();
        boolean restAlike = reads.stream().allMatch(read -> read.rest() == first.rest());
        boolean ours =
                reads.stream().allMatch(read -> read.source().circuitRead().isEmpty());
        Sense sense = new Sense(
                restAlike ? first.rest() : Held.OPEN,
                first.active(),
                input.active() == Port.Active.LOW ? Side.LOW : Side.HIGH,
                input.active() == Port.Active.LOW
                        ? input.pullUp().isPresent()
                        : input.pullDown().isPresent(),
                !ours && (input.clamps() || reads.stream().anyMatch(read -> !read.isPlain())),
                !ours && (reads.size() > 1 || amongOthers));
        return new Kind(reads, sense, Grammar.of(sense).leavingOut(word -> amount(word, reads)));
    }

    /** What amounts say against a word. */
    private Optional<LeftOut> amount(Word word, List<Read> reads) {
        if (word.needsSupply() && feed.isEmpty()) {
            return Optional.of(LeftOut.NO_SUPPLY);
        }
        boolean onSource = word.coils().stream().anyMatch(coil -> coil.driver() == Coil.Driver.SOURCE);
        if (onSource && !reads.stream().allMatch(Read::bearsCoil)) {
            return Optional.of(LeftOut.CURRENT);
        }
        if (word.coils().stream().anyMatch(coil -> coil.driver() == Coil.Driver.BUFFER)
                && job.relayBehind(buffer(word), PullUp.wastes(new Ohms(1_000)), 1)
                        .isEmpty()) {
            return Optional.of(LeftOut.CURRENT);
        }
        return word.buffer() == Buffering.NONE || reads.stream().allMatch(read -> tells(buffer(word), read))
                ? Optional.empty()
                : Optional.of(LeftOut.LEVEL);
    }

    /** Whether a buffer sees the volts at which electronics hold a wire as the pole they stand for. */
    private static boolean tells(BufferType buffer, Read read) {
        return read.logic()
                .map(volts -> buffer.worksOnGround()
                        ? SupplyPoint.HIGH.volts().value() - volts.value()
                                < buffer.letsGoAt().value()
                        : volts.value() > buffer.switchesAt().value())
                .orElse(true);
    }

    private static BufferType buffer(Word word) {
        return Buffers.workingOn(word.buffer() != Buffering.ON_SUPPLY);
    }

    /** What was looked through. */
    List<Searched> searched() {
        return kinds.stream()
                .map(kind -> new Searched(
                        lead.id(),
                        kind.sources().stream()
                                .flatMap(source -> source.circuitRead().map(Circuit::id).stream())
                                .toList(),
                        kind.found()))
                .toList();
    }

    /** True where only the lack of a supply leaves nothing. */
    boolean wantsSupply() {
        return kinds.stream()
                .anyMatch(kind ->
                        kind.found().words().isEmpty() && kind.found().leftOut().containsKey(LeftOut.NO_SUPPLY));
    }

    /** All ways, those first that the trade takes. */
    List<Way> list() {
        List<List<Word>> all = new ArrayList<>(List.of(List.of()));
        for (Kind kind : kinds) {
            List<List<Word>> longer = new ArrayList<>();
            for (List<Word> before : all) {
                for (Word word : kind.found().words()) {
                    List<Word> with = new ArrayList<>(before);
                    with.add(word);
                    longer.add(with);
                }
            }
            all = longer;
        }
        return all.stream()
                .filter(words ->
                        words.stream().filter(ReadingCatalogue::hasActivePart).count() <= 1)
                .sorted(Comparator.comparingInt(ReadingCatalogue::rank).thenComparingInt(InputWords::parts))
                .map(words -> new Way(words, draft(words)))
                .toList();
    }

    private static int parts(List<Word> words) {
        return words.stream().mapToInt(Word::parts).sum();
    }

    private Draft draft(List<Word> words) {
        Draft.Builder draft = Draft.of(key(words));
        for (int i = 0; i < kinds.size(); i++) {
            SenseComposer.compose(lead, words.get(i), kinds.get(i).sources(), making(words.get(i)), draft);
        }
        return draft.build();
    }

    private String key(List<Word> words) {
        boolean pinsOnly =
                kinds.stream().flatMap(kind -> kind.sources().stream()).allMatch(Source.Pin.class::isInstance);
        return pinsOnly && words.stream().noneMatch(ReadingCatalogue::hasActivePart)
                ? "coupling.added-pin"
                : ReadingCatalogue.key(words);
    }

    private SenseComposer.Making making(Word word) {
        // Where no feed is needed any circuit would do: nothing is run from it.
        Feed supply =
                feed.orElseGet(() -> job.coilFeed(job.brief().sheet().circuits().getFirst()));
        return new SenseComposer.Making(
                word.buffer() == Buffering.NONE
                        ? job.listRelays().getFirst()
                        : job.relayBehind(buffer(word), PullUp.wastes(new Ohms(1_000)), 1)
                                .orElse(job.listRelays().getFirst()),
                job.signalDiode(),
                buffer(word),
                word.buffer() == Buffering.NONE ? PullUp.level(input) : PullUp.level(buffer(word)),
                PullUp.level(input),
                supply);
    }

    /** The constant supply as a feed, where there is one. */
    static Optional<Feed> constant(Job job) {
        return job.constant() instanceof Found.Usable usable
                ? Optional.of(job.coilFeed(usable.first()))
                : Optional.empty();
    }
}
