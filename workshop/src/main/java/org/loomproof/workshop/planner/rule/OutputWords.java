package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Driving.Line;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.explain.Terms;
import org.loomproof.workshop.planner.grammar.Catalogue;
import org.loomproof.workshop.planner.grammar.Composer;
import org.loomproof.workshop.planner.grammar.Drive;
import org.loomproof.workshop.planner.grammar.Enumeration;
import org.loomproof.workshop.planner.grammar.Grammar;
import org.loomproof.workshop.planner.grammar.LeftOut;
import org.loomproof.workshop.planner.grammar.Tie;
import org.loomproof.workshop.planner.grammar.Word;
import org.loomproof.workshop.planner.grammar.Word.Buffering;
import org.loomproof.workshop.planner.survey.Duties;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.trade.buffer.BufferType;
import org.loomproof.workshop.trade.buffer.Buffers;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.words.Phrase;

/**
 * The ways to work factory wires that all become active by one pole, with one output: the words of the grammar, those first that the
 * trade names. Straight when the pole is right and the current leaves a reserve, through a diode each when wires must not feed each
 * other or a dead controller, otherwise through relays.
 */
record OutputWords(Job job, Lead lead, Wish wish, Side side, List<Line> lines, List<Phrase> passedOver) {

    /** An output carries a factory wire straight up to this share of its rating. Common practice, no published source. */
    private static final double SHARE_OF_RATING = 0.8;

    List<Option> list() {
        Enumeration<Word> found = Grammar.of(drive()).leavingOut(this::tooMuch);
        List<Searched> searched = List.of(new Searched(lead.id(), ids(lines), found));
        List<Word> ordered = new ArrayList<>(found.words());
        ordered.sort(Comparator.comparing(this::feedsTheDead).thenComparingInt(Catalogue::rank));
        List<Phrase> lost = lost();
        List<Option> options = new ArrayList<>();
        ordered.forEach(word -> options.add(join(word, lost).searched(searched)));
        if (options.isEmpty() && found.leftOut().containsKey(LeftOut.NO_SUPPLY)) {
            return List.of(AddedLoads.without(lead, wish, job.constant()));
        }
        if (options.isEmpty()) {
            return List.of(AddedLoads.tooWeak(job, lead, wish).searched(searched));
        }
        if (isClamping()) {
            options.add(wakesTheDead(found).searched(searched));
        }
        return new Release(job).weighed(options);
    }

    private Drive drive() {
        boolean kicks = lines.stream().anyMatch(l -> l.kicks());
        return new Drive(side, lines.getFirst().active(), Job.leaks(lead.port()), kicks, false, lines.size() > 1);
    }

    /** What amounts of current say against a word. */
    private Optional<LeftOut> tooMuch(Word word) {
        if (word.needsSupply() && !(job.constant() instanceof Found.Usable)) {
            return Optional.of(LeftOut.NO_SUPPLY);
        }
        boolean straight = word.through().joined();
        boolean fits = !straight
                || (all().value() <= SHARE_OF_RATING * rating().value()
                        && lineDiode(word).isPresent());
        boolean buffered = word.buffer() != Buffering.NONE;
        boolean bufferCarries = !buffered
                || !word.coils().isEmpty()
                || all().value() <= SHARE_OF_RATING * buffer(word).rating().value();
        return fits && bufferCarries && (word.coils().isEmpty() || relay(word).isPresent())
                ? Optional.empty()
                : Optional.of(LeftOut.CURRENT);
    }

    /** True where the other pole reaches an output that clamps, through no more than a load or a coil. */
    private boolean feedsTheDead(Word word) {
        return isClamping() && word.buffer() == Buffering.NONE;
    }

    private boolean isClamping() {
        return lead.port() instanceof Port.LowSide out && out.clamp();
    }

    private Amps all() {
        return new Amps(lines.stream().mapToDouble(l -> l.carries().value()).sum());
    }

    private Amps rating() {
        return Job.ratingOf(lead.port());
    }

    private Amps most() {
        return new Amps(
                lines.stream().mapToDouble(l -> l.carries().value()).max().orElseThrow());
    }

