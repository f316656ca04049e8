package org.loomproof.workshop.planner.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
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
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.sizing.CoilCurrent;
import org.loomproof.workshop.trade.buffer.BufferType;
import org.loomproof.workshop.trade.buffer.Buffers;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/**
 * Makes parts and runs of a word of cut wires, lead by lead: at rest the break contact keeps the wire whole, at work the make
 * contact gives what hangs on it a pole of its own, or nothing, and the car's switch is off the wire.
 */
public final class CutComposer {

    /** From a cut to the relay beside it. Common practice, no published source. */
    private static final Metres STUB = new Metres(0.3);

    private final CutWord word;
    private final List<Lead> leads;
    private final List<Wire> wires;
    private final Making making;

    /**
     * One cut wire.
     *
     * @param name told apart from the others
     * @param load the end towards what works
     * @param feed the end towards what switches
     * @param carries what flows in it while it works
     * @param drop what it is for
     * @param size the factory wire that the stubs lengthen
     */
    public record Wire(String name, End load, End feed, Amps carries, AllowedDrop drop, SquareMillimetres size) {}

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

    /** A word for those leads and wires. */
    public CutComposer(CutWord word, List<Lead> leads, List<Wire> wires, Making making) {
        this.word = word;
        this.leads = List.copyOf(leads);
        this.wires = List.copyOf(wires);
        this.making = making;
    }

    private record Placed(int wire, int place, Throw contact) {}

    /** The relays of one lead; their coils lie side by side on its output. */
    public Draft draft(int number, String key) {
        Lead lead = leads.get(number);
        Drive drive = word.drives().get(number);
        Side output = Side.of(lead.port()).orElseThrow();
        List<Placed> own = list(number);
        Draft.Builder draft = Draft.of(key);
        Amps coil = CoilCurrent.most(making.relay().coil());
        Amps together = new Amps(coil.value() * own.size());
        if (output == Side.HIGH && !drive.buffered()) {
            draft.throughController(together);
        }
        End last = Draft.lead(lead);
        Feed feed = making.coils();
        if (drive.buffered()) {
            Driving.Buffered buffered =
                    Driving.buffered(lead, buffer(drive), together, AllowedDrop.SIGNAL, making.coils(), draft);
            last = buffered.out();
            feed = buffered.feed();
        } else if (drive.isolated()) {
            last = Driving.isolated(lead, output, making.diode(), together, making.run(), draft);
        }
        for (Placed each : own) {
            AddedPartId k = relay(each);
            draft.with(new Piece.Relay(k, making.relay()));
            contacts(each, draft);
            gives(each, draft);
            last = Driving.coil(drive.buffered() ? Side.LOW : output, k, last, coil, feed, making.run(), draft);
            if (each.equals(own.getFirst())) {
                // Coils that lie side by side on one output are let go together: one clamp serves them all.
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
                leads.get(each.contact().lead()).id(),
                "relay " + wires.get(each.wire()).name());
    }

    /** The end on which a lead's first relay in that wire, the one that works it, has what works. */
    public End driven(int lead) {
        return list(lead).stream().findFirst().map(this::towardsLoad).orElseThrow();
    }

    private End towardsLoad(Placed each) {
        return Draft.at(relay(each), isTurned(each) ? "87a" : "30");
    }

    private End towardsFeed(Placed each) {
        return Draft.at(relay(each), isTurned(each) ? "30" : "87a");
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

    /** A wire from a contact to a factory wire, or to the next relay in the row, which lies beside this one. */
    private void contacts(Placed each, Draft.Builder draft) {
        Wire wire = wires.get(each.wire());
        if (isTurned(each)) {
            factory(wire.feed(), towardsFeed(each), STUB, wire, draft);
            factory(towardsLoad(each), wire.load(), STUB, wire, draft);
            return;
        }
        if (each.place() == 0) {
            factory(towardsLoad(each), wire.load(), STUB, wire, draft);
        }
        int next = each.place() + 1;
        if (next == chain(each).size()) {
            factory(towardsFeed(each), wire.feed(), STUB, wire, draft);
        } else {
            Placed beside = new Placed(each.wire(), next, chain(each).get(next));
            factory(towardsFeed(each), towardsLoad(beside), Draft.BESIDE, wire, draft);
        }
    }

    private static void factory(End from, End to, Metres length, Wire wire, Draft.Builder draft) {
        draft.factory(from, to, length, wire.carries(), wire.drop(), wire.size());
    }

    private void gives(Placed each, Draft.Builder draft) {
        AddedPartId k = relay(each);
        Wire wire = wires.get(each.wire());
        switch (each.contact().gives()) {
            case LOW -> draft.run(Draft.at(k, "87"), Draft.body(), Draft.BESIDE, wire.carries(), wire.drop());
            case HIGH -> {
                if (making.byTurns() || !firstToGiveSupply().equals(Optional.of(each))) {
                    making.contacts().reachingByTurns(k, "87", wire.carries(), wire.drop(), draft);
                } else {
                    making.contacts().reaching(k, "87", wire.carries(), wire.carries(), wire.drop(), draft);
                }
            }
            case NOTHING -> {}
        }
    }

    /** Of contacts that give the supply only one leads current at a time: leads that work one thing take turns. */
    private Optional<Placed> firstToGiveSupply() {
        for (int lead = 0; lead < leads.size(); lead++) {
            Optional<Placed> first = list(lead).stream()
                    .filter(each -> each.contact().gives() == Given.HIGH)
                    .findFirst();
            if (first.isPresent()) {
                return first;
            }
        }
        return Optional.empty();
    }
}
