package org.loomproof.workshop.planner.coupling;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.sizing.CoilCurrent;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/** How an output works factory wires: straight, through a diode each, or through a relay. */
public final class Driving {

    private Driving() {}

    /** Which pole the output gives while it is on. */
    public enum Side {
        LOW,
        HIGH;

        /** The pole that a lead gives; empty for what is no output. */
        public static Optional<Side> of(Port port) {
            return switch (port) {
                case Port.LowSide out -> Optional.of(LOW);
                case Port.HighSide out -> Optional.of(HIGH);
                case Port.Supply s -> Optional.empty();
                case Port.Ground g -> Optional.empty();
                case Port.Input in -> Optional.empty();
                case Port.ToExtra x -> Optional.empty();
            };
        }
    }

    /**
     * One factory wire to be driven.
     *
     * @param circuit which
     * @param active the pole that makes it active
     * @param carries what flows then
     * @param fusedFor what a fuse in its feed is chosen for
     * @param run from the controller
     * @param drop what it is for
     */
    public record Line(Circuit circuit, Side active, Amps carries, Amps fusedFor, Metres run, AllowedDrop drop) {}

    /**
     * What a relay coupling is built of.
     *
     * @param relay the relay in front of each wire
     * @param diode across each coil, and in the lead where it is isolated
     * @param coils the feed that coils hang on when the output is low-side and the contact needs no feed
     * @param contact the feed for contacts of positive wires
     * @param isolated whether a diode stands between the output and the coils
     */
    public record Relaying(RelayType relay, DiodeType diode, Feed coils, Feed contact, boolean isolated) {
        /** The same with a diode between the output and the coils. */
        public Relaying withIsolation() {
            return new Relaying(relay, diode, coils, contact, true);
        }
    }

    /** The output on the wires as it is. Only for wires that may be joined with each other. */
    public static Draft straight(Lead lead, List<Line> lines) {
        Draft.Builder draft = Draft.of("coupling.straight").throughController(fromController(lines));
        End last = Draft.lead(lead);
        for (Line line : lines) {
            draft.run(last, Draft.tap(line.circuit()), line.run(), line.carries(), line.drop());
            last = Draft.tap(line.circuit());
        }
        return draft.build();
    }

    /** A diode in each wire, so that no wire feeds another, nor a controller that has lost its supply or its ground. */
    public static Draft withDiodes(Lead lead, List<Line> lines, DiodeType diode) {
        Draft.Builder draft = Draft.of("coupling.isolation-diodes").throughController(fromController(lines));
        End last = Draft.lead(lead);
        for (Line line : lines) {
            AddedPartId d = Draft.local(lead.id(), "diode " + line.circuit().id());
            String towardsLead = line.active() == Side.HIGH ? "A" : "K";
            String towardsLine = line.active() == Side.HIGH ? "K" : "A";
            draft.with(new Piece.Diode(d, diode));
            draft.run(last, Draft.at(d, towardsLead), Draft.BESIDE, line.carries(), line.drop());
            draft.run(Draft.at(d, towardsLine), Draft.tap(line.circuit()), line.run(), line.carries(), line.drop());
            last = Draft.at(d, towardsLead);
        }
        return draft.build();
    }

    /**
     * A relay in front of each wire: 30 on the wire, 87 on the pole it wants, the coil between the output and the other
     * pole, a clamp diode across the coil.
     *
     */
    public static Draft byRelay(Lead lead, Side output, List<Line> lines, Relaying by) {
        RelayType relay = by.relay();
        DiodeType clamp = by.diode();
        Feed coils = by.coils();
        Feed contact = by.contact();
        Amps coil = CoilCurrent.most(relay.coil());
        Draft.Builder draft = Draft.of(by.isolated() ? "coupling.relay-isolated" : "coupling.relay");
        if (output == Side.HIGH) {
            draft.throughController(new Amps(coil.value() * lines.size()));
        }
        Amps coilsTogether = new Amps(coil.value() * lines.size());
        End last = by.isolated() ? isolated(lead, output, clamp, coilsTogether, coils.run(), draft) : Draft.lead(lead);
        for (Line line : lines) {
            AddedPartId k = Draft.local(lead.id(), "relay " + line.circuit().id());
            draft.with(new Piece.Relay(k, relay));
            last = switch (line.active()) {
                case LOW -> {
                    draft.run(Draft.at(k, "30"), Draft.tap(line.circuit()), line.run(), line.carries(), line.drop());
                    draft.run(Draft.at(k, "87"), Draft.body(), Draft.BESIDE, line.carries(), line.drop());
                    yield coil(output, k, last, coil, coils, draft);
                }
                case HIGH -> {
                    Feed near = contact.reaching(k, "87", line.carries(), line.fusedFor(), line.drop(), draft);
                    draft.fused(
                            Draft.at(k, "30"),
                            Draft.tap(line.circuit()),
                            line.run(),
                            line.carries(),
                            line.drop(),
                            contact.fuse());
                    yield coil(output, k, last, coil, near, draft);
                }
            };
            Clamp.across(k, clamp, draft);
        }
        return draft.build();
    }

