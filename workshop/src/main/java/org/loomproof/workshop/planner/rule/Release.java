package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.planner.coupling.Clamp;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Piece;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.sizing.CoilCurrent;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.diode.ZenerType;
import org.loomproof.workshop.trade.diode.Zeners;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.words.Phrase;

/**
 * What lies across a coil, by release time against peak volts. A plain diode keeps the peak lowest and is right wherever nothing hangs on
 * how soon the relay lets go. Where an output goes on and off faster than that, every coupling is offered with a zener as well: the one
 * of the most volts, for the soonest release, that the output is said to bear.
 */
final class Release {

    private final Job job;
    private final Lead lead;

    Release(Job job, Lead lead) {
        this.job = job;
        this.lead = lead;
    }

    /** The ways, and behind each the same with a sooner release where that may be asked for and can be borne. */
    List<Option> weighed(List<Option> ways) {
        List<Option> all = new ArrayList<>();
        for (Option way : ways) {
            all.add(way);
            sooner(way).ifPresent(all::add);
        }
        return all;
    }

    private Optional<Option> sooner(Option way) {
        if (way.decisions().size() != 1 || !(way.decisions().getFirst() instanceof Decision.Join join)) {
            return Optional.empty();
        }
        Optional<Seconds> pause = lead.port().pause().map(Figure::low);
        Optional<ZenerType> zener = zener(join.draft());
        if (pause.isEmpty() || zener.isEmpty()) {
            return Optional.empty();
        }
        Phrase because = Phrase.of(
                "rule.sooner",
                join.because(),
                zener.get().volts(),
                pause.get(),
                bears(lead.port()).orElseThrow());
        Draft draft = Clamp.sooner(join.draft(), zener.get(), "coupling.relay-sooner");
        return Optional.of(new Option(
                List.of(new Decision.Join(join.of(), join.serves(), join.circuits(), draft, because, join.insteadOf())),
                way.refusals(),
                way.cautions(),
                way.searches()));
    }

    /** Of the relays that the output itself lets go of; what a buffer bears nobody says. */
    private Optional<ZenerType> zener(Draft draft) {
        if (draft.pieces().stream().anyMatch(Piece.Buffer.class::isInstance)) {
            return Optional.empty();
        }
        Optional<Amps> coils = draft.pieces().stream()
                .filter(Piece.Relay.class::isInstance)
                .map(piece -> CoilCurrent.most(((Piece.Relay) piece).type().coil()))
                .reduce((one, other) -> new Amps(one.value() + other.value()));
        return bears(lead.port())
                .flatMap(bears -> coils.flatMap(amps -> Zeners.listZeners().reversed().stream()
                        .filter(type -> peak(type, amps) <= bears.value())
                        .findFirst()));
    }

    /** The most that the output sees at the instant it lets go. */
    private double peak(ZenerType type, Amps coil) {
        DiodeType diode = job.signalDiode();
        return SupplyPoint.HIGH.volts().value()
                + type.most(coil).value()
                + diode.forward().value();
    }

    private static Optional<Volts> bears(Port port) {
        return port instanceof Port.LowSide out ? out.bears().map(Figure::low) : Optional.empty();
    }
}
