package org.loomproof.workshop.planner.grammar;

import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.planner.coupling.Clamp;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.coupling.Feed;
import org.loomproof.workshop.planner.coupling.Piece;
import org.loomproof.workshop.planner.coupling.PullUp;
import org.loomproof.workshop.planner.coupling.Source;
import org.loomproof.workshop.planner.grammar.Coil.Driver;
import org.loomproof.workshop.planner.grammar.Tie.Way;
import org.loomproof.workshop.planner.grammar.Word.Buffering;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.sizing.CoilCurrent;
import org.loomproof.workshop.trade.buffer.BufferType;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/**
 * Makes parts and runs of a word whose target is an input and whose sources are factory wires or added pins. A diode stands in
 * each factory wire where the word has one; a pin has no factory function and needs none.
 */
public final class SenseComposer {

    /** An input's own pull, or a buffer's, lets some milliamps flow. Common practice, no published source. */
    private static final Amps SIGNAL = new Amps(0.005);

    private final Lead lead;
    private final Word word;
    private final List<Source> sources;
    private final Making making;
    private final Draft.Builder draft;
    private Feed feed;

    /**
     * What the parts are made of.
     *
     * @param relay whose coil hangs on the sources or on the buffer
     * @param diode of every kind
     * @param buffer for all sources
     * @param pull at each source
     * @param level in the lead, or between it and a pole
     * @param feed the constant supply
     */
    public record Making(RelayType relay, DiodeType diode, BufferType buffer, Ohms pull, Ohms level, Feed feed) {}

    private SenseComposer(Lead lead, Word word, List<Source> sources, Making making, Draft.Builder draft) {
        this.lead = lead;
        this.word = word;
        this.sources = sources;
        this.making = making;
        this.draft = draft;
        this.feed = making.feed();
    }

    /** The parts and runs of a word, into a draft. A shape that no judge lets through is an error. */
    public static void compose(Lead lead, Word word, List<Source> sources, Making making, Draft.Builder draft) {
        new SenseComposer(lead, word, sources, making, draft).compose();
    }

    private void compose() {
        if (word.coils().size() > 1 || word.through().gate() != Gate.ALWAYS) {
            throw new IllegalArgumentException("no draft for " + word);
        }
        if (word.through().joined()) {
            Way way = word.through().diode();
            End reader = series();
            levels(reader);
            join(reader, way, SIGNAL);
            return;
        }
        AddedPartId buffer = Draft.local(lead.id(), "buffer");
        if (!word.coils().isEmpty()) {
            relay(word.coils().getFirst(), buffer);
        } else {
            draft.with(new Piece.Buffer(buffer, making.buffer()));
            End out = Draft.at(buffer, "out");
            draft.run(Draft.lead(lead), out, longest(), SIGNAL, AllowedDrop.SIGNAL);
            draft.run(Draft.at(buffer, "-"), Draft.body(), Draft.BESIDE, SIGNAL, AllowedDrop.SIGNAL);
            levels(out);
        }
        if (word.buffer() != Buffering.NONE) {
            feed = feed.reaching(buffer, "+", SIGNAL, SIGNAL, AllowedDrop.SIGNAL, draft);
            boolean onGround = word.buffer() == Buffering.ON_GROUND;
            Way way = sources.size() == 1 ? Way.BOTH : onGround ? Way.FROM_TARGET : Way.TO_TARGET;
            join(Draft.at(buffer, "in"), way, SIGNAL);
        }
    }

    /** 30 on the lead, make and break on the poles that the word gives, the coil on the sources or on the buffer. */
    private void relay(Coil coil, AddedPartId buffer) {
        AddedPartId k = Draft.local(lead.id(), "relay");
        Amps amps = CoilCurrent.most(making.relay().coil());
        draft.with(new Piece.Relay(k, making.relay()));
        draft.run(Draft.lead(lead), Draft.at(k, "30"), longest(), SIGNAL, AllowedDrop.SIGNAL);
        boolean sinks = coil.pole() == Side.HIGH;
        if (sinks) {
            feed = feed.reaching(k, "86", amps, amps, AllowedDrop.SIGNAL, draft);
        } else {
            draft.run(Draft.at(k, "85"), Draft.body(), Draft.BESIDE, amps, AllowedDrop.SIGNAL);
        }
        contact(k, word.fromSupply(), end -> feed.to(end, SIGNAL, AllowedDrop.SIGNAL, draft));
        contact(k, word.toBody(), end -> draft.run(end, Draft.body(), Draft.BESIDE, SIGNAL, AllowedDrop.SIGNAL));
        levels(Draft.at(k, "30"));
        End driven = Draft.at(k, sinks ? "85" : "86");
        if (coil.driver() == Driver.BUFFER) {
            draft.with(new Piece.Buffer(buffer, making.buffer()));
            draft.run(driven, Draft.at(buffer, "out"), Draft.BESIDE, amps, AllowedDrop.SIGNAL);
            draft.run(Draft.at(buffer, "-"), Draft.body(), Draft.BESIDE, amps, AllowedDrop.SIGNAL);
            Clamp.across(k, making.diode(), draft);
        } else {
            Way way = sources.size() == 1 ? Way.BOTH : sinks ? Way.FROM_TARGET : Way.TO_TARGET;
            join(driven, way, amps);
        }
    }

