package org.loomproof.workshop.planner.coupling;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.sizing.CoilCurrent;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/** A load out of the kit's box, such as the siren, on an output: straight, or through a relay. */
public final class AddedLoad {

    private AddedLoad() {}

    /**
     * What is added.
     *
     * @param extra the kit's name for it
     * @param draws what it draws for long
     * @param run from the controller
     */
    public record Item(String extra, Amps draws, Metres run) {
        AddedPartId part() {
            return Draft.local(extra, "load");
        }
    }

    /**
     * A bare light-emitting diode behind the resistor that leaves it no more than it may carry: on an output that gives the supply,
     * or between the fused supply and one that gives the ground.
     */
    public static Draft lit(Lead lead, Driving.Side side, Item item, Volts forward, Ohms resistance, Feed feed) {
        AddedPartId r = Draft.local(lead.id(), "light");
        Draft.Builder draft = Draft.of("coupling.added-light")
                .with(new Piece.Resistor(r, resistance))
                .with(new Piece.Load(item.part(), item.extra(), item.draws(), Optional.of(forward)));
        End plus = Draft.at(item.part(), "+");
        End minus = Draft.at(item.part(), "-");
        draft.run(Draft.at(r, "2"), plus, Draft.BESIDE, item.draws(), AllowedDrop.SIGNAL);
        switch (side) {
            case HIGH -> {
                draft.throughController(item.draws());
                draft.run(Draft.lead(lead), Draft.at(r, "1"), item.run(), item.draws(), AllowedDrop.SIGNAL);
                draft.run(minus, Draft.body(), Draft.BESIDE, item.draws(), AllowedDrop.SIGNAL);
            }
            case LOW -> {
                feed.to(Draft.at(r, "1"), item.draws(), AllowedDrop.SIGNAL, draft);
                draft.run(Draft.lead(lead), minus, item.run(), item.draws(), AllowedDrop.SIGNAL);
            }
        }
        return draft.build();
    }

    /** On a high-side output as it is; each load has a ground of its own. */
    public static Draft straight(Lead lead, List<Item> items, Amps most) {
        Draft.Builder draft = Draft.of("coupling.added-load").throughController(most);
        End last = Draft.lead(lead);
        for (Item item : items) {
            End plus = Draft.at(item.part(), "+");
            draft.with(new Piece.Load(item.part(), item.extra(), item.draws()));
            draft.run(last, plus, item.run(), item.draws(), AllowedDrop.LAMP);
            draft.run(Draft.at(item.part(), "-"), Draft.body(), Draft.BESIDE, item.draws(), AllowedDrop.LAMP);
            last = plus;
        }
        return draft.build();
    }

    /** Between the fused supply and a low-side output. */
    public static Draft straight(Lead lead, List<Item> items, Feed feed) {
        Draft.Builder draft = Draft.of("coupling.added-load");
        End last = Draft.lead(lead);
        for (Item item : items) {
            End minus = Draft.at(item.part(), "-");
            draft.with(new Piece.Load(item.part(), item.extra(), item.draws()));
            draft.run(last, minus, item.run(), item.draws(), AllowedDrop.LAMP);
            feed.to(Draft.at(item.part(), "+"), item.draws(), AllowedDrop.LAMP, draft);
            last = minus;
        }
        return draft.build();
    }

    /** The battery of a sounder, charged from a fused feed whatever its output does. */
    public static Draft charged(String extra, Amps charging, Amps charged, Feed feed) {
        AddedPartId battery = Draft.local(extra, "battery");
        Draft.Builder draft =
                Draft.of("coupling.charged-sounder").with(new Piece.StandbyBattery(battery, extra, charging, charged));
        feed.to(Draft.at(battery, "+"), charging, AllowedDrop.SIGNAL, draft);
        draft.run(Draft.at(battery, "-"), Draft.body(), Draft.BESIDE, charging, AllowedDrop.SIGNAL);
        return draft.build();
    }

    /** Through one relay whose make contact feeds all of them from the fused supply. */
    public static Draft byRelay(
            Lead lead, Driving.Side output, List<Item> items, RelayType relay, DiodeType clamp, Feed feed) {
        AddedPartId k = Draft.local(lead.id(), "relay");
        Amps coil = CoilCurrent.most(relay.coil());
        Draft.Builder draft = Draft.of("coupling.added-load-by-relay").with(new Piece.Relay(k, relay));
        if (output == Driving.Side.HIGH) {
            draft.throughController(coil);
        }
        Feed near = feed.reaching(k, "87", sum(items), sum(items), AllowedDrop.LAMP, draft);
        End last = Draft.at(k, "30");
        for (Item item : items) {
            End plus = Draft.at(item.part(), "+");
            draft.with(new Piece.Load(item.part(), item.extra(), item.draws()));
            draft.fused(last, plus, item.run(), item.draws(), AllowedDrop.LAMP, feed.fuse());
            draft.run(Draft.at(item.part(), "-"), Draft.body(), Draft.BESIDE, item.draws(), AllowedDrop.LAMP);
            last = plus;
        }
        Driving.coil(output, k, Draft.lead(lead), coil, near, draft);
        Clamp.across(k, clamp, draft);
        return draft.build();
    }

    private static Amps sum(List<Item> items) {
        return new Amps(items.stream().mapToDouble(i -> i.draws().value()).sum());
    }
}
