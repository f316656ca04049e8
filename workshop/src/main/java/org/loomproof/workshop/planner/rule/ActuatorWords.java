package org.loomproof.workshop.planner.rule;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.planner.coupling.AddedLoad;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Feed;
import org.loomproof.workshop.planner.cut.CoilSource;
import org.loomproof.workshop.planner.cut.CutComposer;
import org.loomproof.workshop.planner.cut.Given;
import org.loomproof.workshop.planner.cut.LegGrammar;
import org.loomproof.workshop.planner.cut.LegWord;
import org.loomproof.workshop.planner.cut.WireEnd;
import org.loomproof.workshop.planner.grammar.Enumeration;
import org.loomproof.workshop.planner.grammar.LeftOut;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.trade.wire.AllowedDrop;
import org.loomproof.workshop.words.Phrase;

/**
 * The ways to work reversing actuators out of the kit's box: the words of the grammar for a load with two legs for which there are
 * parts, those first that the trade takes.
 *
 * @param job the job
 * @param sources what works the relays: two outputs, or two driven legs of the car's own motors; the one that locks first
 * @param actuators wired from one to the next, each with what it draws
 * @param constant the supply they are fed from
 * @param fuse before their contacts
 */
record ActuatorWords(Job job, List<CoilSource> sources, List<Extra> actuators, Circuit constant, AddedPartId fuse) {

    /** Locking takes the first to the supply, unlocking the second. */
    private static final List<String> TERMINALS = List.of("+", "-");

    ActuatorWords {
        sources = List.copyOf(sources);
        actuators = List.copyOf(actuators);
    }

    /**
     * One word with the relay that does for it.
     *
     * @param rest the pole to which both legs lead
     * @param contacts in both, and what works them
     */
    record Way(Given rest, CutWords.Way contacts) {

        /** A name or a reason, by the pole at which the legs rest. */
        String key(String key) {
            return rest == Given.LOW ? key : key + "-at-supply";
        }

        /** The relay. */
        RelayType relay() {
            return contacts.relay();
        }
    }

    /** What was found. */
    record Ways(List<Way> list, List<Searched> searched) {}

    /** The ways. */
    Ways ways() {
        CutWords words = new CutWords(job, sources, List.of(), together(), together());
        List<RelayType> relays = job.listRelays();
        Enumeration<LegWord> found =
                LegGrammar.of(words.outputs(), isFollowing()).leavingOut(word -> leftOut(words, relays, word));
        List<Way> ways = found.words().stream()
                .sorted((one, other) -> words.order().compare(one.word(), other.word()))
                .map(word -> new Way(
                        word.rests().getFirst(),
                        new CutWords.Way(
                                word.word(), words.relay(word.word(), relays).orElseThrow())))
                .toList();
        return new Ways(ways, words.searched(found));
    }

    private Optional<LeftOut> leftOut(CutWords words, List<RelayType> relays, LegWord word) {
        if (isFollowing() && word.word().drives().stream().anyMatch(drive -> drive.isolated() || drive.buffered())) {
            // A leg bears the coil, and nothing comes back by it.
            return Optional.of(LeftOut.SAME_WITH_FEWER);
        }
        return words.relay(word.word(), relays).isPresent() ? Optional.empty() : Optional.of(LeftOut.CURRENT);
    }

    private boolean isFollowing() {
        return sources.stream().noneMatch(CoilSource::isOutput);
    }

    /** What they draw together at the highest supply, held fast. It is stated at a charged battery's volts. */
    Amps together() {
        double atRest = actuators.stream()
                .mapToDouble(e -> e.draws().orElseThrow().high().value())
                .sum();
        return new Amps(atRest
                * SupplyPoint.HIGH.volts().value()
                / SupplyPoint.REST.volts().value());
    }

    /** The reason of a way for one source, with what stands before its coil. */
    Phrase because(Way way, int source, Phrase because) {
        return way.contacts().guarded(source, because);
    }

    /** What one source works of a way. */
    Draft draft(Way way, int source, String key) {
        Feed coils = isFollowing()
                ? job.coilFeed(constant)
                : job.coilFeed(constant, sources.stream().map(CoilSource::lead).toList());
        Feed contacts = Feed.from(constant, fuse, job.run(constant));
        return new CutComposer(
                        way.contacts().word(),
                        sources,
                        wires(way.rest()),
                        new CutComposer.Making(way.relay(), job.signalDiode(), coils, contacts, coils.run(), false))
                .draft(source, key);
    }

    private List<CutComposer.Wire> wires(Given rest) {
        WireEnd end = new WireEnd.Pole(rest.pole().orElseThrow());
        List<AddedLoad.Item> items = actuators.stream()
                .map(e -> new AddedLoad.Item(
                        e.name(), e.draws().orElseThrow().typical(), Optional.empty(), job.usualRun()))
                .toList();
        return IntStream.range(0, TERMINALS.size())
                .mapToObj(leg -> new CutComposer.Wire(
                        "actuators " + TERMINALS.get(leg),
                        new WireEnd.Loads(items, TERMINALS.get(leg)),
                        end,
                        together(),
                        AllowedDrop.LOCK_MOTOR))
                .toList();
    }
}
