package org.loomproof.workshop.planner.coupling;

import java.util.List;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.sizing.CoilCurrent;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/**
 * How an input reads one or several sources. A diode stands in each factory wire as soon as anything else hangs on the same
 * end, so that no factory wire can pull another; a pin has no factory function and needs none.
 */
public final class Reading {

    /** An input's own pull-up or pull-down lets some milliamps flow. Common practice, no published source. */
    private static final Amps SIGNAL = new Amps(0.005);

    private final Lead lead;
    private final Port.Active active;
    private final DiodeType diode;

    /** How that lead reads. */
    public Reading(Lead lead, Port.Active active, DiodeType diode) {
        this.lead = lead;
        this.active = active;
        this.diode = diode;
    }

    /** What a relay for sources of the other polarity needs: the relay itself, and a constant supply for its coil. */
    public record Inverter(RelayType relay, Feed feed) {
        /** What its coil draws. */
        public Amps coil() {
            return CoilCurrent.most(relay.coil());
        }
    }

    /** The lead reads sources of its own polarity: straight for one, by diodes for several. */
    public Draft direct(List<Source> sources) {
        return direct(sources, sources.size() == 1);
    }

    /** The same with a diode in every factory wire, so that nothing but what is read flows between them and the lead. */
    public Draft isolated(List<Source> sources) {
        return direct(sources, false);
    }

    private Draft direct(List<Source> sources, boolean alone) {
        boolean pinsOnly = sources.stream().allMatch(Source.Pin.class::isInstance);
        boolean pullsUp = sources.stream().anyMatch(Source.Released.class::isInstance);
        Draft.Builder draft = Draft.of(
                pinsOnly
                        ? "coupling.added-pin"
                        : pullsUp ? "coupling.pull-up" : alone ? "coupling.straight" : "coupling.isolation-diodes");
        join(draft, Draft.lead(lead), sources, active, SIGNAL, alone);
        return draft.build();
    }

    /** The lead reads sources of the other polarity through a relay whose coil hangs on them. */
    public Draft inverted(List<Source> sources, Inverter inverter) {
        Draft.Builder draft = Draft.of("coupling.inverting-relay");
        invert(draft, sources, inverter);
        return draft.build();
    }

    /** The lead reads sources of both polarities: its own by a diode each, the others through a relay. */
    public Draft mixed(List<Source> own, List<Source> others, Inverter inverter) {
        Draft.Builder draft = Draft.of("coupling.diodes-and-inverting-relay");
        join(draft, Draft.lead(lead), own, active, SIGNAL, false);
        invert(draft, others, inverter);
        return draft.build();
    }

    /**
     * The coil stands between the constant supply and negative sources, or between positive sources and the body; the make
     * contact gives the lead the pole it wants.
     */
    private void invert(Draft.Builder draft, List<Source> sources, Inverter inverter) {
        AddedPartId k = Draft.local(lead.id(), "relay");
        draft.with(new Piece.Relay(k, inverter.relay()));
        draft.run(Draft.lead(lead), Draft.at(k, "30"), longest(sources), SIGNAL, AllowedDrop.SIGNAL);
        Amps coil = inverter.coil();
        boolean alone = sources.size() == 1;
        switch (active) {
            case HIGH -> {
                inverter.feed()
                        .reaching(k, "86", coil, coil, AllowedDrop.SIGNAL, draft)
                        .to(Draft.at(k, "87"), SIGNAL, AllowedDrop.SIGNAL, draft);
                join(draft, Draft.at(k, "85"), sources, Port.Active.LOW, coil, alone);
            }
            case LOW -> {
                draft.run(Draft.at(k, "85"), Draft.body(), Draft.BESIDE, coil, AllowedDrop.SIGNAL);
                draft.run(Draft.at(k, "87"), Draft.body(), Draft.BESIDE, SIGNAL, AllowedDrop.SIGNAL);
                join(draft, Draft.at(k, "86"), sources, Port.Active.HIGH, coil, alone);
            }
        }
    }

    /** Joins all sources to one end; the wire goes from one to the next. */
    private void join(
            Draft.Builder draft, End reader, List<Source> sources, Port.Active active, Amps carries, boolean alone) {
        End last = reader;
        for (Source source : sources) {
            Metres length = last.equals(reader) ? source.run() : Draft.BESIDE;
            last = switch (source) {
                case Source.Pin pin -> {
                    draft.with(new Piece.Pin(pin.part(), pin.opening()));
                    draft.run(last, pin.end(), source.run(), carries, AllowedDrop.SIGNAL);
                    yield pin.end();
                }
                case Source.Fused fused -> {
                    fused.feed().to(last, carries, AllowedDrop.SIGNAL, draft);
                    yield last;
                }
                case Source.Released released -> {
                    draft.with(new Piece.Resistor(released.part(), released.pullUp()));
                    released.feed().to(Draft.at(released.part(), "1"), released.atRest(), AllowedDrop.SIGNAL, draft);
                    draft.run(
                            Draft.at(released.part(), "2"),
                            released.end(),
                            Draft.BESIDE,
                            released.atRest(),
                            AllowedDrop.SIGNAL);
                    Source.Wire wire = new Source.Wire(released.circuit(), released.run());
                    if (alone) {
                        draft.run(last, wire.end(), length, carries, AllowedDrop.SIGNAL);
                        yield wire.end();
                    }
                    yield throughDiode(draft, last, wire, active, carries);
                }
                case Source.Wire wire
                when alone -> {
                    draft.run(last, wire.end(), length, carries, AllowedDrop.SIGNAL);
                    yield wire.end();
                }
                case Source.Wire wire -> throughDiode(draft, last, wire, active, carries);
            };
        }
    }

    private End throughDiode(Draft.Builder draft, End last, Source.Wire wire, Port.Active active, Amps carries) {
        AddedPartId d = Draft.local(lead.id(), "diode " + wire.circuit().id());
        String towardsReader = active == Port.Active.LOW ? "A" : "K";
        String towardsSource = active == Port.Active.LOW ? "K" : "A";
        draft.with(new Piece.Diode(d, diode));
        draft.run(last, Draft.at(d, towardsReader), Draft.BESIDE, carries, AllowedDrop.SIGNAL);
        draft.run(Draft.at(d, towardsSource), wire.end(), wire.run(), carries, AllowedDrop.SIGNAL);
        return Draft.at(d, towardsReader);
    }

    private static Metres longest(List<Source> sources) {
        return sources.stream()
                .map(Source::run)
                .reduce((a, b) -> a.value() >= b.value() ? a : b)
                .orElse(Draft.BESIDE);
    }
}