    /** A diode in the lead that lets the output work what follows and nothing flow back; gives the end behind it. */
    static End isolated(Lead lead, Side output, DiodeType diode, Amps carries, Metres run, Draft.Builder draft) {
        AddedPartId d = Draft.local(lead.id(), "isolation");
        boolean sinks = output == Side.LOW;
        draft.with(new Piece.Diode(d, diode));
        draft.run(Draft.lead(lead), Draft.at(d, sinks ? "K" : "A"), run, carries, AllowedDrop.SIGNAL);
        return Draft.at(d, sinks ? "A" : "K");
    }

    /**
     * A low-side output straight on a wire with a coil, and a diode from the wire to the constant supply: the way for the
     * coil's current at the instant when the output lets go.
     */
    public static Draft clamped(Lead lead, Line line, DiodeType diode, Feed supply) {
        AddedPartId d = Draft.local(lead.id(), "clamp");
        Draft.Builder draft = Draft.of("coupling.straight-clamped").with(new Piece.Diode(d, diode));
        draft.run(Draft.lead(lead), Draft.at(d, "A"), Draft.BESIDE, line.carries(), line.drop());
        draft.run(Draft.at(d, "A"), Draft.tap(line.circuit()), line.run(), line.carries(), line.drop());
        supply.to(Draft.at(d, "K"), new Amps(0), AllowedDrop.SIGNAL, draft);
        return draft.build();
    }

    /** An output to ground that gives a wire one of its steps through a resistor. */
    public static Draft stepped(Lead lead, Line line, Ohms resistance) {
        AddedPartId r = Draft.local(lead.id(), "step");
        return Draft.of("coupling.step-resistor")
                .with(new Piece.Resistor(r, resistance))
                .run(Draft.lead(lead), Draft.at(r, "1"), Draft.BESIDE, line.carries(), line.drop())
                .run(Draft.at(r, "2"), Draft.tap(line.circuit()), line.run(), line.carries(), line.drop())
                .build();
    }

    /** The same by the make contact of a relay, which joins the wire to nothing but the resistor to the body. */
    public static Draft steppedByRelay(Lead lead, Side output, Line line, Ohms resistance, Relaying by) {
        AddedPartId r = Draft.local(lead.id(), "step");
        AddedPartId k = Draft.local(lead.id(), "relay " + line.circuit().id());
        Amps coil = CoilCurrent.most(by.relay().coil());
        Draft.Builder draft = Draft.of("coupling.step-resistor-by-relay")
                .with(new Piece.Relay(k, by.relay()))
                .with(new Piece.Resistor(r, resistance));
        if (output == Side.HIGH) {
            draft.throughController(coil);
        }
        draft.run(Draft.at(k, "30"), Draft.tap(line.circuit()), line.run(), line.carries(), line.drop());
        draft.run(Draft.at(k, "87"), Draft.at(r, "1"), Draft.BESIDE, line.carries(), line.drop());
        draft.run(Draft.at(r, "2"), Draft.body(), Draft.BESIDE, line.carries(), line.drop());
        coil(output, k, Draft.lead(lead), coil, by.coils(), draft);
        Clamp.across(k, by.diode(), draft);
        return draft.build();
    }

    /** Puts the coil between the output and the other pole. */
    static End coil(Side output, AddedPartId k, End last, Amps coil, Feed feed, Draft.Builder draft) {
        Metres length = last instanceof End.OfLead ? feed.run() : Draft.BESIDE;
        return switch (output) {
            case LOW -> {
                feed.to(Draft.at(k, "86"), coil, AllowedDrop.SIGNAL, draft);
                draft.run(last, Draft.at(k, "85"), length, coil, AllowedDrop.SIGNAL);
                yield Draft.at(k, "85");
            }
            case HIGH -> {
                draft.run(Draft.at(k, "85"), Draft.body(), Draft.BESIDE, coil, AllowedDrop.SIGNAL);
                draft.run(last, Draft.at(k, "86"), length, coil, AllowedDrop.SIGNAL);
                yield Draft.at(k, "86");
            }
        };
    }

    private static Amps fromController(List<Line> lines) {
        return new Amps(lines.stream()
                .filter(line -> line.active() == Side.HIGH)
                .mapToDouble(line -> line.carries().value())
                .sum());
    }
}
