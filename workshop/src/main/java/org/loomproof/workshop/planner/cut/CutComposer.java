package org.loomproof.workshop.planner.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.planner.coupling.AddedLoad;
import org.loomproof.workshop.planner.coupling.Clamp;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Driving;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.coupling.Feed;
import org.loomproof.workshop.planner.coupling.Piece;
import org.loomproof.workshop.planner.cut.CutWord.Drive;
import org.loomproof.workshop.planner.cut.Throw.Lie;
import org.loomproof.workshop.planner.grammar.Word.Buffering;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.sizing.CoilCurrent;
import org.loomproof.workshop.trade.buffer.BufferType;
import org.loomproof.workshop.trade.buffer.Buffers;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/**
 * Makes parts and runs of a word of wires that are cut, or that lead from a load out of the box to a pole, lead by lead: at rest the break contact keeps the wire whole, at work the make
 * contact gives what hangs on it a pole of its own, or nothing, and the car's switch is off the wire.
 */
public final class CutComposer {

    /** From a cut to the relay beside it. Common practice, no published source. */
    private static final Metres STUB = new Metres(0.3);

    private final CutWord word;
    private final List<CoilSource> sources;
    private final List<Wire> wires;
    private final Making making;

    /**
     * One wire.
     *
     * @param name told apart from the others
     * @param load the end towards what works
     * @param feed the end towards what switches, or towards a pole
     * @param carries what flows in it while it works
     * @param drop what it is for
     */
    public record Wire(String name, WireEnd load, WireEnd feed, Amps carries, AllowedDrop drop) {}

    /**
     * What the parts are made of.
     *
     * @param relay of every contact
     * @param diode across the coils of one output, and before them
     * @param coils feed for coils and buffers
     * @param contacts feed for contacts that give the supply
     * @param run from the controller to the relays
     * @param byTurns whether the first contact that gives the supply draws only while another one behind its fuse does not
     */
    public record Making(RelayType relay, DiodeType diode, Feed coils, Feed contacts, Metres run, boolean byTurns) {}

    /** A word for those sources and wires. */
    public CutComposer(CutWord word, List<CoilSource> sources, List<Wire> wires, Making making) {
        this.word = word;
        this.sources = List.copyOf(sources);
        this.wires = List.copyOf(wires);
        this.making = making;
    }

    private record Placed(int wire, int place, Throw contact) {}

    /** The relays of one lead; their coils lie side by side on its output. */
    public Draft draft(int number, String key) {
        CoilSource source = sources.get(number);
        Drive drive = word.drives().get(number);
        List<Placed> own = list(number);
        Draft.Builder draft = Draft.of(key);
        Amps coil = CoilCurrent.most(making.relay().coil());
        Amps together = new Amps(coil.value() * own.size());
        if (source.isOutput() && source.gives() == Side.HIGH && !drive.buffered()) {
            draft.throughController(together);
        }
        End last = source.end();
        Feed feed = making.coils();
        if (drive.buffered()) {
            Driving.Buffered buffered = Driving.buffered(
                    source.owner(), last, buffer(drive), together, AllowedDrop.SIGNAL, making.coils(), draft);
            last = buffered.out();
            feed = buffered.feed();
        } else if (drive.isolated()) {
            last = Driving.isolated(
                    source.owner(), last, source.gives(), making.diode(), together, making.run(), draft);
        }
        for (Placed each : own) {
            AddedPartId k = relay(each);
            draft.with(new Piece.Relay(k, making.relay()));
            contacts(each, draft);
            gives(each, draft);
            last = Driving.coil(drive.buffered() ? Side.LOW : source.gives(), k, last, coil, feed, making.run(), draft);
            if (each.equals(own.getFirst()) && source.isOutput()) {
                // Coils side by side on one output are let go together: one clamp serves them all. The current of one
                // on a leg
                // goes on through the motor beside it; past a diode the leg would feed what feeds the coil.
                Clamp.across(k, making.diode(), draft);
            }
        }
        return draft.build();
    }

    /** What stands for a buffer of that kind. */
    public static BufferType buffer(Drive drive) {
        return Buffers.workingOn(drive.buffer() == Buffering.ON_GROUND);
    }

    /** A lead's contacts, those that give the supply first. */
    private List<Placed> list(int lead) {
        List<Placed> own = new ArrayList<>();
        for (int w = 0; w < wires.size(); w++) {
            List<Throw> chain = word.wires().get(w);
            for (int p = 0; p < chain.size(); p++) {
                if (chain.get(p).lead() == lead) {
                    own.add(new Placed(w, p, chain.get(p)));
                }
            }
        }
        own.sort(Comparator.comparing((Placed each) -> each.contact().gives() != Given.HIGH));
        return own;
    }

    private AddedPartId relay(Placed each) {
        return Draft.local(
                sources.get(each.contact().lead()).owner(),
                "relay " + wires.get(each.wire()).name());
    }

