package org.loomproof.workshop.planner.rule;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.planner.cut.CoilSource;
import org.loomproof.workshop.planner.cut.CutComposer;
import org.loomproof.workshop.planner.cut.CutGrammar;
import org.loomproof.workshop.planner.cut.CutWire;
import org.loomproof.workshop.planner.cut.CutWord;
import org.loomproof.workshop.planner.cut.Cuts;
import org.loomproof.workshop.planner.cut.Given;
import org.loomproof.workshop.planner.grammar.Enumeration;
import org.loomproof.workshop.planner.grammar.LeftOut;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.sizing.RelayChoice;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.words.Phrase;

/**
 * The ways to work what hangs on wires with contacts in them: the words of their grammar for which there are parts, those first
 * that the trade takes.
 *
 * @param job the job
 * @param sources what works the relays
 * @param circuits the wires that are cut
 * @param make what 87 must carry
 * @param breaking what 87a must carry
 */
record CutWords(Job job, List<CoilSource> sources, List<CircuitId> circuits, Amps make, Amps breaking) {

    CutWords {
        sources = List.copyOf(sources);
        circuits = List.copyOf(circuits);
    }

    /** One word with the relay that does for it. */
    record Way(CutWord word, RelayType relay) {
        /** The reason, with what stands before a lead's coils. */
        Phrase guarded(int lead, Phrase because) {
            CutWord.Drive drive = word.drives().get(lead);
            if (drive.buffered()) {
                return Phrase.of(
                        "rule.cut-buffered", because, CutComposer.buffer(drive).name());
            }
            return drive.isolated() ? Phrase.of("rule.cut-isolated", because) : because;
        }
    }

    /** What was found. */
    record Ways(List<Way> list, List<Searched> searched) {}

    /**
     * The ways.
     *
     * @param relays those that come into question, best first
     */
    Ways ways(List<CutWire> wires, List<RelayType> relays) {
        Enumeration<CutWord> found = CutGrammar.of(new Cuts(wires, outputs()))
                .leavingOut(word -> relay(word, relays).isPresent() ? Optional.empty() : Optional.of(LeftOut.CURRENT));
        List<Way> ways = found.words().stream()
                .sorted(order())
                .map(word -> new Way(word, relay(word, relays).orElseThrow()))
                .toList();
        return new Ways(ways, searched(found));
    }

    /** What works the relays, as far as poles decide. */
    List<Cuts.Output> outputs() {
        return sources.stream()
                .map(source -> new Cuts.Output(source.gives(), Job.leaks(source.port())))
                .toList();
    }

    /** That this was looked through, lead by lead. */
    List<Searched> searched(Enumeration<?> found) {
        return sources.stream()
                .map(source -> new Searched(source.lead().id(), circuits, found))
                .toList();
    }

    /** Words that the trade takes first before the others; those it takes alike stay as they are. */
    Comparator<CutWord> order() {
        return Comparator.comparing((CutWord word) -> !isEven(word))
                .thenComparing(this::feedsTheDead)
                .thenComparing(CutWords::letsGoNearer)
                .thenComparingInt(CutWords::lastWord);
    }

    /** Leads of one kind are worked alike. */
    private static boolean isEven(CutWord word) {
        return word.drives().stream()
                        .map(drive -> List.of(drive.isolated(), drive.buffered()))
                        .distinct()
                        .count()
                <= 1;
    }

    /** True where the supply reaches an output that clamps, through no more than a coil. */
    private boolean feedsTheDead(CutWord word) {
        return IntStream.range(0, sources.size())
                .anyMatch(lead -> sources.get(lead).port() instanceof Port.LowSide out
                        && out.clamp()
                        && !word.drives().get(lead).buffered());
    }

    /** A contact that only lets go lies farther away: what gives a pole must not be undone by it. */
    private static boolean letsGoNearer(CutWord word) {
        return word.wires().stream()
                .anyMatch(chain -> chain.size() > 1 && chain.getFirst().gives() == Given.NOTHING);
    }

    /** Whose contact is nearest to what works has the last word: the first lead's, in every wire. */
    private static int lastWord(CutWord word) {
        return word.wires().stream()
                .filter(chain -> !chain.isEmpty())
                .mapToInt(chain -> chain.getFirst().lead())
                .sum();
    }

    /** The first of those relays that does for a word, if there is one. */
    Optional<RelayType> relay(CutWord word, List<RelayType> relays) {
        Predicate<RelayType> does = relay -> IntStream.range(0, sources.size())
                .allMatch(lead -> RelayChoice.meets(relay, need(word, lead)) && carriesInput(word, lead));
        return relays.stream().filter(does).findFirst();
    }

    private boolean carriesInput(CutWord word, int lead) {
        CutWord.Drive drive = word.drives().get(lead);
        return !drive.buffered()
                || SupplyPoint.HIGH.volts().value()
                                / CutComposer.buffer(drive).input().value()
                        <= Job.ratingOf(sources.get(lead).port()).value();
    }

    private RelayChoice.Need need(CutWord word, int lead) {
        CutWord.Drive drive = word.drives().get(lead);
        int coils = Math.max(1, word.relays(lead));
        return drive.buffered()
                ? job.needBehind(CutComposer.buffer(drive), make, breaking, coils)
                : job.need(make, breaking, sources.get(lead).port(), coils);
    }
}
