package org.loomproof.workshop.planner.grammar;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.planner.coupling.AddedLoad;
import org.loomproof.workshop.planner.coupling.Clamp;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Driving;
import org.loomproof.workshop.planner.coupling.Driving.Line;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.coupling.Feed;
import org.loomproof.workshop.planner.coupling.Piece;
import org.loomproof.workshop.planner.coupling.Target;
import org.loomproof.workshop.planner.grammar.Coil.Driver;
import org.loomproof.workshop.planner.grammar.Word.Buffering;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.sizing.CoilCurrent;
import org.loomproof.workshop.trade.buffer.BufferType;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/** Makes parts and runs of a word whose source is an output and whose targets are factory wires or loads out of the box. */
public final class Composer {

    private final Word word;
    private final Lead lead;
    private final Side output;
    private final Making making;
    private final Draft.Builder draft;

    /**
     * What the parts are made of.
     *
     * @param relay in front of each target
     * @param signalDiode across coils, in front of them, and from a target to the supply
     * @param lineDiode in a target's own wire
     * @param buffer for the whole coupling
     * @param resistance of every resistor
     * @param coils the feed for coils and buffer, where the contact needs no feed of its own
     * @param contacts the feed for contacts that give the supply
     */
    public record Making(
            RelayType relay,
            DiodeType signalDiode,
            DiodeType lineDiode,
            BufferType buffer,
            Ohms resistance,
            Feed coils,
            Feed contacts) {}

    private Composer(Word word, Lead lead, Side output, String key, Making making) {
        this.word = word;
        this.lead = lead;
        this.output = output;
        this.making = making;
        this.draft = Draft.of(key);
    }

    /** The draft of a word; a shape that no judge lets through is an error. */
    public static Draft compose(Word word, Lead lead, Side output, List<Line> lines, Making making) {
        Composer composer = new Composer(
                word, lead, output, Catalogue.key(word, lines.getFirst().target()), making);
        composer.compose(lines);
        return composer.draft.build();
    }

    private void compose(List<Line> lines) {
        Amps coil = CoilCurrent.most(making.relay().coil());
        boolean byRelay = !word.coils().isEmpty();
        Amps coilsTogether = new Amps(coil.value() * lines.size());
        if (output == Side.HIGH && word.buffer() == Buffering.NONE) {
            draft.throughController(byRelay ? coilsTogether : fromController(lines));
        }
        End last = Draft.lead(lead);
        Feed feed = making.coils();
        if (word.buffer() != Buffering.NONE) {
            Driving.Buffered buffered = Driving.buffered(
                    lead.id().toString(),
                    last,
                    making.buffer(),
                    byRelay ? coilsTogether : carried(lines),
                    drop(lines),
                    making.coils(),
                    draft);
            feed = buffered.feed();
            last = buffered.out();
        } else if (byRelay && word.coils().getFirst().isolated()) {
            last = Driving.isolated(
                    lead.id().toString(),
                    last,
                    output,
                    making.signalDiode(),
                    coilsTogether,
                    making.coils().run(),
                    draft);
        }
        Side holds = word.buffer() == Buffering.NONE ? output : Side.LOW;
        for (Line line : lines) {
            last = byRelay ? relay(line, contacts(line, lines), holds, last, coil, feed) : chain(line, last, feed);
        }
    }

    /** 30 on the target, 87 on its pole, the coil between what works it and the other pole, a clamp diode across the coil. */
    private End relay(Line line, Feed contacts, Side holds, End last, Amps coil, Feed feed) {
        if (word.coils().size() != 1 || word.coils().getFirst().driver() == Driver.FIRST_MAKE) {
            throw new IllegalArgumentException("no draft for " + word);
        }
        AddedPartId k = Draft.local(lead.id(), "relay " + line.target().name());
        draft.with(new Piece.Relay(k, making.relay()));
        End next;
        AddedPartId r = Draft.local(lead.id(), "step");
        if (word.fromSupply().resistor() || word.toBody().resistor()) {
            draft.with(new Piece.Resistor(r, making.resistance()));
        }
        if (word.fromSupply().gate() == Gate.MAKE_1) {
            Feed near;
            if (word.fromSupply().resistor()) {
                near = contacts.reaching(r, "1", line.carries(), line.fusedFor(), line.drop(), draft);
                draft.run(Draft.at(r, "2"), Draft.at(k, "87"), Draft.BESIDE, line.carries(), line.drop());
            } else {
                near = contacts.reaching(k, "87", line.carries(), line.fusedFor(), line.drop(), draft);
            }
            join(Draft.at(k, "30"), line, Optional.of(contacts.fuse()));
            next = Driving.coil(holds, k, last, coil, word.buffer() == Buffering.NONE ? near : feed, draft);
        } else {
            join(Draft.at(k, "30"), line, Optional.empty());
            if (word.toBody().resistor()) {
                draft.run(Draft.at(k, "87"), Draft.at(r, "1"), Draft.BESIDE, line.carries(), line.drop());
                draft.run(Draft.at(r, "2"), Draft.body(), Draft.BESIDE, line.carries(), line.drop());
            } else {
                draft.run(Draft.at(k, "87"), Draft.body(), Draft.BESIDE, line.carries(), line.drop());
            }
            next = Driving.coil(holds, k, last, coil, feed, draft);
        }
        Clamp.across(k, making.signalDiode(), draft);
        return next;
    }