    /** A diode for each wire, at least one for signals. */
    private Optional<DiodeType> lineDiode(Word word) {
        return word.through().diode() == Tie.Way.BOTH
                ? Optional.of(job.signalDiode())
                : job.findDiode(new Amps(Math.max(1, most().value())));
    }

    private BufferType buffer(Word word) {
        return Buffers.workingOn(word.buffer() == Buffering.ON_GROUND);
    }

    private Optional<RelayType> relay(Word word) {
        Amps contact = lines.stream()
                .map(l -> Duties.of(circuit(l)).rating(l.carries()))
                .reduce((a, b) -> a.value() >= b.value() ? a : b)
                .orElseThrow();
        return word.buffer() == Buffering.NONE
                ? job.relayFor(contact, lead.port(), lines.size())
                : job.relayBehind(buffer(word), contact, lines.size());
    }

    /** Why the plainest ways are not there. */
    private List<Phrase> lost() {
        List<Phrase> lost = new ArrayList<>(passedOver);
        if (lines.getFirst().active() != side) {
            lost.add(Phrase.of("lost.wrong-pole", Terms.port(lead.port()), ids(lines)));
        } else if (all().value() > SHARE_OF_RATING * rating().value()) {
            lost.add(Phrase.of("lost.over-share", all(), rating()));
        } else if (lines.size() > 1) {
            lost.add(Phrase.of("lost.joins-circuits", ids(lines)));
            if (job.findDiode(new Amps(Math.max(1, most().value()))).isEmpty()) {
                lost.add(Phrase.of("lost.no-diode", most()));
            }
        }
        return lost;
    }

    /** Whatever is joined to such an output feeds a controller that has lost its supply; better without than half alive. */
    private Option wakesTheDead(Enumeration<Word> found) {
        return Option.refused(
                new Refusal(
                        wish,
                        Phrase.of(
                                "refuse.no-word-proves",
                                lead.id(),
                                found.enumerated(),
                                found.words().size()),
                        Phrase.of("possible.clamping-output")),
                List.of(Aside.refused(lead, wish)));
    }

    private Option join(Word word, List<Phrase> lost) {
        // Where no feed is needed any circuit will do as its stand-in: nothing is run from it.
        Circuit supply = job.constant() instanceof Found.Usable usable ? usable.first() : circuit(lines.getFirst());
        Composer.Making making = new Composer.Making(
                relay(word).orElse(job.listRelays().getFirst()),
                job.signalDiode(),
                lineDiode(word).orElse(job.signalDiode()),
                buffer(word),
                new Ohms(1),
                job.coilFeed(supply, List.of(lead)),
                job.loadFeed(supply, lead));
        Draft draft = Composer.compose(word, lead, side, lines, making);
        return Option.of(
                List.of(new Decision.Join(lead, wish, ids(lines), draft, because(draft.key(), making, supply), lost)));
    }

    private Phrase because(String key, Composer.Making making, Circuit supply) {
        String relay = making.relay().name();
        return switch (key) {
            case "coupling.straight" -> Phrase.of("rule.straight-output", ids(lines), all(), rating());
            case "coupling.straight-clamped" ->
                Phrase.of("rule.clamped-output", ids(lines).getFirst(), supply.id());
            case "coupling.isolation-diodes" ->
                Phrase.of(
                        "rule.diode-output",
                        ids(lines),
                        most(),
                        making.lineDiode().name());
            case "coupling.relay" -> Phrase.of("rule.relay-output", ids(lines), most(), relay);
            case "coupling.relay-isolated" -> Phrase.of("rule.relay-isolated", ids(lines), most(), relay);
            case "coupling.buffered-relay" ->
                Phrase.of(
                        "rule.buffered-relay",
                        ids(lines),
                        most(),
                        relay,
                        making.buffer().name());
            case "coupling.buffer" ->
                Phrase.of(
                        "rule.buffer-output",
                        ids(lines),
                        most(),
                        making.buffer().name());
            default -> Phrase.of("rule.composed-output", ids(lines), most());
        };
    }

    private static Circuit circuit(Line line) {
        return line.target().wire().orElseThrow();
    }

    /** The circuits of the wires. */
    static List<CircuitId> ids(List<Line> lines) {
        return lines.stream().map(l -> circuit(l).id()).toList();
    }
}