    private static void contact(AddedPartId k, Tie tie, Consumer<End> pole) {
        if (tie.gate().relay() > 0) {
            pole.accept(Draft.at(k, tie.gate().make() ? "87" : "87a"));
        }
    }

    /** Resistors from the input to either pole. */
    private void levels(End reader) {
        if (isResistor(word.fromSupply())) {
            AddedPartId r = Draft.local(lead.id(), "level");
            draft.with(new Piece.Resistor(r, making.level()));
            feed.to(Draft.at(r, "1"), PullUp.wastes(making.level()), AllowedDrop.SIGNAL, draft);
            draft.run(Draft.at(r, "2"), reader, Draft.BESIDE, SIGNAL, AllowedDrop.SIGNAL);
        }
        if (isResistor(word.toBody())) {
            AddedPartId r = Draft.local(lead.id(), "rest");
            draft.with(new Piece.Resistor(r, making.level()));
            draft.run(reader, Draft.at(r, "1"), Draft.BESIDE, SIGNAL, AllowedDrop.SIGNAL);
            draft.run(Draft.at(r, "2"), Draft.body(), Draft.BESIDE, SIGNAL, AllowedDrop.SIGNAL);
        }
    }

    private static boolean isResistor(Tie tie) {
        return tie.joined() && tie.resistor() && tie.gate() == Gate.ALWAYS;
    }

    private End series() {
        if (!word.through().resistor()) {
            return Draft.lead(lead);
        }
        AddedPartId r = Draft.local(lead.id(), "series");
        draft.with(new Piece.Resistor(r, making.level()));
        draft.run(Draft.lead(lead), Draft.at(r, "1"), longest(), SIGNAL, AllowedDrop.SIGNAL);
        return Draft.at(r, "2");
    }

    /** Joins all sources to one end; the wire goes from one to the next. */
    private void join(End reader, Way way, Amps carries) {
        End last = reader;
        for (Source source : sources) {
            Metres length = last.equals(reader) && !word.through().resistor() ? source.run() : Draft.BESIDE;
            last = switch (source) {
                case Source.Pin pin -> {
                    draft.with(new Piece.Pin(pin.part(), pin.opening()));
                    draft.run(last, pin.end(), source.run(), carries, AllowedDrop.SIGNAL);
                    pull(source, pin.end());
                    yield pin.end();
                }
                case Source.Stage stage -> {
                    draft.run(last, stage.end(), source.run(), carries, AllowedDrop.SIGNAL);
                    pull(source, stage.end());
                    yield stage.end();
                }
                case Source.Fused fused -> {
                    if (way == Way.BOTH) {
                        fused.feed().to(last, carries, AllowedDrop.SIGNAL, draft);
                        yield last;
                    }
                    AddedPartId d = diode(source, last, way, carries);
                    fused.feed().to(Draft.at(d, towardsSource(way)), carries, AllowedDrop.SIGNAL, draft);
                    yield Draft.at(d, towardsReader(way));
                }
                case Source.Wire wire -> {
                    pull(source, wire.end());
                    if (way == Way.BOTH) {
                        draft.run(last, wire.end(), length, carries, AllowedDrop.SIGNAL);
                        yield wire.end();
                    }
                    AddedPartId d = diode(source, last, way, carries);
                    draft.run(Draft.at(d, towardsSource(way)), wire.end(), wire.run(), carries, AllowedDrop.SIGNAL);
                    yield Draft.at(d, towardsReader(way));
                }
            };
        }
    }

    private AddedPartId diode(Source source, End last, Way way, Amps carries) {
        AddedPartId d = Draft.local(lead.id(), "diode " + source.name());
        draft.with(new Piece.Diode(d, making.diode()));
        draft.run(last, Draft.at(d, towardsReader(way)), Draft.BESIDE, carries, AllowedDrop.SIGNAL);
        return d;
    }

    private static String towardsReader(Way way) {
        return way == Way.FROM_TARGET ? "A" : "K";
    }

    private static String towardsSource(Way way) {
        return way == Way.FROM_TARGET ? "K" : "A";
    }

    private void pull(Source source, End end) {
        if (word.pull() == Pull.NONE) {
            return;
        }
        // One pull a wire, whoever reads it.
        AddedPartId r = Draft.local(source.name(), "pull");
        Amps wasted = PullUp.wastes(making.pull());
        draft.with(new Piece.Resistor(r, making.pull()));
        if (word.pull() == Pull.UP) {
            making.feed().to(Draft.at(r, "1"), wasted, AllowedDrop.SIGNAL, draft);
        } else {
            draft.run(Draft.body(), Draft.at(r, "1"), Draft.BESIDE, wasted, AllowedDrop.SIGNAL);
        }
        draft.run(Draft.at(r, "2"), end, Draft.BESIDE, wasted, AllowedDrop.SIGNAL);
    }

    private Metres longest() {
        return sources.stream()
                .map(Source::run)
                .max(Comparator.comparingDouble(Metres::value))
                .orElse(Draft.BESIDE);
    }
}