    /** The end on which a lead's first relay in that wire, the one that works it, has what works. */
    public End driven(int lead) {
        return list(lead).stream().findFirst().map(this::towardsLoad).orElseThrow();
    }

    private End.OfPart towardsLoad(Placed each) {
        return new End.OfPart(relay(each), isTurned(each) ? "87a" : "30");
    }

    private End.OfPart towardsFeed(Placed each) {
        return new End.OfPart(relay(each), isTurned(each) ? "30" : "87a");
    }

    /** A contact that gives nothing, alone in its wire, has 30 at the switch: what then hangs on 87 hangs on nothing. */
    private boolean isTurned(Placed each) {
        if (each.contact().lie() != Lie.BREAK) {
            throw new IllegalArgumentException("no draft for " + word);
        }
        return each.contact().gives() == Given.NOTHING && chain(each).size() == 1;
    }

    private List<Throw> chain(Placed each) {
        return word.wires().get(each.wire());
    }

    /** What leads from a contact to the ends of its wire, or to the next relay in the row, which lies beside this one. */
    private void contacts(Placed each, Draft.Builder draft) {
        Wire wire = wires.get(each.wire());
        if (isTurned(each)) {
            feed(each, wire, draft);
            load(each, wire, draft);
            return;
        }
        if (each.place() == 0) {
            load(each, wire, draft);
        }
        int next = each.place() + 1;
        if (next == chain(each).size()) {
            feed(each, wire, draft);
        } else {
            Placed beside = new Placed(each.wire(), next, chain(each).get(next));
            beside(towardsFeed(each), towardsLoad(beside), wire, draft);
        }
    }

    private void load(Placed each, Wire wire, Draft.Builder draft) {
        lay(each, towardsLoad(each), wire.load(), wire, draft);
    }

    private void feed(Placed each, Wire wire, Draft.Builder draft) {
        lay(each, towardsFeed(each), wire.feed(), wire, draft);
    }

    private void lay(Placed each, End.OfPart contact, WireEnd end, Wire wire, Draft.Builder draft) {
        switch (end) {
            case WireEnd.Cut(var side, var size) -> {
                boolean comes = isTurned(each) && end.equals(wire.feed());
                draft.factory(comes ? side : contact, comes ? contact : side, STUB, wire.carries(), wire.drop(), size);
            }
            case WireEnd.Pole(var pole) -> give(pole, each, contact, wire, draft);
            case WireEnd.Loads(var items, var terminal) -> {
                End last = contact;
                for (AddedLoad.Item item : items) {
                    End next = Draft.at(item.part(), terminal);
                    draft.with(item.piece());
                    draft.fused(
                            last,
                            next,
                            item.run(),
                            wire.carries(),
                            wire.drop(),
                            making.contacts().fuse());
                    last = next;
                }
            }
        }
    }

    private static void beside(End from, End to, Wire wire, Draft.Builder draft) {
        if (wire.load() instanceof WireEnd.Cut(var side, var size)) {
            draft.factory(from, to, Draft.BESIDE, wire.carries(), wire.drop(), size);
        } else {
            draft.run(from, to, Draft.BESIDE, wire.carries(), wire.drop());
        }
    }

    private void gives(Placed each, Draft.Builder draft) {
        each.contact()
                .gives()
                .pole()
                .ifPresent(pole -> give(pole, each, new End.OfPart(relay(each), "87"), wires.get(each.wire()), draft));
    }

    private void give(Side pole, Placed each, End.OfPart contact, Wire wire, Draft.Builder draft) {
        switch (pole) {
            case LOW -> draft.run(contact, Draft.body(), Draft.BESIDE, wire.carries(), wire.drop());
            case HIGH -> {
                if (making.byTurns() || !firstAtSupply().equals(Optional.of(each))) {
                    making.contacts()
                            .reachingByTurns(contact.part(), contact.terminal(), wire.carries(), wire.drop(), draft);
                } else {
                    making.contacts()
                            .reaching(
                                    contact.part(),
                                    contact.terminal(),
                                    wire.carries(),
                                    wire.carries(),
                                    wire.drop(),
                                    draft);
                }
            }
        }
    }

    /** Of contacts on the supply only one leads current at a time: leads that work one thing take turns. */
    private Optional<Placed> firstAtSupply() {
        for (int lead = 0; lead < sources.size(); lead++) {
            Optional<Placed> first = list(lead).stream()
                    .filter(each -> each.contact().gives() == Given.HIGH || isBeforeSupply(each))
                    .findFirst();
            if (first.isPresent()) {
                return first;
            }
        }
        return Optional.empty();
    }

    /** True for the contact through which a wire leads to the supply for good. */
    private boolean isBeforeSupply(Placed each) {
        return each.place() + 1 == chain(each).size()
                && wires.get(each.wire()).feed().equals(new WireEnd.Pole(Side.HIGH));
    }
}