    /** Wires that the factory fuses each by itself are fed so as well: one short then leaves the others in peace. */
    private Feed contacts(Line line, List<Line> lines) {
        Feed together = making.contacts();
        return haveFusesOfTheirOwn(lines)
                ? Feed.from(
                        together.circuit(),
                        Draft.local(lead.id(), "fuse " + line.target().name()),
                        together.run())
                : together;
    }

    private static boolean haveFusesOfTheirOwn(List<Line> lines) {
        List<List<PathStep.Fuse>> fuses = lines.stream()
                .map(line -> line.target().wire().stream()
                        .flatMap(circuit -> circuit.paths().stream())
                        .flatMap(List::stream)
                        .filter(PathStep.Fuse.class::isInstance)
                        .map(PathStep.Fuse.class::cast)
                        .toList())
                .toList();
        long named = fuses.stream()
                .flatMap(List::stream)
                .map(PathStep.Fuse::id)
                .distinct()
                .count();
        return lines.size() > 1
                && fuses.stream().noneMatch(List::isEmpty)
                && named
                        == fuses.stream()
                                .mapToLong(own -> own.stream()
                                        .map(PathStep.Fuse::id)
                                        .distinct()
                                        .count())
                                .sum();
    }

    /** A wire from the output, or from the buffer's, with what stands in it; gives the end from which the next one goes on. */
    private End chain(Line line, End last, Feed feed) {
        Tie tie = word.buffer() == Buffering.NONE ? word.through() : word.toBody();
        End end = last;
        End next = last;
        if (tie.hasDiode()) {
            AddedPartId d = Draft.local(lead.id(), "diode " + line.target().name());
            boolean sinks = line.active() == Side.LOW;
            draft.with(new Piece.Diode(d, making.lineDiode()));
            draft.run(end, Draft.at(d, sinks ? "K" : "A"), Draft.BESIDE, line.carries(), line.drop());
            next = Draft.at(d, sinks ? "K" : "A");
            end = Draft.at(d, sinks ? "A" : "K");
        }
        if (tie.resistor()) {
            AddedPartId r = Draft.local(lead.id(), "step");
            draft.with(new Piece.Resistor(r, making.resistance()));
            draft.run(end, Draft.at(r, "1"), Draft.BESIDE, line.carries(), line.drop());
            end = Draft.at(r, "2");
        }
        boolean clamps = line.kicks()
                && (word.fromSupply().joined()
                        || (word.buffer() == Buffering.NONE && word.toBody().joined()));
        AddedPartId c = Clamp.ofWire(lead, line.target().name());
        if (clamps) {
            String terminal = line.active() == Side.LOW ? "A" : "K";
            draft.with(new Piece.Diode(c, making.signalDiode()));
            draft.run(end, Draft.at(c, terminal), Draft.BESIDE, line.carries(), line.drop());
            end = Draft.at(c, terminal);
        }
        join(end, line, Optional.empty());
        if (clamps && line.active() == Side.LOW) {
            feed.to(Draft.at(c, "K"), new Amps(0), AllowedDrop.SIGNAL, draft);
        } else if (clamps) {
            draft.run(Draft.at(c, "A"), Draft.body(), Draft.BESIDE, new Amps(0), AllowedDrop.SIGNAL);
        }
        return next;
    }

    /** The last wire to what is worked, and its other pole where it has one to itself. */
    private void join(End from, Line line, Optional<AddedPartId> fuse) {
        switch (line.target()) {
            case Target.Wire(var circuit) -> run(from, Draft.tap(circuit), line.run(), line.carries(), line, fuse);
            case Target.Loads loads -> {
                boolean onBody = line.active() == Side.HIGH;
                End last = from;
                int behind = 0;
                for (AddedLoad.Item item : loads.items()) {
                    End worked = Draft.at(item.part(), onBody ? "+" : "-");
                    draft.with(item.piece());
                    run(last, worked, item.run(), loads.from(behind), line, fuse);
                    if (onBody) {
                        draft.run(Draft.at(item.part(), "-"), Draft.body(), Draft.BESIDE, item.draws(), line.drop());
                    } else {
                        making.contacts().to(Draft.at(item.part(), "+"), item.draws(), line.drop(), draft);
                    }
                    last = worked;
                    behind++;
                }
            }
        }
    }

    private void run(End from, End to, Metres length, Amps carries, Line line, Optional<AddedPartId> fuse) {
        fuse.ifPresentOrElse(
                id -> draft.fused(from, to, length, carries, line.drop(), id),
                () -> draft.run(from, to, length, carries, line.drop()));
    }

    private static Amps carried(List<Line> lines) {
        return new Amps(lines.stream().mapToDouble(l -> l.carries().value()).sum());
    }

    private static AllowedDrop drop(List<Line> lines) {
        return lines.getFirst().drop();
    }

    private static Amps fromController(List<Line> lines) {
        return new Amps(lines.stream()
                .filter(line -> line.active() == Side.HIGH)
                .mapToDouble(
                        line -> line.target().fromController(line.carries()).value())
                .sum());
    }
}
